namespace ProcedureRules.Testing.Expectations;

/// <summary>What an expectation came to.</summary>
/// <param name="Holds">Whether it is met.</param>
/// <param name="Came">What came instead.</param>
/// <param name="Explain">What explains the difference; made only where somebody reads it.</param>
internal sealed record Judgement(bool Holds, string Came, Func<IReadOnlyList<string>> Explain)
{
    private static readonly Judgement Met = new(true, "", () => []);

    /// <summary>Met, or else not, with what came instead.</summary>
    public static Judgement Of(bool holds, Func<string> came, Func<IReadOnlyList<string>>? explain = null) => holds ? Met : new(false, came(), explain ?? (() => []));
}
