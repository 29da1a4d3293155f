using Fretloom.Exhibits;

namespace Fretloom.Tests.Exhibits;

public class ExhibitTests
{
    private const string Here = " these strings and frets; look at more frets, or on other strings.";

    private const string HereOrTurned =
        " these strings and frets with the root lowest; say 'in every inversion', or look at more frets, or on other strings.";

    private static Exhibit Shown(string sentence) => ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;

    [Theory]
    [InlineData("the triads, in C major, on strings 4-1", null)]
    [InlineData("the notes of the key, in C major", null)]
    [InlineData("every F#, on strings 5 and 4, frets 0-3", "None of these notes lies on" + Here)]
    [InlineData(
        "the chord Imaj7, in C major, on strings 4-1, frets 1-1",
        "No shape of Imaj7 (Cmaj7) fits" + HereOrTurned
    )]
    [InlineData("the chord Cm7, on a ukulele, one note per string", "No shape of Cm7 fits" + HereOrTurned)]
    // Cm7 is 3333 on a ukulele, where its third, E flat, sounds lowest: common practice, no source.
    [InlineData("the seventh chords, on a ukulele, in Bb major, in every inversion", null)]
    [InlineData("the seventh chords, on a ukulele, in Bb major", "No shape of ii7 (Cm7) fits" + HereOrTurned)]
    [InlineData("C, F and Bbmaj7, on a ukulele, in fifth position", "No shape of Bbmaj7 fits" + HereOrTurned)]
    [InlineData(
        "the chords vi I vi I, in C major, on strings 3-1, frets 0-4, in close position",
        "No shape of I (C) fits" + HereOrTurned
    )]
    public void What_is_missing_is_named(string sentence, string? missing) =>
        Assert.Equal(missing, Shown(sentence).WhatIsMissing);

    [Fact]
    public void Every_chord_asked_for_has_a_shape_or_is_missing()
    {
        for (var last = 0; last <= 12; last++)
        {
            var exhibit = Shown($"the triads, in C major, on strings 3-1, frets 0-{last}");
            var found = exhibit.Shapes!.Value.Select(shape => shape.Source).Distinct().ToList();

            Assert.Equal(7, found.Count + exhibit.WithoutShapes.Count);
            Assert.Empty(found.Intersect(exhibit.WithoutShapes));
        }
    }
}
