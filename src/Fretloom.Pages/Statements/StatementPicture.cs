using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;

namespace Fretloom.Pages.Statements;

/// <summary>The first counterexample of a claim as a small neck.</summary>
internal static class StatementPicture
{
    /// <summary>The part of the text's width that a neck beside a claim takes.</summary>
    public const double AsideShare = 0.34;

    /// <summary>Draws the neck: narrow where it then is one row of frets, else as wide as the page allows.</summary>
    /// <param name="verdict">What came of the claim.</param>
    /// <param name="width">The width of the text, in points.</param>
    /// <param name="explained">The words of the signs explained before; those explained here are added.</param>
    /// <returns>The picture and whether it stands beside the claim; null when there is nothing to be seen.</returns>
    public static (Picture Picture, bool IsAside)? Of(ClaimVerdict verdict, double width, ExplainedSigns explained)
    {
        if (ExhibitOf(verdict) is not { } exhibit)
        {
            return null;
        }

        var room = Math.Max(PicturePlan.SmallestWidth, AsideShare * width);
        var isAside = NeckPicture.IsOneRow(NeckContent.Of(exhibit), room);
        var pictures = PicturePlan.For(exhibit, isAside ? room : width, null, explained);
        return (pictures[0] with { Kind = "counterexample" }, isAside);
    }

    /// <summary>What is to be seen of the first counterexample; null when it has none, or none that lies on a neck.</summary>
    public static Exhibit? ExhibitOf(ClaimVerdict verdict) =>
        verdict.Failures is [var first, ..] ? Counterexample.Of(first, verdict.Sentence.Window) : null;
}
