namespace Fretloom.Claims.Checking;

/// <summary>Which frets the phrases of a claim name in a case, in half frets.</summary>
internal static class FretSets
{
    public static ValueList<int> Of(Case one, FretSet set) =>
        set switch
        {
            FretSet.Named named => one.FretsOf(named.Noun),
            FretSet.OfDegree of => one.FretsOfDegree(of.Degree, of.String),
            FretSet.OfShapes of => one.Neck.Set(
                PlacedShapes.Of(one, of.Shapes).SelectMany(shape => shape.Ends(of.End))
            ),
            FretSet.Numbers numbers => one.Neck.Set(numbers.Frets.Select(fret => 2 * fret)),
            FretSet.Moved moved => one.Neck.Moved(Of(one, moved.Set), moved.Frets),
            _ => throw new ArgumentOutOfRangeException(nameof(set)),
        };

    /// <summary>Whether frets lie to others as said.</summary>
    public static bool Lie(Case one, ValueList<int> frets, FretRelation relation) =>
        relation switch
        {
            FretRelation.LieOn on => Each(frets, Of(one, on.Frets), (others, fret) => others.Contains(fret)),
            FretRelation.Avoid avoid => Each(frets, Of(one, avoid.Frets), (others, fret) => !others.Contains(fret)),
            FretRelation.LieNextTo next => Each(
                frets,
                Of(one, next.Frets),
                (others, fret) =>
                    others.Contains(one.Neck.Normal(fret - 2)) || others.Contains(one.Neck.Normal(fret + 2))
            ),
            FretRelation.LieApart apart => Each(
                frets,
                Of(one, apart.Frets),
                (others, fret) => others.Contains(one.Neck.Normal(fret - 2 * apart.Distance))
            ),
            FretRelation.LieHalfway halfway => IsHalfway(one.Neck, frets, Of(one, halfway.One), Of(one, halfway.Other)),
            FretRelation.Include include => Of(one, include.Frets).All(other => frets.Contains(other)),
            FretRelation.Are are => frets == Of(one, are.Frets),
            FretRelation.AreCarriedToThemselves => one.Centres.Any(centre => one.Neck.Turned(frets, centre) == frets),
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

    /// <summary>Whether a relation is said of each fret, so that it says nothing when there is none.</summary>
    public static bool IsOfEach(FretRelation relation) =>
        relation
            is FretRelation.LieOn
                or FretRelation.Avoid
                or FretRelation.LieNextTo
                or FretRelation.LieApart
                or FretRelation.LieHalfway;

    // On the endless neck one place is enough to tell the other, but for an octave: then both are the fret itself.
    private static bool IsHalfway(NeckLine neck, ValueList<int> frets, ValueList<int> set, ValueList<int> others) =>
        frets.All(fret => set.Any(low => neck.Normal(fret - low) != 0 && others.Contains(neck.Normal(2 * fret - low))));

    private static bool Each(ValueList<int> frets, ValueList<int> others, Func<ValueList<int>, int, bool> lies) =>
        frets.All(fret => lies(others, fret));
}
