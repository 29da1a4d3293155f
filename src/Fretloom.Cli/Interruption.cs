using System.Runtime.InteropServices;

namespace Fretloom.Cli;

/// <summary>Turns Ctrl-C, or a request to end, into a token, so that work can be put away. Asked again, the program ends at once.</summary>
/// <remarks>
/// Once it listens it does so until the process ends: a signal that comes while one stops listening is lost or finds nobody to tell,
/// so that a program which stops and starts to listen may miss the only request it gets.
/// </remarks>
internal static class Interruption
{
    private static readonly CancellationTokenSource Source = new();

    private static readonly Lazy<List<PosixSignalRegistration>> Signals = new(() =>
        [
            .. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }.Select(signal =>
                PosixSignalRegistration.Create(signal, Stop)
            ),
        ]
    );

    /// <summary>Listens from now on.</summary>
    /// <returns>Is cancelled at the first request.</returns>
    public static CancellationToken Listen()
    {
        _ = Signals.Value;
        return Source.Token;
    }

    private static void Stop(PosixSignalContext signal)
    {
        signal.Cancel = !Source.IsCancellationRequested;
        Source.Cancel();
    }
}
