using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Sentences.Claims;

namespace Fretloom.Claims.Checking;

/// <summary>Claims that differ from one by a number, by how many are spoken of, or by saying less.</summary>
internal static class ClaimChanges
{
    private const int Octave = 12;
    private const int Farthest = 12;
    private const int LessIsSaid = 3;
    private const int Weaker = 6;
    private const int ShapesOfAFamily = 7;
    private const int MillimetreStep = 10;
    private const int Largest = 999;

    /// <summary>All of them.</summary>
    /// <param name="claim">The claim.</param>
    /// <param name="window">The frets that it is asked of; null for the endless neck, where frets are classes of twelve.</param>
    public static IEnumerable<ClaimChange> Of(Claim claim, FretRange? window) =>
        claim switch
        {
            Claim.ThereAre there => Counts(there.Count, 0, window?.Count ?? Octave)
                .Select(changed =>
                    Whole(there with { Count = changed.Count }, changed.Cost) with
                    {
                        IsWeaker = IsWeaker(there.Count, changed.Count),
                    }
                ),
            Claim.CarriesDegree carries => OfDegree(carries),
            Claim.DegreeStands { Quantity: Quantity.Every } stands =>
            [
                Whole(stands with { Quantity = new Quantity.Some() }, LessIsSaid),
            ],
            Claim.OfShapes of => [.. OfNumbers(of), .. OfQuantity(of)],
            Claim.OfFrets of => OfFrets(of),
            Claim.NeighboursLieApart apart => Counts(apart.Frets, 1, window?.Count - 1 ?? Octave)
                .Select(changed => new ClaimChange(
                    apart with
                    {
                        Frets = changed.Count,
                    },
                    $"{CountWords.Frets(changed.Count)} apart",
                    changed.Cost,
                    IsWeaker(apart.Frets, changed.Count)
                )),
            Claim.GapIs gap => Counts(gap.Frets, 0, window?.Count - 1 ?? Octave / 2)
                .Select(changed => new ClaimChange(
                    gap with
                    {
                        Frets = changed.Count,
                    },
                    $"is {CountWords.Frets(changed.Count)}",
                    changed.Cost,
                    IsWeaker(gap.Frets, changed.Count)
                )),
            Claim.If condition => Of(condition.Then, window)
                .Select(change => change with { Claim = condition with { Then = change.Claim } }),
            Claim.And and => Within(and.Parts, window, parts => new Claim.And(parts)),
            Claim.Or or => Within(or.Parts, window, parts => new Claim.Or(parts)),
            _ => [],
        };

    // A number may inflect the words around it: all of the claim is the phrase.
    private static ClaimChange Whole(Claim claim, int cost) => new(claim, ClaimPrinter.Print(claim), cost);

    private static IEnumerable<ClaimChange> OfDegree(Claim.CarriesDegree claim) =>
        Enumerable
            .Range(1, 7)
            .Where(to => to != claim.To)
            .Select(to => new ClaimChange(
                new Claim.CarriesDegree(claim.From, to, claim.Swaps),
                $"{(claim.Swaps ? "and" : "to")} degree {ClaimWords.Number(to)}",
                Math.Abs(to - claim.To)
            ));

    private static IEnumerable<ClaimChange> OfNumbers(Claim.OfShapes claim) =>
        claim.Says switch
        {
            ShapePredicate.Spans spans => Counts(spans.Frets, 1, int.MaxValue)
                .Select(changed => new ClaimChange(
                    claim with
                    {
                        Says = new ShapePredicate.Spans(changed.Count),
                    },
                    CountWords.Frets(changed.Count),
                    changed.Cost,
                    IsWeaker(spans.Frets, changed.Count)
                )),
            ShapePredicate.Stretches stretches => Lengths(stretches.Millimetres)
                .Select(changed => new ClaimChange(
                    claim with
                    {
                        Says = new ShapePredicate.Stretches(changed.Count),
                    },
                    $"{CountWords.Of(changed.Count, "less")} mm",
                    changed.Cost
                )),
            _ => [],
        };

    private static IEnumerable<ClaimChange> OfQuantity(Claim.OfShapes claim)
    {
        if (claim.Shapes is not ShapeSet.Several { Quantity: Quantity.Exactly or Quantity.Every } several)
        {
            yield break;
        }

        var asked = several.Quantity is Quantity.Exactly exactly ? exactly.Number : ShapesOfAFamily;
        foreach (var number in Enumerable.Range(1, ShapesOfAFamily).Where(number => number != asked))
        {
            Quantity quantity = number == ShapesOfAFamily ? new Quantity.Every() : new Quantity.Exactly(number);
            yield return Whole(
                claim with
                {
                    Shapes = several with { Quantity = quantity },
                },
                LessIsSaid + Math.Abs(number - asked)
            );
        }
    }

    private static IEnumerable<ClaimChange> OfFrets(Claim.OfFrets claim)
    {
        if (claim.Relation is FretRelation.LieApart { Distance: var distance } apart)
        {
            var near = new[] { 1, -1, 2, -2 }
                .Select(by => (Distance: distance + by, Cost: Math.Abs(by)))
                .Where(other => Math.Sign(other.Distance) == Math.Sign(distance))
                .Append((-distance, 2));
            foreach (var (other, cost) in near)
            {
                yield return new ClaimChange(
                    claim with
                    {
                        Relation = new FretRelation.LieApart(other, apart.Frets),
                    },
                    $"{ClaimWords.Counted(Math.Abs(other), "fret")} {(other < 0 ? "below" : "above")}",
                    cost
                );
            }
        }

        if (claim.Quantity is Quantity.Every)
        {
            yield return Whole(claim with { Quantity = new Quantity.Some() }, LessIsSaid);
        }

        if (claim is { Quantity: null, Relation: FretRelation.Are are })
        {
            yield return Whole(claim with { Relation = new FretRelation.Include(are.Frets) }, LessIsSaid);
            yield return Whole(claim with { Relation = new FretRelation.LieOn(are.Frets) }, LessIsSaid);
        }
    }

    private static IEnumerable<ClaimChange> Within(
        ValueList<Claim> parts,
        FretRange? window,
        Func<ValueList<Claim>, Claim> join
    ) =>
        parts
            .Index()
            .SelectMany(part =>
                Of(part.Item, window)
                    .Select(change =>
                        change with
                        {
                            Claim = join(
                                parts.Select((other, at) => at == part.Index ? change.Claim : other).ToValueList()
                            ),
                        }
                    )
            );

    /// <summary>Other numbers with the same comparison, and, for an exact one, the weaker comparisons; none that is always true.</summary>
    /// <param name="count">The condition.</param>
    /// <param name="least">What is counted is never less.</param>
    /// <param name="most">It is never more.</param>
    private static IEnumerable<(Count Count, int Cost)> Counts(Count count, int least, int most)
    {
        var others =
            from number in Enumerable.Range(Math.Max(least, count.Number - Farthest), 2 * Farthest + 1)
            where Math.Abs(number - count.Number) <= Farthest
            from comparison in count.Comparison == Comparison.Exactly
                ? [Comparison.Exactly, Comparison.AtLeast, Comparison.AtMost]
                : new[] { count.Comparison }
            let cost = Math.Abs(number - count.Number) + (comparison == count.Comparison ? 0 : Weaker)
            where number <= Largest
            select (Count: new Count(comparison, number), cost);
        return others.Where(other => other.Count != count && !IsAlwaysTrue(other.Count, least, most));
    }

    private static bool IsWeaker(Count count, Count changed) => changed.Comparison != count.Comparison;

    private static bool IsAlwaysTrue(Count count, int least, int most) =>
        count.Comparison switch
        {
            Comparison.AtLeast => count.Number <= least,
            Comparison.MoreThan => count.Number < least,
            Comparison.AtMost => count.Number >= most,
            Comparison.FewerThan => count.Number > most,
            _ => false,
        };

    /// <summary>Longer lengths for a longest one, shorter ones for a shortest, in round numbers.</summary>
    private static IEnumerable<(Count Count, int Cost)> Lengths(Count length)
    {
        var by = length.Comparison switch
        {
            Comparison.AtMost or Comparison.FewerThan => MillimetreStep,
            Comparison.AtLeast or Comparison.MoreThan => -MillimetreStep,
            _ => 0,
        };
        return Enumerable
            .Range(1, by == 0 ? 0 : Farthest)
            .Select(steps => (Millimetres: length.Number / MillimetreStep * MillimetreStep + steps * by, steps))
            .Where(other => other.Millimetres is > 0 and < 999)
            .Select(other => (new Count(length.Comparison, other.Millimetres), other.steps));
    }
}
