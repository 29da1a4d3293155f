using System.Globalization;
using Fretloom.Neck;
using Fretloom.Testing;

namespace Fretloom.Tests.Neck;

/// <summary>Keeps <c>docs/instruments.md</c> the same as the catalogue.</summary>
public class InstrumentsPageTests
{
    private const string Head = """
        # Instruments

        The instruments that a sentence can name, with their other names. Case does not matter, hyphens and spaces are alike, `uke` is
        `ukulele`, and `7-string` is `seven-string`. Any of them can be tuned otherwise: `on a guitar tuned D2 A2 D3 G3 A3 D4`.

        Strings stand from the one farthest from the floor to string 1. `G2+G3` is a pair, its naming pitch first; `G4 from fret 5` is a short
        string that begins at the fifth fret and sounds G4 there. Pitches are those that sound; octave 4 begins at middle C.

        Where the figures come from:

        - **MEI**: the list of standard course tunings of the Music Encoding Initiative (MEI 5, MEI.stringtab, `data.COURSETUNING`).
        - **table**: a scale length of the project's table of fret positions (`tests/Fretloom.Tests/Data/fret_positions.csv`), those in
          inches rounded to the millimetre, but the bass of 34 in. The table was computed; its scale lengths are common practice, no source.
        - **common practice**: agreed among players or makers; no source was consulted.
        - **assumption**: a plausible figure of ours, without source; instruments of the name differ.

        The number of frets is common practice throughout, the spacing of the strings an assumption throughout.

        | name | also | strings | tuning from | scale, mm | scale from | frets | spacing at nut / bridge, mm |
        |---|---|---|---|---|---|---|---|
        """;

    [Fact]
    public void The_page_lists_the_catalogue() =>
        Approved.Matches(
            string.Join('\n', Catalogue.Entries.Select(Row).Prepend(Head)),
            "..",
            "docs",
            "instruments.md"
        );

    private static string Row(CatalogueEntry entry)
    {
        var instrument = entry.Instrument;
        var strings = string.Join(' ', instrument.Strings.Reverse().Select(Text));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {instrument.Name} | {entry.OtherNames} | {strings} | {Text(entry.TuningSource)} | {instrument.ScaleLengthMm} | {Text(entry.ScaleSource)} | {instrument.Frets} | {instrument.Spacing.NutMm} / {instrument.Spacing.BridgeMm} |"
        );
    }

    private static string Text(Course course) =>
        $"{course.Open}{(course.Partner is { } partner ? $"+{partner}" : "")}{(course.StartsAtFret > 0 ? $" from fret {course.StartsAtFret}," : "")}";

    private static string Text(FigureSource source) =>
        source switch
        {
            FigureSource.MeiStringTab => "MEI",
            FigureSource.FretTable => "table",
            FigureSource.CommonPractice => "common practice",
            FigureSource.Assumption => "assumption",
            _ => throw new ArgumentOutOfRangeException(nameof(source), source, null),
        };
}
