namespace Fretloom.Scores.Midi;

/// <summary>What a MIDI file holds beside the notes.</summary>
public sealed record MidiOptions
{
    /// <summary>Whether each string has a channel of its own, so that bends and levels can be set by string.</summary>
    public bool HasChannelPerString { get; init; }

    /// <summary>Whether a track clicks through all passes; the count-in has a track of its own in any case.</summary>
    public bool HasClick { get; init; }
}
