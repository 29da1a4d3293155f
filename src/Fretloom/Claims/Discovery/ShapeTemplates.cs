namespace Fretloom.Claims.Discovery;

/// <summary>Statements about how many of a key's shapes lie or look in some way.</summary>
internal static class ShapeTemplates
{
    private static readonly ShapeFamily[] Families =
    [
        ShapeFamily.Third,
        ShapeFamily.Triad,
        ShapeFamily.Seventh,
        ShapeFamily.Sixth,
    ];
    private static readonly Quantity[] Quantities =
    [
        new Quantity.Every(),
        new Quantity.No(),
        .. Enumerable.Range(1, 6).Select(number => new Quantity.Exactly(number)),
    ];

    public static readonly Template[] All =
    [
        new("spans of all shapes", 3.5, SpansOfAll),
        new("spans of some shapes", 1.5, SpansOfSome),
        new("where shapes lie", 3, WhereTheyLie),
        new("shapes that are their own half-turn", 3, TheirOwn),
        new("frets of shapes", 2.5, FretsOfShapes),
    ];

    /// <summary>Every family on every run of as many strings as it takes.</summary>
    public static IEnumerable<(ShapeFamily Family, OtherStrings? Of)> Placed(ChosenStrings strings) =>
        from family in Families
        from of in strings.OfSize(NotesOf(family))
        select (family, of);

    public static int NotesOf(ShapeFamily family) => new ShapeSet.OnDegree(family, 1).Notes;

    private static IEnumerable<(Quantity Quantity, ShapeSet Shapes)> Several(ChosenStrings strings) =>
        from placed in Placed(strings)
        from quantity in Quantities
        select (quantity, (ShapeSet)new ShapeSet.Several(quantity, placed.Family, default, placed.Of));

    private static IEnumerable<Claim> SpansOfAll(ChosenStrings strings) =>
        from several in Several(strings)
        where several.Quantity is Quantity.Every && several.Shapes.Notes > 2
        from comparison in new[] { Comparison.AtMost, Comparison.AtLeast, Comparison.Exactly }
        from frets in Enumerable.Range(2, 8)
        select Says(several.Shapes, new ShapePredicate.Spans(new Count(comparison, frets)));

    private static IEnumerable<Claim> SpansOfSome(ChosenStrings strings) =>
        from several in Several(strings)
        where several.Quantity is Quantity.Exactly && several.Shapes.Notes > 2
        from frets in Enumerable.Range(2, 5)
        select Says(several.Shapes, new ShapePredicate.Spans(new Count(Comparison.Exactly, frets)));

    private static IEnumerable<Claim> WhereTheyLie(ChosenStrings strings) =>
        from several in Several(strings)
        where several.Shapes.Notes > 2
        from kind in new[] { FretKind.Full }
        let frets = FretTemplates.The(FretTemplates.Noun(kind))
        from says in new ShapePredicate[]
        {
            new ShapePredicate.HasRootOn(frets),
            new ShapePredicate.BeginsOn(frets),
            new ShapePredicate.EndsOn(frets),
        }
        select Says(several.Shapes, says);

    private static IEnumerable<Claim> TheirOwn(ChosenStrings strings) =>
        from several in Several(strings)
        where several.Shapes.Notes > 2
        select Says(several.Shapes, new ShapePredicate.IsOwnHalfTurn());

    private static IEnumerable<Claim> FretsOfShapes(ChosenStrings strings) =>
        from several in Several(strings)
        where several.Quantity is Quantity.Every && several.Shapes.Notes > 2
        from end in Enum.GetValues<ShapeEnd>()
        from kind in new[] { FretKind.Full }
        select new Claim.OfFrets(
            new FretSet.OfShapes(end, several.Shapes),
            null,
            new FretRelation.Include(FretTemplates.The(FretTemplates.Noun(kind)))
        );

    public static Claim Says(ShapeSet shapes, ShapePredicate says) => new Claim.OfShapes(shapes, says);
}
