using ProcedureRules.Tests.ConsoleHost;
using ProcedureRules.Tests.Repository;
using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>
/// The plan of the demo, word by word: what a change of a rule or a report does to it is seen beside the change. With the environment variable
/// UPDATE_DOCS=1 the test writes it anew instead.
/// </summary>
public class DemoPlanTests
{
    [Fact]
    public void Plan_OfTheDemo_ReadsAsApproved()
    {
        var path = RepositoryFiles.PathOf("tests", "ProcedureRules.Tests", "Docs", "demo-plan.txt");
        var (exit, output, error) = RunHost.With();
        Assert.Equal((0, ""), (exit, error));
        if (MarkdownPage.IsUpdate) File.WriteAllText(path, output);
        else Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n").Split('\n'), output.Split('\n'));
    }
}
