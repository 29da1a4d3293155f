using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Claims;

/// <summary><c>on guitar strings 4-1</c>, also <c>on a guitar</c> and <c>on strings 4-1</c> apart; <c>on every listed string set</c>.</summary>
internal static class PlacesPhrase
{
    /// <summary>Reads the phrase, which begins with <c>on</c>, into the scope.</summary>
    public static Failure? Read(Cursor at, Scope scope)
    {
        var on = at.Current;
        at.Skip();
        if (StringNames.IsAll(at))
        {
            at.Skip(at.Peek(1).Is("the") ? 3 : 2);
            return scope.Note(ScopePart.Strings, ScopePhrases.Since(on, at));
        }

        if (at.Current.IsAny("every", "each", "all"))
        {
            var failure = QuantifiedPlaces.Read(at, out var places);
            scope.Places ??= places;
            return failure
                ?? scope.Note(ScopePart.Instrument, ScopePhrases.Since(on, at))
                ?? scope.Note(ScopePart.Strings, ScopePhrases.Since(on, at));
        }

        if (StringNames.Begins(at, scope))
        {
            return ReadStrings(at, scope, on);
        }

        if (InstrumentPhrase.Read(at, out var instrument) is { } unknown)
        {
            return StringNames.Unknown(at, scope)
                ?? unknown with
                {
                    Edits = [.. StringNames.Near(at, scope), .. unknown.Edits],
                };
        }

        var again = scope.Note(ScopePart.Instrument, ScopePhrases.Since(on, at));
        scope.Instrument ??= instrument;
        return again
            ?? (StringNames.Begins(at, scope) ? ReadStrings(at, scope, at.Current) : StringNames.Misspelled(at));
    }

    private static Failure? ReadStrings(Cursor at, Scope scope, Token from)
    {
        var isFirst = !scope.Has(ScopePart.Strings);
        var places = isFirst ? scope.StringPlaces : [];
        var failure =
            StringNames.Read(at, scope, places, out var strings)
            ?? scope.Note(ScopePart.Strings, ScopePhrases.Since(from, at));
        scope.Strings ??= isFirst ? strings : null;
        if (failure is null && at.Is("of") && scope.Instrument is null)
        {
            at.Skip();
            failure = InstrumentPhrase.Read(at, out var instrument);
            scope.Instrument = instrument;
            failure ??= scope.Note(ScopePart.Instrument, ScopePhrases.Since(from, at));
        }

        return failure ?? (scope.Instrument is { } named ? StringNames.Missing(places, named) : null);
    }
}
