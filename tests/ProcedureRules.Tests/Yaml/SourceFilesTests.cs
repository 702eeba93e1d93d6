using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;
using Xunit;

namespace ProcedureRules.Tests.Yaml;

public sealed class SourceFilesTests : IDisposable
{
    private readonly string _path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
    private readonly DiagnosticBag _bag = new();

    public void Dispose() => File.Delete(_path);

    [Fact]
    public void TryLoad_Utf8WithMark_GivesTheText()
    {
        File.WriteAllBytes(_path, [0xEF, 0xBB, 0xBF, .. "größe: 1\r\n"u8]);

        var file = SourceFiles.TryLoad(_path, _bag, "rules/a.yaml");

        Assert.Equal("", _bag.ToLines());
        Assert.Equal(("rules/a.yaml", "größe: 1\r\n"), (file?.Path, file?.Text));
    }

    [Fact]
    public void TryLoad_NotUtf8_SaysFromWhere()
    {
        File.WriteAllBytes(_path, [.. "a: b\nlimit: 90 "u8, 0xB0, .. "C\n"u8]);

        Assert.Null(SourceFiles.TryLoad(_path, _bag, "a.yaml"));
        Assert.Equal(
            """
            a.yaml:2:11: error PR0002: the file is not UTF-8 text from here on; save it as UTF-8
            2 | limit: 90 
              |           ^

            """.ReplaceLineEndings("\n").Replace("90 \n", "90\n", StringComparison.Ordinal),
            _bag.ToSnippets());
    }

    [Fact]
    public void TryLoad_MissingFolderOrEmptyPath_IsADiagnostic()
    {
        Assert.Null(SourceFiles.TryLoad("no/such/file.yaml", _bag));
        Assert.Null(SourceFiles.TryLoad(Path.GetTempPath(), _bag, "folder"));
        Assert.Null(SourceFiles.TryLoad("a\0b", _bag, "odd"));
        Assert.Null(SourceFiles.TryLoad("", _bag, "empty"));

        Assert.Equal(4, _bag.Count);
        Assert.All(_bag.Ordered(), diagnostic => Assert.Equal("PR0001", diagnostic.Code));
        Assert.Contains("no/such/file.yaml:1:1: error PR0001: there is no such file\n", _bag.ToLines(), StringComparison.Ordinal);
    }

    [Fact]
    public void TryLoad_OfAFolder_SaysThatAFileIsDue()
    {
        Assert.Null(SourceFiles.TryLoad(Path.GetTempPath(), _bag, "jobs"));
        Assert.Equal("jobs:1:1: error PR0001: a file is due here, and this is a folder\n", _bag.ToLines());
    }

    [Fact]
    public void TryLoad_TooBig_IsRefused()
    {
        using (var stream = File.Create(_path))
            stream.SetLength((4L * YamlLimits.Characters) + 1);

        Assert.Null(SourceFiles.TryLoad(_path, _bag, "big.yaml"));
        Assert.Equal("big.yaml:1:1: error PR0003: the file is too long: at most 4194304 characters\n", _bag.ToLines());
    }
}
