using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Rules;

/// <summary>Reads a rule in a teacher's words.</summary>
internal static class RuleReader
{
    private static readonly string[] Openings =
    [
        "start",
        "end",
        "stay",
        "in",
        "no",
        "without",
        "never",
        "avoid",
        "within",
        "note",
        "finger",
    ];

    /// <summary>The rule, or the first thing that is wrong with it and a rule to write instead.</summary>
    public static SentenceResult<LineRule> Read(string text)
    {
        var (rule, failure) = ReadPlain(text);
        return rule is not null
            ? SentenceResult<LineRule>.Read(rule)
            : SentenceResult<LineRule>.Wrong(Repairs.Error(text, RuleExamples.With(text, failure!), Broken));
    }

    // A rule is short: a change is suggested only if it makes the whole of it read well.
    private static Failure? Broken(string text) =>
        ReadPlain(text).Failure is { } failure ? failure with { Start = -1 } : null;

    private static (LineRule? Rule, Failure? Failure) ReadPlain(string text)
    {
        var words = new RuleWords(text);
        var rule = ReadRule(words);
        words.SkipAny("only", "throughout");
        return rule is null ? (null, words.Failure)
            : words.IsAtEnd ? (rule, null)
            : (null, words.FailAt("the end of the rule"));
    }

    private static LineRule? ReadRule(RuleWords words)
    {
        words.SkipAny("please", "always", "play", "use", "keep", "only", "the");
        if (words.AcceptAny("start", "begin", "starting", "beginning"))
        {
            return ReadEnd(words, finger => new LineRule.StartWith(finger), number => new LineRule.StartOn(number));
        }

        if (words.AcceptAny("end", "finish", "ending", "finishing"))
        {
            return ReadEnd(words, finger => new LineRule.EndWith(finger), number => new LineRule.EndOn(number));
        }

        if (
            words.Accept("do", "not")
            || words.AcceptAny("no", "not", "never", "nothing", "without", "avoid", "avoiding", "don't")
        )
        {
            return ReadForbidden(words);
        }

        if (words.Accept("up", "to") || words.Accept("at", "most"))
        {
            return ReadHighest(words);
        }

        if (words.IsAny("stay", "staying", "remain", "hand", "in", "within", "between", "from", "fret", "frets"))
        {
            return ReadPlace(words);
        }

        return words.IsAtPosition ? Position(words)
            : words.IsAtNote ? ReadNote(words)
            : words.IsAtFinger ? ReadFingerOfNote(words)
            : words.IsAtString ? ReadStringOfNote(words)
            : words.Fail<LineRule>(
                "a rule such as 'start with finger 2', 'end on string 1', 'stay in position 5', 'no open strings', 'never finger 4' or 'note 3 with finger 1'",
                Openings
            );
    }

    // with finger 2, on string 3, on an open string, open
    private static LineRule? ReadEnd(RuleWords words, Func<Finger, LineRule> with, Func<int, LineRule> on)
    {
        if (words.Accept("open"))
        {
            return with(Finger.None);
        }

        return !words.ExpectBefore("with", "on") ? null
            : words.AcceptOpenString() ? with(Finger.None)
            : words.IsAtString ? On(words, on)
            : With(words, with, "'string' and its number");
    }

    private static LineRule? ReadForbidden(RuleWords words)
    {
        words.SkipAny("ever", "use", "using", "play", "go", "with", "any", "the");
        if (words.Accept("open"))
        {
            return words.Expect("strings", "string", "notes") ? new LineRule.NoOpenStrings() : null;
        }

        return words.AcceptAny("above", "beyond", "past") || words.Accept("higher", "than")
            ? ReadHighest(words)
            : With(words, finger => new LineRule.Never(finger), "'open strings'");
    }

    private static LineRule.Within? ReadHighest(RuleWords words) =>
        words.Numbered("fret", 0) is { } fret ? new LineRule.Within(new FretRange(0, fret)) : null;

    private static LineRule? ReadPlace(RuleWords words)
    {
        words.SkipAny("stay", "staying", "remain", "the", "hand");
        words.SkipAny("in", "within", "between", "from", "at", "on", "to", "the");
        return words.IsAtFrets
            ? words.Frets() is { } frets
                ? new LineRule.Within(frets)
                : null
            : Position(words);
    }

    private static LineRule? ReadNote(RuleWords words)
    {
        if (words.Note() is not { } note)
        {
            return null;
        }

        words.SkipAny("is", "must", "be", "played");
        if (words.Accept("open"))
        {
            return note.With(Finger.None);
        }

        return !words.ExpectBefore("with", "on", "open") ? null
            : words.AcceptOpenString() ? note.With(Finger.None)
            : words.IsAtString ? On(words, note.On)
            : With(words, note.With, "'string' and its number");
    }

    private static LineRule? ReadFingerOfNote(RuleWords words) =>
        words.Finger("'finger'") is { } finger && words.Expect("on", "for", "at") && words.Note() is { } note
            ? note.With(finger)
            : null;

    private static LineRule? ReadStringOfNote(RuleWords words) =>
        words.Numbered("string", 1) is { } number && words.Expect("for") && words.Note() is { } note
            ? note.On(number)
            : null;

    private static LineRule.StayIn? Position(RuleWords words) =>
        words.Position() is { } position ? new LineRule.StayIn(position) : null;

    private static LineRule? With(RuleWords words, Func<Finger, LineRule> rule, string other) =>
        words.Finger($"{other}, or 'finger'") is { } finger ? rule(finger) : null;

    private static LineRule? On(RuleWords words, Func<int, LineRule> rule) =>
        words.Numbered("string", 1) is { } number ? rule(number) : null;
}
