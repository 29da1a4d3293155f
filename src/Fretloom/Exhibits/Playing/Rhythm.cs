using Fretloom.Exercises;
using Fretloom.Sentences;

namespace Fretloom.Exhibits.Playing;

/// <summary>How long things are.</summary>
internal static class Rhythm
{
    /// <summary>The value that is meant when none is said; null for chords that fill a bar each.</summary>
    public static NoteValue? UsualValue(Subject subject, bool isBlock) =>
        subject switch
        {
            Subject.TheOpenStrings => NoteValue.Wholes,
            Subject.TheThirds => NoteValue.Quarters,
            _ when isBlock => null,
            _ => NoteValue.Eighths,
        };

    /// <summary>The length of a value.</summary>
    public static Beats LengthOf(NoteValue value) =>
        value switch
        {
            NoteValue.Wholes => Beats.Of(1, 1),
            NoteValue.Halves => Beats.Of(1, 2),
            NoteValue.Quarters => Beats.Of(1, 4),
            NoteValue.Triplets => Beats.Of(1, 12),
            NoteValue.Sixteenths => Beats.Of(1, 16),
            _ => Beats.Of(1, 8),
        };

    /// <summary>Whether rhythm, metre and strokes go together; null when they do.</summary>
    public static PlayError? WhyNot(PlaySentence complete)
    {
        var metre = complete.Metre!.Value;
        return complete.Value is NoteValue.Triplets or NoteValue.SwingEighths && metre.IsCompound
                ? new(
                    $"in {metre} a beat falls into three eighths as it is; write 'in eighths', or take 4/4 or 3/4",
                    Played: PlayPhrase.Values
                )
            : complete is { Strum: not null, Value: not (null or NoteValue.Eighths or NoteValue.SwingEighths) }
                ? new("a strum pattern goes by eighths; leave the rhythm out", Played: PlayPhrase.Values)
            : complete.Strum is { } strum && strum.In(metre) is null ? new(TooLong(metre), Played: PlayPhrase.Strum)
            : null;
    }

    private static string TooLong(Metre metre) =>
        metre.IsCompound
            ? $"the strum pattern does not fit a bar of {metre}: it has {metre.BeatsPerBar} beats of three eighths; join the strokes of a beat, such as 'down-up-down down-up-down'"
            : $"the strum pattern does not fit a bar of {metre}, which has {metre.BeatsPerBar} beats: down falls on a beat, up between two";

    /// <summary>
    /// How long a chord that takes so much time lasts in all: a whole number of beats that divides the bar, or whole bars, so that
    /// chords of one length begin at the same places of every bar.
    /// </summary>
    public static Beats Rounded(Beats length, Metre metre)
    {
        for (var beats = 1; beats <= metre.BeatsPerBar; beats++)
        {
            if (metre.BeatsPerBar % beats == 0 && metre.Beat * beats >= length)
            {
                return metre.Beat * beats;
            }
        }

        return metre.Bar * ((length + metre.Bar - Beats.FromTicks(1)) / metre.Bar);
    }
}
