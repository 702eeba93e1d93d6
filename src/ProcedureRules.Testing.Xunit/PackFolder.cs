using System.Collections.Concurrent;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Xunit;

/// <summary>A folder of packs with its scenarios, read once in a process.</summary>
internal sealed class PackFolder
{
    private static readonly ConcurrentDictionary<string, Lazy<PackFolder>> Read = new(StringComparer.Ordinal);
    private readonly string _mistakes;

    private PackFolder(string folder)
    {
        var path = Find(folder);
        var loaded = path is null ? null : ProcedureEngine.Load(path);
        var scenarios = loaded?.Engine is { } engine ? ScenarioSet.Beside(engine, path!) : new ScenarioSet([], []);
        Cases = scenarios.Cases.GroupBy(one => one.Name).ToDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
        var errors = (loaded?.Diagnostics ?? []).Concat(scenarios.Diagnostics).Where(mistake => mistake.Severity == Severity.Error).Select(mistake => mistake.ToSnippet())
            .Concat(Twins(scenarios.Cases)).ToList();
        _mistakes = path is null ? $"There is no folder '{folder}' beside the test assembly or above it."
            : errors.Count == 0 && Cases.Count == 0 ? $"There are no scenarios beside the packs in {path}."
            : string.Join('\n', errors);
    }

    /// <summary>The cases by name.</summary>
    public IReadOnlyDictionary<string, ScenarioCase> Cases { get; }

    /// <summary>The folder of that name.</summary>
    public static PackFolder At(string folder) => Read.GetOrAdd(folder, name => new Lazy<PackFolder>(() => new PackFolder(name))).Value;

    /// <summary>Throws where packs or scenarios could not be read.</summary>
    public void Verify()
    {
        if (_mistakes.Length > 0) throw new ScenarioFailedException(_mistakes);
    }

    // Tests are told apart by their names.
    private static IEnumerable<string> Twins(IEnumerable<ScenarioCase> cases) => cases.GroupBy(one => one.Name).Where(same => same.Skip(1).Any())
        .Select(same => $"The name '{same.Key}' stands twice: at {string.Join(", ", same.Select(one => one.Span))}.");

    private static string? Find(string folder)
    {
        if (Path.IsPathRooted(folder)) return Directory.Exists(folder) ? folder : null;
        for (var above = new DirectoryInfo(AppContext.BaseDirectory); above is not null; above = above.Parent)
            if (Path.Combine(above.FullName, folder) is var path && Directory.Exists(path)) return path;
        return null;
    }
}
