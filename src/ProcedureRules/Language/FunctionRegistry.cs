using ProcedureRules.Diagnostics;

namespace ProcedureRules.Language;

/// <summary>The functions that packs can call: those of the language, and what an embedding program adds. Immutable.</summary>
public sealed class FunctionRegistry
{
    private static readonly IReadOnlyDictionary<string, string> BuiltIn = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["min"] = "min(a, b, ...): the least of several values of one dimension",
        ["max"] = "max(a, b, ...): the greatest of several values of one dimension",
        ["abs"] = "abs(a): a value without its sign",
        ["if"] = "if(c, a, b): a where the condition holds, b where it does not, all that either gives where it is unknown",
        ["demanded"] = "demanded(x.fact): the least that all demands on a fact ask for",
        ["allowed"] = "allowed(x.fact): the greatest that all demands on a fact allow",
        ["count"] = "count(KIND, c): how many parts of a kind there are for which the condition holds; it may be left out, as in all of these",
        ["sum"] = "sum(KIND, a, c): the values of all parts of a kind, added up",
        ["least"] = "least(KIND, a, c): the least value among the parts of a kind",
        ["greatest"] = "greatest(KIND, a, c): the greatest value among the parts of a kind",
        ["where_least"] = "where_least(KIND, a, c): the part that has the least value, for a text",
        ["where_greatest"] = "where_greatest(KIND, a, c): the part that has the greatest value, for a text",
        ["any"] = "any(kind): the vehicle has a part of the kind",
        ["at_start"] = "at_start(x.aspect is state): a state as it is now; an entry of its own in 'when'",
    };

    private readonly IReadOnlyDictionary<string, FunctionDefinition> _added;

    private FunctionRegistry(IReadOnlyDictionary<string, FunctionDefinition> added, Action<Diagnostic>? failed)
    {
        _added = added;
        Failed = failed;
    }

    /// <summary>The functions of the language alone.</summary>
    public static FunctionRegistry Standard { get; } = new(new Dictionary<string, FunctionDefinition>(), null);

    /// <summary>The functions added to those of the language.</summary>
    public IEnumerable<FunctionDefinition> Added => _added.Values;

    /// <summary>How each function is called and what it gives, by name.</summary>
    public IReadOnlyDictionary<string, string> Documentation => BuiltIn
        .Concat(_added.Select(entry => KeyValuePair.Create(entry.Key, $"{entry.Value.Signature}: {entry.Value.Documentation}")))
        .ToDictionary(entry => entry.Key, entry => entry.Value, StringComparer.Ordinal);

    /// <summary>Called, on whatever thread evaluates, when an added function fails; null: nobody is told.</summary>
    public Action<Diagnostic>? Failed { get; }

    internal IEnumerable<string> Names => BuiltIn.Keys.Concat(_added.Keys);

    /// <summary>The same functions and one more.</summary>
    /// <exception cref="ArgumentException">The name is taken, or is no name of the language.</exception>
    public FunctionRegistry With(FunctionDefinition function)
    {
        ArgumentNullException.ThrowIfNull(function);
        if (BuiltIn.ContainsKey(function.Name) || _added.ContainsKey(function.Name))
            throw new ArgumentException($"There is a function '{function.Name}' already.", nameof(function));
        if (function.Name.Length == 0 || !char.IsAsciiLetterLower(function.Name[0]) || !function.Name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '_'))
            throw new ArgumentException($"'{function.Name}' is not in lower-case words.", nameof(function));
        return new(new Dictionary<string, FunctionDefinition>(_added, StringComparer.Ordinal) { [function.Name] = function }, Failed);
    }

    /// <summary>The same functions and more.</summary>
    /// <exception cref="ArgumentException">A name is taken, or is no name of the language.</exception>
    public FunctionRegistry WithAll(IEnumerable<FunctionDefinition> functions) =>
        functions.Aggregate(this, (registry, function) => registry.With(function));

    /// <summary>The same functions; failures of added ones are told to <paramref name="failed"/>.</summary>
    public FunctionRegistry WithFailures(Action<Diagnostic> failed) => new(_added, failed);

    internal FunctionDefinition? Find(string name) => _added.GetValueOrDefault(name);
}
