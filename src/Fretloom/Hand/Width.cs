namespace Fretloom.Hand;

/// <summary>How much a stretch asks of a hand.</summary>
public enum Width
{
    /// <summary>Within what the hand reaches easily.</summary>
    InReach,

    /// <summary>Near the greatest distance of the two fingers: see <see cref="Stretch"/>.</summary>
    Wide,

    /// <summary>Beyond the greatest distance of the two fingers, as the tool is set.</summary>
    VeryWide,
}

/// <summary>Widths in words.</summary>
public static class WidthWords
{
    /// <summary><c>in reach</c>, <c>wide</c>, <c>very wide</c>.</summary>
    public static string Words(this Width width) =>
        width switch
        {
            Width.InReach => "in reach",
            Width.Wide => "wide",
            Width.VeryWide => "very wide",
            _ => throw new ArgumentOutOfRangeException(nameof(width), width, "There is no such width."),
        };
}
