using Fretloom.Theory;

namespace Fretloom.Neck;

/// <summary>The part of a neck that is looked at: an instrument, a string set and a range of frets, seen in a key.</summary>
public sealed record NeckMap
{
    /// <summary>Makes a map.</summary>
    /// <exception cref="ArgumentException">A string or a fret is not on the instrument.</exception>
    public NeckMap(Instrument instrument, Key key, StringSet strings, FretRange frets)
    {
        if (strings.Count == 0 || strings.Numbers[0] > instrument.Strings.Count)
        {
            throw new ArgumentException(
                $"The {instrument.Name} has {instrument.Strings.Count} strings.",
                nameof(strings)
            );
        }

        if (frets.Last > instrument.LastFret)
        {
            throw new ArgumentException($"The {instrument.Name} has {instrument.LastFret} frets.", nameof(frets));
        }

        Instrument = instrument;
        Key = key;
        Strings = strings;
        Frets = frets;
    }

    /// <summary>The instrument.</summary>
    public Instrument Instrument { get; }

    /// <summary>The key that spells the notes.</summary>
    public Key Key { get; }

    /// <summary>The strings looked at.</summary>
    public StringSet Strings { get; }

    /// <summary>The frets looked at.</summary>
    public FretRange Frets { get; }

    /// <summary>Every spot that exists on the strings and in the range, string by string from the far side, frets ascending.</summary>
    public IEnumerable<Spot> Spots =>
        from number in Strings.Numbers
        from fret in Frets.Frets
        let spot = new Spot(number, fret)
        where Instrument.Has(spot)
        select spot;

    /// <summary>What a spot sounds, spelled in the key; null when the spot is not on the neck.</summary>
    public NeckNote? NoteAt(Spot spot) => Instrument.MidiAt(spot) is { } midi ? Noted(spot, Key.SpellMidi(midi)) : null;

    /// <summary>The notes of the key, in the order of <see cref="Spots"/>.</summary>
    public IEnumerable<NeckNote> NotesOfKey => NotesNamed(Key.Notes);

    /// <summary>
    /// The spots that sound one of some notes, spelled as those notes are, in the order of <see cref="Spots"/>.
    /// </summary>
    /// <param name="names">Names of different pitch classes; where two share one, the first is used.</param>
    public IEnumerable<NeckNote> NotesNamed(IEnumerable<NoteName> names)
    {
        var spelling = names.ToList();
        foreach (var spot in Spots)
        {
            var midi = Instrument.MidiAt(spot)!.Value;
            var at = spelling.FindIndex(name => name.PitchClass == PitchClass.FromSemitones(midi));
            if (at >= 0)
            {
                yield return Noted(spot, Pitch.FromMidiNumber(midi, spelling[at]));
            }
        }
    }

    /// <summary>Whether a spot exists and sounds a note of the key.</summary>
    public bool IsInKey(Spot spot) =>
        Instrument.MidiAt(spot) is { } midi && Key.PitchClasses.Contains(PitchClass.FromSemitones(midi));

    private NeckNote Noted(Spot spot, Pitch pitch) => new(spot, pitch, Key.DegreeOf(pitch.Name));
}
