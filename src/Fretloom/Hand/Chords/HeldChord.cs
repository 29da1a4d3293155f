using Fretloom.Neck;

namespace Fretloom.Hand.Chords;

/// <summary>A note that a finger must stop.</summary>
/// <param name="Spot">Where it stands on the instrument.</param>
/// <param name="Place">Its string, counted under the hand from 1 nearest the floor.</param>
/// <param name="AtMm">Millimetres from the nut to the fingertip.</param>
internal readonly record struct PressedNote(Spot Spot, int Place, double AtMm)
{
    /// <summary>The fret, counted from the capo.</summary>
    public int Fret => Spot.Fret;
}

/// <summary>Notes that are to be held together, as the hand finds them.</summary>
/// <remarks>Sets of places are bits: bit 1 is the string nearest the floor.</remarks>
internal sealed class HeldChord
{
    /// <summary>Looks at a chord.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">Spots of the instrument, one a string at most.</param>
    public HeldChord(Player player, ValueList<Spot> spots)
    {
        Player = player;
        var notes = new List<PressedNote>(spots.Count);
        foreach (var spot in spots)
        {
            var place = player.PlaceOf(spot.String);
            Played |= 1u << place;
            if (player.Instrument.IsOpen(spot))
            {
                Open |= 1u << place;
            }
            else
            {
                notes.Add(new(spot, place, player.Instrument.LandingMm(spot.Fret)));
            }
        }

        notes.Sort(
            (one, other) => one.Fret != other.Fret ? one.Fret.CompareTo(other.Fret) : other.Place.CompareTo(one.Place)
        );
        Notes = [.. notes];
    }

    /// <summary>The hand and the instrument.</summary>
    public Player Player { get; }

    /// <summary>The notes to be stopped, lowest fret first, on one fret the one farthest from the floor first.</summary>
    public PressedNote[] Notes { get; }

    /// <summary>Places that sound open.</summary>
    public uint Open { get; }

    /// <summary>Places that sound.</summary>
    public uint Played { get; }

    /// <summary>Places between two others, both left out.</summary>
    public static uint Between(int low, int high) => high - low < 2 ? 0 : (1u << high) - (1u << low + 1);

    /// <summary>Places that sound open or on a fret below one.</summary>
    public uint Below(int fret)
    {
        var below = Open;
        foreach (var note in Notes)
        {
            below |= note.Fret < fret ? 1u << note.Place : 0;
        }

        return below;
    }
}
