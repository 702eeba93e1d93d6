using ProcedureRules.Packs;

namespace ProcedureRules.Language.Compiling;

/// <summary>The variables of one rule: those that <c>for</c> declares, and one for each kind that a condition names.</summary>
internal sealed class RuleScope(string pack)
{
    private readonly List<Variable> _variables = [];
    private readonly List<Variable> _each = [];

    /// <summary>The pack whose names are open.</summary>
    public string Pack { get; } = pack;

    public IReadOnlyList<Variable> Variables => _variables;

    /// <summary>Whether the name of a kind brings a variable of its own; not in a text, which must not add a condition to its rule.</summary>
    public bool TakesKinds { get; set; } = true;

    public IEnumerable<Variable> Steps => _variables.Where(variable => variable.Sort == Sort.Step);

    public Variable? Find(string name) =>
        _each.Find(variable => variable.Name == name) ?? _variables.Find(variable => variable.Name == name);

    /// <summary>Lets the name of a kind stand for each of its parts in turn, inside an aggregate, until it is left.</summary>
    public Variable Enter(Kind kind)
    {
        var variable = new Variable(kind.Name, Sort.Part, kind, ~_each.Count);
        _each.Add(variable);
        return variable;
    }

    public void Leave() => _each.RemoveAt(_each.Count - 1);

    public Variable Add(string name, Sort sort, Kind? kind)
    {
        var variable = new Variable(name, sort, kind, _variables.Count);
        _variables.Add(variable);
        return variable;
    }

    /// <summary>A scope with the same variables so far, for a rule that may need more of its own.</summary>
    public RuleScope Fork()
    {
        var fork = new RuleScope(Pack) { TakesKinds = TakesKinds };
        fork._variables.AddRange(_variables);
        return fork;
    }

    /// <summary>The scope of a text or condition about one part, <c>it</c>, in which no kind may be named.</summary>
    public static RuleScope OfIt(string pack, Kind kind)
    {
        var scope = new RuleScope(pack) { TakesKinds = false };
        scope.Add("it", Sort.Part, kind);
        return scope;
    }
}
