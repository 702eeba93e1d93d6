using ProcedureRules.Diagnostics;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Packs;

/// <summary>Every complaint about packs and sheets is shown word for word by some test.</summary>
public sealed class CodesInTestsTests
{
    private static readonly string Expected = string.Concat(
        Directory.EnumerateFiles(RepositoryFiles.PathOf("tests", "ProcedureRules.Tests"), "*MistakesTests.cs", SearchOption.AllDirectories).Select(File.ReadAllText));

    public static TheoryData<string> Codes =>
        [.. DiagnosticCodes.All.Select(code => code.Code).Where(code => code.StartsWith("PR02", StringComparison.Ordinal) || code.StartsWith("PR05", StringComparison.Ordinal) || code.StartsWith("PR09", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_OfPacksAndSheets_IsShownByATest(string code)
    {
        Assert.Matches($": (error|warning) {code}: ", Expected);
    }
}
