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
    public IEnumerable<Spot> Spots
    {
        get
        {
            foreach (var number in Strings.Numbers)
            {
                for (var fret = FirstFretOf(number); fret <= Frets.Last; fret++)
                {
                    yield return new Spot(number, fret);
                }
            }
        }
    }

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
        // The name of each pitch class; none for what is not asked for.
        var spelling = new NoteName?[12];
        foreach (var name in names)
        {
            spelling[name.PitchClass.Number] ??= name;
        }

        foreach (var number in Strings.Numbers)
        {
            var course = Instrument.String(number);
            for (var fret = FirstFretOf(number); fret <= Frets.Last; fret++)
            {
                var midi = course.MidiAt(fret)!.Value;
                if (spelling[PitchClass.FromSemitones(midi).Number] is { } name)
                {
                    yield return Noted(new Spot(number, fret), Pitch.FromMidiNumber(midi, name));
                }
            }
        }
    }

    /// <summary>Whether a spot exists and sounds a note of the key.</summary>
    public bool IsInKey(Spot spot) =>
        Instrument.MidiAt(spot) is { } midi && Key.PitchClasses.Contains(PitchClass.FromSemitones(midi));

    // A short string begins further along.
    private int FirstFretOf(int number) => Math.Max(Frets.First, Instrument.String(number).StartsAtFret);

    private NeckNote Noted(Spot spot, Pitch pitch) => new(spot, pitch, Key.DegreeOf(pitch.Name));
}
