using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Rules;

/// <summary>Reads a rule in a teacher's words.</summary>
internal static class RuleReader
{
    private static readonly string[] Openings = ["start", "stay", "in", "no", "without", "never", "within", "note"];

    /// <summary>The rule, or the first thing that is wrong with it.</summary>
    public static SentenceResult<LineRule> Read(string text)
    {
        var (rule, failure) = ReadPlain(text);
        return rule is not null
            ? SentenceResult<LineRule>.Read(rule)
            : SentenceResult<LineRule>.Wrong(Repairs.Error(text, failure!, changed => ReadPlain(changed).Failure));
    }

    private static (LineRule? Rule, Failure? Failure) ReadPlain(string text)
    {
        var at = new Cursor(text);
        var (rule, failure) = ReadRule(at);
        return failure is not null ? (null, failure)
            : at.IsAtEnd ? (rule, null)
            : (null, Failure.Expected("the end of the rule", at.Current));
    }

    private static (LineRule?, Failure?) ReadRule(Cursor at)
    {
        if (at.AcceptAny("start", "begin", "starting", "beginning"))
        {
            return Missing(at, "with", "on") ?? ReadFinger(at, finger => new LineRule.StartWith(finger));
        }

        if (at.AcceptAny("stay", "staying", "in"))
        {
            _ = at.Accept("in");
            return ReadPosition(at);
        }

        if (at.AcceptAny("never", "not"))
        {
            _ = at.AcceptAny("use", "with");
            return ReadFinger(at, finger => new LineRule.Never(finger));
        }

        if (at.AcceptAny("no", "without", "avoid"))
        {
            return at.AcceptAny("open")
                ? Missing(at, "strings", "string") ?? (new LineRule.NoOpenStrings(), null)
                : ReadFinger(at, finger => new LineRule.Never(finger), "'open strings'");
        }

        if (at.AcceptAny("within", "frets", "fret"))
        {
            _ = at.AcceptAny("frets");
            return ReadFrets(at);
        }

        return at.AcceptAny("note")
            ? ReadNote(at)
            : (
                null,
                Failure.Expected(
                    "a rule such as 'start with finger 2', 'stay in position 5', 'no open strings', 'never finger 4', 'note 3 on string 3' or 'note 3 with finger 1'",
                    at.Current,
                    Openings
                )
            );
    }

    private static (LineRule?, Failure?) ReadNote(Cursor at)
    {
        if (ReadNumber(at, "the number of a note, counted from 1,", int.MaxValue - 1, out var note) is { } failure)
        {
            return (null, failure);
        }

        if (at.Accept("open"))
        {
            return (new LineRule.WithFinger(note - 1, Finger.None), null);
        }

        if (at.Accept("with"))
        {
            return ReadFinger(at, finger => new LineRule.WithFinger(note - 1, finger));
        }

        if (Missing(at, "on", "with", "open") is { } missing)
        {
            return missing;
        }

        _ = at.Accept("the");
        if (Numbers.Ordinal(at.Current) is { } ordinal and >= 1 and <= 99)
        {
            at.Skip();
            return Missing(at, "string") ?? (new LineRule.OnString(note - 1, ordinal), null);
        }

        return Missing(at, "string")
            ?? (
                ReadNumber(at, "the number of a string", 99, out var number) is { } wrong
                    ? (null, wrong)
                    : (new LineRule.OnString(note - 1, number), null)
            );
    }

    private static (LineRule?, Failure?) ReadPosition(Cursor at)
    {
        _ = at.Accept("the");
        if (Numbers.Ordinal(at.Current) is { } ordinal and >= 1 and <= 99)
        {
            at.Skip();
            return Missing(at, "position") ?? (new LineRule.StayIn(ordinal), null);
        }

        return Missing(at, "position")
            ?? (
                ReadNumber(at, "the fret of the index finger", 99, out var number) is { } failure
                    ? (null, failure)
                    : (new LineRule.StayIn(number), null)
            );
    }

    private static (LineRule?, Failure?) ReadFrets(Cursor at)
    {
        if (ReadNumber(at, "a fret", 99, out var first, 0) is { } failure)
        {
            return (null, failure);
        }

        if (!at.Accept(TokenKind.Dash) && !at.Accept("to"))
        {
            return (null, Failure.Expected("'-' and the last fret", at.Current));
        }

        if (ReadNumber(at, "the last fret", 99, out var last, 0) is { } wrong)
        {
            return (null, wrong);
        }

        return last < first
            ? (null, Failure.At(at.Previous, $"the last fret, {last}, comes before the first, {first}"))
            : (new LineRule.Within(new FretRange(first, last)), null);
    }

    private static (LineRule?, Failure?) ReadFinger(Cursor at, Func<Finger, LineRule> make, string? other = null)
    {
        _ = at.Accept("the");
        var named = Named(at.Current);
        if (named is { } finger)
        {
            at.Skip();
            _ = at.Accept("finger");
            return (make(finger), null);
        }

        if (!at.AcceptAny("finger", "fingers"))
        {
            var what = other is null
                ? "'finger' and a number from 1 to 4"
                : $"{other}, or 'finger' and a number from 1 to 4";
            return (null, Failure.Expected(what, at.Current, "finger", "open", "index", "middle", "ring", "little"));
        }

        return ReadNumber(at, "a finger", 4, out var number) is { } failure
            ? (null, failure)
            : (make((Finger)number), null);
    }

    private static Finger? Named(Token token) =>
        token.Is("index") ? Finger.Index
        : token.Is("middle") ? Finger.Middle
        : token.Is("ring") ? Finger.Ring
        : token.IsAny("little", "pinky") ? Finger.Little
        : null;

    private static Failure? ReadNumber(Cursor at, string what, int most, out int number, int least = 1)
    {
        var token = at.Current;
        number = Numbers.Cardinal(token) ?? 0;
        if (Numbers.Cardinal(token) is null)
        {
            return Failure.Expected(what, token, Numbers.Words);
        }

        at.Skip();
        return number < least || number > most
            ? Failure.At(token, $"expected {what} from {least} to {most}, found '{token.Text}'")
            : null;
    }

    private static (LineRule?, Failure?)? Missing(Cursor at, params string[] words) =>
        at.AcceptAny(words)
            ? null
            : (null, Failure.Expected(string.Join(" or ", words.Select(word => $"'{word}'")), at.Current, words));
}
