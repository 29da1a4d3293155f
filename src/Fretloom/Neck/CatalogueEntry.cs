using Fretloom.Theory;

namespace Fretloom.Neck;

/// <summary>An instrument of the catalogue with its other names and the sources of its figures.</summary>
/// <param name="Instrument">The instrument under its canonical name.</param>
/// <param name="OtherNames">Names that mean the same instrument, without article.</param>
/// <param name="TuningSource">Where the open pitches come from.</param>
/// <param name="ScaleSource">Where the scale length comes from. Numbers of frets are common practice, spacings assumptions, always.</param>
public sealed record CatalogueEntry(
    Instrument Instrument,
    ValueList<string> OtherNames,
    FigureSource TuningSource,
    FigureSource ScaleSource
)
{
    /// <summary>Reads one line of a table.</summary>
    /// <param name="name">The canonical name.</param>
    /// <param name="tuning">
    /// The string farthest from the floor first, as players say a tuning: <c>E2 A2</c>; a pair <c>G2/G3</c>, its naming pitch
    /// first; a unison pair <c>A4/</c>; a short string with the fret where it begins <c>G4@5</c>.
    /// </param>
    /// <param name="scaleLengthMm">Nut to bridge.</param>
    /// <param name="frets">How many.</param>
    /// <param name="spacing">Between neighbours.</param>
    /// <param name="sources">Of the tuning and of the scale length.</param>
    /// <param name="otherNames">Names that mean the same.</param>
    internal static CatalogueEntry Read(
        string name,
        string tuning,
        double scaleLengthMm,
        int frets,
        StringSpacing spacing,
        (FigureSource Tuning, FigureSource Scale) sources,
        params string[] otherNames
    ) =>
        new(
            new Instrument(name, tuning.Split(' ').Reverse().Select(ReadCourse), scaleLengthMm, frets, spacing),
            [.. otherNames],
            sources.Tuning,
            sources.Scale
        );

    private static Course ReadCourse(string text)
    {
        var start = text.Split('@');
        var pair = start[0].Split('/');
        var open = Pitch.Parse(pair[0]);
        Pitch? partner =
            pair.Length == 1 ? null
            : pair[1].Length == 0 ? open
            : Pitch.Parse(pair[1]);
        return new Course(open, partner, start.Length == 1 ? 0 : start[1][0] - '0');
    }
}
