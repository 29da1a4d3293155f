using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>Why a claim is false in one case.</summary>
/// <param name="Text">What is so, without the key, the place and the full stop: <c>there are 3 full frets (0, 5 and 7), not 4</c>.</param>
/// <param name="Frets">Places along the neck that show it, in half frets.</param>
/// <param name="Spots">Spots that show it.</param>
internal sealed record Explanation(string Text, ValueList<int> Frets, ValueList<Spot> Spots)
{
    public static Explanation OfFrets(string text, params ValueList<int> frets) => new(text, frets, []);

    public static Explanation OfShapes(Case one, string text, params IEnumerable<PlacedShape> shapes) =>
        new(text, [], shapes.SelectMany(shape => Lowest(one, shape)).Distinct().ToValueList());

    /// <summary>The lowest place on a real neck where a shape lies; a form is shown as the chord of the key that has it.</summary>
    private static ValueList<Spot> Lowest(Case one, PlacedShape form)
    {
        var shape = PlacedShapes.InKey(one, form);
        var isElsewhere = shape.Strings.Instrument is { } other && other != one.Place.Instrument;
        if (isElsewhere || shape.Strings.Numbers.Numbers.Any(number => !one.Place.HasString(number)))
        {
            return [];
        }

        var there = one.Neck.Window is null ? shape with { Neck = new NeckLine(new FretRange(0, 40)) } : shape;
        return ShapesInHand.Everywhere(there, one.Place.ToInstrument()).Select(at => at.Spots).FirstOrDefault();
    }
}
