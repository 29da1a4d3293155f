using Fretloom.Claims;
using Fretloom.Sentences.Reading;
using Fretloom.Shapes;

namespace Fretloom.Sentences.Claims;

/// <summary>How the members of a shape lie: <c>in drop 2</c>, <c>in first inversion</c>; before the shape, <c>drop-2</c>, <c>first-inversion</c>.</summary>
internal sealed class Voicings
{
    private Token? _arrangementPlace;
    private Token? _inversionPlace;
    private Arrangement _arrangement;
    private int _inversion;

    // A chord of seven members has six.
    private const int LastInversion = 6;

    /// <summary>What was read.</summary>
    public ShapeVoicing Voicing => new(_arrangement, _inversion);

    /// <summary>Reads what stands before the shape.</summary>
    public Failure? ReadBefore(Cursor at)
    {
        var isFirst = true;
        while ((Hyphened(at.Current) ?? Apart(at)) is var (one, other))
        {
            var place = new Token(TokenKind.Word, one.Start, other.End - one.Start, one.Text);
            at.Skip(Hyphened(at.Current) is null ? 2 : 1);
            if (Take(one, other, place) is { } failure)
            {
                return failure;
            }

            isFirst = false;
        }

        // The first inversion of the V7 shape; the drop-2 voicing of it.
        if (!isFirst && (at.Accept("voicing", "of") || at.Accept("voicings", "of") || at.Accept("of")))
        {
            at.Accept("the");
        }

        return isFirst && at.Current.IsAny("inversion", "inversions") ? OneAtATime(at.Current, at.Current) : null;
    }

    /// <summary>Reads what stands behind <c>in</c>.</summary>
    public Failure? ReadAfter(Cursor at)
    {
        var (one, other) = (at.Current, at.Peek(1));
        if (one.IsAny("every", "each", "any", "all") && other.IsAny("inversion", "inversions"))
        {
            return OneAtATime(one, other, Edit.Of(one, other, "first inversion"));
        }

        if (!IsFirstWord(one))
        {
            return Failure.Expected(
                "'drop 2', 'drop 3', 'close position', 'root position' or 'first inversion' after 'in'",
                one,
                ["drop", "close", "root", .. Numbers.OrdinalWords.Take(3)]
            );
        }

        at.Skip();
        var place = new Token(TokenKind.Word, one.Start, other.End - one.Start, one.Text);
        if (Take(one, other, place) is { } failure)
        {
            return failure;
        }

        at.Skip();
        return null;
    }

    /// <summary>Notes an inversion that figures tell: <c>V65</c>.</summary>
    public Failure? TakeFigures(int inversion, Token place) => inversion == 0 ? null : TakeInversion(inversion, place);

    /// <summary>The failure for a chord that has too few members for what was read, or lies too wide for it; null when it can lie so.</summary>
    /// <param name="shapes">What was read.</param>
    /// <param name="name">The chord, with its article.</param>
    public Failure? Check(ShapeSet shapes, string name)
    {
        var notes = shapes.Notes;
        var needed = _arrangement == Arrangement.DropThree ? 4 : 3;
        return _arrangement != Arrangement.Close && notes < needed
                ? Failure.At(
                    _arrangementPlace!.Value,
                    $"drop {needed - 1} takes a chord of {needed} notes or more; {name} has {notes}"
                )
            : _arrangement != Arrangement.Close && shapes.IsWide
                ? Failure.At(
                    _arrangementPlace!.Value,
                    $"drop {needed - 1} takes a chord within an octave; {name} is wider"
                )
            : _inversion >= notes
                ? Failure.At(
                    _inversionPlace!.Value,
                    $"{name} has {notes} notes; there is no {Numbers.OrdinalWord(_inversion)} inversion of it"
                )
            : null;
    }

    private Failure? Take(Token one, Token other, Token place)
    {
        if (one.Is("drop"))
        {
            return Numbers.Cardinal(other) is not (2 or 3)
                ? Failure.Expected("'2' or '3' after 'drop'", other, "two", "three")
                : TakeArrangement(Numbers.Cardinal(other) == 2 ? Arrangement.DropTwo : Arrangement.DropThree, place);
        }

        if (one.Is("close"))
        {
            return other.Is("position")
                ? TakeArrangement(Arrangement.Close, place)
                : Failure.Expected("'position' after 'close'", other, "position");
        }

        if (one.Is("root"))
        {
            return other.Is("position")
                ? TakeInversion(0, place)
                : Failure.Expected("'position' after 'root'", other, "position");
        }

        return other.Is("inversion")
            ? TakeInversion(Numbers.Ordinal(one) ?? 0, place)
            : Failure.Expected($"'inversion' after '{one.Text}'", other, "inversion");
    }

    private static Failure OneAtATime(Token first, Token last, params Edit[] edits) =>
        Failure.At(
            first,
            last,
            "a claim names one inversion, such as 'in first inversion'; say what holds of others behind 'and'",
            edits
        );

    private Failure? TakeArrangement(Arrangement arrangement, Token place)
    {
        var isSecond = _arrangementPlace is not null;
        (_arrangement, _arrangementPlace) = (arrangement, place);
        return isSecond ? Failure.At(place, "the order of the members was already chosen for this shape") : null;
    }

    private Failure? TakeInversion(int inversion, Token place)
    {
        var isSecond = _inversionPlace is not null;
        (_inversion, _inversionPlace) = (Math.Min(inversion, LastInversion), place);
        return isSecond ? Failure.At(place, "the inversion was already chosen for this shape")
            : inversion > LastInversion
                ? Failure.At(place, $"no chord has so many inversions, found {Failure.Shown(place)}")
            : null;
    }

    private static bool IsFirstWord(Token token) =>
        token.IsAny("drop", "close", "root") || Numbers.Ordinal(token) is > 0;

    // Drop 2, first inversion; the third shape is none.
    private static (Token One, Token Other)? Apart(Cursor at)
    {
        var (one, other) = (at.Current, at.Peek(1));
        return
            (one.Is("drop") && Numbers.Cardinal(other) is not null)
            || (one.IsAny("close", "root") && other.Is("position"))
            || (Numbers.Ordinal(one) is > 0 && other.Is("inversion"))
            ? (one, other)
            : null;
    }

    // Drop-2, first-inversion: one word with a hyphen, told apart from half-diminished and the like.
    private static (Token One, Token Other)? Hyphened(Token token)
    {
        var dash = token.Kind == TokenKind.Word ? token.Text.IndexOf('-', StringComparison.Ordinal) : -1;
        if (dash < 0 || dash == token.Length - 1)
        {
            return null;
        }

        var one = token with { Length = dash, Text = token.Text[..dash] };
        var other = new Token(
            TokenKind.Word,
            token.Start + dash + 1,
            token.Length - dash - 1,
            token.Text[(dash + 1)..]
        );
        return IsFirstWord(one) ? (one, other) : null;
    }
}
