namespace Fretloom.Theory;

/// <summary>Finds every chord that a set of notes can be called.</summary>
/// <remarks>
/// <para>
/// Every note of the set is tried as root of every <see cref="ChordQuality"/>. A name fits when all members sound that players never leave out, and
/// nothing else sounds but what the name allows (see <see cref="ChordQuality.Omissible"/> and <see cref="ChordQuality.Addable"/>). The bass
/// may also be foreign to the chord above it: C E G over D is C/D. Last, chords of five members and more are tried without their root and at most
/// one other member, as they are played on four strings.
/// </para>
/// <para>
/// Rank, each rule only deciding between names equal by the rules before: usual qualities; the root sounds; fewest points; the root in the bass,
/// then another member, then a foreign bass; fewer members left out or added; the plainer quality (the order of
/// <see cref="ChordQuality.All"/>); more notes spelled as the key, or the names given, spell them; fewer accidentals; the root nearer above the
/// bass. A root is spelled as the key spells it, unless another of its names gives the chord fewer notes that are odd in the key: with two
/// accidentals, or C flat, F flat, E sharp, B sharp. Points: one for each member beyond three, for each altered fifth or extension, for each member left out or added, one for a member
/// other than the root in the bass, two for a foreign bass. These rules are this project's choice.
/// </para>
/// </remarks>
public static class ChordNamer
{
    /// <summary>The names of a set of pitch classes, best first; empty when there is none.</summary>
    /// <param name="notes">What sounds.</param>
    /// <param name="bass">The lowest of it.</param>
    /// <param name="key">The key whose spelling counts; without one each chord is spelled with the fewest accidentals.</param>
    /// <exception cref="ArgumentException">The bass is not among the notes.</exception>
    public static ValueList<ChordName> Name(PitchClassSet notes, PitchClass bass, Key? key = null) =>
        Name(notes, bass, SpellingOf(key) ?? (_ => null));

    /// <summary>The names of a set of spelled notes, best first; empty when there is none.</summary>
    /// <param name="notes">What sounds. Where one pitch class is spelled in two ways the first counts.</param>
    /// <param name="bass">The lowest of it.</param>
    /// <param name="key">The key whose spelling counts instead of the notes' own; may be null.</param>
    /// <exception cref="ArgumentException">The bass is not among the notes.</exception>
    public static ValueList<ChordName> Name(IEnumerable<NoteName> notes, NoteName bass, Key? key = null)
    {
        var names = notes.ToList();
        return Name(
            PitchClassSet.Of(names.Select(name => name.PitchClass)),
            bass.PitchClass,
            SpellingOf(key) ?? (pitchClass => NamedIn(names, pitchClass))
        );
    }

    private static Func<PitchClass, NoteName?>? SpellingOf(Key? key) =>
        key is null ? null : pitchClass => key.Spell(pitchClass);

    private static NoteName? NamedIn(List<NoteName> names, PitchClass pitchClass)
    {
        var index = names.FindIndex(name => name.PitchClass == pitchClass);
        return index < 0 ? null : names[index];
    }

    private static ValueList<ChordName> Name(PitchClassSet notes, PitchClass bass, Func<PitchClass, NoteName?> spell)
    {
        if (!notes.Contains(bass))
        {
            throw new ArgumentException("The bass is one of the notes.", nameof(bass));
        }

        var above = new PitchClassSet(notes.Mask & ~(1 << bass.Number));
        var overMember = notes.SelectMany(root => On(root, notes, bass, spell));
        var overForeign = above
            .SelectMany(root => On(root, above, bass, spell))
            .Where(name => name.Chord.Quality.MemberCount > 2);
        return overMember
            .Concat(overForeign)
            .Concat(Rootless(notes, bass, spell))
            .OrderBy(Departures)
            .DistinctBy(name => name.Chord)
            .OrderByDescending(name => name.Chord.Quality.IsUsual)
            .ThenBy(name => name.IsRootless)
            .ThenBy(Points)
            .ThenBy(name => BassRank(name.Chord))
            .ThenBy(Departures)
            .ThenBy(name => name.Chord.Quality.Rank)
            .ThenByDescending(name => name.Chord.Notes.Count(note => spell(note.PitchClass) == note))
            .ThenBy(name => Accidentals(name.Chord))
            .ThenBy(name => bass.SemitonesUpTo(name.Chord.Root.PitchClass))
            .ToValueList();
    }

    private static IEnumerable<ChordName> On(
        PitchClass root,
        PitchClassSet notes,
        PitchClass bass,
        Func<PitchClass, NoteName?> spell
    )
    {
        var onC = notes.Transpose(-root.Number);
        return ChordQuality
            .All.Where(quality => quality.CanSound(onC))
            .Select(quality => NameOf(root, quality, onC, bass, spell));
    }

    private static IEnumerable<ChordName> Rootless(
        PitchClassSet notes,
        PitchClass bass,
        Func<PitchClass, NoteName?> spell
    ) =>
        from number in Enumerable.Range(0, 12)
        let root = new PitchClass(number)
        where !notes.Contains(root)
        let onC = notes.Transpose(-number)
        from quality in ChordQuality.All
        where quality.CanSound(new PitchClassSet(onC.Mask | 1)) && quality.IsUsual && quality.MemberCount >= 5
        let name = NameOf(root, quality, onC, bass, spell)
        where name.Omitted.Count <= 2 && name.Added.Count == 0
        select name;

    private static ChordName NameOf(
        PitchClass root,
        ChordQuality quality,
        PitchClassSet onC,
        PitchClass bass,
        Func<PitchClass, NoteName?> spell
    )
    {
        var chord = new Chord(RootOf(root, quality, spell), quality);
        return new ChordName(
            chord.Over(NameOfBass(chord, bass, spell)),
            quality.Intervals.Where(interval => !Sounds(onC, interval)).ToValueList(),
            quality.Addable.Where(interval => Sounds(onC, interval)).ToValueList()
        );
    }

    private static bool Sounds(PitchClassSet onC, Interval interval) =>
        onC.Contains(PitchClass.FromSemitones(interval.Semitones));

    private static NoteName NameOfBass(Chord chord, PitchClass bass, Func<PitchClass, NoteName?> spell)
    {
        if (chord.IndexOf(bass) is >= 0 and var index)
        {
            return chord.Notes[index];
        }

        return Spelled(bass, spell) ?? new Key(chord.Root, ScaleKind.Major).Spell(bass);
    }

    // As the key spells it, unless another name needs fewer odd ones: not A flat but G sharp diminished over B in C major.
    private static NoteName RootOf(PitchClass root, ChordQuality quality, Func<PitchClass, NoteName?> spell)
    {
        var simplest = SimplestRoot(root, quality, spell);
        return
            Spelled(root, spell) is { } own
            && OddNames(new Chord(own, quality), spell) <= OddNames(new Chord(simplest, quality), spell)
            ? own
            : simplest;
    }

    // Two accidentals, or a white key under a black one's kind of name, where the key does not have it so.
    private static int OddNames(Chord chord, Func<PitchClass, NoteName?> spell) =>
        chord.Notes.Count(note =>
            (Math.Abs(note.Alteration) > 1 || (note.Alteration != 0 && WhiteKeys.Contains(note.PitchClass)))
            && spell(note.PitchClass) != note
        );

    private static readonly PitchClassSet WhiteKeys = new Key(new NoteName(Step.C), ScaleKind.Major).PitchClasses;

    // A name nobody would read as a root is not taken over.
    private static NoteName? Spelled(PitchClass pitchClass, Func<PitchClass, NoteName?> spell) =>
        spell(pitchClass) is { Alteration: >= -2 and <= 2 } name ? name : null;

    // Of the names with at most one accidental (one or two; F, not E sharp), the one whose chord has the fewest odd names, then the fewest accidentals; flats when equal.
    private static NoteName SimplestRoot(PitchClass root, ChordQuality quality, Func<PitchClass, NoteName?> spell) =>
        Enumerable
            .Range(-8, 19)
            .Select(NoteName.FromFifths)
            .Where(name => name.PitchClass == root && Math.Abs(name.Alteration) <= 1)
            .Select(name => new Chord(name, quality))
            .MinBy(chord => (OddNames(chord, spell), Accidentals(chord)))!
            .Root;

    private static int Accidentals(Chord chord) => chord.Notes.Sum(note => Math.Abs(note.Alteration));

    private static int Points(ChordName name) => name.Chord.Quality.Weight + BassRank(name.Chord) + Departures(name);

    private static int Departures(ChordName name) => name.Omitted.Count + name.Added.Count;

    private static int BassRank(Chord chord) =>
        chord.Inversion switch
        {
            0 => 0,
            > 0 => 1,
            _ => 2,
        };
}
