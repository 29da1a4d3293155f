namespace Fretloom.Claims.Discovery;

/// <summary>Statements about one shape and another.</summary>
internal static class ShapePairTemplates
{
    public static readonly Template[] All =
    [
        new("forms turned", 3.5, Forms) { IsOfHalfTurn = true },
        new("forms of fewer strings turned", 3, FormsOfFewerStrings),
        new("shapes of two degrees", 2.5, Degrees),
        new("shapes moved", 2, Moved),
        new("shapes turned", 3.5, Turned) { IsOfHalfTurn = true },
        new("shapes of fewer strings turned", 3, TurnedBetween),
    ];

    private static IEnumerable<Claim> Forms(ChosenStrings strings)
    {
        foreach (var (at, one) in OfSize(strings.Count))
        {
            yield return ShapeTemplates.Says(Form(one, null), new ShapePredicate.IsOwnHalfTurn());
            foreach (var (_, other) in OfSize(strings.Count).Skip(at + 1))
            {
                yield return ShapeTemplates.Says(Form(one, null), new ShapePredicate.IsHalfTurnOf(Form(other, null)));
                yield return ShapeTemplates.Says(Form(one, null), new ShapePredicate.IsMirrorOf(Form(other, null)));
            }
        }
    }

    private static IEnumerable<Claim> FormsOfFewerStrings(ChosenStrings strings) =>
        from notes in Enumerable.Range(3, Math.Max(0, Math.Min(2, strings.Count - 3)))
        from pair in strings.PairsOfSize(notes)
        from one in OfSize(notes)
        from other in OfSize(notes)
        from says in new ShapePredicate[]
        {
            new ShapePredicate.IsHalfTurnOf(Form(other.Item, pair.Other)),
            new ShapePredicate.HasSameFormAs(Form(other.Item, pair.Other)),
        }
        where one.Index == other.Index || says is ShapePredicate.IsHalfTurnOf
        select ShapeTemplates.Says(Form(one.Item, pair.One), says);

    private static IEnumerable<Claim> Degrees(ChosenStrings strings)
    {
        foreach (var (family, of) in ShapeTemplates.Placed(strings).Where(placed => placed.Family != ShapeFamily.Third))
        {
            foreach (var (one, other) in TwoDegrees())
            {
                var second = OnDegree(family, other, of);
                yield return ShapeTemplates.Says(OnDegree(family, one, of), new ShapePredicate.IsHalfTurnOf(second));
                yield return ShapeTemplates.Says(OnDegree(family, one, of), new ShapePredicate.HasSameFormAs(second));
            }
        }
    }

    private static IEnumerable<Claim> Moved(ChosenStrings strings) =>
        from family in new[] { ShapeFamily.Triad, ShapeFamily.Seventh }
        where ShapeTemplates.NotesOf(family) == strings.Count
        from degrees in TwoDegrees()
        from frets in Enumerable.Range(-6, 12)
        select ShapeTemplates.Says(
            OnDegree(family, degrees.Other, null),
            new ShapePredicate.IsThatOfDegree(degrees.One, frets)
        );

    private static IEnumerable<Claim> Turned(ChosenStrings strings)
    {
        foreach (var (family, of) in ShapeTemplates.Placed(strings).Where(placed => placed.Of is null))
        {
            for (var degree = 1; degree <= 7; degree++)
            {
                yield return new Claim.CarriesShapes(OnDegree(family, degree, of), null);
            }

            foreach (var (one, other) in TwoDegrees())
            {
                yield return new Claim.CarriesShapes(OnDegree(family, one, of), OnDegree(family, other, of));
            }
        }
    }

    private static IEnumerable<Claim> TurnedBetween(ChosenStrings strings) =>
        from family in new[] { ShapeFamily.Triad, ShapeFamily.Seventh }
        from pair in strings.PairsOfSize(ShapeTemplates.NotesOf(family))
        from one in Enumerable.Range(1, 7)
        from other in Enumerable.Range(1, 7)
        select new Claim.CarriesShapes(OnDegree(family, one, pair.One), OnDegree(family, other, pair.Other));

    private static IEnumerable<(int Index, ShapeQuality Item)> OfSize(int notes) =>
        ShapeQuality.All.Where(quality => quality.Semitones.Count == notes).Index();

    private static IEnumerable<(int One, int Other)> TwoDegrees() =>
        from one in Enumerable.Range(1, 7)
        from other in Enumerable.Range(one + 1, 7 - one)
        select (one, other);

    private static ShapeSet.OfQuality Form(ShapeQuality quality, OtherStrings? of) =>
        new ShapeSet.OfQuality(quality, default, of);

    private static ShapeSet.OnDegree OnDegree(ShapeFamily family, int degree, OtherStrings? of) =>
        new ShapeSet.OnDegree(family, degree, default, of);
}
