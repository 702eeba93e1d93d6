using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>Finds the files of scenarios.</summary>
internal static class ScenarioFiles
{
    /// <summary>The YAML files below a folder by path; none where there is no such folder.</summary>
    public static IEnumerable<SourceFile> Under(string folder, DiagnosticBag bag)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 16, IgnoreInaccessible = true };
        List<string> paths = [];
        try
        {
            if (Directory.Exists(folder)) paths = [.. Directory.EnumerateFiles(folder, "*", options).Where(IsYaml).Select(path => path.Replace('\\', '/')).Order(StringComparer.Ordinal)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or System.Security.SecurityException)
        {
            bag.Add(Messages.FileUnreadable(new SourceFile(folder, "").Span(0, 0), failure.Message));
        }

        return [.. paths.Select(path => SourceFiles.TryLoad(path, bag)).OfType<SourceFile>()];
    }

    private static bool IsYaml(string path) =>
        Path.GetExtension(path) is var extension && (extension.Equals(".yaml", StringComparison.OrdinalIgnoreCase) || extension.Equals(".yml", StringComparison.OrdinalIgnoreCase));
}
