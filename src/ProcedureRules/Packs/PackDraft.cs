using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>What has been read so far of all packs.</summary>
internal sealed class PackDraft(DiagnosticBag bag)
{
    public DiagnosticBag Bag { get; } = bag;

    /// <summary>Whether every file could be read: where not, what is missing may stand there.</summary>
    public bool IsComplete { get; set; } = true;

    public NameTable<Kind> Kinds { get; } = new("kind");

    public NameTable<Aspect> Aspects { get; } = new("aspect");

    public NameTable<FactDefinition> Facts { get; } = new("fact");

    public NameTable<Relation> Relations { get; } = new("relation");

    public NameTable<Operation> Operations { get; } = new("operation");

    public NameTable<Cause> Causes { get; } = new("cause");

    public NameTable<JobDefinition> Jobs { get; } = new("job");

    public NameTable<string> Places { get; } = new("place");

    public NameTable<string> Energies { get; } = new("energy");

    public List<RuleDeclaration> Rules { get; } = [];

    public List<RuleDeclaration> Laws { get; } = [];

    public List<TableDeclaration> Tables { get; } = [];

    /// <summary>The vocabulary of what could be read.</summary>
    public Vocabulary ToVocabulary() => new(
        Kinds.Items, Aspects.Items, Facts.Items, Relations.Items, Operations.Items, Causes.Items, Jobs.Items, Places.Items, Energies.Items);

    /// <summary>Names and paths that are written and could not be read.</summary>
    public IReadOnlySet<string> Broken() => new HashSet<string>(
        [
            .. BrokenIn(Kinds), .. BrokenIn(Aspects), .. BrokenIn(Facts), .. BrokenIn(Relations),
            .. BrokenIn(Operations), .. BrokenIn(Causes), .. BrokenIn(Jobs),
        ],
        StringComparer.Ordinal);

    private static IEnumerable<string> BrokenIn<T>(NameTable<T> table)
        where T : class =>
        table.Definitions.Where(known => known.Value.Item is null).Select(known => known.Key);
}
