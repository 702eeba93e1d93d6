using Xunit;

namespace ProcedureRules.Tests.Docs;

/// <summary>Runs something in another working folder; tests that do so run alone.</summary>
[CollectionDefinition(nameof(WorkingFolder), DisableParallelization = true)]
public sealed class WorkingFolder
{
    internal static T In<T>(string folder, Func<T> run)
    {
        var before = Environment.CurrentDirectory;
        Environment.CurrentDirectory = folder;
        try
        {
            return run();
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }
    }
}
