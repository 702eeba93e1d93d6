namespace ProcedureRules.Explaining;

/// <summary>Why a plan says something.</summary>
/// <param name="Item">What it says.</param>
/// <param name="Tree">The item, and below it everything that it rests on.</param>
public sealed record WhyAnswer(PlanEntry Item, WhyNode Tree)
{
    /// <summary>The answer in short: what says so, from what, and for what.</summary>
    public WhyShort InShort => WhyShort.Of(Tree);
}
