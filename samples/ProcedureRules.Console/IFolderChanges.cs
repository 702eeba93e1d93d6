namespace ProcedureRules.ConsoleHost;

/// <summary>Tells when files of a folder change.</summary>
internal interface IFolderChanges : IDisposable
{
    /// <summary>Waits until something has changed since the last call and a moment of quiet has passed.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    Task Next(CancellationToken cancellation);
}
