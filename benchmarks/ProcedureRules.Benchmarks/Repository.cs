namespace ProcedureRules.Benchmarks;

/// <summary>Finds files of the repository from wherever the benchmarks run.</summary>
internal static class Repository
{
    public static string Path(string relative)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "ProcedureRules.sln")))
                return System.IO.Path.Combine(folder.FullName, relative);
        throw new InvalidOperationException("The benchmarks run from a build inside the repository.");
    }
}
