using System.Net;

namespace Fretloom.Studio;

/// <summary>How the studio is opened.</summary>
/// <param name="Lessons">The folder of the lessons; it is there.</param>
/// <param name="Pages">The folder of the studio's own pages; it is there.</param>
public sealed record StudioOptions(string Lessons, string Pages)
{
    /// <summary>The port, 0 to 65535; 0 takes one that is free.</summary>
    public int Port { get; init; }

    /// <summary>The address to listen on: this computer alone unless said otherwise.</summary>
    public IPAddress Address { get; init; } = IPAddress.Loopback;

    /// <summary>What others have to know to come in; null for nothing, which only a loopback address may have.</summary>
    public string? PassPhrase { get; init; }

    /// <summary>The folder with the program's assets, such as the engraver, beside the program.</summary>
    public string Assets { get; init; } = Path.Combine(AppContext.BaseDirectory, "assets");

    /// <summary>Tells the time.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
