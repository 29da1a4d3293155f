using Fretloom.Claims;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims;

/// <summary>One key on some strings, judged by the definitions alone: note by note, on a neck that runs on both ways or ends where the window does.</summary>
/// <remarks>Nothing of the checker is used: no bits, no modulus but that of octaves, no theorem. For fingers see <see cref="SlowHand"/>.</remarks>
internal sealed class SlowClaims(SlowPlace place, Key key, FretRange? window)
{
    /// <summary>True, false, or null for untested.</summary>
    public bool? Judge(Claim claim)
    {
        switch (claim)
        {
            case Claim.If condition:
                return Judge(condition.Condition) == true ? Judge(condition.Then) : null;
            case Claim.And and:
                var each = and.Parts.Select(Judge).ToList();
                return each.Contains(false) ? false
                    : each.Contains(true) ? true
                    : null;
            case Claim.Or or:
                var any = or.Parts.Select(Judge).ToList();
                return any.Contains(true) ? true
                    : any.Contains(false) ? false
                    : null;
            case Claim.ThereAre there:
                return Meets(Noun(there.Noun).Count, there.Count);
            case Claim.AsMany many:
                return Noun(many.One).Count == Noun(many.Other).Count;
            case Claim.IsPalindromic:
                return IsPalindromic(place.Chosen.Select(open => open.Midi).ToList());
            case Claim.HasEqualSteps:
                return place.Chosen.Zip(place.Chosen.Skip(1), (far, near) => near.Midi - far.Midi).Distinct().Count()
                    <= 1;
            case Claim.KeyIs named:
                return named.IsNot ? key.Kind != named.Kind : key.Kind == named.Kind;
            case Claim.PatternsHaveSameForm same:
                return Shifts.Any(by => Agree(Strings(same.One), Strings(same.Other), (s, f) => (s, f + by)));
            case Claim.PatternIs pattern:
                return Is(pattern);
            case Claim.CarriesDegree carries:
                return Centres(place.Chosen)
                    .Any(c =>
                        Carries(c, carries.From, carries.To) && (!carries.Swaps || Carries(c, carries.To, carries.From))
                    );
            case Claim.CarriesFrets carries:
                return CarriesFrets(Frets(carries.From), carries.To is null ? Frets(carries.From) : Frets(carries.To));
            case Claim.CarriesShapes carries:
                return CarriesShapes(carries);
            case Claim.DegreeStands stands:
                var degree = Frets(new FretSet.OfDegree(stands.Degree, stands.String));
                return Quantified(stands.Quantity, Noun(stands.Noun), fret => degree.Contains(fret));
            case Claim.OfFrets of:
                return OfFrets(of);
            case Claim.NeighboursLieApart apart:
                var gaps = Gaps(Noun(apart.Noun).Order().ToList());
                return gaps.Count == 0 ? null : gaps.TrueForAll(gap => Meets(gap, apart.Frets));
            case Claim.GapIs gap:
                var distances = Frets(gap.One).SelectMany(_ => Frets(gap.Other), Distance).ToList();
                return distances.Count == 0 ? null : Meets(distances.Min(), gap.Frets);
            case Claim.OfShapes of:
                return Quantified(QuantityOf(of.Shapes), Shapes(of.Shapes), shape => Is(shape, of));
            default:
                throw new ArgumentOutOfRangeException(nameof(claim));
        }
    }

    private static IEnumerable<int> Shifts => Enumerable.Range(0, 12);

    private static IEnumerable<int> ALongWay => Enumerable.Range(-15, 40);

    private bool Sounds(int midi) => key.Notes.Any(note => (midi - note.PitchClass.Number) % 12 == 0);

    private int Degree(int number) => key.Notes[number - 1].PitchClass.Number;

    private static bool IsOctave(int semitones) => semitones % 12 == 0;

    private static bool IsPalindromic(List<int> opens) =>
        Enumerable
            .Range(0, opens.Count - 1)
            .All(at => opens[at + 1] - opens[at] == opens[^(at + 1)] - opens[^(at + 2)]);

    private static bool Meets(double found, Count count) =>
        count.Comparison switch
        {
            Comparison.Exactly => found == count.Number,
            Comparison.AtLeast => found >= count.Number,
            Comparison.AtMost => found <= count.Number,
            Comparison.MoreThan => found > count.Number,
            _ => found < count.Number,
        };

    private static Quantity QuantityOf(ShapeSet set) =>
        set is ShapeSet.Several several ? several.Quantity : new Quantity.Every();

    private static bool? Quantified<T>(Quantity quantity, IReadOnlyCollection<T> all, Func<T, bool> isSo) =>
        (quantity, all.Count, all.Count(isSo)) switch
        {
            (Quantity.Every or Quantity.No, 0, _) => null,
            (Quantity.Every, var count, var right) => right == count,
            (Quantity.No, _, var right) => right == 0,
            (Quantity.Some, _, var right) => right > 0,
            (Quantity.Exactly exactly, _, var right) => right == exactly.Number,
            _ => throw new ArgumentOutOfRangeException(nameof(quantity)),
        };

    // Frets

    private IEnumerable<double> Places =>
        window is { } range ? Halves(range.First, range.Last) : Halves(0, 12).SkipLast(1);

    private static IEnumerable<double> Halves(int first, int last) =>
        Enumerable.Range(2 * first, 2 * (last - first) + 1).Select(half => half / 2.0);

    private IEnumerable<double> Whole => Places.Where(double.IsInteger);

    private List<SlowString> Strings(OtherStrings? other) => place.Resolve(other)!;

    private HashSet<double> Noun(FretNoun noun)
    {
        var strings = place.Resolve(noun.Of)!;
        return noun.Kind switch
        {
            FretKind.Full => Whole.Where(fret => strings.TrueForAll(s => Sounds(s.Midi + (int)fret))).ToHashSet(),
            FretKind.Empty => Whole.Where(fret => !strings.Exists(s => Sounds(s.Midi + (int)fret))).ToHashSet(),
            _ => Centres(strings).ToHashSet(),
        };
    }

    private IEnumerable<double> Centres(List<SlowString> strings) =>
        Places.Where(c =>
            Enumerable
                .Range(0, strings.Count)
                .All(s =>
                    ALongWay.All(f => Sounds(strings[s].Midi + f) == Sounds(strings[^(s + 1)].Midi + (int)(2 * c) - f))
                )
        );

    private HashSet<double> Frets(FretSet set) =>
        set switch
        {
            FretSet.Named named => Noun(named.Noun),
            FretSet.OfDegree of => Whole
                .Where(fret => IsOctave(place.String(of.String).Midi + (int)fret - Degree(of.Degree)))
                .ToHashSet(),
            FretSet.OfShapes of => Shapes(of.Shapes)
                .SelectMany(shape => shape.Places.Select(shift => Seen(shape.End(of.End) + shift)))
                .ToHashSet(),
            FretSet.Numbers numbers => numbers.Frets.Select(fret => Seen(fret)).ToHashSet(),
            FretSet.Moved moved => Frets(moved.Set).Select(fret => Seen(fret + moved.Frets)).ToHashSet(),
            _ => throw new ArgumentOutOfRangeException(nameof(set)),
        };

    /// <summary>On the endless neck a fret is one with those an octave away.</summary>
    private double Seen(double fret)
    {
        while (window is null && fret < 0)
        {
            fret += 12;
        }

        while (window is null && fret >= 12)
        {
            fret -= 12;
        }

        return fret;
    }

    private double Distance(double one, double other) =>
        window is null ? new[] { -12, 0, 12 }.Min(octave => Math.Abs(one - other + octave)) : Math.Abs(one - other);

    private List<double> Gaps(List<double> ascending) =>
        (window is null && ascending.Count > 0 ? ascending.Append(ascending[0] + 12) : ascending)
            .Zip(
                (window is null && ascending.Count > 0 ? ascending.Append(ascending[0] + 12) : ascending).Skip(1),
                (low, high) => high - low
            )
            .ToList();

    private bool? OfFrets(Claim.OfFrets of)
    {
        var frets = Frets(of.Frets);
        if (of.Quantity is { } quantity)
        {
            return Quantified(quantity, frets, fret => Lie([fret], of.Relation));
        }

        var isOfEach =
            of.Relation
            is FretRelation.LieOn
                or FretRelation.Avoid
                or FretRelation.LieNextTo
                or FretRelation.LieApart
                or FretRelation.LieHalfway;
        return isOfEach && frets.Count == 0 ? null : Lie(frets, of.Relation);
    }

    private bool Lie(HashSet<double> frets, FretRelation relation) =>
        relation switch
        {
            FretRelation.LieOn on => frets.IsSubsetOf(Frets(on.Frets)),
            FretRelation.Avoid avoid => !frets.Overlaps(Frets(avoid.Frets)),
            FretRelation.Include include => frets.IsSupersetOf(Frets(include.Frets)),
            FretRelation.Are are => frets.SetEquals(Frets(are.Frets)),
            FretRelation.LieNextTo next => frets.All(fret =>
                Frets(next.Frets).Any(other => Distance(fret, other) == 1)
            ),
            FretRelation.LieApart apart => frets.All(fret =>
                Frets(apart.Frets).Any(other => Seen(other + apart.Distance) == fret)
            ),
            FretRelation.LieHalfway halfway => frets.IsSubsetOf(
                Frets(halfway.One).SelectMany(_ => Frets(halfway.Other), Middles).SelectMany(middles => middles)
            ),
            FretRelation.AreCarriedToThemselves => CarriesFrets(frets, frets),
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

    // On a circle of twelve frets there are two ways round, and so two middles.
    private List<double> Middles(double one, double other) =>
        window is null
            ?
            [
                .. new[] { Seen((one + other) / 2), Seen((one + other) / 2 + 6) }.Where(fret =>
                    fret != one || one != other
                ),
            ]
        : one == other ? []
        : [(one + other) / 2];

    // Turns and patterns

    private bool CarriesFrets(HashSet<double> from, HashSet<double> to) =>
        Centres(place.Chosen).Any(c => from.Select(fret => Seen(2 * c - fret)).ToHashSet().SetEquals(to));

    private bool? CarriesShapes(Claim.CarriesShapes claim)
    {
        var shapes = Shapes(claim.From);
        var about = Centres(place.Chosen)
            .Select(c => Quantified(QuantityOf(claim.From), shapes, shape => IsCarried(claim, shape, c)))
            .ToList();
        return about.Count == 0 ? false
            : about.Contains(true) ? true
            : about.Contains(false) ? false
            : null;
    }

    private bool IsCarried(Claim.CarriesShapes claim, SlowShape shape, double c)
    {
        if (claim.To is not { } to)
        {
            return shape.IsCarriedTo(shape, place.Chosen, c);
        }

        var isSo = Quantified(QuantityOf(to), Shapes(to), other => shape.IsCarriedTo(other, place.Chosen, c));
        return isSo ?? true;
    }

    /// <summary>Whether every place that sounds one degree goes to one that sounds the other.</summary>
    private bool Carries(double c, int from, int to) =>
        Enumerable
            .Range(0, place.Chosen.Count)
            .All(s =>
                ALongWay
                    .Where(f => IsOctave(place.Chosen[s].Midi + f - Degree(from)))
                    .All(f => IsOctave(place.Chosen[^(s + 1)].Midi + (int)(2 * c) - f - Degree(to)))
            );

    /// <summary>Whether a motion carries the pattern of some strings onto that of others, place by place.</summary>
    private bool Agree(List<SlowString> from, List<SlowString> to, Func<int, int, (int String, int Fret)> motion) =>
        from.Count == to.Count
        && from.Index()
            .All(s =>
                ALongWay.All(f =>
                {
                    var (at, fret) = motion(s.Index, f);
                    return Sounds(s.Item.Midi + f) == Sounds(to[at].Midi + fret);
                })
            );

    private bool Is(Claim.PatternIs claim)
    {
        var one = Strings(claim.One);
        var other = claim.IsOwn ? one : Strings(claim.Other);
        var (moved, last) = (claim.MovedFrets, one.Count - 1);
        return claim.Motion switch
        {
            PatternMotion.None => Agree(one, other, (s, f) => (s, f + moved)),
            PatternMotion.Flip => Agree(one, other, (s, f) => (last - s, f + moved)),
            PatternMotion.HalfTurn => Shifts.Any(sum => Agree(one, other, (s, f) => (last - s, sum - f))),
            _ => Shifts.Any(sum => Agree(one, other, (s, f) => (s, sum - f))),
        };
    }

    // Shapes

    private List<SlowShape> Shapes(ShapeSet set) =>
        SlowShape.Of(key, set, place.Resolve(set.Of)!, window).Where(shape => shape.Places.Any()).ToList();

    private bool Is(SlowShape shape, Claim.OfShapes claim)
    {
        return claim.Says switch
        {
            ShapePredicate.Spans spans => Meets(shape.Frets.Max() - shape.Frets.Min() + 1, spans.Frets),
            ShapePredicate.IsOwnHalfTurn => shape.IsHalfTurnOf(shape),
            ShapePredicate.IsOwnMirror => shape.IsMirrorOf(shape),
            ShapePredicate.IsHalfTurnOf of => Others(of.Shapes, shape.IsHalfTurnOf),
            ShapePredicate.IsMirrorOf of => Others(of.Shapes, shape.IsMirrorOf),
            ShapePredicate.HasSameFormAs same => Others(same.Shapes, shape.LooksLike),
            ShapePredicate.IsThatOfDegree that => SlowShape
                .Of(
                    key,
                    new ShapeSet.OnDegree(Family(claim.Shapes), that.Degree, claim.Shapes.Voicing),
                    place.Resolve(claim.Shapes.Of)!,
                    window
                )
                .Any(other =>
                    other.LooksLike(shape)
                    && shape.Places.Any(mine =>
                        other.Places.Any(theirs =>
                            Seen(shape.Frets[0] + mine) == Seen(other.Frets[0] + theirs + that.Frets)
                        )
                    )
                ),
            ShapePredicate.BeginsOn on => On(ShapeEnd.First, on.Frets),
            ShapePredicate.EndsOn on => On(ShapeEnd.Last, on.Frets),
            ShapePredicate.HasRootOn on => On(ShapeEnd.Root, on.Frets),
            ShapePredicate.Stretches stretches => AtPlaces(spots =>
                MeetsMm(SlowHand.StretchMm(InstrumentOf(claim.Shapes), spots), stretches.Millimetres)
            ),
            ShapePredicate.CanBePlayed played => AtPlaces(spots =>
                SlowHand.BestHold(new Player(InstrumentOf(claim.Shapes), played.Hand), spots)
                    is { Width: Width.InReach or Width.Wide }
            ),
            ShapePredicate.IsFingeredAs of => Others(
                of.Shapes,
                other =>
                    SlowHand.Best(new Player(InstrumentOf(of.Shapes)), Held(other, of.Shapes).First())
                        is var (theirs, _)
                    && AtPlaces(spots =>
                        SlowHand.Best(new Player(InstrumentOf(claim.Shapes)), spots) is var (mine, _) && mine == theirs
                    )
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };

        // No shape: at no place.
        bool AtPlaces(Func<ValueList<Spot>, bool> isSo) =>
            QuantityOf(claim.Shapes) is Quantity.No
                ? Held(shape, claim.Shapes).Any(isSo)
                : Held(shape, claim.Shapes).All(isSo);

        bool On(ShapeEnd end, FretSet frets) =>
            shape.Places.Any(shift => Frets(frets).Contains(Seen(shape.End(end) + shift)));

        bool Others(ShapeSet others, Func<SlowShape, bool> isSo) =>
            Quantified(QuantityOf(others), Shapes(others), isSo) ?? true;
    }

    // Hands

    private Instrument InstrumentOf(ShapeSet set) => set.Of?.Instrument ?? place.Instrument!;

    /// <summary>The spots at each place, the lowest first; frets are counted from where a string begins.</summary>
    private IEnumerable<ValueList<Spot>> Held(SlowShape shape, ShapeSet set) =>
        shape.Places.Select(shift =>
            shape
                .Strings.Zip(
                    shape.Frets,
                    (s, fret) => new Spot(s.Number, fret + shift + InstrumentOf(set).String(s.Number).StartsAtFret)
                )
                .ToValueList()
        );

    /// <summary>A length is exactly so long when it is on rounding.</summary>
    private static bool MeetsMm(double millimetres, Count count) =>
        count.Comparison == Comparison.Exactly
            ? Math.Abs(millimetres - count.Number) <= 0.5
            : Meets(millimetres, count);

    private static ShapeFamily Family(ShapeSet set) =>
        set switch
        {
            ShapeSet.Several several => several.Family,
            ShapeSet.OnDegree on => on.Family,
            _ => (ShapeFamily)Math.Min(set.Notes - 2, 2),
        };
}
