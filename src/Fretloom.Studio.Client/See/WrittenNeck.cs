using Fretloom.Pages.Pictures;

namespace Fretloom.Studio.Client.See;

/// <summary>A neck and its picture.</summary>
/// <param name="neck">Where everything lies.</param>
/// <param name="svg">The picture, for a page that carries the styles of pictures.</param>
public sealed class WrittenNeck(LiveNeck neck, string svg)
{
    /// <summary>Where everything lies.</summary>
    public LiveNeck Neck => neck;

    /// <summary>The picture, for a page that carries the styles of pictures.</summary>
    public string Svg => svg;

    /// <summary>Its size, for a style sheet: <c>--wide</c> and <c>--high</c>, points.</summary>
    public string Size { get; } =
        FormattableString.Invariant($"--wide:{neck.Drawing.Width:0.##};--high:{neck.Drawing.Height:0.##}");
}
