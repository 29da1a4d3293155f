using System.Runtime.InteropServices;

namespace Fretloom.Cli;

/// <summary>Turns Ctrl-C, or a request to end, into a token, so that work can be put away. Asked again, the program ends at once.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly List<PosixSignalRegistration> _signals;

    /// <summary>Listens from now on.</summary>
    public Interruption() =>
        _signals = [
            .. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }.Select(signal =>
                PosixSignalRegistration.Create(signal, Stop)
            ),
        ];

    /// <summary>Is cancelled at the first request.</summary>
    public CancellationToken Token => _source.Token;

    /// <inheritdoc/>
    public void Dispose()
    {
        _signals.ForEach(signal => signal.Dispose());
        _source.Dispose();
    }

    private void Stop(PosixSignalContext signal)
    {
        signal.Cancel = !_source.IsCancellationRequested;
        _source.Cancel();
    }
}
