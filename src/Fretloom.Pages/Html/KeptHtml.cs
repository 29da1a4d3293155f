using System.Runtime.CompilerServices;

namespace Fretloom.Pages.Html;

/// <summary>HTML that was written before, kept as long as the drawing that it shows. For one thread at a time.</summary>
internal sealed class KeptHtml
{
    private readonly ConditionalWeakTable<object, Dictionary<object, string>> _written = [];

    /// <summary>Writes what was not written before.</summary>
    /// <param name="html">The page.</param>
    /// <param name="shown">What is shown: the same object, the same drawing.</param>
    /// <param name="said">All else that the HTML comes from, compared by its content.</param>
    /// <param name="write">Writes it on the page, every element that it opens closed.</param>
    public void Write(HtmlText html, object shown, object said, Action write)
    {
        var known = _written.GetOrCreateValue(shown);
        if (known.TryGetValue(said, out var before))
        {
            html.Raw(before);
            return;
        }

        var start = html.Length;
        write();
        known[said] = html.From(start);
    }
}
