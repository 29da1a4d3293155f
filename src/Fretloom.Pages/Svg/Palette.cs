using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Svg;

/// <summary>A colour for each tone, as CSS writes it.</summary>
/// <remarks>Contrasts against the paper, by the WCAG 2 formula: light ink 16.8, quiet 6.7, line 3.7, focus 5.0, fail 3.7; dark 14.0, 7.2, 4.1, 7.5, 7.6.</remarks>
internal sealed record Palette(
    string Paper,
    string Ink,
    string Quiet,
    string Line,
    string Rule,
    string ThreadEdge,
    string ThreadCore,
    string Focus,
    string OnFocus,
    string Band,
    string Full,
    string Fail
)
{
    public static Palette Light { get; } =
        new(
            Paper: "#FDFBF6",
            Ink: "#1B1A17",
            Quiet: "#5F594D",
            Line: "#8A8272",
            Rule: "#D8D0BF",
            ThreadEdge: "#7A7262",
            ThreadCore: "#E6DFCF",
            Focus: "#0072B2",
            OnFocus: "#FFFFFF",
            Band: "#D5E7F3",
            Full: "#F6EBC8",
            Fail: "#D55E00"
        );

    public static Palette Dark { get; } =
        new(
            Paper: "#1D1B17",
            Ink: "#EDE7DA",
            Quiet: "#B0A794",
            Line: "#837A69",
            Rule: "#4A4538",
            ThreadEdge: "#958B78",
            ThreadCore: "#3B372E",
            Focus: "#56B4E9",
            OnFocus: "#000000",
            Band: "#12354A",
            Full: "#37311C",
            Fail: "#E69F00"
        );

    public static Palette Printed { get; } = Light with { Paper = "#FFFFFF" };

    public static Palette BlackAndWhite { get; } =
        new(
            Paper: "#FFFFFF",
            Ink: "#000000",
            Quiet: "#000000",
            Line: "#000000",
            Rule: "#000000",
            ThreadEdge: "#000000",
            ThreadCore: "#FFFFFF",
            Focus: "#000000",
            OnFocus: "#FFFFFF",
            Band: "#FFFFFF",
            Full: "#FFFFFF",
            Fail: "#000000"
        );

    /// <summary>The colours a browser gives to those who choose their own.</summary>
    public static Palette Forced { get; } =
        new(
            Paper: "Canvas",
            Ink: "CanvasText",
            Quiet: "CanvasText",
            Line: "CanvasText",
            Rule: "CanvasText",
            ThreadEdge: "CanvasText",
            ThreadCore: "Canvas",
            Focus: "CanvasText",
            OnFocus: "Canvas",
            Band: "Canvas",
            Full: "Canvas",
            Fail: "CanvasText"
        );

    public string Of(Tone tone) =>
        tone switch
        {
            Tone.None => "none",
            Tone.Paper => Paper,
            Tone.Ink => Ink,
            Tone.Quiet => Quiet,
            Tone.Rule => Rule,
            Tone.ThreadEdge => ThreadEdge,
            Tone.ThreadCore => ThreadCore,
            Tone.Focus => Focus,
            Tone.OnFocus => OnFocus,
            Tone.Band => Band,
            Tone.Full => Full,
            Tone.Fail => Fail,
            _ => Line,
        };
}
