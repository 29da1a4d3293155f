using Fretloom.Theory;

namespace Fretloom.Neck;

/// <summary>A fretted instrument: its strings and the measures of its neck.</summary>
/// <remarks>Strings are counted as players do: string 1 is nearest the floor. Two instruments are equal when everything is.</remarks>
public sealed record Instrument
{
    private const double ShortestBassMm = 750;

    /// <summary>Makes an instrument.</summary>
    /// <param name="name">As it stands in a sentence, without article: <c>low-G ukulele</c>.</param>
    /// <param name="strings">String 1 first; 1 to 20 of them.</param>
    /// <param name="scaleLengthMm">Nut to bridge in millimetres, 100 to 2,000.</param>
    /// <param name="frets">How many frets the neck has, 1 to 40.</param>
    /// <param name="spacing">Distance between neighbouring strings.</param>
    /// <exception cref="ArgumentException">A measure is out of range, or the name is empty.</exception>
    public Instrument(string name, IEnumerable<Course> strings, double scaleLengthMm, int frets, StringSpacing spacing)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name;
        Strings = strings.ToValueList();
        ArgumentOutOfRangeException.ThrowIfZero(Strings.Count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Strings.Count, 20);
        if (scaleLengthMm is not (>= 100 and <= 2000))
        {
            throw new ArgumentOutOfRangeException(
                nameof(scaleLengthMm),
                scaleLengthMm,
                "A scale length is 100 to 2,000 mm."
            );
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(frets, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(frets, 40);
        ScaleLengthMm = scaleLengthMm;
        Frets = frets;
        Spacing = spacing;
    }

    private Instrument(Instrument original, string name, ValueList<Course> strings, int capo)
        : this(name, strings, original.ScaleLengthMm, original.Frets, original.Spacing) => Capo = capo;

    /// <summary>The name in a sentence, without article.</summary>
    public string Name { get; }

    /// <summary>The name after its indefinite article: <c>a ukulele</c>, <c>an open G guitar</c>.</summary>
    public string NameWithArticle =>
        (Name[0] is 'a' or 'e' or 'i' or 'o' or 'A' or 'E' or 'I' or 'O' ? "an " : "a ") + Name;

    /// <summary>The strings; item 0 is string 1. With a capo these are the pitches the capo gives.</summary>
    public ValueList<Course> Strings { get; }

    /// <summary>Nut to bridge in millimetres, without capo.</summary>
    public double ScaleLengthMm { get; }

    /// <summary>Frets on the neck, without capo.</summary>
    public int Frets { get; }

    /// <summary>Distance between neighbouring strings.</summary>
    public StringSpacing Spacing { get; }

    /// <summary>Whether it has the length of a bass: 750 mm or more. The shortest basses have 762 mm, the longest guitars about 700: common practice, no source.</summary>
    public bool IsBass => ScaleLengthMm >= ShortestBassMm;

    /// <summary>The fret of the capo, 0 for none. Frets are then counted from it.</summary>
    public int Capo { get; }

    /// <summary>The highest fret that can be played, counted from the capo.</summary>
    public int LastFret => Frets - Capo;

    /// <summary>The highest fret that each of some strings has, counted from its own nut: a short string ends sooner.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A string is not there.</exception>
    public int LastFretOf(StringSet strings) => LastFret - strings.Numbers.Max(number => String(number).StartsAtFret);

    /// <summary>Open pitches, string 1 first.</summary>
    public ValueList<Pitch> OpenPitches => Strings.Select(course => course.Open).ToValueList();

    /// <summary>All strings, the farthest from the floor first.</summary>
    public StringSet AllStrings => StringSet.Run(Strings.Count, 1);

    /// <summary>The string with a number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such string.</exception>
    public Course String(int number) =>
        number >= 1 && number <= Strings.Count
            ? Strings[number - 1]
            : throw new ArgumentOutOfRangeException(nameof(number), number, $"The {Name} has {Strings.Count} strings.");

    /// <summary>Whether the spot is on the neck: an existing string, not before its beginning, not beyond the last fret.</summary>
    public bool Has(Spot spot) =>
        spot.String <= Strings.Count && spot.Fret <= LastFret && spot.Fret >= String(spot.String).StartsAtFret;

    /// <summary>Whether the spot is an open string: at the fret where its string begins.</summary>
    public bool IsOpen(Spot spot) => Has(spot) && spot.Fret == String(spot.String).StartsAtFret;

    /// <summary>The MIDI note a spot sounds, or null when it is not on the neck.</summary>
    public int? MidiAt(Spot spot) => Has(spot) ? String(spot.String).MidiAt(spot.Fret) : null;

    /// <summary>Every spot that sounds a MIDI note, string 1 first.</summary>
    public IEnumerable<Spot> SpotsOf(int midiNumber)
    {
        for (var number = 1; number <= Strings.Count; number++)
        {
            var fret = midiNumber - Strings[number - 1].Open.MidiNumber + Strings[number - 1].StartsAtFret;
            if (fret is >= 0 and <= 99 && Has(new Spot(number, fret)))
            {
                yield return new Spot(number, fret);
            }
        }
    }

    /// <summary>The same instrument with a capo; a short string is taken up with the others.</summary>
    /// <param name="fret">1 to one less than the number of frets; 0 gives the instrument itself.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fret is out of range.</exception>
    public Instrument WithCapo(int fret)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fret);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(fret, Frets);
        var change = fret - Capo;
        return new Instrument(this, Name, Strings.Select(course => Raised(course, change)).ToValueList(), fret);
    }

    /// <summary>The same neck with other open pitches; its name says them, the string farthest from the floor first.</summary>
    /// <remarks>The second string of a pair keeps its distance from the first.</remarks>
    /// <param name="openPitches">String 1 first, one for each string.</param>
    /// <exception cref="ArgumentException">The number of pitches is not that of the strings.</exception>
    public Instrument Tuned(IEnumerable<Pitch> openPitches)
    {
        var pitches = openPitches.ToValueList();
        if (pitches.Count != Strings.Count)
        {
            throw new ArgumentException($"The {Name} has {Strings.Count} strings.", nameof(openPitches));
        }

        var bare = Name.Split(" tuned ")[0];
        var name = $"{bare} tuned {string.Join(' ', pitches.Reverse())}";
        return new Instrument(
            this,
            name,
            Strings.Select((course, at) => Retuned(course, pitches[at])).ToValueList(),
            Capo
        );
    }

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    private static Course Retuned(Course course, Pitch open) =>
        new(
            open,
            course.Partner is { } partner ? Raised(open, partner.MidiNumber - course.Open.MidiNumber) : null,
            course.StartsAtFret
        );

    private static Course Raised(Course course, int semitones) =>
        new(
            Raised(course.Open, semitones),
            course.Partner is { } partner ? Raised(partner, semitones) : null,
            course.StartsAtFret
        );

    private static Pitch Raised(Pitch pitch, int semitones) =>
        semitones == 0 ? pitch : Pitch.FromMidiNumber(pitch.MidiNumber + semitones);
}
