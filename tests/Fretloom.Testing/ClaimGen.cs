using CsCheck;
using Fretloom.Claims;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Testing;

/// <summary>Random claims of everything that the language can say, and damaged ones.</summary>
/// <remarks>What a reader would refuse does not occur: strings that the instrument lacks, shapes on too many strings.</remarks>
public static class ClaimGen
{
    /// <summary>All keys, some, or one.</summary>
    public static Gen<KeyScope> Keys { get; } =
        Gen.OneOf(
            Gen.OneOf<KeyScope>(new KeyScope.EveryKey(), new KeyScope.EveryMinorKey(), new KeyScope.EveryMode()),
            Gen.OneOf([.. ScaleKind.All.Where(kind => kind.IsSevenNote)])
                .Select(kind => (KeyScope)new KeyScope.EveryOf(kind)),
            TheoryGen.Key.Select(key => (KeyScope)new KeyScope.One(key))
        );

    /// <summary>Some strings of an instrument of the catalogue, perhaps tuned otherwise or with a capo.</summary>
    public static Gen<PlaceScope> On { get; } =
        Gen.Select(SentenceGen.Instrument, Gen.Int[0, 3])
            .SelectMany(
                (instrument, capo) =>
                    Strings(instrument.AllStrings)
                        .Nullable()
                        .Select(strings =>
                            (PlaceScope)new PlaceScope.On(instrument.WithCapo(Math.Max(0, capo - 1)), strings)
                        )
            );

    /// <summary>Listed string sets.</summary>
    public static Gen<PlaceScope> Listed { get; } =
        Gen.Select(Gen.Bool, Gen.Bool, (one, other) => (PlaceScope)new PlaceScope.Listed(one, other));

    /// <summary>Tunings of 2 to 8 strings, all of them or with bounds.</summary>
    public static Gen<PlaceScope> Tunings { get; } =
        Gen.Select(
            Gen.Int[2, 8],
            Gen.Bool,
            Gen.Int[1, 11],
            Gen.Int[1, 11],
            (strings, isPalindromic, one, other) =>
                (PlaceScope)new PlaceScope.Tunings(strings, isPalindromic, Math.Min(one, other), Math.Max(one, other))
        );

    /// <summary>Whole sentences.</summary>
    public static Gen<ClaimSentence> Sentence { get; } = In(Keys, Gen.OneOf(On, On, Listed, Tunings));

    /// <summary>Sentences in one key, on an instrument and in a window, that ask for a ruler or a hand.</summary>
    public static Gen<ClaimSentence> InHand { get; } =
        Gen.Select(TheoryGen.Key, On, Gen.Int[0, 14], Gen.Int[0, 24])
            .SelectMany(
                (key, place, one, other) =>
                {
                    var window = Window((one, other), ((PlaceScope.On)place).Instrument.LastFret);
                    return new ClaimGenerator(place, window).InHand.Select(claim => new ClaimSentence(
                        new KeyScope.One(key),
                        place,
                        window,
                        claim
                    ));
                }
            );

    /// <summary>The canonical text of a sentence with one to four characters or words lost, doubled, swapped or replaced.</summary>
    public static Gen<string> Damaged { get; } = Sentence.Select(sentence => sentence.ToString()).SelectMany(Damage);

    /// <summary>Sentences in some keys and places, one in two with a window.</summary>
    public static Gen<ClaimSentence> In(Gen<KeyScope> keys, Gen<PlaceScope> places) =>
        places.SelectMany(place =>
            Gen.OneOf(Gen.Select(Gen.Int[0, 14], Gen.Int[0, 14]), Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20]))
                .Nullable()
                .SelectMany(ends =>
                {
                    var window = Window(ends, place is PlaceScope.On on ? LastFretOf(on) : 20);
                    return Gen.Select(
                        keys,
                        new ClaimGenerator(place, window).Claim,
                        (key, claim) => new ClaimSentence(key, place, window, claim)
                    );
                })
        );

    /// <summary>A text with one to four damages.</summary>
    public static Gen<string> Damage(string text) =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 999], Gen.Char[' ', '~'])
            .List[1, 4]
            .Select(damages =>
                damages.Aggregate(
                    text,
                    (left, damage) => SentenceGen.Damage(left, damage.Item1, damage.Item2, damage.Item3)
                )
            );

    /// <summary>At least one of some strings.</summary>
    internal static Gen<StringSet> Strings(StringSet of) =>
        Gen.Int[1, of.Count].SelectMany(count => Strings(of, count));

    /// <summary>So many of some strings: in half of the cases neighbours.</summary>
    internal static Gen<StringSet> Strings(StringSet of, int count) =>
        Gen.OneOf(
            Gen.OneOf([.. of.Neighbours(count)]),
            Gen.Shuffle(of.Numbers.ToArray(), count).Select(numbers => new StringSet(numbers))
        );

    private static int LastFretOf(PlaceScope.On on) => on.Instrument.LastFretOf(on.Strings ?? on.Instrument.AllStrings);

    private static FretRange? Window((int One, int Other)? ends, int last) =>
        ends is var (one, other)
            ? new FretRange(Math.Min(last, Math.Min(one, other)), Math.Min(last, Math.Max(one, other)))
            : null;
}
