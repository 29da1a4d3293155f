using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Tests.Neck;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Lines with the fingers that teachers give them: common practice, no source.</summary>
/// <remarks>
/// The lines were split before any weight was touched. Weights were set while looking at <see cref="Set"/>; the others were only
/// counted, but for three that failed and then joined <see cref="Set"/>. Lines are written string by string,
/// <c>5: 5 7 | 4: 4 5 7</c>.
/// </remarks>
internal static class PracticeLines
{
    // The lines that were asked for, and half of the others.
    // csharpier-ignore
    public static PracticeLine[] Set { get; } =
    [
        new("major scale, one octave from string 5", "guitar", "5: 5 7 | 4: 4 5 7 | 3: 4 6 7", "2 4 1 2 4 1 3 4"),
        new("the same moved up to fret 8", "guitar", "5: 8 10 | 4: 7 8 10 | 3: 7 9 10", "2 4 1 2 4 1 3 4"),
        new("the same moved down to fret 3", "guitar", "5: 3 5 | 4: 2 3 5 | 3: 2 4 5", "2 4 1 2 4 1 3 4"),
        new("four frets in a row", "guitar", "1: 5 6 7 8", "1 2 3 4"),
        new("four frets in a row, low", "guitar", "3: 1 2 3 4", "1 2 3 4"),
        new("four frets in a row, high", "guitar", "2: 9 10 11 12", "1 2 3 4"),
        new("three notes a string, semitone and tone", "guitar", "4: 7 8 10", "1 2 4"),
        new("three notes a string, tone and semitone", "guitar", "4: 7 9 10", "1 3 4"),
        new("three notes a string, tone and tone", "guitar", "4: 7 9 11", "1 2 4"),
        new("three notes a string, tone and tone, lower", "guitar", "6: 5 7 9", "1 2 4"),
        new("minor pentatonic box", "guitar", "6: 5 8 | 5: 5 7 | 4: 5 7 | 3: 5 7 | 2: 5 8 | 1: 5 8", "1 4 1 3 1 3 1 3 1 4 1 4"),
        new("C major in first position", "guitar", "5: 3 | 4: 0 2 3 | 3: 0 2 | 2: 0 1", "3 0 2 3 0 2 0 1"),
        new("bass, three frets in a row, low", "bass", "4: 1 2 3", "1 2 4"),
        new("bass, three frets in a row, high", "bass", "3: 9 10 11", "1 2 3"),

        new("natural minor from string 5", "guitar", "5: 5 7 8 | 4: 5 7 8 | 3: 5 7", "1 3 4 1 3 4 1 3"),
        new("harmonic minor from string 6", "guitar", "6: 5 7 8 | 5: 5 7 8 | 4: 6 7", "1 3 4 1 3 4 2 3"),
        new("major scale, two octaves in position", "guitar", "6: 5 7 | 5: 4 5 7 | 4: 4 6 7 | 3: 4 6 7 | 2: 5 7 | 1: 4 5", "2 4 1 2 4 1 3 4 1 3 4 2 4 1 2"),
        new("Mixolydian from string 5", "guitar", "5: 5 7 | 4: 4 5 7 | 3: 4 5 7", "2 4 1 2 4 1 2 4"),
        new("blues scale in the box", "guitar", "6: 5 8 | 5: 5 6 7 | 4: 5 7 | 3: 5 7 8 | 2: 5 8 | 1: 5 8", "1 4 1 2 3 1 3 1 3 4 1 4 1 4"),
        new("major pentatonic, two octaves in position", "guitar", "6: 5 7 | 5: 4 7 | 4: 4 7 | 3: 4 6 | 2: 5 7 | 1: 5 7", "2 4 1 4 1 4 1 3 2 4 2 4"),
        new("four frets on each string", "guitar", "6: 5 6 7 8 | 5: 5 6 7 8 | 4: 5 6 7 8", "1 2 3 4 1 2 3 4 1 2 3 4"),
        new("G major, two octaves in first position", "guitar", "6: 3 | 5: 0 2 3 | 4: 0 2 4 | 3: 0 2 | 2: 0 1 3 | 1: 0 2 3", "3 0 2 3 0 2 4 0 2 0 1 3 0 2 3"),
        new("A major in first position", "guitar", "5: 0 2 4 | 4: 0 2 4 | 3: 1 2", "0 2 4 0 2 4 1 2"),
        new("E minor pentatonic in first position", "guitar", "6: 0 3 | 5: 0 2 | 4: 0 2 | 3: 0 2 | 2: 0 3 | 1: 0 3", "0 3 0 2 0 2 0 2 0 3 0 3"),
        new("A natural minor in first position", "guitar", "5: 0 2 3 | 4: 0 2 3 | 3: 0 2", "0 2 3 0 2 3 0 2"),
        new("E harmonic minor in first position", "guitar", "6: 0 2 3 | 5: 0 2 3 | 4: 1 2", "0 2 3 0 2 3 1 2"),
        new("E blues scale in first position", "guitar", "6: 0 3 | 5: 0 1 2 | 4: 0 2 | 3: 0 2 3", "0 3 0 1 2 0 2 0 2 3"),
        new("three notes a string, two octaves", "guitar", "6: 3 5 7 | 5: 3 5 7 | 4: 4 5 7 | 3: 4 5 7 | 2: 5 7 8 | 1: 5 7 8", "1 2 4 1 2 4 1 2 4 1 2 4 1 3 4 1 3 4"),
        new("C major on a ukulele", "ukulele", "3: 0 2 | 2: 0 1 3 | 1: 0 2 3", "0 2 0 1 3 0 2 3"),
        new("C major on a low-G ukulele", "low-G ukulele", "3: 0 2 | 2: 0 1 3 | 1: 0 2 3", "0 2 0 1 3 0 2 3"),
        new("G major on a mandolin", "mandolin", "4: 0 2 4 5 | 3: 0 2 4 5", "0 1 2 3 0 1 2 3"),
        new("A major on a mandolin", "mandolin", "4: 2 4 6 | 3: 0 2 4 6 | 2: 0", "1 2 3 0 1 2 3 0"),
        new("F major on a mandolin", "mandolin", "3: 3 5 | 2: 0 1 3 5 | 1: 0 1", "2 3 0 1 2 3 0 1"),
        new("bass, major scale from fret 8", "bass", "4: 8 10 | 3: 7 8 10 | 2: 7 9 10", "2 4 1 2 4 1 3 4"),
        new("bass, natural minor from fret 5", "bass", "4: 5 7 8 | 3: 5 7 8 | 2: 5 7", "1 3 4 1 3 4 1 3"),
        new("bass, E Phrygian in first position", "bass", "4: 0 1 3 | 3: 0 2 3 | 2: 0 2", "0 1 4 0 2 4 0 2"),
        new("banjo, D major in first position", "banjo", "4: 0 2 4 | 3: 0 2 | 2: 0 2 3", "0 2 4 0 2 0 2 3"),
        new("harmonic minor, two octaves", "guitar", "6: 5 7 8 | 5: 5 7 8 | 4: 6 7 | 3: 4 5 7 | 2: 5 6 | 1: 4 5", "1 3 4 1 3 4 2 3 1 2 4 2 3 1 2"),
        new("melodic minor from string 5", "guitar", "5: 5 7 8 | 4: 5 7 | 3: 4 6 7", "1 3 4 1 3 1 3 4"),
        new("dominant seventh arpeggio from string 6", "guitar", "6: 5 | 5: 4 7 | 4: 5", "2 1 4 2"),
        new("half-diminished arpeggio from string 6", "guitar", "6: 5 8 | 5: 6 | 4: 5", "1 4 2 1"),
        new("G major, two octaves in second position", "guitar", "6: 3 5 | 5: 2 3 5 | 4: 2 4 5 | 3: 2 4 5 | 2: 3 5 | 1: 2 3", "2 4 1 2 4 1 3 4 1 3 4 2 4 1 2"),
        new("minor pentatonic box at fret 1", "guitar", "6: 1 4 | 5: 1 3 | 4: 1 3", "1 4 1 3 1 3"),
        new("E Phrygian dominant in first position", "guitar", "6: 0 1 4 | 5: 0 2 3 | 4: 0 2", "0 1 4 0 2 3 0 2"),
        new("B-flat major in first position", "guitar", "5: 1 3 | 4: 0 1 3 | 3: 0 2 3", "1 3 0 1 3 0 2 3"),
        new("bass, dominant seventh arpeggio", "bass", "4: 5 | 3: 4 7 | 2: 5", "2 1 4 2"),
        new("bass, F major in first position", "bass", "4: 1 3 | 3: 0 1 3 | 2: 0 2 3", "1 4 0 1 4 0 2 4"),
        new("ukulele, chromatic in first position", "ukulele", "3: 0 1 2 3 | 2: 0 1 2 3 4", "0 1 2 3 0 1 2 3 4"),
        new("ukulele, A minor pentatonic in first position", "ukulele", "3: 0 2 | 2: 0 3 | 1: 0 3", "0 2 0 3 0 3"),
        new("D natural minor on a mandolin", "mandolin", "3: 0 2 3 5 | 2: 0 1 3 5", "0 1 2 3 0 1 2 3"),
        new("A major arpeggio on a mandolin", "mandolin", "4: 2 6 | 3: 2 7", "1 3 1 4"),
        new("G major on an octave mandolin", "octave mandolin", "4: 0 2 4 5 | 3: 0 2 4 5", "0 1 3 4 0 1 3 4"),
        new("natural minor, two octaves", "guitar", "6: 5 7 8 | 5: 5 7 8 | 4: 5 7 | 3: 4 5 7 | 2: 5 6 8 | 1: 5", "1 3 4 1 3 4 1 3 1 2 4 1 2 4 1"),
        new("bass, major scale from fret 3", "bass", "3: 3 5 | 2: 2 3 5 | 1: 2 4 5", "2 4 1 2 4 1 3 4"),
        new("G natural minor, two octaves", "guitar", "6: 3 5 6 | 5: 3 5 6 | 4: 3 5 | 3: 2 3 5 | 2: 3 4 6 | 1: 3", "1 3 4 1 3 4 1 3 1 2 4 1 2 4 1"),
    ];

    // The other half.
    // csharpier-ignore
    public static PracticeLine[] Fresh { get; } =
    [
        new("natural minor from string 6", "guitar", "6: 5 7 8 | 5: 5 7 8 | 4: 5 7", "1 3 4 1 3 4 1 3"),
        new("harmonic minor from string 5", "guitar", "5: 5 7 8 | 4: 5 7 8 | 3: 6 7", "1 3 4 1 3 4 2 3"),
        new("major scale from string 6", "guitar", "6: 8 10 | 5: 7 8 10 | 4: 7 9 10", "2 4 1 2 4 1 3 4"),
        new("Lydian from string 5", "guitar", "5: 5 7 | 4: 4 6 7 | 3: 4 6 7", "2 4 1 3 4 1 3 4"),
        new("Phrygian from string 6", "guitar", "6: 5 6 8 | 5: 5 7 8 | 4: 5 7", "1 2 4 1 3 4 1 3"),
        new("major pentatonic, one octave from string 5", "guitar", "5: 5 7 | 4: 4 7 | 3: 4 7", "2 4 1 4 1 4"),
        new("minor pentatonic box at fret 10", "guitar", "6: 10 13 | 5: 10 12 | 4: 10 12 | 3: 10 12 | 2: 10 13 | 1: 10 13", "1 4 1 3 1 3 1 3 1 4 1 4"),
        new("second pentatonic box", "guitar", "6: 8 10 | 5: 7 10 | 4: 7 10 | 3: 7 9 | 2: 8 10 | 1: 8 10", "2 4 1 4 1 4 1 3 2 4 2 4"),
        new("C major, two octaves in second position", "guitar", "6: 8 10 | 5: 7 8 10 | 4: 7 9 10 | 3: 7 9 10 | 2: 8 10 | 1: 7 8", "2 4 1 2 4 1 3 4 1 3 4 2 4 1 2"),
        new("D major in first position", "guitar", "4: 0 2 4 | 3: 0 2 | 2: 0 2 3", "0 2 4 0 2 0 2 3"),
        new("E major in first position", "guitar", "6: 0 2 4 | 5: 0 2 4 | 4: 1 2", "0 2 4 0 2 4 1 2"),
        new("F major in first position", "guitar", "4: 3 | 3: 0 2 3 | 2: 1 3 | 1: 0 1", "3 0 2 3 1 3 0 1"),
        new("A minor pentatonic in first position", "guitar", "5: 0 3 | 4: 0 2 | 3: 0 2 | 2: 1 3 | 1: 0 3", "0 3 0 2 0 2 1 3 0 3"),
        new("A harmonic minor in first position", "guitar", "5: 0 2 3 | 4: 0 2 3 | 3: 1 2", "0 2 3 0 2 3 1 2"),
        new("E natural minor in first position", "guitar", "6: 0 2 3 | 5: 0 2 3 | 4: 0 2", "0 2 3 0 2 3 0 2"),
        new("D natural minor in first position", "guitar", "4: 0 2 3 | 3: 0 2 3 | 2: 1 3", "0 2 3 0 2 3 1 3"),
        new("chromatic in first position", "guitar", "6: 0 1 2 3 4 | 5: 0 1 2 3 4", "0 1 2 3 4 0 1 2 3 4"),
        new("three notes a string from fret 8", "guitar", "6: 8 10 12 | 5: 8 10 12 | 4: 9 10 12 | 3: 9 10 12 | 2: 10 12 13 | 1: 10 12 13", "1 2 4 1 2 4 1 2 4 1 2 4 1 3 4 1 3 4"),
        new("every finger on its own string", "guitar", "4: 5 | 3: 6 | 2: 7 | 1: 8", "1 2 3 4"),
        new("F major on a ukulele, in first position", "ukulele", "3: 0 2 | 2: 0 1 3 | 1: 0 1 3", "0 2 0 1 3 0 1 3"),
        new("G major on a ukulele, in first position", "ukulele", "3: 0 2 | 2: 0 2 3 | 1: 0 2 3", "0 2 0 2 3 0 2 3"),
        new("G major on a low-G ukulele", "low-G ukulele", "4: 0 2 4 | 3: 0 2 | 2: 0 2 3", "0 2 4 0 2 0 2 3"),
        new("G major on a baritone ukulele", "baritone ukulele", "3: 0 2 | 2: 0 1 3 | 1: 0 2 3", "0 2 0 1 3 0 2 3"),
        new("D major on a mandolin", "mandolin", "3: 0 2 4 5 | 2: 0 2 4 5", "0 1 2 3 0 1 2 3"),
        new("C major on a mandolin", "mandolin", "4: 5 | 3: 0 2 3 5 | 2: 0 2 3", "3 0 1 2 3 0 1 2"),
        new("G major with the little finger on a mandolin", "mandolin", "4: 0 2 4 5 7 | 3: 2 4 5", "0 1 2 3 4 1 2 3"),
        new("E natural minor on a mandolin", "mandolin", "3: 2 4 5 | 2: 0 2 3 5 | 1: 0", "1 2 3 0 1 2 3 0"),
        new("B-flat major on a mandolin", "mandolin", "4: 3 5 | 3: 0 1 3 5 | 2: 0 1", "2 3 0 1 2 3 0 1"),
        new("bass, chromatic, low", "bass", "3: 2 3 4", "1 2 4"),
        new("bass, a tone, low", "bass", "4: 1 3", "1 4"),
        new("bass, four frets in a row, high", "bass", "2: 9 10 11 12", "1 2 3 4"),
        new("bass, minor pentatonic box", "bass", "4: 5 8 | 3: 5 7 | 2: 5 7", "1 4 1 3 1 3"),
        new("banjo, minor pentatonic box", "banjo", "3: 5 8 | 2: 5 7", "1 4 1 3"),
        new("major seventh arpeggio from string 5", "guitar", "5: 5 | 4: 4 7 | 3: 6 7", "2 1 4 3 4"),
        new("dominant seventh arpeggio from string 5", "guitar", "5: 5 | 4: 4 7 | 3: 5 7", "2 1 4 2 4"),
        new("major third on two strings", "guitar", "6: 8 | 5: 7 | 6: 8 | 5: 7", "2 1 2 1"),
        new("Dorian from string 5", "guitar", "5: 5 7 8 | 4: 5 7 | 3: 4 5 7", "1 3 4 1 3 1 2 4"),
        new("major seventh arpeggio from string 6", "guitar", "6: 5 | 5: 4 7 | 4: 6", "2 1 4 3"),
        new("minor seventh arpeggio from string 6", "guitar", "6: 5 8 | 5: 7 | 4: 5", "1 4 3 1"),
        new("D major in second position", "guitar", "5: 5 | 4: 2 4 5 | 3: 2 4 | 2: 2 3", "4 1 3 4 1 3 1 2"),
        new("minor pentatonic box at fret 15", "guitar", "6: 15 18 | 5: 15 17 | 4: 15 17", "1 4 1 3 1 3"),
        new("the natural notes in first position", "guitar", "6: 0 1 3 | 5: 0 2 3 | 4: 0 2 3 | 3: 0 2 | 2: 0 1 3 | 1: 0 1 3", "0 1 3 0 2 3 0 2 3 0 2 0 1 3 0 1 3"),
        new("E-flat major in first position", "guitar", "4: 1 3 | 3: 0 1 3 | 2: 1 3 4", "1 3 0 1 3 1 3 4"),
        new("bass, blues scale", "bass", "4: 5 8 | 3: 5 6 7 | 2: 5 7", "1 4 1 2 3 1 3"),
        new("bass, major pentatonic", "bass", "4: 5 7 | 3: 4 7 | 2: 4 7", "2 4 1 4 1 4"),
        new("ukulele, D natural minor in first position", "ukulele", "3: 2 | 2: 0 1 3 | 1: 0 1", "2 0 1 3 0 1"),
        new("E major on a mandolin", "mandolin", "3: 2 4 6 | 2: 0 2 4 6 | 1: 0", "1 2 3 0 1 2 3 0"),
        new("G major arpeggio on a mandolin", "mandolin", "4: 0 4 | 3: 0 5 | 2: 2 5", "0 2 0 3 1 3"),
    ];

    // Written after the first count of the fresh lines, before the weights were set anew.
    // csharpier-ignore
    public static PracticeLine[] Later { get; } =
    [
        new("harmonic minor, two octaves from string 6, low", "guitar", "6: 3 5 6 | 5: 3 5 6 | 4: 4 5", "1 3 4 1 3 4 2 3"),
        new("major scale, one octave from string 6 at fret 3", "guitar", "6: 3 5 | 5: 2 3 5 | 4: 2 4 5", "2 4 1 2 4 1 3 4"),
        new("blues scale from string 5", "guitar", "5: 5 8 | 4: 5 6 7 | 3: 5 7", "1 4 1 2 3 1 3"),
        new("Locrian from string 6", "guitar", "6: 7 8 10 | 5: 7 8 10 | 4: 7 9", "1 2 4 1 2 4 1 3"),
        new("fourth pentatonic box", "guitar", "6: 12 15 | 5: 12 15 | 4: 12 14 | 3: 12 14 | 2: 13 15 | 1: 12 15", "1 4 1 4 1 3 1 3 2 4 1 4"),
        new("D harmonic minor in first position", "guitar", "4: 0 2 3 | 3: 0 2 3 | 2: 2 3", "0 2 3 0 2 3 2 3"),
        new("top of the C major scale in first position", "guitar", "2: 1 3 | 1: 0 1 3", "1 3 0 1 3"),
        new("A Dorian in first position", "guitar", "5: 0 2 3 | 4: 0 2 4 | 3: 0 2", "0 2 3 0 2 4 0 2"),
        new("E blues with the lowered fifth on string 5", "guitar", "5: 0 1 2 | 4: 0 2", "0 1 2 0 2"),
        new("seventh position, B minor pentatonic", "guitar", "6: 7 10 | 5: 7 9 | 4: 7 9 | 3: 7 9 | 2: 7 10 | 1: 7 10", "1 4 1 3 1 3 1 3 1 4 1 4"),
        new("diminished arpeggio in four frets", "guitar", "4: 5 | 3: 7 | 2: 6 | 1: 8", "1 3 2 4"),
        new("four frets in a row on a banjo", "banjo", "1: 5 6 7 8", "1 2 3 4"),
        new("ukulele, E minor pentatonic in first position", "ukulele", "2: 0 3 | 1: 0 2", "0 3 0 2"),
        new("baritone ukulele, C major in first position", "baritone ukulele", "3: 0 2 | 2: 0 1 3 | 1: 0 1 3", "0 2 0 1 3 0 1 3"),
        new("mandolin, G harmonic minor", "mandolin", "4: 0 2 3 5 | 3: 0 1 4 5", "0 1 2 3 0 1 2 3"),
        new("mandolin, B minor", "mandolin", "4: 4 6 | 3: 0 2 4 5 | 2: 0 2", "2 3 0 1 2 3 0 1"),
        new("mandola, C major", "mandola", "4: 0 2 4 5 | 3: 0 2 4 5", "0 1 2 3 0 1 2 3"),
        new("bass, major scale from fret 5", "bass", "3: 5 7 | 2: 4 5 7 | 1: 4 6 7", "2 4 1 2 4 1 3 4"),
        new("bass, harmonic minor from fret 7", "bass", "4: 7 9 10 | 3: 7 9 10 | 2: 8 9", "1 3 4 1 3 4 2 3"),
        new("bass, walking up in first position", "bass", "4: 0 | 4: 2 3 | 3: 0 2 3", "0 2 4 0 2 4"),
    ];
}

/// <summary>A line with its fingers.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Instrument">On what.</param>
/// <param name="Places">String by string.</param>
/// <param name="Fingers">A finger for each note, 0 for an open string.</param>
public sealed record PracticeLine(string Name, string Instrument, string Places, string Fingers)
{
    public ValueList<LineNote> Notes =>
        (
            from text in Places.Split(" | ")
            let ends = text.Split(": ")
            from fret in ends[1].Split(' ')
            select (LineNote)new LineNote.At(Spot.Parse($"{ends[0]}:{fret}"))
        ).ToValueList();

    public Player Player(double handMm) => new(Necks.Find(Instrument), new HandSize(handMm));

    public override string ToString() => $"{Instrument}: {Name}";
}
