using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary><c>on a guitar</c>, <c>on a guitar tuned D2 A2 D3 G3 A3 D4</c>.</summary>
internal static class InstrumentPhrase
{
    private const int MostWords = 8;
    private const int LowestMidi = 12;
    private const int HighestMidi = 108;

    public static PhraseKind Kind { get; } =
        new(
            "the instrument",
            ShowPhrase.Instrument,
            at => at.Is("on") && Find(at, Lead(at)).Instrument is not null,
            Read,
            "on a guitar",
            "on guitar",
            "on a low-G ukulele",
            "on the bass",
            "on a 3/4 guitar",
            "on a left-handed guitar",
            "on a guitar tuned D2 A2 D3 G3 A3 D4"
        );

    /// <summary>Reads an instrument with its tuning, without <c>on</c>; the name must stand here.</summary>
    public static Failure? Read(Cursor at, out Instrument? instrument)
    {
        at.Skip(Articles(at, 0));
        (instrument, var count) = Find(at, 0);
        if (instrument is null)
        {
            return Unknown(at, "an instrument such as 'guitar'");
        }

        at.Skip(count);
        if (!at.Is("tuned"))
        {
            return null;
        }

        at.Skip();
        at.Accept("to");
        return ReadTuning(at, ref instrument);
    }

    /// <summary>The failure for a name that is no instrument, with near names.</summary>
    public static Failure Unknown(Cursor at, string expected)
    {
        var first = at.Current;
        var length = NameLength(at);
        var name = at.Words(0, length);
        if (length == 0 || name.Length > 60)
        {
            return Failure.Expected(expected, first);
        }

        var last = at.Peek(length - 1);
        var whole = new Token(TokenKind.Word, first.Start, last.End - first.Start, name);
        return Failure.At(
            whole,
            $"expected {expected}, found {Failure.Shown(whole)}",
            [
                .. Catalogue.Suggest(name).Select(near => Edit.Of(whole, near)),
                .. Spelling.Edits(first, ["strings", "string", "all", "every", "frets"]),
            ]
        );
    }

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        var handed = 1 + Articles(at, 1);
        if (
            HandPhrases.Handed(at, handed) is (var isLeft, > 0)
            && HandPhrases.Choose(isLeft, at.Peek(handed), draft) is { } opposite
        )
        {
            return opposite;
        }

        at.Skip(Lead(at));
        var failure = Read(at, out var instrument);
        draft.Sentence = draft.Sentence with { Instrument = instrument };
        return failure;
    }

    // On, on a, on a left-handed.
    private static int Lead(Cursor at)
    {
        var lead = 1 + Articles(at, 1);
        return lead + HandPhrases.Handed(at, lead).Count;
    }

    private static int Articles(Cursor at, int ahead) => at.Peek(ahead).IsAny("a", "an", "the", "my") ? 1 : 0;

    // The longest name wins (guitar in fourths, not guitar), unless a kind of key follows: baritone guitar, in A minor.
    private static (Instrument? Instrument, int Count) Find(Cursor at, int ahead)
    {
        var most = 0;
        while (most < MostWords && at.Peek(ahead + most).Kind == TokenKind.Word)
        {
            most++;
        }

        for (var count = most; count > 0; count--)
        {
            var isKey = count > 1 && at.Peek(ahead + count - 2).Is("in") && IsPartOfKey(at, ahead + count);
            if (!isKey && Catalogue.TryFind(at.Words(ahead, count), out var instrument))
            {
                return (instrument, count);
            }
        }

        return (null, 0);
    }

    private static bool IsPartOfKey(Cursor at, int ahead) =>
        at.Peek(ahead).IsAny("flat", "sharp", "double") || Notes.ReadKind(at, ahead).Kind is not null;

    // What was meant as a name goes as far as the next word that begins another phrase.
    private static int NameLength(Cursor at)
    {
        var length = 0;
        while (
            length < MostWords
            && at.Peek(length) is { Kind: TokenKind.Word } word
            && !word.IsAny("in", "on", "with", "frets", "fret", "from", "as", "for", "tuned", "strings", "and")
        )
        {
            length++;
        }

        return length;
    }

    private static Failure? ReadTuning(Cursor at, ref Instrument instrument)
    {
        var pitches = new List<Pitch>();
        var first = at.Current;
        var last = first;
        while (pitches.Count <= instrument.Strings.Count && PitchAt(at, pitches.Count) is var (pitch, skip))
        {
            last = at.Peek(skip);
            if (pitch.MidiNumber is < LowestMidi or > HighestMidi)
            {
                return Failure.At(last, $"no string is tuned to {pitch}; pitches go from C0 to C8");
            }

            at.Skip(skip + 1);
            pitches.Add(pitch);
        }

        if (pitches.Count == 0)
        {
            return Failure.Expected(
                "pitches with their octaves, such as 'D2 A2 D3 G3 A3 D4', after 'tuned'",
                at.Current
            );
        }

        if (pitches.Count != instrument.Strings.Count)
        {
            var strings = instrument.Strings.Count;
            return NoteWithoutOctave(at)
                ?? Failure.At(
                    first,
                    last,
                    $"the {instrument} has {strings} strings: expected {strings} pitches, the far string's first, found {(pitches.Count > strings ? "more" : pitches.Count)}"
                );
        }

        instrument = instrument.Tuned(pitches.AsEnumerable().Reverse());
        return null;
    }

    // The pitch here, or behind a comma or dash when it is not the first; and how many tokens stand before it.
    private static (Pitch Pitch, int Skip)? PitchAt(Cursor at, int count)
    {
        var skip = count > 0 && at.Current.Kind is TokenKind.Comma or TokenKind.Dash ? 1 : 0;
        return at.Peek(skip) is { Kind: TokenKind.Word } token && Pitch.TryParse(token.Text, out var pitch)
            ? (pitch, skip)
            : null;
    }

    private static Failure? NoteWithoutOctave(Cursor at) =>
        at.Current.Kind == TokenKind.Word && NoteName.TryParse(at.Current.Text, out _)
            ? Failure.Expected("a pitch with its octave, such as 'D3'", at.Current)
            : null;
}
