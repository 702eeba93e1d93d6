using ProcedureRules.Inference;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A moment at which a change of a rule makes something else of its records, so that its plan may be another one.</summary>
/// <param name="Tried">The moment.</param>
/// <param name="Own">The records of the rule as they are after the change.</param>
/// <param name="Forms">Their forms.</param>
internal sealed record Candidate(TriedStage Tried, IReadOnlyList<Record> Own, RuleForms Forms)
{
    private MadeDifference? _difference;

    /// <summary>The places, among all records of the moment, of those that the change concerns.</summary>
    public IReadOnlyList<int> Changed => [.. Tried.Of.Of.Where((at, i) => !ReferenceEquals(Own[i], Tried.Records[at]))];

    /// <summary>Whether it makes another form of one of them.</summary>
    public bool IsOtherwise => !Forms.Equals(Tried.Forms);

    /// <summary>What it makes come or go.</summary>
    public MadeDifference Difference => _difference ??= MadeDifference.Of(this);

    /// <summary>All records of the moment after the change.</summary>
    public IReadOnlyList<Record> Records()
    {
        var records = Tried.Records.ToArray();
        for (var i = 0; i < Own.Count; i++) records[Tried.Of.Of[i]] = Own[i];
        return records;
    }

    /// <summary>Candidates by how likely they are to notice: where the change turns something that is settled, where the plan shows the rule at work, then one of each scenario in turn; what takes long to plan comes last.</summary>
    public static IEnumerable<Candidate> InOrder(IEnumerable<Candidate> candidates) => candidates
        .GroupBy(one => (one.Tried.Of.At.IsSlow ? 4 : 0) + (one.IsTurned ? 0 : 2) + (one.Tried.IsAtWork ? 0 : 1))
        .OrderBy(group => group.Key)
        .SelectMany(group => group.GroupBy(one => one.Tried.Of.At.Case.Scenario)
            .SelectMany(scenario => scenario.Select((one, i) => (one, i)))
            .OrderBy(entry => entry.i).ThenBy(entry => !entry.one.Tried.Of.At.IsHeld).ThenBy(entry => entry.one.Tried.Of.At.Records).Select(entry => entry.one));

    private bool IsTurned => Forms.Forms.Zip(Tried.Forms.Forms).Any(pair => !pair.First.Equals(pair.Second) && pair.First.IsSettled && pair.Second.IsSettled);
}
