using ProcedureRules.Diagnostics;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>The example of each code brings that code about.</summary>
public class CodeExampleTests
{
    /// <summary>What no input should bring about; the validator's own tests do it by breaking plans.</summary>
    private static readonly string[] FaultsOfTheLibrary = ["PR0704"];

    public static TheoryData<string> Codes => new(DiagnosticCodes.All.Select(code => code.Code).Except(FaultsOfTheLibrary));

    [Theory]
    [MemberData(nameof(Codes))]
    public void Example_OfACode_BringsItAboutAndNothingElse(string code)
    {
        var found = CodeExamples.Run(DiagnosticCodes.Find(code)!);

        Assert.True(found.Count > 0, "nothing is wrong with the example");
        Assert.All(found.Ordered(), diagnostic => Assert.True(diagnostic.Code == code, found.ToSnippets()));
    }
}
