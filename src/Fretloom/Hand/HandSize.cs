using System.Globalization;

namespace Fretloom.Hand;

/// <summary>The length of a hand, wrist crease to tip of the middle finger, in millimetres: 100 to 260.</summary>
/// <remarks>
/// The <c>default</c> is the adult hand of 189 mm. Sizes: the public data of the 2012 Anthropometric Survey of U.S. Army
/// Personnel (Gordon et al. 2014, NATICK/TR-15/007): women's 5th percentile 165, men's 95th 210, 189 between the means of
/// both. A child's 150 mm is an assumption.
/// </remarks>
public readonly record struct HandSize
{
    /// <summary>The shortest hand, in millimetres.</summary>
    public const double LeastMm = 100;

    /// <summary>The longest hand, in millimetres.</summary>
    public const double MostMm = 260;

    private const double AdultMm = 189;
    private const double LongestChildMm = 150;

    // Null stands for the adult hand, so that the default is valid and every length is kept to the last digit.
    private readonly double? _otherMm;

    /// <summary>Makes a hand.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside 100 to 260 mm.</exception>
    public HandSize(double lengthMm)
    {
        if (lengthMm is not (>= LeastMm and <= MostMm))
        {
            throw new ArgumentOutOfRangeException(nameof(lengthMm), lengthMm, "A hand is 100 to 260 mm long.");
        }

        _otherMm = lengthMm == AdultMm ? null : lengthMm;
    }

    /// <summary>189 mm.</summary>
    public static HandSize Adult => default;

    /// <summary>165 mm.</summary>
    public static HandSize Small => new(165);

    /// <summary>210 mm.</summary>
    public static HandSize Large => new(210);

    /// <summary>150 mm, an assumption.</summary>
    public static HandSize Child => new(150);

    /// <summary>The length in millimetres.</summary>
    public double LengthMm => _otherMm ?? AdultMm;

    /// <summary>The length as a share of the adult hand's, 189 mm.</summary>
    public double Scale => LengthMm / AdultMm;

    /// <summary>Whether it is taken for a child's hand, up to 150 mm: an assumption, as no child's hand is in the data.</summary>
    public bool IsChild => LengthMm <= LongestChildMm;

    /// <summary>The length: <c>165 mm</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{LengthMm} mm");
}
