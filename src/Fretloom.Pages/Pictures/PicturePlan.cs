using Fretloom.Exhibits;

namespace Fretloom.Pages.Pictures;

/// <summary>Decides which pictures an exhibit is shown with, and draws them.</summary>
public static class PicturePlan
{
    /// <summary>The width of text on an A4 page with margins of 20 mm: 170 mm, in points.</summary>
    public const double PageWidth = 170 / 25.4 * 72;

    /// <summary>The pictures of an exhibit, in the order they are shown.</summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="width">The width there is, in points, at least 300; a picture that needs less is narrower.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is less than 300.</exception>
    public static ValueList<Picture> For(Exhibit exhibit, double width = PageWidth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 300);
        var content = NeckContent.Of(exhibit);
        return [new Picture(NeckPicture.Draw(content, width, NeckWords.Of(content)), NeckWords.Table(content))];
    }
}
