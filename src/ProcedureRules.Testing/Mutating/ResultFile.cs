using System.Security.Cryptography;
using System.Text;
using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// What was found out in earlier runs: a line with a mark of the packs, the scenarios and the library, then a line for each mutant. A file
/// with another mark is begun anew; a last line that was cut off is left out.
/// </summary>
internal sealed class ResultFile : IDisposable
{
    private readonly Lock _lock = new();
    private readonly Dictionary<string, (MutantOutcome Outcome, string? By)> _known = new(StringComparer.Ordinal);
    private readonly StreamWriter _writer;

    /// <summary>Opens a file, or begins it.</summary>
    public ResultFile(string path, string mark)
    {
        var lines = File.Exists(path) ? File.ReadAllText(path).Split('\n') : [];
        var isMine = lines is [var first, ..] && first == mark;
        if (isMine) foreach (var line in lines[1..^1]) Read(line);
        var kept = string.Concat((isMine ? lines[..^1] : [mark]).Select(line => line + "\n"));
        File.WriteAllText(path, kept);
        _writer = new StreamWriter(path, append: true) { AutoFlush = true, NewLine = "\n" };
    }

    /// <summary>What came of a mutant before; null where it was not run.</summary>
    public (MutantOutcome Outcome, string? By)? Find(string id) => _known.TryGetValue(Clean(id), out var known) ? known : null;

    /// <summary>Notes what came of a mutant; may be called from several threads.</summary>
    public void Add(MutantResult result)
    {
        lock (_lock) _writer.WriteLine($"{Clean(result.Id)}\t{result.Outcome}\t{Clean(result.By ?? "")}");
    }

    /// <inheritdoc/>
    public void Dispose() => _writer.Dispose();

    /// <summary>A mark of everything that a result hangs on.</summary>
    public static string MarkOf(ProcedureEngine engine, IReadOnlyList<ScenarioCase> cases)
    {
        var files = engine.Rules.Rules.Select(rule => rule.Span.File).Concat(engine.Vocabulary.Facts.Select(fact => fact.Span.File))
            .Concat(cases.Select(one => one.Span.File)).Concat(cases.SelectMany(one => one.Approved.Values).Select(approved => approved.Span.File)).OfType<SourceFile>().DistinctBy(file => file.Path).OrderBy(file => file.Path, StringComparer.Ordinal);
        var text = new StringBuilder($"{typeof(ProcedureEngine).Assembly.ManifestModule.ModuleVersionId} {typeof(ResultFile).Assembly.ManifestModule.ModuleVersionId}\n");
        foreach (var file in files) text.Append(file.Path).Append('\n').Append(file.Text);
        foreach (var one in cases) text.Append(one.Name).Append('\n').Append(SheetWriter.WriteVehicle(one.Situation, UnitSystem.Si));
        return Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private void Read(string line)
    {
        if (line.Split('\t') is [var id, var outcome, var by] && Enum.TryParse<MutantOutcome>(outcome, out var known)) _known[id] = (known, by.Length == 0 ? null : by);
    }

    private static string Clean(string text) => text.Replace('\t', ' ').ReplaceLineEndings(" ");
}
