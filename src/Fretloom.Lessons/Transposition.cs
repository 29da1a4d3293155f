using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Lessons;

/// <summary>Carries what a sentence names from one key to another.</summary>
internal sealed class Transposition(Key from, Key to)
{
    private const int MostAccidentals = 2;

    private readonly Interval _interval = from.Tonic.IntervalTo(to.Tonic);

    /// <summary>Carries a sentence.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="home">Where it looks in the key it was written for.</param>
    /// <param name="lessonFrets">The range that the lesson names, or null.</param>
    public ShowSentence Move(ShowSentence sentence, NeckMap home, FretRange? lessonFrets)
    {
        var isRangeNamed = sentence.Frets is not null || lessonFrets is { First: > 0 };
        FretRange? frets = isRangeNamed ? home.Frets : null;
        var spots = sentence.Subjects.OfType<Subject.GivenSpots>().SelectMany(given => given.Spots).ToList();
        var shift = Shift(frets, sentence.Voicing.Position, spots, home.Instrument);
        return sentence with
        {
            Key = home.Key == from ? to : Move(home.Key),
            Subjects = sentence.Subjects.Select(subject => Move(subject, shift)).ToValueList(),
            Frets = frets is { First: > 0 } range ? new FretRange(range.First + shift, range.Last + shift) : frets,
            Voicing = sentence.Voicing.Position is > 1 and { } position
                ? sentence.Voicing with
                {
                    Position = position + shift,
                }
                : sentence.Voicing,
        };
    }

    /// <summary>Whether spots that are named had to stay where they are, since nothing of what the sentence names fits the neck elsewhere.</summary>
    public bool LeavesSpots(ShowSentence sentence, ShowSentence moved) =>
        _interval.Semitones % 12 != 0
        && sentence.Subjects.Any(subject => subject is Subject.GivenSpots && moved.Subjects.Contains(subject));

    private Subject Move(Subject subject, int shift) =>
        subject switch
        {
            Subject.GivenSpots given => new Subject.GivenSpots(
                given.Spots.Select(spot => new Spot(spot.String, spot.Fret + shift)).ToValueList()
            ),
            Subject.NotesOfScale notes => new Subject.NotesOfScale(Move(notes.Scale)),
            Subject.GivenNotes given => new Subject.GivenNotes(given.Notes.Select(Move).ToValueList()),
            Subject.EveryNote every => new Subject.EveryNote(Move(every.Name)),
            Subject.ScaleShapes { Scale: { } scale } shapes => shapes with { Scale = Move(scale) },
            Subject.ChordsBySymbol chords => new Subject.ChordsBySymbol(chords.Chords.Select(Move).ToValueList()),
            _ => subject,
        };

    private Key Move(Key key) => key.On(Move(key.Tonic)).Simplest();

    private Scale Move(Scale scale) => new(Move(scale.Tonic), scale.Kind);

    // A note with its octave goes the shorter way round.
    private GivenNote Move(GivenNote note)
    {
        var name = Move(note.Name);
        if (note.Pitch is not { } pitch)
        {
            return new(name, null);
        }

        var up = pitch.PitchClass.SemitonesUpTo(name.PitchClass);
        var midi = pitch.MidiNumber + (up > 6 ? up - 12 : up);
        return new(name, Pitch.FromMidiNumber(midi, name).Octave);
    }

    private Chord Move(Chord chord) => new(Move(chord.Root), chord.Quality, Move(chord.Bass));

    // The spelled interval keeps the note's place in the key; beyond double accidentals an enharmonic twin is easier to read.
    private NoteName Move(NoteName name)
    {
        var fifths = name.FifthsFromC + to.Tonic.FifthsFromC - from.Tonic.FifthsFromC;
        while (Alteration(fifths) > MostAccidentals)
        {
            fifths -= 12;
        }

        while (Alteration(fifths) < -MostAccidentals)
        {
            fifths += 12;
        }

        return NoteName.FromFifths(fifths);
    }

    // F C G D A E B have none, -1 to 5 fifths from C; every seven fifths on is one sharp more.
    private static int Alteration(int fifths) => (int)Math.Floor((fifths + 1) / 7.0);

    /// <summary>By how many frets a range, a position and spots move: the way round that is shorter and fits the neck; 0 when none fits.</summary>
    private int Shift(FretRange? frets, int? position, List<Spot> spots, Instrument instrument)
    {
        var lastFret = instrument.LastFret;
        var up = ((_interval.Semitones % 12) + 12) % 12;
        return new[] { up, up - 12 }.OrderBy(Math.Abs).FirstOrDefault(Fits);

        bool Fits(int shift) =>
            (frets is not { First: > 0 } range || (range.First + shift >= 1 && range.Last + shift <= lastFret))
            && (
                position is not > 1
                || (position + shift >= 1 && position + shift <= Math.Min(lastFret, VoicingPhrase.LastPosition))
            )
            && spots.TrueForAll(spot =>
                spot.Fret + shift >= instrument.String(spot.String).StartsAtFret && spot.Fret + shift <= lastFret
            );
    }
}
