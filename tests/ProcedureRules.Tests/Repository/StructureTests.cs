using System.Text.RegularExpressions;
using Xunit;

namespace ProcedureRules.Tests.Repository;

/// <summary>The house: data flows one way, a folder is a namespace, one public type a file.</summary>
public partial class StructureTests
{
    /// <summary>Each folder may use those before it, never those behind it.</summary>
    private static readonly string[] Flow =
    [
        "Logic", "Spelling", "Quantities", "Diagnostics", "Yaml", "Shapes", "Packs", "Facts", "Language", "Mechanics", "Refrigerants", "Inference", "Beliefs", "Plans", "Choosing", "Ordering", "Asking", "Validating", "Planning", "Scheduling", "Explaining",
    ];

    [Fact]
    public void Library_EveryFolder_UsesOnlyFoldersBeforeIt()
    {
        var offenders = new List<string>();
        foreach (var path in RepositoryFiles.Under("src/ProcedureRules", "*.cs"))
        {
            var folder = FolderOf(path, "src/ProcedureRules");
            if (folder.Length == 0) continue;
            var rank = Array.IndexOf(Flow, folder);
            if (rank < 0)
            {
                offenders.Add($"{path}: folder {folder} has no place in the flow");
                continue;
            }
            foreach (Match match in Used().Matches(File.ReadAllText(path)))
            {
                var used = Array.IndexOf(Flow, match.Groups[1].Value);
                if (used > rank) offenders.Add($"{Path.GetFileName(path)} in {folder} uses {match.Groups[1].Value}");
            }
        }

        Assert.Empty(offenders.Distinct());
    }

    [Fact]
    public void Sources_EveryFile_HasTheNamespaceOfItsFolder()
    {
        var offenders = new List<string>();
        foreach (var project in new[] { "src/ProcedureRules", "src/ProcedureRules.Reports", "src/ProcedureRules.Testing", "src/ProcedureRules.Testing.Xunit", "src/ProcedureRules.Testing.FsCheck" })
            foreach (var path in RepositoryFiles.Under(project, "*.cs"))
            {
                var folder = Path.GetRelativePath(RepositoryFiles.PathOf(project.Split('/')), Path.GetDirectoryName(path)!);
                var expected = Path.GetFileName(project) + (folder == "." ? "" : "." + folder.Replace(Path.DirectorySeparatorChar, '.'));
                var match = Namespace().Match(File.ReadAllText(path));
                if (match.Success && match.Groups[1].Value != expected) offenders.Add($"{path}: {match.Groups[1].Value}, not {expected}");
            }

        Assert.Empty(offenders);
    }

    [Fact]
    public void Sources_EveryFile_HasAtMostOnePublicTypeNamedAfterIt()
    {
        var offenders = new List<string>();
        foreach (var path in RepositoryFiles.Under("src", "*.cs"))
        {
            var types = PublicType().Matches(File.ReadAllText(path)).Select(match => match.Groups[1].Value).Distinct().ToList();
            var name = Path.GetFileName(path).Split('.')[0];
            if (types.Count > 1) offenders.Add($"{path}: {string.Join(", ", types)}");
            else if (types.Count == 1 && types[0] != name) offenders.Add($"{path}: {types[0]}");
        }

        Assert.Empty(offenders);
    }

    private static string FolderOf(string path, string project)
    {
        var relative = Path.GetRelativePath(RepositoryFiles.PathOf(project.Split('/')), path).Split(Path.DirectorySeparatorChar);
        return relative.Length > 1 ? relative[0] : "";
    }

    [GeneratedRegex(@"ProcedureRules\.([A-Z]\w+)")]
    private static partial Regex Used();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();

    [GeneratedRegex(@"^public (?:static |sealed |abstract |readonly |partial |ref )*(?:class|record struct|record|struct|interface|enum|delegate \w+) (\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();
}
