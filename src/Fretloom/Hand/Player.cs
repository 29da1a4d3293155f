using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>A fretting hand on an instrument.</summary>
/// <param name="Instrument">What is played.</param>
/// <param name="Hand">The length of the hand.</param>
/// <param name="IsTurnedOver">
/// Whether the instrument is held the other way round without being restrung, so that string 1 lies farthest from the floor. A
/// mirrored instrument for a left-handed player is not turned over: the hand finds the strings in the usual order.
/// </param>
/// <param name="UsesThumb">Whether the thumb may stop a string over the edge of the neck.</param>
public sealed record Player(
    Instrument Instrument,
    HandSize Hand = default,
    bool IsTurnedOver = false,
    bool UsesThumb = false
)
{
    /// <inheritdoc cref="Player(Instrument, HandSize, bool, bool)"/>
    public Instrument Instrument
    {
        get;
        init => field = value ?? throw new ArgumentNullException(nameof(value));
    } = Instrument ?? throw new ArgumentNullException(nameof(Instrument));

    /// <summary>The place of a string under the hand, counted from 1 nearest the floor.</summary>
    /// <param name="stringNumber">A string of the instrument.</param>
    public int PlaceOf(int stringNumber) => IsTurnedOver ? Instrument.Strings.Count + 1 - stringNumber : stringNumber;
}
