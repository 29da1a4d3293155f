using Fretloom.Claims;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Claims;

/// <summary><c>of strings 4-2</c>, <c>of the top strings</c>, <c>of ukulele strings 4-1</c>, <c>of the ukulele</c>.</summary>
internal static class OfStrings
{
    /// <summary>Reads the phrase if it stands here; null when it does not.</summary>
    public static Failure? Read(Cursor at, Scope scope, out OtherStrings? of)
    {
        of = null;
        return Begins(at) && at.AcceptAny("of", "on") ? ReadPlace(at, scope, out of) : null;
    }

    /// <summary>Whether the phrase stands here; <c>on</c> is understood too.</summary>
    public static bool Begins(Cursor at) => at.Is("of") || (at.Is("on") && !at.Peek(1).Is("degree"));

    /// <summary>Reads strings or an instrument, without <c>of</c>.</summary>
    public static Failure? ReadPlace(Cursor at, Scope scope, out OtherStrings? of)
    {
        of = null;
        var said = new List<(int Number, Token Place)>();
        if (StringNames.Begins(at, scope))
        {
            var failure = StringNames.Read(at, scope, said, out var chosen);
            of = failure is null ? new OtherStrings(chosen) : null;
            return failure ?? OutsideChosen(said, scope);
        }

        var first = at.Current;
        if (InstrumentPhrase.Read(at, out var instrument) is { } unknown)
        {
            return Unknown(at, scope, unknown);
        }

        if (!StringNames.Begins(at, scope))
        {
            of = new OtherStrings(null, instrument);
            return StringNames.Misspelled(at) ?? BeyondNeck(first, at, scope, of);
        }

        var wrong = StringNames.Read(at, scope, said, out var strings) ?? StringNames.Missing(said, instrument!);
        of = new OtherStrings(strings, instrument);
        return wrong ?? BeyondNeck(first, at, scope, of);
    }

    private static Failure? BeyondNeck(Token first, Cursor at, Scope scope, OtherStrings of) =>
        scope.BeyondNeck(of.Instrument!, of.Strings ?? of.Instrument!.AllStrings) is { } beyond
            ? Failure.At(first, at.Previous, beyond)
            : null;

    // Unknown, and so null, for listed sets and tunings.
    private static Failure? OutsideChosen(List<(int Number, Token Place)> said, Scope scope)
    {
        if (scope.ChosenInstrument is not { } instrument || scope.ChosenStrings is not { } chosen)
        {
            return null;
        }

        var outside = said.Where(one => !chosen.Numbers.Contains(one.Number)).ToList();
        return StringNames.Missing(said, instrument)
            ?? (
                outside.Count == 0
                    ? null
                    : Failure.At(
                        outside[0].Place,
                        $"string {outside[0].Number} is not in the chosen set, {instrument} strings {chosen}"
                    )
            );
    }

    private static Failure Unknown(Cursor at, Scope scope, Failure unknown) =>
        Failure.At(
            at.Current,
            $"expected 'strings 4-2' or an instrument after '{at.Previous.Text}', found {Failure.Shown(at.Current)}",
            [.. Spelling.Edits(at.Current, ["strings", "string"]), .. StringNames.Near(at, scope), .. unknown.Edits]
        );
}
