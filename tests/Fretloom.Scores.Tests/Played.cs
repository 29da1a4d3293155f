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
    public static Exercise Of(string sentence) => PlayQuestion.Answer(sentence, ShowDefaults.Standard).Value!;

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
