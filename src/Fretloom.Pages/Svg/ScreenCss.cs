using System.Text;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Svg;

/// <summary>The style sheet behind <see cref="SvgTheme.Screen"/>.</summary>
internal static class ScreenCss
{
    private const string Root = "svg.fretloom";

    /// <summary>The paper behind a picture that is a file of its own.</summary>
    public const string OwnPaper = Root + ":root { background: var(--fl-paper); }\n";

    private static readonly string[] Names = [.. Enum.GetValues<Tone>().Select(Hyphened)];

    private static readonly Tone[] Tones =
    [
        .. Enum.GetValues<Tone>().Where(tone => tone is not (Tone.None or Tone.Empty)),
    ];

    public static string Write()
    {
        var css = new StringBuilder();
        css.Append(Rule(Root, Palette.Light));
        css.Append(Media("(prefers-color-scheme: dark)", Rule($"{Root}:not([data-theme] *)", Palette.Dark)));
        css.Append(Rule($"[data-theme=\"dark\"] {Root}", Palette.Dark));
        css.Append(Rule($"[data-theme=\"print\"] {Root}", Palette.Printed));
        css.Append(Media("(forced-colors: active)", Rule(Root + ".fretloom", Palette.Forced)));
        css.Append(Media("print", Rule(Root + ".fretloom", Palette.Printed)));
        foreach (var tone in Tones)
        {
            css.Append($"{Root} .fill-{Name(tone)} {{ fill: var(--fl-{Name(tone)}); }}\n");
            css.Append($"{Root} .line-{Name(tone)} {{ stroke: var(--fl-{Name(tone)}); }}\n");
        }

        return css.ToString();
    }

    /// <summary>A tone as part of a class name: <c>thread-edge</c>.</summary>
    public static string Name(Tone tone) => Names[(int)tone];

    private static string Hyphened(Tone tone)
    {
        var name = new StringBuilder();
        foreach (var letter in tone.ToString())
        {
            if (char.IsAsciiLetterUpper(letter) && name.Length > 0)
            {
                name.Append('-');
            }

            name.Append(char.ToLowerInvariant(letter));
        }

        return name.ToString();
    }

    private static string Rule(string selector, Palette palette) =>
        $"{selector} {{ {string.Join(" ", Tones.Select(tone => $"--fl-{Name(tone)}: {palette.Of(tone)};"))} }}\n";

    private static string Media(string query, string rule) => $"@media {query} {{\n  {rule}}}\n";
}
