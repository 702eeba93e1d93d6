namespace ProcedureRules.Testing.Xunit;

/// <summary>A case is not as expected, or packs or scenarios could not be read. Its message is the report.</summary>
public sealed class ScenarioFailedException : Exception, IAssertionException
{
    private const int Width = 120;

    internal ScenarioFailedException(CaseResult result)
        : base(string.Join('\n', TestText.Lines([result], Width).Select(line => line.Text)))
    {
    }

    internal ScenarioFailedException(string message)
        : base(message)
    {
    }
}
