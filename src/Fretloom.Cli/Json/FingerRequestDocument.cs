using System.Text.Json;
using System.Text.Json.Serialization;

namespace Fretloom.Cli.Json;

/// <summary>One line of what <c>fretloom finger --lines</c> reads.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record FingerRequestDocument
{
    /// <summary>The instrument, as in a sentence; left out for a guitar.</summary>
    public string? On { get; init; }

    /// <summary>The fret of the capo, 0 for none; frets are counted from it.</summary>
    public int Capo { get; init; }

    /// <summary>The hand: <c>"adult"</c>, <c>"small"</c>, <c>"176 mm"</c>, or its length in millimetres as a number.</summary>
    public JsonElement? Hand { get; init; }

    /// <summary>Whether the instrument is held the other way round without being restrung.</summary>
    public bool TurnedOver { get; init; }

    /// <summary>Whether the thumb may stop strings over the edge of the neck.</summary>
    public bool Thumb { get; init; }

    /// <summary>Whether the notes are held together.</summary>
    public bool Together { get; init; }

    /// <summary>Whether the notes are a shape played one after another, with one finger a string.</summary>
    public bool Arpeggio { get; init; }

    /// <summary>The notes by string and fret.</summary>
    public IReadOnlyList<SpotDocument>? Spots { get; init; }

    /// <summary>Instead of spots: notes of a line by pitch, <c>"E4"</c>, or by spot, <c>"4:9"</c>.</summary>
    public IReadOnlyList<string>? Notes { get; init; }

    /// <summary>What the fingering of a line must keep to: <c>"start with finger 2"</c>.</summary>
    public IReadOnlyList<string>? Rules { get; init; }

    /// <summary>How many of the next best fingerings to add, 0 to 50; fewer of long lines.</summary>
    public int Alternatives { get; init; }
}

/// <summary>A spot.</summary>
/// <param name="String">The string, 1 nearest the floor.</param>
/// <param name="Fret">The fret, 0 open.</param>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record SpotDocument([property: JsonRequired] int String, [property: JsonRequired] int Fret);
