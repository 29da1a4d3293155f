namespace Fretloom.Claims.Checking;

/// <summary>Which shapes the phrases of a claim name in a case.</summary>
internal static class PlacedShapes
{
    /// <summary>Those that lie somewhere on the neck that is looked at.</summary>
    public static ValueList<PlacedShape> Of(Case one, ShapeSet set)
    {
        var strings = one.StringsOf(set.Of);
        return ShapeMembers
            .Of(one.Key, set)
            .Select(members => PlacedShape.On(one, members, set.Voicing, strings))
            .Where(shape => shape.Placements.Any())
            .ToValueList();
    }

    /// <summary>A form as the first chord of the key that has it, on the same strings: the dominant seventh shape in C major as G7.</summary>
    /// <returns>The shape itself where it has its root, or no chord of the key has its form, or that lies nowhere on the neck looked at.</returns>
    public static PlacedShape InKey(Case one, PlacedShape shape)
    {
        if (shape.HasPlace)
        {
            return shape;
        }

        var chord = (
            from family in Enum.GetValues<ShapeFamily>()
            from degree in Enumerable.Range(1, 7)
            select ShapeMembers.OnDegree(one.Key, family, degree)
        ).FirstOrDefault(members => members.Semitones == shape.Of.Semitones);
        if (chord is not { Root: { } root })
        {
            return shape;
        }

        var inKey = shape with
        {
            Of = shape.Of with { Symbol = chord.Symbol, Root = root },
            Frets = shape.Frets.Select(fret => fret + root).ToValueList(),
        };
        return inKey.Placements.Any() ? inKey : shape;
    }

    /// <summary>How many of them are spoken of: all, when the phrase names one.</summary>
    public static Quantity QuantityOf(ShapeSet set) =>
        set is ShapeSet.Several several ? several.Quantity : new Quantity.Every();

    /// <summary>The stacks of thirds of a size.</summary>
    public static ShapeFamily FamilyOf(int notes) =>
        notes switch
        {
            2 => ShapeFamily.Third,
            3 => ShapeFamily.Triad,
            _ => ShapeFamily.Seventh,
        };

    /// <summary>The shape of the same size on another degree, on the same strings.</summary>
    public static PlacedShape OnDegree(Case one, PlacedShape shape, ShapeSet set, int degree)
    {
        var family = set switch
        {
            ShapeSet.Several several => several.Family,
            ShapeSet.OnDegree on => on.Family,
            _ => FamilyOf(set.Notes),
        };
        return PlacedShape.On(one, ShapeMembers.OnDegree(one.Key, family, degree), set.Voicing, shape.Strings);
    }
}
