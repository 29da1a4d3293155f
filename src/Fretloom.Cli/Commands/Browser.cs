using System.ComponentModel;
using System.Diagnostics;

namespace Fretloom.Cli.Commands;

/// <summary>The browser that this user has chosen.</summary>
internal static class Browser
{
    /// <summary>Opens an address.</summary>
    /// <returns>Why it could not be opened, in a line; null when it was asked to.</returns>
    public static string? WhyNotOpened(Uri address)
    {
        var start = OperatingSystem.IsWindows()
            ? new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true }
            : new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address.AbsoluteUri])
            {
                // What it says is not this program's to say.
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
        try
        {
            using var opening = Process.Start(start);
            return null;
        }
        catch (Exception problem) when (problem is Win32Exception or InvalidOperationException)
        {
            return $"The browser could not be opened ({problem.Message}); open the address yourself.";
        }
    }
}
