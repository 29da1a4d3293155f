using System.Numerics;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Exhibits.Comparing;

/// <summary>A shape of a chord as far as it is compared with others: where it lies, what sounds, what lies lowest.</summary>
internal sealed class Candidate
{
    public Candidate(Instrument instrument, Shape shape)
    {
        Shape = shape;
        Instrument = instrument;
        Strings = StringMask(shape);
        LowestMember = shape.Notes.MinBy(note => note.Pitch.MidiNumber).Member;
        Members = MemberMask(shape);
        LowestFret = shape.Spots.Where(spot => !instrument.IsOpen(spot)).Min(spot => (int?)spot.Fret) ?? 0;
        var points = shape.Spots.Select(instrument.PointMm).ToList();
        _alongMm = points.Average(point => point.AlongMm);
        _acrossMm = points.Average(point => point.AcrossMm);
    }

    private readonly double _alongMm;
    private readonly double _acrossMm;

    public Shape Shape { get; }

    /// <summary>With the capo that the frets are counted from.</summary>
    public Instrument Instrument { get; }

    /// <summary>The sounding strings, bit n for string n.</summary>
    public int Strings { get; }

    public int StringCount => BitOperations.PopCount((uint)Strings);

    /// <summary>What lies lowest, by its place in the chord.</summary>
    public string LowestMember { get; }

    /// <summary>The pitch classes that sound, bit n for n semitones above C.</summary>
    public int Members { get; }

    /// <summary>The lowest stopped fret; 0 when every string is open.</summary>
    public int LowestFret { get; }

    public bool HasOpenString => Shape.Spots.Any(Instrument.IsOpen);

    /// <summary>The same shape with its best fingering; null when that is not in reach of the hand.</summary>
    public static Reached? InReach(Player player, Shape shape, bool isOneNotePerString) =>
        !ShapeFingering.IsBeyondReach(player, shape)
        && ShapeFingering.Of(player, shape, isOneNotePerString) is { Width: Width.InReach, Fingering: { } fingering }
            ? new Reached(new Candidate(player.Instrument, shape), fingering)
            : null;

    /// <summary>How far the middle of the notes moves over the neck, in millimetres.</summary>
    public double MovementMm(Candidate other) =>
        Math.Sqrt(Math.Pow(_alongMm - other._alongMm, 2) + Math.Pow(_acrossMm - other._acrossMm, 2));

    private static int StringMask(Shape shape) => shape.Spots.Aggregate(0, (mask, spot) => mask | (1 << spot.String));

    private static int MemberMask(Shape shape) =>
        shape.Notes.Aggregate(0, (mask, note) => mask | (1 << note.Pitch.Name.PitchClass.Number));
}

/// <summary>A shape in reach, with its fingering.</summary>
internal readonly record struct Reached(Candidate Candidate, Fingering Fingering);
