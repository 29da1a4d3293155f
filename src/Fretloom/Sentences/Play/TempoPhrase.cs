using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>at 72</c>, <c>from 60 to 96 in steps of 6</c>.</summary>
internal static class TempoPhrase
{
    private const int UsualStep = 6;

    public static PlayPhraseKind Kind { get; } =
        new(
            "the tempo",
            PlayPhrase.Tempo,
            at =>
                at.Is("at")
                || at.Is("tempo")
                || (Numbers.Cardinal(at.Current) is not null && at.Peek(1).IsAny("bpm", "beats"))
                || IsLadder(at, at.Is("from") ? 1 : 0)
                || IsInWords(at.Current),
            Read,
            "at 72",
            "at 72 beats a minute",
            "at 96 bpm",
            "96 bpm",
            "from 60 to 96 in steps of 6",
            "from 60 to 96 by 6",
            "60 to 96 in steps of 6"
        );

    // From 60 to 96, 60 to 96, 60-96.
    private static bool IsLadder(Cursor at, int ahead) =>
        Numbers.Cardinal(at.Peek(ahead)) is not null
        && (at.Peek(ahead + 1).Is("to") || at.Peek(ahead + 1).Kind == TokenKind.Dash)
        && Numbers.Cardinal(at.Peek(ahead + 2)) is not null;

    // How fast these are is told differently everywhere.
    private static bool IsInWords(Token token) =>
        token.IsAny(
            "slow",
            "slowly",
            "fast",
            "quickly",
            "largo",
            "adagio",
            "andante",
            "moderato",
            "allegretto",
            "allegro",
            "presto"
        );

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        if (IsInWords(at.Current))
        {
            return Failure.Expected("a tempo in beats a minute, such as 'at 72'", at.Current) with
            {
                Edits = [Edit.Of(at.Current, "at 72")],
            };
        }

        var isLadder = IsLadder(at, at.Is("from") ? 1 : 0);
        at.AcceptAny("at", "from", "tempo");
        at.Accept("a", "tempo", "of");
        var first = at.Current;
        if (ReadTempo(at, out var slow) is { } failure)
        {
            return failure;
        }

        return isLadder ? ReadLadder(at, draft, first, slow) : Single(at, draft, slow);
    }

    private static Failure? Single(Cursor at, PlayDraft draft, Tempo tempo)
    {
        Unit(at);
        draft.Sentence = draft.Sentence with { Tempo = new TempoLadder(tempo) };
        return null;
    }

    private static Failure? ReadLadder(Cursor at, PlayDraft draft, Token first, Tempo slow)
    {
        at.Skip();
        if (ReadTempo(at, out var fast) is { } failure)
        {
            return failure;
        }

        var last = at.Previous;
        Unit(at);
        var skip = at.Current.Kind == TokenKind.Comma ? 1 : 0;
        var isStepped =
            (at.Peek(skip).Is("in") && at.Peek(skip + 1).IsAny("steps", "step"))
            || (at.Peek(skip).Is("by") && Numbers.Cardinal(at.Peek(skip + 1)) is not null);
        if (!isStepped)
        {
            return Failure.At(
                last,
                $"expected how the tempo rises, such as 'in steps of {UsualStep}', after '{last.Text}'",
                Edit.Of(last, $"{last.Text} in steps of {UsualStep}")
            );
        }

        at.Skip(skip + (at.Peek(skip).Is("by") ? 1 : 2));
        at.Accept("of");
        var token = at.Current;
        if (Numbers.Cardinal(token) is not { } step)
        {
            return Failure.Expected("a number of beats a minute such as '6'", token);
        }

        at.Skip();
        return Ladder(draft, (first, last), (slow, fast), (step, token));
    }

    private static Failure? Ladder(
        PlayDraft draft,
        (Token First, Token Last) place,
        (Tempo Slow, Tempo Fast) ends,
        (int Count, Token Place) step
    )
    {
        var rise = ends.Fast.BeatsPerMinute - ends.Slow.BeatsPerMinute;
        if (rise < 0)
        {
            return Failure.At(
                place.First,
                place.Last,
                $"a tempo ladder rises, and {ends.Slow} to {ends.Fast} falls",
                Edit.Of(place.First, place.Last, $"{ends.Fast} to {ends.Slow}")
            );
        }

        // The last step may be smaller.
        if (
            step.Count is < 1 or > Tempo.Fastest - Tempo.Slowest
            || (rise + step.Count - 1) / step.Count >= TempoLadder.MostRungs
        )
        {
            return Failure.At(
                step.Place,
                $"a ladder rises by 1 to {Tempo.Fastest - Tempo.Slowest} and has at most {TempoLadder.MostRungs} rungs, found steps of {Failure.Shown(step.Place)}",
                Edit.Of(step.Place, $"{UsualStep}")
            );
        }

        draft.Sentence = draft.Sentence with { Tempo = new TempoLadder(ends.Slow, ends.Fast, step.Count) };
        return null;
    }

    private static Failure? ReadTempo(Cursor at, out Tempo tempo)
    {
        tempo = default;
        var token = at.Current;
        if (Thousands(at) is { } last)
        {
            return TooFast(token, last);
        }

        if (Numbers.Cardinal(token) is not { } number)
        {
            return NoTempo(token);
        }

        at.Skip();
        if (number is < Tempo.Slowest or > Tempo.Fastest)
        {
            return Failure.At(
                token,
                $"a tempo is {Tempo.Slowest} to {Tempo.Fastest} beats a minute, found {Failure.Shown(token)}",
                Edit.Of(token, number < Tempo.Slowest ? $"{Tempo.Slowest}" : $"{Tempo.Fastest}")
            );
        }

        tempo = new Tempo(number);
        return null;
    }

    // 10,000 is one number.
    private static Token? Thousands(Cursor at)
    {
        var (comma, last) = (at.Peek(1), at.Peek(2));
        return
            Numbers.Cardinal(at.Current) is not null
            && comma.Kind == TokenKind.Comma
            && comma.Start == at.Current.End
            && last.Start == comma.End
            && last is { Length: 3 }
            && (at.Current.Text + last.Text).All(char.IsAsciiDigit)
            ? last
            : null;
    }

    private static Failure TooFast(Token first, Token last) =>
        Failure.At(
            first,
            last,
            $"a tempo is {Tempo.Slowest} to {Tempo.Fastest} beats a minute, found '{first.Text},{last.Text}'",
            Edit.Of(first, last, $"{Tempo.Fastest}")
        );

    private static Failure NoTempo(Token token) =>
        token.Kind == TokenKind.Word
        && double.TryParse(token.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
        && number is >= Tempo.Slowest and <= Tempo.Fastest
            ? Failure.At(
                token,
                $"a tempo is a whole number of beats a minute, found {Failure.Shown(token)}",
                Edit.Of(token, Math.Round(number).ToString(CultureInfo.InvariantCulture))
            )
            : Failure.Expected("a tempo in figures such as '72', in beats a minute", token);

    // Bpm; beats a minute; beats per minute.
    private static void Unit(Cursor at)
    {
        if (at.Accept("bpm") || !at.Is("beats"))
        {
            return;
        }

        at.Skip(at.Peek(1).IsAny("a", "per") && at.Peek(2).Is("minute") ? 3 : 1);
    }
}
