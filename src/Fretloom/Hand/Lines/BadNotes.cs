using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Hand.Lines;

/// <summary>What is wrong with a line or its rules before any finger is thought of; null when nothing is.</summary>
internal static class BadNotes
{
    /// <summary>The most touches of all notes together that are weighed: some 160 MB.</summary>
    public const long MostTouches = 40_000_000;

    public static FingeringRefusal? In(Player player, ValueList<LineNote> notes, ValueList<LineRule> rules)
    {
        if (notes.Count == 0)
        {
            return new("A line needs at least one note.");
        }

        var touches =
            (long)notes.Count * player.Instrument.Strings.Count * (player.Instrument.LastFret + MoveTable.Lane);
        if (touches > MostTouches)
        {
            var most = MostTouches * notes.Count / touches;
            return new(
                $"A line of {notes.Count} notes is too long: at most {most} at a time on {player.Instrument.NameWithArticle}."
            );
        }

        var known = new HashSet<LineNote>();
        for (var at = 0; at < notes.Count; at++)
        {
            if (known.Add(notes[at]) && !Layers.SpotsOf(player.Instrument, notes[at]).Any())
            {
                return new(Missing(player.Instrument, at, notes[at]), at);
            }
        }

        for (var at = 0; at < rules.Count; at++)
        {
            if (RuleSet.NoteOf(rules[at], notes.Count) is { } note && note >= notes.Count)
            {
                return new(
                    $"'{rules[at]}': the line has {notes.Count} {(notes.Count == 1 ? "note" : "notes")} only.",
                    note,
                    at
                );
            }

            if (StringOf(rules[at]) > player.Instrument.Strings.Count)
            {
                return new(
                    $"'{rules[at]}': {player.Instrument.NameWithArticle} has {player.Instrument.Strings.Count} strings.",
                    null,
                    at
                );
            }
        }

        return null;
    }

    private static int? StringOf(LineRule rule) =>
        rule switch
        {
            LineRule.StartOn one => one.String,
            LineRule.EndOn one => one.String,
            LineRule.OnString one => one.String,
            _ => null,
        };

    private static string Missing(Instrument instrument, int at, LineNote note) =>
        note switch
        {
            LineNote.Sounding { Pitch: var pitch } =>
                $"Note {at + 1}, {pitch}, is on no string: {Range(instrument)}.{Octave(instrument, pitch)}",
            LineNote.At { Spot: var spot } when spot.String > instrument.Strings.Count =>
                $"Note {at + 1}, {spot}: {instrument.NameWithArticle} has {instrument.Strings.Count} strings.{Turned(instrument, spot)}",
            LineNote.At { Spot: var spot } =>
                $"Note {at + 1}, {spot}: string {spot.String} has frets {instrument.String(spot.String).StartsAtFret} to {instrument.LastFret} only.",
            _ => $"Note {at + 1} is missing.",
        };

    // Fret and string in the wrong order.
    private static string Turned(Instrument instrument, Spot spot) =>
        spot.Fret > 0 && instrument.Has(new Spot(spot.Fret, spot.String))
            ? $" The string stands first: did you mean {new Spot(spot.Fret, spot.String)}?"
            : "";

    private static string Range(Instrument instrument)
    {
        var lowest = instrument.OpenPitches.MinBy(pitch => pitch.MidiNumber);
        var highest = instrument.Strings.Max(course => course.MidiAt(instrument.LastFret) ?? course.Open.MidiNumber);
        var capo = instrument.Capo > 0 ? $" with a capo at {instrument.Capo}" : "";
        return $"{instrument.NameWithArticle}{capo} sounds {lowest} to {Pitch.FromMidiNumber(highest)}";
    }

    // The nearest octave that the instrument has.
    private static string Octave(Instrument instrument, Pitch pitch)
    {
        for (var octaves = 1; octaves <= 10; octaves++)
        {
            foreach (var octave in new[] { pitch.Octave + octaves, pitch.Octave - octaves })
            {
                if (octave is >= -1 and <= 9)
                {
                    var other = new Pitch(pitch.Name, octave);
                    if (instrument.SpotsOf(other.MidiNumber).Any())
                    {
                        return $" {other} would go.";
                    }
                }
            }
        }

        return "";
    }
}
