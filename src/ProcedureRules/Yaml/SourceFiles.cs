using System.Buffers;
using System.Text.Unicode;
using ProcedureRules.Diagnostics;

namespace ProcedureRules.Yaml;

/// <summary>Reads UTF-8 files; whatever goes wrong becomes a diagnostic.</summary>
internal static class SourceFiles
{
    // A character of UTF-8 takes at most four bytes.
    private const long MostBytes = 4L * YamlLimits.Characters;

    /// <summary>Reads a file, or says why it cannot be read.</summary>
    /// <param name="path">Where the file is.</param>
    /// <param name="bag">Takes what goes wrong.</param>
    /// <param name="shownAs">The path that messages show, if not <paramref name="path"/>.</param>
    /// <returns>The file, or null after a complaint.</returns>
    public static SourceFile? TryLoad(string path, DiagnosticBag bag, string? shownAs = null)
    {
        var shown = shownAs ?? path;
        var nowhere = new SourceFile(shown, "").Span(0, 0);
        try
        {
            if (!File.Exists(path) && !Directory.Exists(path))
            {
                bag.Add(Messages.FileMissing(nowhere));
                return null;
            }

            if (Directory.Exists(path))
            {
                bag.Add(Messages.FolderForFile(nowhere));
                return null;
            }

            // Read no more than the limit, even of a device that never ends.
            using var stream = File.OpenRead(path);
            var bytes = new MemoryStream();
            if (!CopyUpTo(stream, bytes, MostBytes))
            {
                bag.Add(Messages.TooLong(nowhere, YamlLimits.Characters));
                return null;
            }

            return Decode(shown, bytes.GetBuffer().AsSpan(0, (int)bytes.Length), bag);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException
            or NotSupportedException or System.Security.SecurityException)
        {
            bag.Add(Messages.FileUnreadable(nowhere, failure.Message));
            return null;
        }
    }

    private static bool CopyUpTo(Stream from, Stream to, long most)
    {
        var buffer = new byte[81920];
        for (int read; (read = from.Read(buffer)) > 0; to.Write(buffer, 0, read))
        {
            if (to.Length + read > most)
                return false;
        }

        return true;
    }

    private static SourceFile? Decode(string shown, ReadOnlySpan<byte> bytes, DiagnosticBag bag)
    {
        var characters = new char[bytes.Length];
        var status = Utf8.ToUtf16(bytes, characters, out _, out var count, replaceInvalidSequences: false);
        var file = new SourceFile(shown, new string(characters, 0, count));
        if (status == OperationStatus.Done)
            return file;

        // What could be read gives the line and column of the first byte that could not.
        bag.Add(Messages.NotUtf8(file.Span(file.Text.Length, 0)));
        return null;
    }
}
