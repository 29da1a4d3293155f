using System.ComponentModel;
using System.Diagnostics;

namespace Fretloom.Cli.Commands;

/// <summary>The browser that this user has chosen.</summary>
internal static class Browser
{
    // What the system has to open a browser says within this whether it has one.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    // What a browser says is not this program's to say, and Ctrl-C is not meant for it.
    private const string Quietly = "trap '' INT HUP; exec \"$0\" \"$1\" >/dev/null 2>&1 </dev/null";

    /// <summary>Opens an address.</summary>
    /// <returns>Why it could not be opened, in a line; null when it was asked to.</returns>
    public static string? WhyNotOpened(Uri address)
    {
        var start = OperatingSystem.IsWindows()
            ? new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true }
            : new ProcessStartInfo(
                "/bin/sh",
                ["-c", Quietly, OperatingSystem.IsMacOS() ? "open" : "xdg-open", address.AbsoluteUri]
            );
        try
        {
            using var opening = Process.Start(start);
            return opening?.WaitForExit(Patience) is true && opening.ExitCode != 0
                ? "The browser could not be opened; open the address yourself."
                : null;
        }
        catch (Exception problem) when (problem is Win32Exception or InvalidOperationException)
        {
            return $"The browser could not be opened ({problem.Message}); open the address yourself.";
        }
    }
}
