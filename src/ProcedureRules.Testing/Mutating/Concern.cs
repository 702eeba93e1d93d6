using ProcedureRules.Beliefs;
using ProcedureRules.Explaining;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Expectations;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// What the expectations of a moment are about: whether any of them speaks of something that a rule leads to. One that does not is no proof of the
/// rule, even if it should fail by chance, since steps that nothing orders have changed places.
/// </summary>
internal sealed class Concern
{
    private readonly List<Func<IConsequences, bool>> _asks = [];
    private readonly BeliefNetwork _network;
    private readonly Plan _plan;
    private readonly Lazy<IReadOnlyList<(int Record, Template? Text, string Words)>> _sayings;

    public Concern(Stage stage)
    {
        (_network, _plan) = (stage.Outcome.Beliefs.Network, stage.Outcome.Plan);
        _sayings = new(() => [.. Sayings()]);
        foreach (var expected in stage.Judging) _asks.Add(Of(expected));
    }

    /// <summary>Whether an expectation speaks of any of it.</summary>
    public bool Has(IConsequences consequences) => _asks.Exists(ask => ask(consequences));

    private Func<IConsequences, bool> Of(Expectation expected) => expected switch
    {
        StepExpected step => OfSteps(Steps(step.Step)),
        OrderExpected order => Of(order),
        QuestionExpected question => OfRecords(Reading(question.Id), fact: Fact(question.Id)),
        ValueExpected value => OfRecords([], Fact($"{value.Part}.{value.Fact.Name}")),
        ConflictExpected conflict => OfRecords([], Fact($"{conflict.Part}.{conflict.Fact.Name}")),
        FindingExpected finding => OfFinding(finding.Cause, With(effect => effect.Conclusion is Conclusion.Finding said && said.Cause.Name == finding.Cause)),
        EndExpected => OfRecords(With(effect => effect.Conclusion is Conclusion.Stop or Conclusion.ForbidStep or Conclusion.ForbidWork or Conclusion.ForbidState or Conclusion.Order)),
        WordsExpected words => Of(words),
        _ => _ => true,
    };

    private Func<IConsequences, bool> Of(WordsExpected words) => words.Keyword switch
    {
        "assumption" or "hold" => _ => true,
        "stop" => OfRecords(With(effect => effect.Conclusion is Conclusion.Stop or Conclusion.ForbidStep or Conclusion.ForbidWork or Conclusion.ForbidState)),
        "offer" => OfRecords(With(effect => effect.Conclusion is Conclusion.Offer)),
        "way" => OfRecords(With(effect => effect.Conclusion is Conclusion.OneOf or Conclusion.Slower or Conclusion.ForbidStep or Conclusion.ForbidWork or Conclusion.ForbidState
            || effect.Atom is Atom.Open or Atom.Chosen)),
        _ => Of(words, Saying(words)),
    };

    // What stands behind an order is what orders the steps on the ways from the first to the second.
    private Func<IConsequences, bool> Of(OrderExpected order)
    {
        var (first, second) = (order.First.In(_plan).Select(step => step.Id).ToHashSet(), order.Second.In(_plan).Select(step => step.Id).ToHashSet());
        var (after, before) = (new HashSet<string>(first), new HashSet<string>(second));
        foreach (var step in _plan.Steps)
            if (step.After.Any(after.Contains)) after.Add(step.Id);
        foreach (var step in _plan.Steps.Reverse())
            if (before.Contains(step.Id)) before.UnionWith(step.After);
        var steps = _plan.Steps.Where(step => first.Contains(step.Id) || second.Contains(step.Id) || (after.Contains(step.Id) && before.Contains(step.Id))).Select(step => step.Step).Distinct().ToList();
        var records = steps.SelectMany(_network.RecordsAbout).Where(about => about.Effect.Conclusion is Conclusion.Order or Conclusion.Need or Conclusion.Wait or Conclusion.Do)
            .Select(about => _network.Graph.Nodes.Of(about.Record)).Distinct().ToList();
        return consequences => records.Exists(consequences.Has) || steps.Exists(step => consequences.Has(new Atom.Occurs(step)));
    }

    private static Func<IConsequences, bool> OfSteps(List<Atom.Occurs> steps) => consequences => steps.Exists(consequences.Has);

    private static Func<IConsequences, bool> OfFinding(string cause, List<int> findings) => consequences => consequences.Has(cause, findings);

    private static Func<IConsequences, bool> OfRecords(List<int> records, FactKey? fact = null) =>
        consequences => (fact is { } key && consequences.Has(key)) || records.Exists(consequences.Has);

    private List<Atom.Occurs> Steps(StepPick pick) =>
        [.. _network.AtomsOf<Atom.Occurs>().Where(atom => atom.Step.Operation.Name == pick.Operation.Name && (pick.Part is null || atom.Step.Part.Name == pick.Part))];

    private List<int> With(Func<Effect, bool> isMeant) => [.. Enumerable.Range(0, _network.Records.Count).Where(at => _network.Records[at].Effects.Any(isMeant))];

    private List<int> Reading(string id) => [.. Enumerable.Range(0, _network.Records.Count).Where(at =>
        _network.ReadingsOf(_network.Records[at]).Any(reading => reading.Id == id) || _network.Records[at].Effects.Any(effect => effect.Fact?.ToString() == id))];

    // Who says the words now can stop it; who does not can come to say them only where figures stand in its text.
    private List<(int Record, Template? Text)> Saying(WordsExpected words) =>
    [
        .. _sayings.Value.Where(saying => saying.Text is { } text
                ? saying.Words.Contains(words.Words, StringComparison.OrdinalIgnoreCase) || (!words.IsDue && text.Text.Contains('{', StringComparison.Ordinal) && RuleTexts.CanRender(text.Text, words.Words))
                : words.Keyword == "wait")
            .Select(saying => (saying.Record, saying.Text)),
    ];

    // Every text once, since a moment mostly expects several; a wait without a text says what it is by itself.
    private IEnumerable<(int Record, Template? Text, string Words)> Sayings()
    {
        for (var at = 0; at < _network.Records.Count; at++)
            foreach (var effect in _network.Records[at].Effects)
            {
                if (Hearing.AnyTextOf(effect.Conclusion) is { } text) yield return (at, text, text.Render(_plan.Beliefs, _network.Records[at].Binding, UnitSystem.Us));
                else if (effect.Conclusion is Conclusion.Wait) yield return (at, null, "");
            }
    }

    private Func<IConsequences, bool> Of(WordsExpected words, List<(int Record, Template? Text)> saying)
    {
        var read = saying.Where(one => one.Text?.Nodes.Count > 0).SelectMany(one => ReadFacts.Of(one.Text!, _plan.Beliefs, _network.Records[one.Record].Binding))
            .Select(reading => Fact(reading.Id)).OfType<FactKey>().Distinct().ToList();
        var steps = words.At is { } at ? Steps(at) : [];
        return consequences => saying.Exists(one => consequences.Has(one.Record)) || read.Exists(consequences.Has) || steps.Exists(consequences.Has);
    }

    private FactKey? Fact(string path)
    {
        var dot = path.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0 || _plan.Situation.Parts.FirstOrDefault(part => part.Name == path[..dot]) is not { } part) return null;
        return _plan.Situation.Vocabulary.FactOf(part.Kind, path[(dot + 1)..]) is { } fact ? new FactKey(part, fact) : null;
    }
}
