using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>What stays and what moves when one key gives way to another on the same strings and frets.</summary>
/// <remarks>
/// The pattern is carried degree by degree: the tonic goes the shorter way along the frets (a tritone goes up), and every degree
/// goes with it, a fret or two more or less where the kinds of scale differ. What falls off at the low end of the range comes
/// back an octave, twelve frets, higher, and what falls off at the high end an octave lower. On exactly twelve frets this pairs the
/// notes of one key with those of the other, one to one; on more, both ends of an octave may land on one spot; on fewer, some have
/// nowhere to go and others arrive from outside.
/// </remarks>
public sealed record KeyChange
{
    private KeyChange(NeckMap from, NeckMap to)
    {
        From = from;
        To = to;
        FretOffsets = Enumerable.Range(0, 7).Select(OffsetOf).ToValueList();
        Moves = from.NotesOfKey.Select(Moved).ToValueList();
        Stays = from
            .NotesOfKey.Where(note => to.IsInKey(note.Spot))
            .Select(note => new KeptNote(note, to.NoteAt(note.Spot)!.Value))
            .ToValueList();
        Leaves = from.NotesOfKey.Where(note => !to.IsInKey(note.Spot)).ToValueList();
        Arrives = to.NotesOfKey.Where(note => !from.IsInKey(note.Spot)).ToValueList();
    }

    /// <summary>The first key on the neck.</summary>
    public NeckMap From { get; }

    /// <summary>The second key on the same strings and frets.</summary>
    public NeckMap To { get; }

    /// <summary>How many frets each degree moves, up when positive; item 0 is degree 1, which moves -5 to 6.</summary>
    public ValueList<int> FretOffsets { get; }

    /// <summary>Every note of the first key with the note of the same degree that it becomes; string by string from the far side, frets ascending.</summary>
    public ValueList<NoteMove> Moves { get; }

    /// <summary>The spots that belong to both keys, in the same order.</summary>
    public ValueList<KeptNote> Stays { get; }

    /// <summary>The notes of the first key whose spots are not in the second, in the same order.</summary>
    public ValueList<NeckNote> Leaves { get; }

    /// <summary>The notes of the second key whose spots are not in the first, in the same order.</summary>
    public ValueList<NeckNote> Arrives { get; }

    /// <summary>The change from the key of a map to another key.</summary>
    public static KeyChange Between(NeckMap from, Key to) =>
        new(from, new NeckMap(from.Instrument, to, from.Strings, from.Frets));

    private int OffsetOf(int index)
    {
        var tonic = From.Key.Tonic.PitchClass.SemitonesUpTo(To.Key.Tonic.PitchClass);
        var shorter = tonic > 6 ? tonic - 12 : tonic;
        return shorter + To.Key.Kind.Intervals[index].Semitones - From.Key.Kind.Intervals[index].Semitones;
    }

    private NoteMove Moved(NeckNote note)
    {
        var offset = FretOffsets[note.Degree.Number - 1];
        var fret = note.Spot.Fret + offset;
        var low = Math.Max(From.Frets.First, From.Instrument.String(note.Spot.String).StartsAtFret);
        var wrap =
            fret < low ? Wrap.AtLowEnd
            : fret > From.Frets.Last ? Wrap.AtHighEnd
            : Wrap.None;
        var landing = wrap switch
        {
            Wrap.AtLowEnd => fret + 12,
            Wrap.AtHighEnd => fret - 12,
            _ => fret,
        };
        var isInside = landing >= low && landing <= From.Frets.Last;
        return new NoteMove(note, isInside ? To.NoteAt(new Spot(note.Spot.String, landing)) : null, offset, wrap);
    }
}

/// <summary>A note of one key and the note of the same degree that it becomes in another.</summary>
/// <param name="Before">The note in the first key.</param>
/// <param name="After">The note of the same degree in the second, on the same string; null when it has no place in the range.</param>
/// <param name="Offset">Frets moved, up when positive, before any wrap-around; 0 when the note stays where it is.</param>
/// <param name="Wrap">Whether it fell off an end of the range, and which.</param>
public readonly record struct NoteMove(NeckNote Before, NeckNote? After, int Offset, Wrap Wrap);

/// <summary>A spot that belongs to both keys.</summary>
/// <param name="Before">With its spelling and degree in the first key.</param>
/// <param name="After">With its spelling and degree in the second.</param>
public readonly record struct KeptNote(NeckNote Before, NeckNote After);

/// <summary>At which end of a range of frets a moving note falls off, to come back an octave away.</summary>
public enum Wrap
{
    /// <summary>It stays inside.</summary>
    None,

    /// <summary>At the nut, the beginning of a short string, or the lowest fret of the range: it comes back twelve frets higher.</summary>
    AtLowEnd,

    /// <summary>At the last fret of the range: it comes back twelve frets lower.</summary>
    AtHighEnd,
}
