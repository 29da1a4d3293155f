using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Scores.Tests;

/// <summary>Exercises for tests: from sentences, and runs over a neck that no sentence asks for.</summary>
internal static class Played
{
    /// <summary>What a sentence says, with the usual defaults.</summary>
    public static Exercise Of(string sentence)
    {
        var answer = PlayQuestion.Answer(sentence, ShowDefaults.Standard);
        return answer.IsRead ? answer.Value : throw new ArgumentException(answer.Errors[0].Message, nameof(sentence));
    }

    /// <summary>Every half-step that an instrument has, from low to high, each once and for a beat, on the string where it lies lowest on the neck.</summary>
    public static Exercise ChromaticRun(Instrument instrument, int beatsPerMinute) =>
        InTurn(
            instrument,
            Chromatic(instrument).Select(midi => instrument.SpotsOf(midi).MinBy(spot => spot.Fret)),
            beatsPerMinute
        );

    /// <summary>Every MIDI note that an instrument has, ascending.</summary>
    public static IEnumerable<int> Chromatic(Instrument instrument) =>
        from midi in Enumerable.Range(0, 128)
        where instrument.SpotsOf(midi).Any()
        select midi;

    /// <summary>Spots one after another, each for a beat.</summary>
    public static Exercise InTurn(Instrument instrument, IEnumerable<Spot> spots, int beatsPerMinute) =>
        Make(instrument, spots.Select((spot, at) => (Beats.Quarter * at, Beats.Quarter, spot)), beatsPerMinute);

    /// <summary>Spots at once, for a bar.</summary>
    public static Exercise AtOnce(Instrument instrument, IEnumerable<Spot> spots, int beatsPerMinute) =>
        Make(instrument, spots.Select(spot => (default(Beats), default(Metre).Bar, spot)), beatsPerMinute);

    /// <summary>A rhythm on one open string of a guitar: parts of beats in which a note begins (<c>o</c>), goes on (<c>-</c>) or nothing sounds (<c>.</c>).</summary>
    public static Exercise InRhythm(Metre metre, IEnumerable<(Beats Length, char Sign)> parts)
    {
        var open = new NeckNote(new Spot(1, 0), Pitch.Parse("E4"), new Degree(3));
        var notes = new List<ExerciseNote>();
        var at = default(Beats);
        foreach (var (length, sign) in parts)
        {
            if (sign == 'o')
            {
                notes.Add(new(at, length, open, Finger.None));
            }
            else if (sign == '-' && notes.Count > 0 && notes[^1].End == at)
            {
                notes[^1] = notes[^1] with { Length = notes[^1].Length + length };
            }

            at += length;
        }

        return AtOnce(Catalogue.Default, [new Spot(1, 0)], 72) with
        {
            Metre = metre,
            Notes = notes.ToValueList(),
            Length = at,
        };
    }

    private static Exercise Make(
        Instrument instrument,
        IEnumerable<(Beats At, Beats Length, Spot Spot)> spots,
        int beatsPerMinute
    )
    {
        var map = new NeckMap(
            instrument,
            Key.Parse("C major"),
            instrument.AllStrings,
            new FretRange(0, instrument.LastFret)
        );
        var notes = spots
            .Select(spot => new ExerciseNote(spot.At, spot.Length, map.NoteAt(spot.Spot)!.Value, Finger.None))
            .ToValueList();
        var bar = default(Metre).Bar;
        var bars = (notes.Max(note => note.End.Ticks) + bar.Ticks - 1) / bar.Ticks;
        return new Exercise
        {
            Sentence = "made by a test",
            Name = "Made by a test",
            Player = new(instrument),
            Metre = default,
            Passes = [new Tempo(beatsPerMinute)],
            Notes = notes,
            Length = bar * bars,
            Sections = [new(default, map.Key, null)],
        };
    }
}
