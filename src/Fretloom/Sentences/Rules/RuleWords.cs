using System.Globalization;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Rules;

/// <summary>The words of a rule, and a place in them: fingers, strings, notes, positions and frets are read from there on.</summary>
/// <remarks>What cannot be read gives null and leaves its <see cref="Failure"/>.</remarks>
internal sealed class RuleWords(string text)
{
    private const int Most = 99;

    private static readonly string[] FingerWords = ["finger", "open", "index", "middle", "ring", "little"];

    // Positions are printed in Roman numerals.
    private static readonly string[] Romans =
        "I II III IV V VI VII VIII IX X XI XII XIII XIV XV XVI XVII XVIII XIX XX XXI XXII XXIII XXIV".Split(' ');

    private readonly Cursor _at = new(text);

    /// <summary>The first thing that could not be read; null when there is none.</summary>
    public Failure? Failure { get; private set; }

    /// <summary>Whether every word has been read.</summary>
    public bool IsAtEnd => _at.IsAtEnd;

    /// <summary>Whether a finger stands here.</summary>
    public bool IsAtFinger => Named(_at.Current) is not null || IsAt("finger") || _at.Is("fingers");

    /// <summary>Whether a string with its number stands here.</summary>
    public bool IsAtString => IsAt("string");

    /// <summary>Whether a note of the line stands here.</summary>
    public bool IsAtNote => IsAt("note") || IsAtLastNote;

    /// <summary>Whether a position of the hand stands here.</summary>
    public bool IsAtPosition => IsAt("position") || IsAtOpenPosition;

    /// <summary>Whether frets stand here.</summary>
    public bool IsAtFrets =>
        _at.Current.IsAny("fret", "frets")
        || (Numbers.Cardinal(_at.Current) is not null && !_at.Peek(1).Is("position"));

    private bool IsAtLastNote => _at.Is("last") && _at.Peek(1).Is("note");

    private bool IsAtOpenPosition => _at.Is("open") && _at.Peek(1).Is("position");

    /// <summary>Whether one of these words stands here.</summary>
    public bool IsAny(params ReadOnlySpan<string> words) => _at.Current.IsAny(words);

    /// <summary>Moves past these words if all of them stand here.</summary>
    public bool Accept(params ReadOnlySpan<string> words) => _at.Accept(words);

    /// <summary>Moves past one of these words if it stands here.</summary>
    public bool AcceptAny(params ReadOnlySpan<string> words) => _at.AcceptAny(words);

    /// <summary>Moves past all of these words that stand here.</summary>
    public void SkipAny(params ReadOnlySpan<string> words)
    {
        while (_at.AcceptAny(words)) { }
    }

    /// <summary>Moves past one of these words, or fails.</summary>
    public bool Expect(params string[] words)
    {
        if (_at.AcceptAny(words))
        {
            return true;
        }

        _ = FailAt(string.Join(" or ", words.Select(word => $"'{word}'")), words);
        return false;
    }

    /// <summary>Moves past one of these words and an article, or fails.</summary>
    public bool ExpectBefore(params string[] words)
    {
        var stands = Expect(words);
        SkipAny("the");
        return stands;
    }

    /// <summary>Fails here.</summary>
    public Failure FailAt(string what, params IEnumerable<string> words) =>
        Failure ??= Failure.Expected(what, _at.Current, words);

    /// <summary>Fails here, with nothing read.</summary>
    public T? Fail<T>(string what, params IEnumerable<string> words)
        where T : class
    {
        _ = FailAt(what, words);
        return null;
    }

    /// <summary>Moves past <c>an open string</c> if it stands here.</summary>
    public bool AcceptOpenString() => _at.Accept("an", "open", "string") || _at.Accept("open", "string");

    /// <summary><c>finger 2</c>, <c>the second finger</c>, <c>the middle finger</c>.</summary>
    /// <param name="what">What was expected, up to the number of the finger.</param>
    public Finger? Finger(string what)
    {
        SkipAny("the");
        if (Named(_at.Current) is { } finger)
        {
            _at.Skip();
            SkipAny("finger");
            return finger;
        }

        if (_at.Is("fingers"))
        {
            _at.Skip();
            return (Finger?)Number(NumberOf("finger"), 1, 4);
        }

        return IsAt("finger")
            ? (Finger?)Numbered("finger", 1, 4)
            : (Finger?)Unread($"{what} and a number from 1 to 4", FingerWords);
    }

    /// <summary><c>position 5</c>, <c>position V</c>, <c>the fifth position</c>, <c>open position</c>, which is the first.</summary>
    public int? Position()
    {
        SkipAny("the");
        if (IsAtOpenPosition)
        {
            _at.Skip(2);
            return 1;
        }

        if (_at.Is("position") && Array.FindIndex(Romans, _at.Peek(1).Is) is >= 0 and var index)
        {
            _at.Skip(2);
            return index + 1;
        }

        return Numbered("position", 1);
    }

    /// <summary><c>note 3</c>, <c>the third note</c>, <c>the last note</c>.</summary>
    public LineNotePlace? Note()
    {
        SkipAny("the");
        if (IsAtLastNote)
        {
            _at.Skip(2);
            return new(finger => new LineRule.EndWith(finger), number => new LineRule.EndOn(number));
        }

        return Numbered("note", 1, int.MaxValue - 1) is { } note
            ? new(
                finger => new LineRule.WithFinger(note - 1, finger),
                number => new LineRule.OnString(note - 1, number)
            )
            : null;
    }

    /// <summary><c>frets 5-9</c>, <c>fret 5 to fret 9</c>, <c>frets 5 and 9</c>, with or without the first word.</summary>
    public FretRange? Frets()
    {
        SkipAny("frets", "fret");
        var token = _at.Current;
        if (Number("a fret", 0, Most) is not { } first)
        {
            return null;
        }

        if (!_at.Accept(TokenKind.Dash) && !_at.AcceptAny("to", "through", "and"))
        {
            _ = FailAt("'-' and the last fret");
            return null;
        }

        SkipAny("frets", "fret");
        if (Number("the last fret", 0, Most) is not { } last)
        {
            return null;
        }

        if (last >= first)
        {
            return new FretRange(first, last);
        }

        Failure ??= Failure.At(
            token,
            _at.Previous,
            $"the last fret, {last}, comes before the first, {first}",
            Edit.Of(token, _at.Previous, $"{last}-{first}")
        );
        return null;
    }

    /// <summary><c>string 3</c>, <c>the third string</c>.</summary>
    /// <param name="word">What is numbered.</param>
    /// <param name="least">The least number.</param>
    /// <param name="most">The greatest.</param>
    public int? Numbered(string word, int least, int most = Most)
    {
        SkipAny("the");
        if (Numbers.Ordinal(_at.Current) is { } ordinal && _at.Peek(1).Is(word))
        {
            var token = _at.Current;
            _at.Skip(2);
            return InRange(token, ordinal, NumberOf(word), least, most);
        }

        return Expect(word) ? Number(NumberOf(word), least, most) : null;
    }

    private bool IsAt(string word) =>
        _at.Is(word) || (Numbers.Ordinal(_at.Current) is not null && _at.Peek(1).Is(word));

    private int? Number(string what, int least, int most)
    {
        var token = _at.Current;
        if (Numbers.Cardinal(token) is not { } number)
        {
            return Unread(what, Numbers.Words);
        }

        _at.Skip();
        return InRange(token, number, what, least, most);
    }

    private int? InRange(Token token, int number, string what, int least, int most)
    {
        if (number >= least && number <= most)
        {
            return number;
        }

        var isWord = Numbers.Ordinal(token) is not null;
        var nearest = Math.Clamp(number, least, most);
        Failure ??= Failure.At(
            token,
            $"expected {what} from {least} to {most}, found '{token.Text}'",
            Edit.Of(token, isWord ? Numbers.OrdinalWord(nearest) : Figure(nearest))
        );
        return null;
    }

    private int? Unread(string what, IEnumerable<string> words)
    {
        _ = FailAt(what, words);
        return null;
    }

    private static string NumberOf(string word) => $"the number of a {word}";

    private static string Figure(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static Finger? Named(Token token) =>
        token.IsAny("index", "forefinger") ? Hand.Finger.Index
        : token.Is("middle") ? Hand.Finger.Middle
        : token.Is("ring") ? Hand.Finger.Ring
        : token.IsAny("little", "pinky", "pinkie") ? Hand.Finger.Little
        : null;
}

/// <summary>A note of a line, as rules speak of it.</summary>
/// <param name="With">The rule that gives it a finger, or leaves it open.</param>
/// <param name="On">The rule that gives it a string.</param>
internal sealed record LineNotePlace(Func<Finger, LineRule> With, Func<int, LineRule> On);
