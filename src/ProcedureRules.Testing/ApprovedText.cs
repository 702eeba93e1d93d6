namespace ProcedureRules.Testing;

/// <summary>A file of approved plans that is otherwise now.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Text">What it says; null where it is obsolete.</param>
public sealed record ApprovedText(string Path, string? Text)
{
    /// <summary>Writes the file, or deletes it.</summary>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public void Write()
    {
        if (Text is null)
        {
            File.Delete(Path);
            return;
        }

        if (System.IO.Path.GetDirectoryName(Path) is { Length: > 0 } folder) Directory.CreateDirectory(folder);
        File.WriteAllText(Path, Text);
    }
}
