using ProcedureRules.Language;

namespace ProcedureRules.Inference;

/// <summary>The numbers by which the <c>one_of</c> conclusions of a rule are told apart, also those nested in an option.</summary>
internal static class Choices
{
    /// <summary>The conclusion of a number.</summary>
    public static Conclusion.OneOf At(CompiledRule rule, int number) => number < rule.Conclusions.Count
        ? (Conclusion.OneOf)rule.Conclusions[number]
        : Nested(rule).ElementAt(number - rule.Conclusions.Count);

    /// <summary>The number of a conclusion.</summary>
    public static int NumberOf(CompiledRule rule, Conclusion.OneOf choice)
    {
        for (var i = 0; i < rule.Conclusions.Count; i++)
            if (ReferenceEquals(rule.Conclusions[i], choice)) return i;
        return rule.Conclusions.Count + Nested(rule).TakeWhile(other => !ReferenceEquals(other, choice)).Count();
    }

    private static IEnumerable<Conclusion.OneOf> Nested(CompiledRule rule) =>
        rule.Conclusions.OfType<Conclusion.OneOf>().SelectMany(Inside);

    private static IEnumerable<Conclusion.OneOf> Inside(Conclusion.OneOf choice) => choice.Options
        .SelectMany(option => option.Then.OfType<Conclusion.OneOf>())
        .SelectMany(nested => Inside(nested).Prepend(nested));
}
