using Fretloom.Exercises;

namespace Fretloom.Scores.Tests;

/// <summary>Exercises of every kind, by the sentences that ask for them.</summary>
internal static class Repertoire
{
    private static readonly string[] Rhythms =
    [
        "in wholes",
        "in halves",
        "in quarters",
        "in eighths",
        "in swing eighths",
        "in triplets",
        "in sixteenths",
    ];

    /// <summary>A scale in every metre and rhythm that go together.</summary>
    public static IReadOnlyList<string> Scales { get; } =
    [
        .. from metre in Metre.All
        from rhythm in Rhythms
        where !metre.IsCompound || rhythm is not ("in swing eighths" or "in triplets")
        select $"play the scale, 3 notes a string, in D major, up and down, {rhythm}, in {metre}",
    ];

    /// <summary>Chords, strokes, picking, other instruments, other keys.</summary>
    public static IReadOnlyList<string> Others { get; } =
    [
        "play the seventh chords from I to IV, up and down, in eighths, at 72",
        "play the triads, in 6/8, up and down, in D major",
        "play the triads from I to IV, up, in every key, by fourths",
        "play the chords I vi ii V7, strummed, down down-up up-down-up, at 80",
        "play the chords C Am F G7, on a ukulele, strummed, down down-up up-down-up",
        "play the chords C Am F G7, picked p-i-m-a, sustained",
        "play Bm7b5 and E7, in A minor",
        "play the thirds on strings 2-1, in D major",
        "play the scale, on a bass, in E major, up and down, in quarters, frets 0-5",
        "play the triads, on a banjo, in G major, up",
        "play the open strings, on a banjo",
        "play the scale, 3 notes a string, in broken thirds, in Bb harmonic minor, from 60 to 96 in steps of 6",
        "play the scale, 3 notes a string, in F# major, with a capo at 2, picked down-up",
        "play every D, from low to high",
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Scales, .. Others];
}
