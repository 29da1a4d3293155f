namespace Fretloom.Scores.Sound;

/// <summary>Where a string stands between left and right.</summary>
public readonly record struct StringPlace
{
    /// <summary>Says where.</summary>
    /// <param name="stringNumber">The string, counted from 1, which is nearest the floor.</param>
    /// <param name="place">From -1, wholly left, to 1, wholly right.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 1, or the place beyond a side.</exception>
    public StringPlace(int stringNumber, double place)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(stringNumber, 1);
        if (!(place is >= -1 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(place), place, "A place lies from -1, left, to 1, right.");
        }

        (String, Place) = (stringNumber, place);
    }

    /// <summary>The string, counted from 1; 0 in a value that was never made.</summary>
    public int String { get; }

    /// <summary>From -1, wholly left, to 1, wholly right.</summary>
    public double Place { get; }
}
