using ProcedureRules.Beliefs;

namespace ProcedureRules.Choosing;

/// <summary>A set of choices in the making.</summary>
/// <param name="Beliefs">The beliefs with what is decided.</param>
/// <param name="Ways">For each choice of the book the way decided on; <see cref="Open"/> or <see cref="None"/> where there is none.</param>
/// <param name="Gains">For each choice what its ways add at least, where that has been looked at.</param>
/// <param name="Unsettled">What the choices still open can change.</param>
/// <param name="Bound">What no complete set built on it can come below.</param>
internal sealed record ChoiceNode(BeliefState Beliefs, int[] Ways, ChoiceGain?[] Gains, Unsettled Unsettled, DecisionKey Bound)
{
    /// <summary>Not decided yet.</summary>
    public const int Open = -2;

    /// <summary>Decided to stay open.</summary>
    public const int None = -1;

    /// <summary>How many choices are decided.</summary>
    public int Depth { get; } = Ways.Count(way => way != Open);

    /// <summary>The ways with one more decided.</summary>
    public int[] With(int choice, int way)
    {
        int[] ways = [.. Ways];
        ways[choice] = way;
        return ways;
    }
}
