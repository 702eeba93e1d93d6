namespace ProcedureRules.Tests.Engine;

/// <summary>A folder of its own for the files of one test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("procedure-rules-");

    /// <summary>Writes a file and gives its path.</summary>
    public string Write(string name, string text)
    {
        var path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
