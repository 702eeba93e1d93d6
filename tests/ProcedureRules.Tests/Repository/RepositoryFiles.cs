namespace ProcedureRules.Tests.Repository;

/// <summary>Finds the files of this repository from wherever the tests run.</summary>
internal static class RepositoryFiles
{
    public static string Root { get; } = FindRoot();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    public static IEnumerable<string> Under(string folder, string pattern) => Directory
        .EnumerateFiles(PathOf(folder.Split('/')), pattern, SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"))
        .Order(StringComparer.Ordinal);

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "ProcedureRules.sln"))) return folder.FullName;
        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
