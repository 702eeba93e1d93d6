using System.Runtime.CompilerServices;

namespace ProcedureRules.Tests.Repository;

/// <summary>Folders of the repository, found from where this file was compiled.</summary>
internal static class RepositoryFolder
{
    private static readonly string Root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", ".."));

    /// <summary>The full path of a folder or file, given from the root of the repository.</summary>
    public static string Of(params string[] names) => Path.Combine([Root, .. names]);

    private static string Here([CallerFilePath] string path = "") => path;
}
