using ProcedureRules.Diagnostics;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The example of each code brings that code about.</summary>
public class CodeExampleTests
{
    public static TheoryData<string> Codes => new(DiagnosticCodes.All.Select(code => code.Code));

    [Theory]
    [MemberData(nameof(Codes))]
    public void Example_OfACode_BringsItAboutAndNothingElse(string code)
    {
        var found = CodeExamples.Run(DiagnosticCodes.Find(code)!);

        Assert.True(found.Count > 0, "nothing is wrong with the example");
        Assert.All(found.Ordered(), diagnostic => Assert.True(diagnostic.Code == code, found.ToSnippets()));
    }
}
