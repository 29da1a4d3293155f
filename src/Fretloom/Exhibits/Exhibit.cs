using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>A show sentence worked out: everything that a picture, a page or a JSON document needs, with no music left to compute.</summary>
public sealed record Exhibit
{
    /// <summary>The sentence with every default filled in that concerns it, printed canonically.</summary>
    public required string Sentence { get; init; }

    /// <summary>The phrases of <see cref="Sentence"/>, in its order; empty for what no sentence asked for.</summary>
    public ValueList<SaidPhrase> Phrases { get; init; }

    /// <summary>What is shown, for a heading, with Unicode accidentals: <c>The seventh chords in B♭ major</c>; empty for what no sentence asked for.</summary>
    public string Name { get; init; } = "";

    /// <summary>The instrument (with capo), key, strings and frets.</summary>
    public required NeckMap Map { get; init; }

    /// <summary>What stands on the marks.</summary>
    public required LabelStyle Labels { get; init; }

    /// <summary>How notes and strings are named.</summary>
    public NoteNaming NoteNames { get; init; }

    /// <summary>Whether pictures are mirrored for a left-handed player; an instrument that is turned over is drawn as it is.</summary>
    public bool IsLeftHanded { get; init; }

    /// <summary>The hand it is for, on the instrument of <see cref="Map"/>.</summary>
    public required Player Player { get; init; }

    /// <summary>The notes asked for, string by string from the far side, frets ascending; null when none were asked for.</summary>
    public ValueList<NeckNote>? Notes { get; init; }

    /// <summary>The landmarks; null when not asked for.</summary>
    public Landmarks? Landmarks { get; init; }

    /// <summary>Whether the thirds among the landmarks were asked for by themselves, to be seen on the neck.</summary>
    public bool ShowsThirds { get; init; }

    /// <summary>The shapes asked for, chord by chord in the order asked, each chord's sorted by what the hand reaches: in reach, wide, very wide, at last
    /// those that no hand can take; else from the nut on. Null when none were asked for.</summary>
    public ValueList<Shape>? Shapes { get; init; }

    /// <summary>The shapes as the hand takes them, in the order of <see cref="Shapes"/>; empty when none were asked for.</summary>
    public ValueList<ShapeInHand> InHand { get; init; }

    /// <summary>Fingers for single notes in a position, or for spots that are taken as one shape, far string first; empty when no fingers were asked for.</summary>
    public ValueList<FingeredNote> NoteFingers { get; init; }

    /// <summary>The pair of fingers that works hardest in <see cref="NoteFingers"/>; null when no two are down at one time.</summary>
    public Stretch? NoteStretch { get; init; }

    /// <summary>Whether fingers are shown: inside the marks with <see cref="LabelStyle.Fingers"/>, else beside them.</summary>
    public bool ShowsFingers { get; init; }

    /// <summary>Whether a hand was named, so that shapes are told apart by what it reaches.</summary>
    public bool ComparesReach { get; init; }

    /// <summary>Chords and scales that were asked for and have no shape here, each once, in the order asked.</summary>
    public ValueList<ShapeSource> WithoutShapes { get; init; }

    /// <summary>Whether inversions were asked for, so that each shape is known by its lowest note too.</summary>
    public bool AsksForInversions { get; init; }

    /// <summary>Whether chords have their root lowest because nothing else was said.</summary>
    public bool HasRootLowest { get; init; }

    /// <summary>The symmetries; null when not asked for.</summary>
    public Symmetries? Symmetries { get; init; }

    /// <summary>What shows that a claim is false here; null where no claim is spoken of.</summary>
    public Culprits? Culprits { get; init; }

    /// <summary>
    /// Whether <see cref="Landmarks"/>, the centres of <see cref="Symmetries"/> and <see cref="Culprits"/> count a short string from its own
    /// nut, as claims do; spots are always those of the neck.
    /// </summary>
    public bool CountsFromOwnNut { get; init; }

    /// <summary>How frets are counted where the neck counts them otherwise, in sentences; null elsewhere.</summary>
    public string? CountingNote { get; init; }

    /// <summary>Which of the notes and shapes asked for are not to be found here, as a sentence; null when none is missing.</summary>
    public string? WhatIsMissing =>
        WithoutShapes.Count > 0
            ? $"No shape of {string.Join(", ", WithoutShapes.Select(Named))} fits{(MayTurn ? HereOrTurned : Here)}"
        : Shapes is { Count: 0 } ? "No shape fits" + Here
        : Notes is { Count: 0 } ? "None of these notes lies on" + Here
        : null;

    /// <summary>Whether chords have no shape here with their root lowest, but may have one in an inversion.</summary>
    public bool MayTurn =>
        WithoutShapes.Count > 0 && HasRootLowest && WithoutShapes.All(source => source is ShapeSource.OfChord);

    private const string HereOrTurned =
        " these strings and frets with the root lowest; say 'in every inversion', or look at more frets, or on other strings.";

    private const string Here = " these strings and frets; look at more frets, or on other strings.";

    private static string Named(ShapeSource source) =>
        source is ShapeSource.OfChord { Roman: { } roman } ? $"{roman} ({source.Name})" : source.Name;

    /// <summary>A note as this exhibit names it, for display: with Unicode accidentals.</summary>
    public string NameOf(NoteName note) => NoteNameSystem.Of(NoteNames, Map.Key).Format(note, unicode: true);

    /// <summary>What stops a single note; null when no fingers were asked for, or they are those of shapes.</summary>
    public Finger? FingerAt(Spot spot)
    {
        foreach (var note in NoteFingers)
        {
            if (note.Spot == spot)
            {
                return note.Finger;
            }
        }

        return null;
    }

    /// <summary>The label of a note in the style of this exhibit, for display: with Unicode accidentals.</summary>
    /// <param name="pitch">The note.</param>
    /// <param name="degree">Its degree in the key.</param>
    /// <param name="member">Its place in the chord, or null for a note outside a chord (then its degree is shown).</param>
    /// <param name="finger">What stops it; null when that is not known.</param>
    public string LabelOf(Pitch pitch, Degree degree, string? member, Finger? finger = null) =>
        Labels switch
        {
            LabelStyle.Members when member is not null => member == "1" ? "R" : Accidentals.Pretty(member),
            LabelStyle.Names => NameOf(pitch.Name),
            LabelStyle.Intervals => Accidentals.Pretty(Map.Key.Tonic.IntervalTo(pitch.Name).ToDegreeText()),
            LabelStyle.Fingers => finger?.ToLabel() ?? "",
            _ => Accidentals.Pretty(degree.ToString()),
        };
}
