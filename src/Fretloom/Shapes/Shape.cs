using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>The spots of one chord, or of a stretch of scale, played as one thing.</summary>
public sealed record Shape
{
    /// <summary>Makes a shape.</summary>
    /// <param name="source">The chord or scale it sounds.</param>
    /// <param name="instrument">Where it lies, for the stretch.</param>
    /// <param name="strings">The strings looked at; those without a note are muted in a strummed chord.</param>
    /// <param name="notes">At least one note; put in order here: far string first, then frets ascending.</param>
    /// <exception cref="ArgumentException">There is no note, or a note lies on a string outside the set.</exception>
    public Shape(ShapeSource source, Instrument instrument, StringSet strings, IEnumerable<ShapeNote> notes)
    {
        Source = source;
        Strings = strings;
        var ordered = notes.ToArray();
        Array.Sort(ordered, FarStringFirst);
        Notes = [.. ordered];
        if (Notes.Count == 0 || Array.Exists(ordered, note => !strings.Numbers.AsSpan().Contains(note.Spot.String)))
        {
            throw new ArgumentException("A shape has at least one note, all on the strings of its set.", nameof(notes));
        }

        Span = instrument.Span(Spots);
        StretchMm = instrument.StretchMm(Spots);
    }

    /// <summary>The chord or scale it sounds.</summary>
    public ShapeSource Source { get; }

    /// <summary>The strings looked at.</summary>
    public StringSet Strings { get; }

    /// <summary>The notes, far string first, frets ascending on one string.</summary>
    public ValueList<ShapeNote> Notes { get; }

    /// <summary>Where the notes lie, in the order of <see cref="Notes"/>.</summary>
    public IEnumerable<Spot> Spots => Notes.Select(note => note.Spot);

    /// <summary>Strings of the set that sound no note, descending.</summary>
    public IEnumerable<int> MutedStrings => Strings.Numbers.Except(Spots.Select(spot => spot.String));

    /// <summary>Members of the chord that no note sounds, such as the fifth of a seventh chord; none for a scale.</summary>
    public IEnumerable<string> MembersLeftOut =>
        Source is ShapeSource.OfChord { Chord: var chord }
            ? Enumerable.Range(0, chord.Notes.Count).Select(chord.MemberText).Except(Notes.Select(note => note.Member))
            : [];

    /// <summary>Frets covered, inclusively, open strings left out; 0 when all are open.</summary>
    public int Span { get; }

    /// <summary>Millimetres along the neck between the outermost landing points, open strings left out.</summary>
    public double StretchMm { get; }

    private static int FarStringFirst(ShapeNote one, ShapeNote other) =>
        one.Spot.String == other.Spot.String ? one.Spot.Fret - other.Spot.Fret : other.Spot.String - one.Spot.String;
}
