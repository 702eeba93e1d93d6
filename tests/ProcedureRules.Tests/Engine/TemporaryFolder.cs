namespace ProcedureRules.Tests.Engine;

/// <summary>A folder of its own for the files of one test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("procedure-rules-");

    /// <summary>Its path.</summary>
    public string Root => _folder.FullName;

    /// <summary>Writes a file, with the folders on the way to it, and gives its path.</summary>
    public string Write(string name, string text)
    {
        var path = Path.Combine(Root, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
