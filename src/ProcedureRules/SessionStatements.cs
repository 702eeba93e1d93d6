using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Packs;

namespace ProcedureRules;

/// <summary>What was said in a session since the sheet was read; each thing said replaces what was said of the same before.</summary>
internal sealed class SessionStatements
{
    private readonly Dictionary<FactKey, Observation> _facts = [];
    private readonly Dictionary<Part, PartStatement> _parts = [];
    private readonly Dictionary<(Relation, Part, Part), RelationStatement> _relations = [];
    private readonly Dictionary<(Part, Aspect), int> _states = [];
    private readonly HashSet<FactKey> _old = [];

    public void Say(Observation observation)
    {
        _facts[observation.Fact] = observation;
        _old.Remove(observation.Fact);
    }

    public void Say(PartStatement statement) => _parts[statement.Part] = statement;

    public void Say(RelationStatement statement) => _relations[(statement.Relation, statement.A, statement.B)] = statement;

    public void TakeBack(FactKey fact) => _facts.Remove(fact);

    /// <summary>An aspect is now in a state: readings that were taken in another are old.</summary>
    public void Leave(GroundState after, Situation situation)
    {
        _states[(after.Part, after.Aspect)] = after.States.States().First();
        var path = after.Aspect.ToString();
        foreach (var observation in situation.Observations)
            if (observation.Source == Source.Measured && observation.Fact.Fact.TakenIn.Contains(path)) _old.Add(observation.Fact);
    }

    /// <summary>The sheet with everything said since.</summary>
    public Situation On(Situation sheet)
    {
        var states = sheet.States;
        if (_states.Count > 0)
        {
            var now = new Dictionary<(Part, Aspect), int>(sheet.States);
            foreach (var (key, state) in _states) now[key] = state;
            states = now;
        }
        return new Situation
        {
            Title = sheet.Title,
            Vocabulary = sheet.Vocabulary,
            Parts = sheet.Parts,
            PartStatements = Replaced(sheet.PartStatements, _parts, statement => statement.Part, (old, now) => old.Source <= now.Source),
            Relations = Replaced(sheet.Relations, _relations, statement => (statement.Relation, statement.A, statement.B), (old, now) => old.Source <= now.Source),
            Observations =
            [
                .. Replaced(sheet.Observations, _facts, observation => observation.Fact, (old, now) => old.Source <= now.Source)
                    .Where(observation => observation.Source != Source.Measured || !_old.Contains(observation.Fact)),
            ],
            States = states,
            Jobs = sheet.Jobs,
        };
    }

    private static IReadOnlyList<TItem> Replaced<TItem, TKey>(
        IReadOnlyList<TItem> sheet, Dictionary<TKey, TItem> said, Func<TItem, TKey> keyOf, Func<TItem, TItem, bool> gives)
        where TKey : notnull
    {
        if (said.Count == 0) return sheet;
        return [.. sheet.Where(old => !said.TryGetValue(keyOf(old), out var now) || !gives(old, now)), .. said.Values];
    }
}
