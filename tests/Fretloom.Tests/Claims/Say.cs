using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims;

/// <summary>Short ways to put sentences together by hand.</summary>
internal static class Say
{
    public static readonly KeyScope EveryKey = new KeyScope.EveryKey();
    public static readonly KeyScope EveryMajorKey = new KeyScope.EveryOf(ScaleKind.Major);
    public static readonly PlaceScope Listed = new PlaceScope.Listed(false, false);
    public static readonly PlaceScope ListedPalindromic = new PlaceScope.Listed(true, false);
    public static readonly FretNoun FullFrets = new(FretKind.Full);
    public static readonly FretNoun EmptyFrets = new(FretKind.Empty);
    public static readonly FretNoun Centres = new(FretKind.HalfTurnCentre);
    public static readonly Quantity Every = new Quantity.Every();
    public static readonly Claim OwnHalfTurn = new Claim.PatternIs(null, 0, PatternMotion.HalfTurn, null, true);

    public static PlaceScope On(string instrument, string? strings = null) =>
        new PlaceScope.On(Find(instrument), strings is null ? null : StringSet.Parse(strings));

    public static OtherStrings Of(string strings) => new(StringSet.Parse(strings));

    public static FretSet The(FretNoun noun) => new FretSet.Named(noun);

    public static Claim EveryFret(FretNoun noun, FretRelation relation) =>
        new Claim.OfFrets(The(noun), Every, relation);

    public static Claim ThereAre(int number, FretNoun noun) =>
        new Claim.ThereAre(new Count(Comparison.Exactly, number), noun);

    public static ShapeSet Shape(string quality) =>
        new ShapeSet.OfQuality(ShapeQuality.All.Single(one => one.Name == quality));

    public static ShapeSet Seventh(int degree) => new ShapeSet.OnDegree(ShapeFamily.Seventh, degree);

    public static ShapeSet EverySeventh => new ShapeSet.Several(Every, ShapeFamily.Seventh);

    private static Instrument Find(string name) =>
        Catalogue.TryFind(name, out var instrument) ? instrument : throw new ArgumentException(name);
}
