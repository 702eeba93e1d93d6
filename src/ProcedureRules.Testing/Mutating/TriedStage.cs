using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;

namespace ProcedureRules.Testing.Mutating;

/// <summary>A rule at a moment, with what changes of it are known to come to there.</summary>
internal sealed class TriedStage(StagedRule of)
{
    private readonly Dictionary<string, bool> _concerns = new(StringComparer.Ordinal);
    private RuleForms? _forms;
    private bool? _feedsItself;
    private bool? _isAtWork;
    private (Rematch? By, IReadOnlyList<Record>? Records) _matched;

    /// <summary>The rule at the moment.</summary>
    public StagedRule Of => of;

    /// <summary>The rule.</summary>
    public CompiledRule Rule => of.Rule;

    /// <summary>All records of the moment.</summary>
    public IReadOnlyList<Record> Records { get; } = of.Stage.Outcome.Beliefs.Network.Records;

    /// <summary>The forms of the rule's records as they are.</summary>
    public RuleForms Forms => _forms ??= new([.. of.Of.Select(at => FormOf(Records[at]))]);

    /// <summary>Whether other forms of them are noticed.</summary>
    public Dictionary<RuleForms, bool> Known { get; } = [];

    /// <summary>Whether conditions of the rule read what it leads to itself: then what they come to shows only when all is believed anew.</summary>
    public bool FeedsItself => _feedsItself ??= FindsItself(of);

    /// <summary>
    /// Whether the rule is seen at work: the approved plan names it, or changes a state that the rule asks for; without such a plan, an expectation
    /// speaks of what it leads to.
    /// </summary>
    public bool IsAtWork => _isAtWork ??= of.At.Held is not { } held ? Relevance.Of(of) > 0
        : held.Signs.Have(Rule) || of.Of.SelectMany(at => Records[at].Effects).Any(effect => effect.Atom is Atom.Wanted wanted && of.At.Links.Changes(wanted.Part, wanted.Aspect));

    /// <summary>Its turn among the moments of its scenario, which are much alike.</summary>
    public int Turn { get; init; }

    /// <summary>Whether an expectation speaks of what records of the rule lead to.</summary>
    public bool Concerns(IReadOnlyList<int> records)
    {
        var key = string.Join(',', records);
        return _concerns.TryGetValue(key, out var known) ? known : _concerns[key] = of.At.Concern.Has(new Consequences(of.Stage.Outcome.Beliefs.Network, records));
    }

    /// <summary>The forms of the rule's records after a change; null where it concerns none of them.</summary>
    public RuleForms? FormsOf(IReadOnlyList<Record> own)
    {
        RecordForm[]? forms = null;
        for (var i = 0; i < own.Count; i++)
            if (!ReferenceEquals(own[i], Records[of.Of[i]])) (forms ??= [.. Forms.Forms])[i] = FormOf(own[i]);
        return forms is null ? null : new RuleForms(forms);
    }

    /// <summary>The records of the rule as it is after a change; null where there are more than the bound.</summary>
    public IReadOnlyList<Record>? Matches(Rematch matching, int budget, CancellationToken cancellation)
    {
        if (!ReferenceEquals(_matched.By, matching)) _matched = (matching, matching.Matches(of.At.Atoms, budget, cancellation));
        return _matched.Records;
    }

    /// <summary>Of the records of the rule as it is after a change, those that are more than before, or no longer rest on what may not be so.</summary>
    public IReadOnlyList<Record> More(IReadOnlyList<Record> records)
    {
        var beliefs = of.Stage.Outcome.Beliefs;
        var known = of.Of.Select(at => Records[at]).Where(record => record.Mechanism == Mechanism.Rule).ToDictionary(record => (record.Rule!.Name, record.Binding));
        return [.. records.Where(record => !known.TryGetValue((record.Rule!.Name, record.Binding), out var before)
            || before.Premises.Except(record.Premises).Any(premise => beliefs.Required(premise) != Assurance.Sure || beliefs.Available(premise) != Assurance.Sure))];
    }

    private RecordForm FormOf(Record record) => RecordForm.Of(record, of.Stage.Outcome.Beliefs, of.At.IsReadHeard);

    private static bool FindsItself(StagedRule of)
    {
        var network = of.Stage.Outcome.Beliefs.Network;
        var nodes = network.Graph.Nodes;
        var reached = new Reach(network).From(of.Of.Select(nodes.RecordNode));
        return of.Of.SelectMany(at => network.ReadingsOf(network.Records[at])).Any(reading => nodes.NodeOf(reading) is >= 0 and var node && Reach.Has(reached, node));
    }
}
