using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;

namespace ProcedureRules.Testing.Covering;

/// <summary>What one case reaches of the rules. A rule that is compiled for several kinds counts as the one that is written.</summary>
internal sealed class CoverageSheet
{
    /// <summary>How far each rule came.</summary>
    public Dictionary<(string Pack, string Rule), Assurance> Rules { get; } = [];

    /// <summary>What each condition came to.</summary>
    public HashSet<((string Pack, string Rule) Rule, SourceSpan Condition, Truth Truth)> Conditions { get; } = [];

    /// <summary>Notes what is believed at one turn.</summary>
    public void Note(BeliefState beliefs)
    {
        foreach (var record in beliefs.Network.Records)
        {
            if (record.Rule is not { } rule) continue;
            var key = (rule.Pack, rule.Title);
            var level = Enumerable.Range(0, record.Effects.Count).Select(effect => beliefs.Available(record, effect)).DefaultIfEmpty().Max();
            Rules[key] = Rules.TryGetValue(key, out var before) && before > level ? before : level;
            for (var test = 0; test < record.Tests.Count; test++) Conditions.Add((key, record.Tests[test].Span, beliefs.TruthOf(record, test)));
        }
    }
}
