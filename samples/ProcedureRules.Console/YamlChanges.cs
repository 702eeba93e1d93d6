using System.Threading.Channels;

namespace ProcedureRules.ConsoleHost;

/// <summary>Changes of the YAML files below a folder, as the system tells of them; an editor that writes a file in several goes counts once.</summary>
internal sealed class YamlChanges : IFolderChanges
{
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(200);

    // What comes while nobody waits is kept as one change.
    private readonly Channel<bool> _told = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
    private readonly FileSystemWatcher _watcher;

    public YamlChanges(string folder)
    {
        _watcher = new FileSystemWatcher(folder) { IncludeSubdirectories = true, Filters = { "*.yaml", "*.yml" } };
        _watcher.Changed += Tell;
        _watcher.Created += Tell;
        _watcher.Deleted += Tell;
        _watcher.Renamed += Tell;
        // Too many at once to be told one by one.
        _watcher.Error += (_, _) => _told.Writer.TryWrite(true);
        _watcher.EnableRaisingEvents = true;
    }

    /// <inheritdoc/>
    public async Task Next(CancellationToken cancellation)
    {
        await _told.Reader.ReadAsync(cancellation);
        while (await IsToldWithin(Quiet, cancellation)) _told.Reader.TryRead(out _);
    }

    /// <inheritdoc/>
    public void Dispose() => _watcher.Dispose();

    private async Task<bool> IsToldWithin(TimeSpan time, CancellationToken cancellation)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        either.CancelAfter(time);
        try
        {
            return await _told.Reader.WaitToReadAsync(either.Token);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return false;
        }
    }

    private void Tell(object sender, FileSystemEventArgs change) => _told.Writer.TryWrite(true);
}
