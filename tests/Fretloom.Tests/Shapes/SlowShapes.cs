using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

/// <summary>The slow, obvious way to every shape: all fret assignments there are, one by one, filtered by what the words mean.</summary>
internal static class SlowShapes
{
    /// <summary>Every assignment of a fret, or with <paramref name="muted"/> of none, to each string; far string first.</summary>
    public static IEnumerable<List<Spot>> Assignments(NeckMap map, StringSet strings, bool muted)
    {
        IEnumerable<List<Spot>> rows =
        [
            [],
        ];
        foreach (var number in strings.Numbers)
        {
            var spots = map.Spots.Where(spot => spot.String == number).ToList();
            rows = rows.SelectMany(row =>
                spots.Select(spot => row.Append(spot).ToList()).Concat(muted ? [row] : Array.Empty<List<Spot>>())
            );
        }

        return rows;
    }

    public static IEnumerable<string> OneNotePerString(NeckMap map, Chord chord, Voicing.OneNotePerString voicing) =>
        Runs(map, Names(chord).Count, voicing.Arrangement)
            .SelectMany(run => OneNotePerString(map, run, Assignments(map, run, muted: false), chord, voicing));

    /// <summary>Of the assignments on one run of strings, those that the words mean.</summary>
    public static IEnumerable<string> OneNotePerString(
        NeckMap map,
        StringSet run,
        IEnumerable<List<Spot>> assignments,
        Chord chord,
        Voicing.OneNotePerString voicing
    )
    {
        var wanted = PitchClassSet.Of(Names(chord).Select(name => name.PitchClass));
        return from spots in assignments
            where PitchClassSet.Of(Sounds(map, spots).Select(PitchClass.FromSemitones)) == wanted
            where IsInPosition(map, spots, voicing.Position)
            where IsArranged(map, spots, chord, voicing.Arrangement)
            where IsBass(map, spots, chord, voicing.Inversions)
            select $"{run}: {Find.Frets(run, spots)}";
    }

    /// <summary>Drop 3 also looks at one string more and leaves out the second from the lowest-sounding one.</summary>
    private static IEnumerable<StringSet> Runs(NeckMap map, int size, Arrangement arrangement) =>
        from wanted in arrangement == Arrangement.DropThree ? new[] { size, size + 1 } : [size]
        from start in Enumerable.Range(0, Math.Max(0, map.Strings.Count - wanted + 1))
        let run = map.Strings.Numbers.Skip(start).Take(wanted).ToList()
        let second = run.OrderBy(number => map.Instrument.String(number).Open.MidiNumber).ElementAt(1)
        select new StringSet(wanted == size ? run : run.Where(number => number != second));

    public static IEnumerable<string> Strummed(
        NeckMap map,
        Chord chord,
        int? position,
        ValueList<int> inversions,
        bool anyBass
    )
    {
        var fitting = Assignments(map, map.Strings, muted: true)
            .Where(spots => spots.Count > 0 && IsRun(map, spots) && IsHeld(map, spots, chord, 4))
            .Where(spots => IsInPosition(map, WithoutShort(map, spots), position))
            .Where(spots => IsBass(map, spots, chord, anyBass ? [] : inversions))
            .ToList();
        return fitting
            .Where(spots => fitting.All(other => !IsPart(spots, other) || IsEasier(map, spots, other)))
            .Select(spots => Find.Frets(map.Strings, spots));
    }

    public static IEnumerable<string> Easy(NeckMap map, Chord chord, int count, int? position) =>
        Assignments(map, map.Strings, muted: true)
            .Where(spots => spots.Count == count && IsRun(map, spots) && IsHeld(map, spots, chord, 3))
            .Where(spots => IsInPosition(map, WithoutShort(map, spots), position ?? 1) && IsBass(map, spots, chord, []))
            .Select(spots => Find.Frets(map.Strings, spots));

    private static bool IsPart(List<Spot> spots, List<Spot> other) =>
        other.Count > spots.Count && spots.All(other.Contains);

    private static bool IsEasier(NeckMap map, List<Spot> part, List<Spot> whole) =>
        part.Count >= 4 && Fingers(map, part) < Fingers(map, whole);

    private static List<Spot> WithoutShort(NeckMap map, List<Spot> spots) =>
        [.. spots.Where(spot => map.Instrument.String(spot.String).StartsAtFret == 0)];

    private static List<NoteName> Names(Chord chord) =>
        chord.Inversion < 0 ? [.. chord.Notes, chord.Bass] : [.. chord.Notes];

    private static List<int> Sounds(NeckMap map, IEnumerable<Spot> spots) =>
        spots.Select(spot => map.Instrument.MidiAt(spot)!.Value).ToList();

    private static int Class(int midi) => midi % 12;

    private static bool IsOpen(NeckMap map, Spot spot) => spot.Fret == map.Instrument.String(spot.String).StartsAtFret;

    private static bool IsInPosition(NeckMap map, List<Spot> spots, int? position) =>
        position is null
        || spots.All(spot =>
            IsOpen(map, spot) ? position == 1 : Enumerable.Range(position.Value, 4).Contains(spot.Fret)
        );

    private static bool IsBass(NeckMap map, List<Spot> spots, Chord chord, ValueList<int> inversions)
    {
        var lowest = Class(Sounds(map, spots).Min());
        return chord.Bass != chord.Root ? lowest == chord.Bass.PitchClass.Number
            : inversions.Count == 0 ? chord.Notes.Any(note => note.PitchClass.Number == lowest)
            : inversions.Any(inversion => chord.Notes[inversion].PitchClass.Number == lowest);
    }

    /// <summary>Close: rising on strings that sound ever higher when open, the members in order round the stack, each gap under an octave.</summary>
    private static bool IsArranged(NeckMap map, List<Spot> spots, Chord chord, Arrangement arrangement)
    {
        if (arrangement == Arrangement.AnyOrder)
        {
            return true;
        }

        var sounds = Sounds(map, spots.OrderBy(spot => map.Instrument.String(spot.String).Open.MidiNumber));
        if (!sounds.Zip(sounds.Skip(1)).All(pair => pair.First < pair.Second))
        {
            return false;
        }

        if (arrangement == Arrangement.Close)
        {
            return IsClose(sounds, chord);
        }

        var lifted = sounds.Skip(1).Append(sounds[0] + 12).Order().ToList();
        var fromTheTop = arrangement == Arrangement.DropTwo ? 2 : 3;
        return IsClose(lifted, chord) && lifted[^fromTheTop] == sounds[0] + 12;
    }

    private static bool IsClose(List<int> sounds, Chord chord)
    {
        var stack = Names(chord).Select(name => name.PitchClass.Number).ToList();
        var start = stack.IndexOf(Class(sounds[0]));
        return sounds.Index().All(sound => Class(sound.Item) == stack[(start + sound.Index) % stack.Count])
            && sounds.Zip(sounds.Skip(1)).All(pair => pair.Second - pair.First is > 0 and < 12);
    }

    private static bool IsRun(NeckMap map, List<Spot> spots)
    {
        var places = spots.Select(spot => map.Strings.Numbers.ToList().IndexOf(spot.String)).ToList();
        return places.Max() - places.Min() == spots.Count - 1;
    }

    private static bool IsHeld(NeckMap map, List<Spot> spots, Chord chord, int mostFrets)
    {
        var sounding = Sounds(map, spots).Select(Class).ToList();
        var names = Names(chord).Select(name => name.PitchClass.Number).ToList();
        var needed = names.Where((_, index) => !MayBeMissing(chord, index));
        if (!sounding.All(names.Contains) || !needed.All(sounding.Contains))
        {
            return false;
        }

        if (chord.Inversion < 0 && sounding.Count(one => one == chord.Bass.PitchClass.Number) > 1)
        {
            return false;
        }

        var nutStrings = WithoutShort(map, spots);
        if (spots.Except(nutStrings).Any(spot => !IsOpen(map, spot)))
        {
            return false;
        }

        var pressed = nutStrings.Where(spot => spot.Fret > 0).ToList();
        if (pressed.Count == 0)
        {
            return true;
        }

        var (low, high) = (pressed.Min(spot => spot.Fret), pressed.Max(spot => spot.Fret));
        return high - low < mostFrets
            && (pressed.Count == nutStrings.Count || high <= 4)
            && Fingers(map, spots) <= 4
            && !IsArchedTooWide(map, spots, low);
    }

    private static bool MayBeMissing(Chord chord, int index) =>
        index < chord.Notes.Count
        && chord.Notes.Count >= 4
        && (
            chord.Quality.Intervals[index] == Interval.Parse("P5")
            || chord.Quality.Omissible.Contains(chord.Quality.Intervals[index])
        );

    /// <summary>One for each pressed note, or one finger across: over every string from the far note at the lowest fret to the floor, none of them open.</summary>
    private static int Fingers(NeckMap map, List<Spot> spots)
    {
        var pressed = spots.Where(spot => !IsOpen(map, spot)).ToList();
        if (pressed.Count == 0)
        {
            return 0;
        }

        var low = pressed.Min(spot => spot.Fret);
        var far = pressed.Where(spot => spot.Fret == low).Max(spot => spot.String);
        return spots.Any(spot => spot.String <= far && IsOpen(map, spot))
            ? pressed.Count
            : pressed.Count(spot => spot.Fret > low) + 1;
    }

    private static bool IsArchedTooWide(NeckMap map, List<Spot> spots, int low)
    {
        var atLow = spots.Index().Where(one => one.Item.Fret == low && !IsOpen(map, one.Item)).ToList();
        var between = spots[atLow[0].Index..atLow[^1].Index];
        return atLow[^1].Index - atLow[0].Index >= 4
            && between.Exists(spot => spot.Fret > low && !IsOpen(map, spot))
            && Enumerable
                .Range(1, spots.Count - 2)
                .Any(at => IsOpen(map, spots[at]) && !IsOpen(map, spots[at - 1]) && !IsOpen(map, spots[at + 1]));
    }
}
