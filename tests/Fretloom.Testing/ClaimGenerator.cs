using CsCheck;
using Fretloom.Claims;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Testing;

/// <summary>Random claims that can be made of one place.</summary>
internal sealed class ClaimGenerator(PlaceScope place, FretRange? window)
{
    private static readonly Gen<Count> Count = Gen.Select(
        Gen.Enum<Comparison>(),
        Gen.OneOf(Gen.Int[0, 3], Gen.Int[0, 12], Gen.Int[0, 999]),
        (comparison, number) => new Count(comparison, number)
    );

    private static readonly Gen<int> Degree = Gen.Int[1, 7];

    private static readonly Gen<int> Distance = Gen.Select(
        Gen.Int[1, 12],
        Gen.Bool,
        (frets, isDown) => isDown ? -frets : frets
    );

    private static readonly Gen<Quantity> Simple = Gen.OneOf<Quantity>(
        new Quantity.Every(),
        new Quantity.Some(),
        new Quantity.No()
    );

    private static readonly Gen<Quantity> Quantities = Gen.OneOf(
        Simple,
        Gen.Int[0, 7].Select(number => (Quantity)new Quantity.Exactly(number))
    );

    private static readonly Gen<HandSize> Hand = Gen.OneOf(
        Gen.OneOf(HandSize.Adult, HandSize.Small, HandSize.Large, HandSize.Child),
        Gen.Double[HandSize.LeastMm, HandSize.MostMm].Select(length => new HandSize(length))
    );

    private readonly Instrument? _instrument = (place as PlaceScope.On)?.Instrument;

    private readonly StringSet? _chosen = place is PlaceScope.On on ? on.Strings ?? on.Instrument.AllStrings : null;

    /// <summary>Strings chosen, or those that a listed set or tuning may have.</summary>
    private StringSet Strings => _chosen ?? StringSet.Run((place as PlaceScope.Tunings)?.Strings ?? 6, 1);

    /// <summary>How many strings are chosen; null when that depends on the case.</summary>
    private int? CountOfChosen => _chosen?.Count ?? (place as PlaceScope.Tunings)?.Strings;

    /// <summary>Everything that can be claimed.</summary>
    public Gen<Claim> Claim => Gen.Select(Joined, Joined.Null(), Joined.Null(), If);

    /// <summary>What asks for a ruler or a hand. Needs a window and an instrument.</summary>
    public Gen<Claim> InHand =>
        Gen.Select(Shapes, Gen.OneOf([.. OfHand]), (shapes, says) => (Claim)new Claim.OfShapes(shapes, says));

    private IEnumerable<Gen<ShapePredicate>> OfHand =>
        [
            Gen.Select(
                Gen.Enum<Comparison>(),
                Gen.Int[0, 200],
                (comparison, millimetres) =>
                    (ShapePredicate)new ShapePredicate.Stretches(new Count(comparison, millimetres))
            ),
            Hand.Select(hand => (ShapePredicate)new ShapePredicate.CanBePlayed(hand)),
            Shapes.Select(other => (ShapePredicate)new ShapePredicate.IsFingeredAs(other)),
        ];

    private Gen<Claim> Joined =>
        Gen.Select(
            One.Array[1, 3],
            Gen.Bool,
            (parts, isAnd) =>
                parts.Length == 1 ? parts[0]
                : isAnd ? new Claim.And([.. parts])
                : (Claim)new Claim.Or([.. parts])
        );

    private Gen<Claim> One =>
        Gen.OneOf(
            Gen.Select(Count, Noun, (count, noun) => (Claim)new Claim.ThereAre(count, noun)),
            Gen.Select(Noun, Noun, (one, other) => (Claim)new Claim.AsMany(one, other)),
            Gen.Const((Claim)new Claim.IsPalindromic()),
            Gen.Const((Claim)new Claim.HasEqualSteps()),
            Gen.Select(
                Gen.OneOf([.. ScaleKind.All.Where(kind => kind.IsSevenNote)]),
                Gen.Bool,
                (kind, isNot) => (Claim)new Claim.KeyIs(kind, isNot)
            ),
            Patterns,
            Gen.Select(Degree, Degree, Gen.Bool, (from, to, swaps) => (Claim)new Claim.CarriesDegree(from, to, swaps)),
            Gen.Select(FretSets, FretSets.Null(), (from, to) => (Claim)new Claim.CarriesFrets(from, to)),
            CarriesShapes,
            Gen.Select(
                Degree,
                AnyString,
                Simple,
                Noun,
                (degree, number, quantity, noun) => (Claim)new Claim.DegreeStands(degree, number, quantity, noun)
            ),
            Gen.Select(FretSets, Relation(isWhole: true), (set, how) => (Claim)new Claim.OfFrets(set, null, how)),
            Gen.Select(
                Noun,
                Simple,
                Relation(isWhole: false),
                (noun, quantity, how) => (Claim)new Claim.OfFrets(new FretSet.Named(noun), quantity, how)
            ),
            Gen.Select(Noun, Count, (noun, count) => (Claim)new Claim.NeighboursLieApart(noun, count)),
            Gen.Select(FretSets, FretSets, Count, (one, other, count) => (Claim)new Claim.GapIs(one, other, count)),
            Shapes.SelectMany(shapes => Predicate(shapes).Select(says => (Claim)new Claim.OfShapes(shapes, says)))
        );

    private Gen<Claim> Patterns =>
        Gen.OneOf(
            Gen.Select(Of, Gen.Int[-5, 5], Gen.OneOf(PatternMotion.HalfTurn, PatternMotion.Mirror, PatternMotion.Flip))
                .Select((one, frets, motion) => (Claim)new Claim.PatternIs(one, frets, motion, null, IsOwn: true)),
            Pair.SelectMany(pair =>
                Gen.Select(
                    Gen.Int[-5, 5],
                    Gen.Enum<PatternMotion>(),
                    (frets, motion) => (Claim)new Claim.PatternIs(pair.One, frets, motion, pair.Other, IsOwn: false)
                )
            ),
            Pair.Select(pair => (Claim)new Claim.PatternsHaveSameForm(pair.One, pair.Other))
        );

    // Two string sets of one size.
    private Gen<(OtherStrings? One, OtherStrings? Other)> Pair =>
        Gen.Int[1, Strings.Count].SelectMany(count => Gen.Select(OfSize(count), OfSize(count)));

    private Gen<FretNoun> Noun => Gen.Select(Gen.Enum<FretKind>(), Of, (kind, of) => new FretNoun(kind, of));

    // A claim on frets that a string has not got is refused.
    private Gen<int> AnyString =>
        _instrument is null
            ? Gen.Int[1, Strings.Count]
            : Gen.OneOf([
                .. _instrument.AllStrings.Numbers.Where(number =>
                    !(window?.Last > _instrument.LastFretOf(new StringSet([number])))
                ),
            ]);

    private Gen<OtherStrings?> Of =>
        Gen.OneOf(Gen.Const((OtherStrings?)null), Gen.Int[1, Strings.Count].SelectMany(OfSize), OfOtherInstrument);

    private Gen<OtherStrings?> OfOtherInstrument =>
        SentenceGen
            .Instrument.Where(HasWindow)
            .SelectMany(other =>
                ClaimGen
                    .Strings(other.AllStrings)
                    .Nullable()
                    .Select(strings => (OtherStrings?)new OtherStrings(strings, other))
            );

    // A claim on frets that another of its necks has not got is refused.
    private bool HasWindow(Instrument other) => !(window?.Last > other.LastFretOf(other.AllStrings));

    private Gen<FretSet> FretSets =>
        Gen.Select(
            Gen.OneOf(
                Noun.Select(noun => (FretSet)new FretSet.Named(noun)),
                Gen.Select(Degree, AnyString, (degree, number) => (FretSet)new FretSet.OfDegree(degree, number)),
                Gen.Select(
                    Gen.Enum<ShapeEnd>(),
                    Shapes.Where(shapes => shapes is not ShapeSet.OfQuality),
                    (end, shapes) => (FretSet)new FretSet.OfShapes(end, shapes)
                ),
                Gen.Int[0, 24].HashSet[1, 4].Select(frets => (FretSet)new FretSet.Numbers(frets.Order().ToValueList()))
            ),
            Distance.Nullable(),
            (set, moved) => moved is { } frets ? new FretSet.Moved(set, frets) : set
        );

    private Gen<FretRelation> Relation(bool isWhole) =>
        Gen.Select(Gen.Int[isWhole ? 0 : 1, 7], FretSets, FretSets, Distance)
            .Select(
                (choice, frets, others, distance) =>
                    choice switch
                    {
                        0 => new FretRelation.Are(frets),
                        1 => new FretRelation.LieOn(frets),
                        2 => new FretRelation.Include(frets),
                        3 => new FretRelation.Avoid(frets),
                        4 => new FretRelation.LieNextTo(frets),
                        5 => new FretRelation.LieApart(distance, frets),
                        6 => new FretRelation.LieHalfway(frets, others),
                        _ => (FretRelation)new FretRelation.AreCarriedToThemselves(),
                    }
            );

    private Gen<ShapeSet> Shapes => ShapesWith(OfSize);

    // The half-turn is that of the place; on one string no shape lies.
    private Gen<Claim> CarriesShapes =>
        Strings.Count < 2
            ? Gen.Const((Claim)new Claim.IsPalindromic())
            : Gen.Select(OfPlace, OfPlace.Null(), (from, to) => (Claim)new Claim.CarriesShapes(from, to));

    // Few shapes lie on two strings: in place of one on another instrument stands a third on the two far strings.
    private Gen<ShapeSet> OfPlace =>
        Shapes.Select(shapes =>
            shapes.Of?.Instrument is null
                ? shapes
                : new ShapeSet.OnDegree(
                    ShapeFamily.Third,
                    1,
                    Of: new OtherStrings(new StringSet(Strings.Numbers.Take(2)))
                )
        );

    private static Gen<ShapeSet> ShapesWith(Func<int, Gen<OtherStrings?>> ofSize) =>
        Gen.OneOf<ShapeSet>(
                Gen.Select(Quantities, Gen.Enum<ShapeFamily>())
                    .Select((quantity, family) => (ShapeSet)new ShapeSet.Several(quantity, family)),
                Gen.Select(Gen.Enum<ShapeFamily>(), Degree)
                    .Select((family, degree) => (ShapeSet)new ShapeSet.OnDegree(family, degree)),
                Gen.OneOf([.. ShapeQuality.All]).Select(quality => (ShapeSet)new ShapeSet.OfQuality(quality)),
                SentenceGen.RootNumeral.Select(numeral => (ShapeSet)new ShapeSet.ByNumeral(numeral))
            )
            .SelectMany(shapes =>
                Gen.Select(
                    VoicingOf(shapes),
                    ofSize(shapes.Notes),
                    (voicing, of) => shapes with { Voicing = voicing, Of = of }
                )
            );

    // No voice of a chord wider than an octave is dropped.
    private static Gen<ShapeVoicing> VoicingOf(ShapeSet shapes) =>
        Gen.Select(
            Gen.OneOf([
                Arrangement.Close,
                .. shapes.Notes > 2 && !IsWide(shapes) ? new[] { Arrangement.DropTwo } : [],
                .. shapes.Notes > 3 && !IsWide(shapes) ? new[] { Arrangement.DropThree } : [],
            ]),
            Gen.Int[0, shapes.Notes - 1],
            (arrangement, inversion) => new ShapeVoicing(arrangement, inversion)
        );

    private static bool IsWide(ShapeSet shapes) =>
        shapes is ShapeSet.ByNumeral by && by.Numeral.Quality.Intervals.Any(member => member.Semitones >= 12);

    // Strings that a shape of so many notes can lie on: those chosen, some of them, or another instrument's.
    private Gen<OtherStrings?> OfSize(int count)
    {
        var choices = new List<Gen<OtherStrings?>>();
        if (CountOfChosen is null || CountOfChosen == count)
        {
            choices.Add(Gen.Const((OtherStrings?)null));
        }

        if (Strings.Count >= count)
        {
            choices.Add(ClaimGen.Strings(Strings, count).Select(strings => (OtherStrings?)new OtherStrings(strings)));
        }

        choices.Add(
            Gen.OneOf([.. Catalogue.All.Where(other => other.Strings.Count >= count && HasWindow(other))])
                .SelectMany(other =>
                    ClaimGen
                        .Strings(other.AllStrings, count)
                        .Select(strings => (OtherStrings?)new OtherStrings(strings, other))
                )
        );
        return Gen.OneOf([.. choices]);
    }

    private Gen<ShapePredicate> Predicate(ShapeSet subject)
    {
        var says = new List<Gen<ShapePredicate>>
        {
            Count.Select(count => (ShapePredicate)new ShapePredicate.Spans(count)),
            Gen.OneOf<ShapePredicate>(new ShapePredicate.IsOwnHalfTurn(), new ShapePredicate.IsOwnMirror()),
            Shapes.Select(other => (ShapePredicate)new ShapePredicate.IsHalfTurnOf(other)),
            Shapes.Select(other => (ShapePredicate)new ShapePredicate.IsMirrorOf(other)),
            Shapes.Select(other => (ShapePredicate)new ShapePredicate.HasSameFormAs(other)),
        };
        if (subject is not ShapeSet.OfQuality)
        {
            says.Add(FretSets.Select(frets => (ShapePredicate)new ShapePredicate.BeginsOn(frets)));
            says.Add(FretSets.Select(frets => (ShapePredicate)new ShapePredicate.EndsOn(frets)));
            says.Add(FretSets.Select(frets => (ShapePredicate)new ShapePredicate.HasRootOn(frets)));
        }

        if (subject is ShapeSet.Several or ShapeSet.OnDegree)
        {
            says.Add(
                Gen.Select(Degree, Gen.Int[-12, 12])
                    .Select((degree, frets) => (ShapePredicate)new ShapePredicate.IsThatOfDegree(degree, frets))
            );
        }

        if (window is not null && place is not PlaceScope.Tunings)
        {
            says.AddRange(OfHand);
        }

        return Gen.OneOf([.. says]);
    }

    private static Claim If(Claim then, Claim? condition, Claim? outer)
    {
        var inner = condition is null ? then : new Claim.If(condition, then);
        return outer is null ? inner : new Claim.If(outer, inner);
    }
}
