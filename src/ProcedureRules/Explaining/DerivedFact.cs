using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>A fact that rules worked out, its value, and the rules that surely speak.</summary>
/// <param name="Key">The fact.</param>
/// <param name="Value">Its value.</param>
/// <param name="Rank">How it ranks: as the weakest that it rests on.</param>
/// <param name="Because">The rules, with the basis of each.</param>
public sealed record DerivedFact(FactKey Key, Value Value, Source Rank, IReadOnlyList<Reason> Because)
{
    /// <summary>What rules surely worked out from what somebody stated, measured or assumed, in the order of the rules.</summary>
    public static IReadOnlyList<DerivedFact> Of(BeliefState beliefs)
    {
        ArgumentNullException.ThrowIfNull(beliefs);
        var reasons = new Reasons(beliefs);
        var found = new List<DerivedFact>();
        foreach (var group in beliefs.Network.RecordsWith<Conclusion.Set>()
            .Where(source => beliefs.Available(source.Record, source.Index) == Assurance.Sure)
            .GroupBy(source => source.Effect.Fact!.Value))
        {
            var value = beliefs.Fact(group.Key.Part, group.Key.Fact);
            if (beliefs.SourceOf(group.Key) == Source.None || value.Contains(Value.Unknown(group.Key.Fact))) continue;
            found.Add(new(group.Key, value, beliefs.SourceOf(group.Key), [.. group.Select(source => reasons.Of(source.Record))]));
        }

        return found;
    }
}
