using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences.Show;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Some spots put together by hand: what they are called, how far they reach, how they are taken, and where they can be carried.</summary>
/// <remarks>A string holds one spot or several; a chord is named by all that sounds, the lowest note in the bass.</remarks>
public sealed class ShapeByHand
{
    private const int MostNames = 3;

    /// <summary>Puts spots together.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="key">The key that spells the notes.</param>
    /// <param name="spots">At least one; a spot named twice counts once.</param>
    /// <exception cref="ArgumentException">There is none, or one is not on the instrument.</exception>
    public ShapeByHand(Player player, Key key, IEnumerable<Spot> spots)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(key);
        (Player, Key) = (player, key);
        Spots = spots.Distinct().OrderByDescending(spot => spot.String).ThenBy(spot => spot.Fret).ToValueList();
        if (Spots.Count == 0 || !Spots.All(player.Instrument.Has))
        {
            throw new ArgumentException("At least one spot is needed, and each on the instrument.", nameof(spots));
        }

        var pitches = Spots.Select(spot => key.SpellMidi(player.Instrument.MidiAt(spot)!.Value)).ToList();
        Pitches = pitches.ToValueList();
        var bass = pitches.MinBy(pitch => pitch.MidiNumber);
        Names =
            pitches.Select(pitch => pitch.Name.PitchClass).Distinct().Count() < 2
                ? []
                : ChordNamer
                    .Name(pitches.Select(pitch => pitch.Name).Distinct(), bass.Name, key)
                    .TakeWhile((name, at) => at == 0 || name.IsComplete)
                    .Take(MostNames)
                    .ToValueList();
        Shape = Made(player.Instrument, key, Spots, pitches, Names is [var first, ..] ? first.Chord : null);
        Fingering = new FingeringRequest(
            player,
            IsChord ? FingeringKind.Together : FingeringKind.Line,
            Spots.Select(spot => (LineNote)new LineNote.At(spot)).ToValueList()
        ).Answer();
    }

    /// <summary>The hand and the instrument.</summary>
    public Player Player { get; }

    /// <summary>The key that spells the notes.</summary>
    public Key Key { get; }

    /// <summary>The spots, far string first, frets ascending.</summary>
    public ValueList<Spot> Spots { get; }

    /// <summary>What each spot sounds, in the order of <see cref="Spots"/>.</summary>
    public ValueList<Pitch> Pitches { get; }

    /// <summary>Chords that the notes may be called, the best first, at most three, after the first only those that leave nothing out; none for a single note.</summary>
    public ValueList<ChordName> Names { get; }

    /// <summary>The same as a shape of the first name; of the scale of the key where there is no name.</summary>
    public Shape Shape { get; }

    /// <summary>Whether no string has two spots, so that all can sound together.</summary>
    public bool IsChord => Spots.Select(spot => spot.String).Distinct().Count() == Spots.Count;

    /// <summary>The best fingering, held together where that can be, else one note after another; or why there is none.</summary>
    public FingeringAnswer Fingering { get; }

    /// <summary>All spots some frets higher, or lower when negative; null where that leaves the neck.</summary>
    public ValueList<Spot>? MovedAlong(int frets) => OnNeck(Motions.MovedAlong(Spots, frets));

    /// <summary>
    /// The same frets on the next string set, of strings one nearer to the floor, or one farther from it when negative; null where there is none.
    /// </summary>
    public ValueList<Spot>? MovedAcross(int strings)
    {
        var set = Shape.Strings;
        var numbers = set.Numbers.Select(number => number - strings).ToList();
        return numbers.TrueForAll(number => number >= 1 && number <= Player.Instrument.Strings.Count)
            ? OnNeck(Motions.MovedToStrings(Spots, set, new StringSet(numbers)))
            : null;
    }

    /// <summary>Turned by 180 degrees about its own middle; null where that leaves the neck.</summary>
    public ValueList<Spot>? HalfTurned() => OnNeck(Motions.HalfTurned(Spots, Shape.Strings, Middle));

    /// <summary>Frets reversed about its own middle; null where that leaves the neck.</summary>
    public ValueList<Spot>? Mirrored() => OnNeck(Motions.Mirrored(Spots, Middle));

    /// <summary>The sentence that shows it, with the same fingers where there are any.</summary>
    /// <param name="defaults">What is left unsaid where it is said: of the hand and the way to play only what is otherwise is said.</param>
    public string SentenceIn(ShowDefaults defaults) =>
        $"show the spots {string.Join(' ', Spots)}, on {Player.Instrument.NameWithArticle}"
        + (Player.Instrument.Capo > 0 ? FormattableString.Invariant($", with a capo at {Player.Instrument.Capo}") : "")
        + $", in {Key}"
        + (Fingering.IsFound ? ", with fingers" + Playing(defaults) : "");

    private string Playing(ShowDefaults defaults) =>
        (Player.Hand == (defaults.Hand ?? default) ? "" : $", for {HandPhrases.WordsOf(Player.Hand)}")
        + (Player.IsTurnedOver && !defaults.IsTurnedOver ? ", turned over" : "")
        + (Player.UsesThumb == defaults.UsesThumb ? "" : $", {(Player.UsesThumb ? "with" : "without")} the thumb");

    private double Middle => (Spots.Min(spot => spot.Fret) + Spots.Max(spot => spot.Fret)) / 2.0;

    private ValueList<Spot>? OnNeck(ValueList<Spot>? spots) =>
        spots is { } moved && moved.All(Player.Instrument.Has) ? moved : null;

    private static Shape Made(Instrument instrument, Key key, ValueList<Spot> spots, List<Pitch> pitches, Chord? chord)
    {
        var members = Enumerable
            .Range(0, chord?.Notes.Count ?? 0)
            .ToDictionary(at => chord!.Notes[at].PitchClass, at => chord!.MemberText(at));
        var notes = spots.Select(
            (spot, at) =>
            {
                var degree = key.DegreeOf(pitches[at].Name);
                var member = members.GetValueOrDefault(pitches[at].Name.PitchClass) ?? degree.ToString();
                return new ShapeNote(spot, pitches[at], degree, member);
            }
        );
        return new Shape(
            chord is null ? new ShapeSource.OfScale(key.Scale) : new ShapeSource.OfChord(chord, null),
            instrument,
            new StringSet(spots.Select(spot => spot.String).Distinct()),
            notes
        );
    }
}
