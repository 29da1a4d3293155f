namespace Fretloom.Lessons.Markdown;

/// <summary>Which addresses a link may have.</summary>
internal static class LinkRule
{
    /// <summary>The kinds of address that are let through.</summary>
    private static readonly string[] Schemes = ["http", "https", "mailto"];

    /// <summary>Checks an address.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    public static string? Check(string? address)
    {
        var text = address ?? "";
        if (text.Any(char.IsControl) || !Uri.TryCreate(text, UriKind.Absolute, out var uri))
        {
            return $"'{Short(text)}' is not a full address. A handout is read away from its folder: "
                + "write the whole address, beginning with https:// or mailto:.";
        }

        // On Unix a path such as /etc is an absolute file address, so the scheme must also be written out.
        return Schemes.Any(scheme =>
            uri.Scheme == scheme && text.StartsWith(scheme, StringComparison.OrdinalIgnoreCase)
        )
            ? null
            : $"A link to '{uri.Scheme}:' is not printed; expected an address that begins with https://, http:// or mailto:.";
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "...";
}
