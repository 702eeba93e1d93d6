using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Reads the packs below a folder, and the archetype sheets beside them.</summary>
internal static class RuleFolder
{
    private const string Archetypes = "archetypes";
    private static readonly string[] NotPacks = [Archetypes, "scenarios", "schema"];

    /// <summary>Reads a folder on disk.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="bag">Takes what is wrong.</param>
    public static PackSet Read(string folder, DiagnosticBag bag)
    {
        var files = new List<SourceFile>();
        try
        {
            var options = new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 16, IgnoreInaccessible = true };
            var paths = Directory.EnumerateFiles(folder, "*", options).Where(IsYaml).Select(path => path.Replace('\\', '/'));
            foreach (var path in paths.Order(StringComparer.Ordinal))
            {
                if (SourceFiles.TryLoad(path, bag) is { } file)
                    files.Add(file);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or System.Security.SecurityException)
        {
            var place = new SourceFile(folder, "").Span(0, 0);
            bag.Add(File.Exists(folder) ? Messages.FolderDue(place, FolderOf(folder))
                : failure is DirectoryNotFoundException or ArgumentException ? Messages.FolderMissing(place)
                : Messages.FileUnreadable(place, failure.Message));
        }

        return Read(files, bag, folder.Replace('\\', '/'));
    }

    /// <summary>Reads files that a program holds.</summary>
    /// <param name="files">All files; the folders in their paths say what each of them is.</param>
    /// <param name="bag">Takes what is wrong.</param>
    /// <param name="folder">The part of the paths that is above the rules.</param>
    public static PackSet Read(IEnumerable<SourceFile> files, DiagnosticBag bag, string folder = "")
    {
        var packs = new List<SourceFile>();
        var archetypes = new Dictionary<string, SourceFile>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            var below = file.Path.StartsWith(folder, StringComparison.Ordinal) ? file.Path[folder.Length..] : file.Path;
            var folders = below.Split('/', StringSplitOptions.RemoveEmptyEntries);
            if (!folders.SkipLast(1).Any(NotPacks.Contains))
                packs.Add(file);
            else if (folders.SkipLast(1).Contains(Archetypes))
                archetypes[Path.GetFileNameWithoutExtension(file.Path)] = file;
        }

        return PackReader.Read(packs, bag, archetypes);
    }

    // A scenario or a sheet belongs to the packs above its folder.
    private static string FolderOf(string file)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(file)) ?? "";
        for (var above = folder; above is not null; above = Path.GetDirectoryName(above))
            if (NotPacks.Contains(Path.GetFileName(above))) folder = Path.GetDirectoryName(above) ?? folder;
        return Path.GetRelativePath(Environment.CurrentDirectory, folder).Replace('\\', '/');
    }

    private static bool IsYaml(string path) =>
        Path.GetExtension(path) is var extension && (extension.Equals(".yaml", StringComparison.OrdinalIgnoreCase) || extension.Equals(".yml", StringComparison.OrdinalIgnoreCase));
}
