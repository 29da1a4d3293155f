using System.Text.Json.Serialization;

namespace Fretloom.Studio.Client.HandOver;

/// <summary>What is asked of the host for a lesson.</summary>
/// <param name="Name">The lesson's file name.</param>
/// <param name="Text">What it says, saved or not.</param>
/// <param name="Formats">Kinds of file, such as <c>pdf</c>.</param>
/// <param name="Keys"><c>all</c> for every key; null for one.</param>
/// <param name="Key">That one, such as <c>Bb major</c>; null for the lesson's own.</param>
/// <param name="Paper"><c>a4</c> or <c>letter</c>.</param>
/// <param name="LargePrint">Whether type is large.</param>
public sealed record HandoutRequest(
    string Name,
    string Text,
    IReadOnlyList<string> Formats,
    string? Keys,
    string? Key,
    string Paper,
    bool LargePrint
);

/// <summary>How far the host has come.</summary>
/// <param name="State"><c>working</c>, <c>done</c>, <c>stopped</c> or <c>failed</c>.</param>
/// <param name="Done">Files made.</param>
/// <param name="Of">Files in all.</param>
/// <param name="What">The last file made.</param>
/// <param name="File">Where the file is to be had when it is done.</param>
/// <param name="Diagnostics">What the author should know.</param>
public sealed record HandoutState(
    string State,
    int Done,
    int Of,
    string? What,
    string? File,
    IReadOnlyList<HandoutFinding>? Diagnostics
);

/// <summary>Something the author should know.</summary>
public sealed record HandoutFinding(int Line, int Column, string Severity, string Message);

internal sealed record HandoutBegun(string Id);

internal sealed record PrintRequest(string Sentence, string Paper);

internal sealed record HostError(HostErrorBody Error);

internal sealed record HostErrorBody(string Message);

/// <summary>Reads and writes what goes between the studio and its host.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(HandoutRequest))]
[JsonSerializable(typeof(HandoutState))]
[JsonSerializable(typeof(HandoutBegun))]
[JsonSerializable(typeof(PrintRequest))]
[JsonSerializable(typeof(HostError))]
internal sealed partial class HostJson : JsonSerializerContext;
