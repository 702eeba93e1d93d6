using ProcedureRules.ConsoleHost;

namespace ProcedureRules.Tests.ConsoleHost;

/// <summary>Changes that a test makes one after the other; after the last one the watch is ended as by Ctrl-C.</summary>
internal sealed class GivenChanges(IEnumerable<Action> changes) : IFolderChanges
{
    private readonly Queue<Action> _left = new(changes);

    public Task Next(CancellationToken cancellation)
    {
        if (!_left.TryDequeue(out var change)) throw new OperationCanceledException();
        change();
        return Task.CompletedTask;
    }

    public void Dispose()
    {
    }
}
