using ProcedureRules.Diagnostics;
using ProcedureRules.Language.Nodes;

namespace ProcedureRules.Language.Compiling;

/// <summary>A rule while it is being put together.</summary>
internal sealed class RuleParts(string name, RuleScope scope, SourceSpan span)
{
    private int _ownVariables = -1;

    public RuleScope Scope { get; } = scope;

    public SourceSpan Span { get; } = span;

    public List<Pattern> Patterns { get; } = [];

    /// <summary>The patterns on steps, with their places.</summary>
    public List<(Pattern Pattern, SourceSpan Span)> StepConditions { get; } = [];

    public List<(Test Test, TruthNode Node, Resolver Names)> Tests { get; } = [];

    public List<(StateCondition State, SourceSpan Span)> Moments { get; } = [];

    public List<(StateCondition State, SourceSpan Span)> AtStart { get; } = [];

    /// <summary>States in which alone a matched relation holds; they count where conclusions have a moment at all.</summary>
    public List<StateCondition> RelationStates { get; } = [];

    public List<Conclusion> Conclusions { get; } = [];

    public RuleReads Reads { get; } = new(name, span);

    /// <summary>The variables that a fork has beyond those of its rule.</summary>
    public IEnumerable<Variable> Added => _ownVariables < 0 ? [] : Scope.Variables.Skip(_ownVariables);

    /// <summary>Its name, with the kinds that it is about beyond its rule's own.</summary>
    public string Name => Added.Any() ? $"{name} ({string.Join(", ", Added.Select(variable => variable.Name))})" : name;

    public bool IsBound(Variable variable) => Patterns.Any(pattern => pattern.First == variable.Slot || pattern.Second == variable.Slot);

    public void Add(Test test, TruthNode node, Resolver names)
    {
        Tests.Add((test, node, names));
        Reads.Judge(node);
    }

    /// <summary>A rule under the same conditions, for a conclusion that may need variables of its own.</summary>
    public RuleParts Fork(string? forkName = null, SourceSpan? forkSpan = null)
    {
        var fork = new RuleParts(forkName ?? name, Scope.Fork(), forkSpan ?? Span) { _ownVariables = Scope.Variables.Count };
        fork.Patterns.AddRange(Patterns);
        fork.Tests.AddRange(Tests);
        fork.Moments.AddRange(Moments);
        fork.AtStart.AddRange(AtStart);
        fork.RelationStates.AddRange(RelationStates);
        fork.Reads.Add(Reads);
        return fork;
    }

    /// <summary>The rule; variables that no pattern narrows to their kind get a pattern of their own.</summary>
    public CompiledRule Build(string pack, Template? because, string basis)
    {
        var patterns = new List<Pattern>(Patterns);
        foreach (var variable in Scope.Variables)
        {
            if (variable.Kind is { } kind && (kind.Parent is not null || !IsBound(variable)))
                patterns.Add(new(new(PredicateSort.Part, kind.Name), variable.Slot, -1, kind.Name));
            else if (variable.Sort == Sort.Step && !IsBound(variable))
                patterns.Add(new(new(PredicateSort.Step), variable.Slot, -1, "step"));
        }

        var haveMoment = Conclusions.TrueForAll(ConclusionForms.HasMoment);
        return new()
        {
            Name = Name,
            Title = name,
            Pack = pack,
            Span = Span,
            Variables = [.. Scope.Variables],
            Patterns = patterns,
            Tests = [.. Tests.Select(test => test.Test)],
            Moments = [.. Moments.Select(moment => moment.State), .. haveMoment ? RelationStates : []],
            AtStart = [.. AtStart.Select(moment => moment.State)],
            MomentSpans = [.. Moments.Select(moment => moment.Span)],
            AtStartSpans = [.. AtStart.Select(moment => moment.Span)],
            Conclusions = [.. Conclusions],
            Because = because,
            Basis = basis,
        };
    }
}
