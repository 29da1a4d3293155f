namespace Fretloom.Claims.Checking;

/// <summary>Claims that differ from one by a number or by how many are spoken of; the nearest number first.</summary>
internal static class ClaimChanges
{
    private const int Farthest = 12;

    public static IEnumerable<(Claim Claim, string Words)> Of(Claim claim) =>
        claim switch
        {
            Claim.ThereAre there => Counts(there.Count)
                .Select(count =>
                    ((Claim)(there with { Count = count }), $"{ClaimWords.Of(count)} {Plural(count, there.Noun)}")
                ),
            Claim.CarriesDegree { Swaps: false } carries => Enumerable
                .Range(1, 7)
                .Where(to => to != carries.To)
                .OrderBy(to => Math.Abs(to - carries.To))
                .Select(to => ((Claim)new Claim.CarriesDegree(carries.From, to, Swaps: false), $"to degree {to}")),
            Claim.OfShapes of => OfShapes(of),
            Claim.OfFrets of => OfFrets(of),
            Claim.NeighboursLieApart apart => Counts(apart.Frets)
                .Select(count => ((Claim)(apart with { Frets = count }), $"{ClaimWords.Of(count)} frets apart")),
            Claim.GapIs gap => Counts(gap.Frets)
                .Select(count => ((Claim)(gap with { Frets = count }), $"is {ClaimWords.Of(count)} frets")),
            Claim.If condition => Of(condition.Then)
                .Select(change => ((Claim)(condition with { Then = change.Claim }), change.Words)),
            Claim.And and => Within(and.Parts, parts => new Claim.And(parts)),
            Claim.Or or => Within(or.Parts, parts => new Claim.Or(parts)),
            _ => [],
        };

    private static IEnumerable<(Claim, string)> OfShapes(Claim.OfShapes claim)
    {
        if (claim.Says is ShapePredicate.Spans spans)
        {
            foreach (var count in Counts(spans.Frets))
            {
                yield return (
                    claim with
                    {
                        Says = new ShapePredicate.Spans(count),
                    },
                    $"{ClaimWords.Of(count)} {(count.Number == 1 ? "fret" : "frets")}"
                );
            }
        }

        if (claim.Shapes is ShapeSet.Several { Quantity: Quantity.Exactly or Quantity.Every } several)
        {
            var asked = several.Quantity is Quantity.Exactly exactly ? exactly.Number : 7;
            foreach (var number in Near(asked).Where(number => number is > 0 and < 8))
            {
                var other = several with { Quantity = new Quantity.Exactly(number) };
                yield return (claim with { Shapes = other }, ClaimWords.Of(other));
            }
        }
    }

    private static IEnumerable<(Claim, string)> OfFrets(Claim.OfFrets claim)
    {
        if (claim.Relation is FretRelation.LieApart apart)
        {
            foreach (var distance in Near(apart.Distance).Where(distance => distance is not 0 and > -12 and < 12))
            {
                yield return (
                    claim with
                    {
                        Relation = apart with { Distance = distance },
                    },
                    $"{ClaimWords.Counted(Math.Abs(distance), "fret")} {(distance < 0 ? "below" : "above")}"
                );
            }
        }

        if (claim is { Quantity: Quantity.Every, Frets: FretSet.Named named })
        {
            yield return (
                claim with
                {
                    Quantity = new Quantity.Some(),
                },
                $"some {ClaimWords.Of(named.Noun.Kind)}{ClaimWords.OfStrings(named.Noun.Of)}"
            );
        }
    }

    private static IEnumerable<(Claim, string)> Within(ValueList<Claim> parts, Func<ValueList<Claim>, Claim> join) =>
        parts
            .Index()
            .SelectMany(part =>
                Of(part.Item)
                    .Select(change =>
                        (
                            join(parts.Select((other, at) => at == part.Index ? change.Claim : other).ToValueList()),
                            change.Words
                        )
                    )
            );

    /// <summary>Other numbers with the same comparison, then, for an exact one, the weaker comparisons.</summary>
    private static IEnumerable<Count> Counts(Count count)
    {
        // "At least 0" is always true, and so says nothing.
        var least = count.Comparison is Comparison.AtLeast ? 1 : 0;
        foreach (var number in Near(count.Number).Where(number => number >= least))
        {
            yield return new Count(count.Comparison, number);
        }

        if (count.Comparison == Comparison.Exactly)
        {
            foreach (var number in Near(count.Number).Prepend(count.Number).Where(number => number > 0))
            {
                yield return new Count(Comparison.AtLeast, number);
                yield return new Count(Comparison.AtMost, number);
            }
        }
    }

    private static IEnumerable<int> Near(int number) =>
        Enumerable.Range(1, Farthest).SelectMany(distance => new[] { number + distance, number - distance });

    private static string Plural(Count count, FretNoun noun) =>
        ClaimWords.Of(noun.Kind) + (count.Number == 1 ? "" : "s") + ClaimWords.OfStrings(noun.Of);
}
