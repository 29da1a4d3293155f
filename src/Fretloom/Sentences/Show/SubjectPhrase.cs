using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>What to see.</summary>
internal static class SubjectPhrase
{
    private static readonly (string Word, Func<Subject> Make)[] Nouns =
    [
        ("landmarks", () => new Subject.TheLandmarks()),
        ("thirds", () => new Subject.TheThirds()),
        ("symmetries", () => new Subject.TheSymmetries()),
        ("triads", () => new Subject.ChordsOfTheKey(KeyChords.Triads)),
    ];

    private static readonly (string[] Words, KeyChords Chords)[] Families =
    [
        (["sixth", "6th", "added-sixth"], KeyChords.SixthChords),
        (["seventh", "7th"], KeyChords.SeventhChords),
        (["ninth", "9th"], KeyChords.NinthChords),
    ];

    private static readonly string[] Beginnings =
    [
        "the",
        "every",
        "notes",
        "note",
        "landmarks",
        "thirds",
        "symmetries",
        "triads",
        "sixth",
        "seventh",
        "ninth",
        "scale",
        "chord",
        "chords",
        "progression",
        "shapes",
        "spot",
        "spots",
        "open",
    ];

    public static PhraseKind Kind { get; } =
        new(
            "what to show",
            ShowPhrase.Subject,
            Begins,
            Read,
            "the notes of the key",
            "the notes of A minor pentatonic",
            "the landmarks",
            "the thirds",
            "the triads",
            "the sixth chords",
            "the added-sixth chords",
            "the seventh chords of the key",
            "the ninth chords",
            "the seventh chords from I to IV",
            "the chord V7",
            "the chords I vi ii V7",
            "Bm7b5 and E7",
            "C, F and G7",
            "D major chord",
            "the C chord",
            "the shapes G, C and D",
            "the C shape",
            "D minor pentatonic",
            "the blues scale in A",
            "the A blues scale",
            "the chromatic scale",
            "the notes C D E",
            "the notes C4, D4 and E4",
            "every D",
            "every D, F and A",
            "the scale, 3 notes a string",
            "the open strings",
            "the spots 5:3 4:2 3:0",
            "the symmetries"
        );

    /// <summary>Words that a subject may begin with, for suggestions.</summary>
    public static IEnumerable<string> Openings => Beginnings;

    private static bool Begins(Cursor at) =>
        (at.Current.IsAny(Beginnings) && !OneShapePhrase.Begins(at, 0))
        || FamilyAt(at) is not null
        || Notes.ReadScale(at, Article(at)).Scale is not null
        || Notes.ReadKind(at, Article(at)).Kind is not null
        || Spot.TryParse(at.Current.Text, out _)
        || ChordList.IsSymbol(at)
        || ChordList.IsNumeral(at);

    // A C major scale, a chromatic scale; in a minor and a blues the letter is a note.
    private static int Article(Cursor at) =>
        at.Current.Text is "a" or "an"
        && (
            Notes.ReadKind(at, 1).Kind == ScaleKind.Chromatic
            || (Notes.ReadScale(at, 0).Scale is null && Notes.ReadScale(at, 1).Scale is not null)
        )
            ? 1
            : 0;

    private static Failure? Read(Cursor at, ShowDraft draft)
    {
        var first = at.Current;
        at.Skip(Article(at));
        if (at.Accept("every"))
        {
            return ReadEvery(at, draft, first);
        }

        var hasArticle = at.Accept("the");
        var (subject, failure) = ReadOne(at, draft, hasArticle);
        if (subject is not null)
        {
            draft.Add(subject, at.Since(first));
        }

        return failure;
    }

    private static (Subject? Subject, Failure? Failure) ReadOne(Cursor at, ShowDraft draft, bool hasArticle)
    {
        if (Array.Find(Nouns, noun => at.Is(noun.Word)).Make is { } make)
        {
            at.Skip();
            OfTheKey(at);
            return make() is Subject.ChordsOfTheKey triads ? DegreesPhrase.Read(at, triads) : (make(), null);
        }

        if (FamilyAt(at) is { } family)
        {
            at.Skip();
            var failure = at.Accept("chords")
                ? null
                : Failure.Expected($"'chords' after '{at.Previous.Text}'", at.Current, "chords");
            OfTheKey(at);
            return failure is null ? DegreesPhrase.Read(at, new Subject.ChordsOfTheKey(family)) : (null, failure);
        }

        return at.AcceptAny("spot", "spots") || Spot.TryParse(at.Current.Text, out _) ? SpotList.Read(at, draft)
            : at.Accept("open") ? ReadOpenStrings(at)
            : at.AcceptAny("notes", "note") ? ReadNotes(at, draft)
            : at.Accept("shapes") ? ReadShapes(at, draft)
            : at.AcceptAny("chord", "chords", "progression") ? ReadNamedChords(at)
            : ReadScaleOrChords(at, draft, hasArticle);
    }

    private static (Subject?, Failure?) ReadOpenStrings(Cursor at) =>
        at.Accept("strings")
            ? (new Subject.TheOpenStrings(), null)
            : (null, Failure.Expected("'strings' after 'open'", at.Current, "strings"));

    private static bool OfTheKey(Cursor at) => at.Accept("of", "the", "key") || at.Accept("of", "the", "scale");

    /// <summary>Whether a word names, behind its article, something of the key: <c>triads</c>, <c>landmarks</c>, <c>seventh</c> for its chords.</summary>
    public static bool IsNoun(Token token) =>
        Array.Exists(Nouns, noun => token.Is(noun.Word)) || Array.Exists(Families, family => token.IsAny(family.Words));

    private static KeyChords? FamilyAt(Cursor at) =>
        Array.FindIndex(Families, family => at.Current.IsAny(family.Words)) is >= 0 and var found
            ? Families[found].Chords
            : null;

    private static (Subject?, Failure?) ReadNotes(Cursor at, ShowDraft draft)
    {
        if (OfTheKey(at))
        {
            return (new Subject.NotesOfTheKey(), null);
        }

        if (NoteList.Begins(at))
        {
            return (NoteList.Read(at, draft), null);
        }

        if (!at.Accept("of"))
        {
            return (
                null,
                Notes.German(at.Current)
                    ?? Failure.Expected(
                        "'of the key', 'of' and a scale, or notes such as 'C D E' or 'C4' after 'the notes'",
                        at.Current,
                        "of"
                    )
            );
        }

        at.Accept("the");
        var (scale, count) = Notes.ReadScale(at, 0);
        at.Skip(count);
        at.Skip(scale is not null && at.Is("scale") ? 1 : 0);
        return scale is not null
            ? (new Subject.ScaleShapes(scale, null), null)
            : (
                null,
                Failure.Expected(
                    "'the key' or a scale such as 'A minor pentatonic' after 'of'",
                    at.Current,
                    "key",
                    "scale"
                )
            );
    }

    private static (Subject?, Failure?) ReadNamedChords(Cursor at)
    {
        at.Accept("progression");
        if (at.Is("of"))
        {
            return (
                null,
                Failure.At(
                    at.Previous,
                    "which chords of the key? name 'triads', 'sixth chords', 'seventh chords' or 'ninth chords'",
                    at.Previous.Is("chord") ? [Edit.Of(at.Current, at.Peek(1), at.Peek(1).Text)] : []
                )
            );
        }

        return SpokenChords.Read(at, isIntroduced: true) is { } spoken ? (spoken, null)
            : ChordList.IsNumeral(at) ? (ChordList.ReadNumerals(at), null)
            : ChordList.IsSymbol(at) ? (ChordList.ReadSymbols(at, out _), null)
            : (
                null,
                Symbols.Misread(at)
                    ?? Failure.Expected($"a chord such as 'V7' or 'Bm7b5' after '{at.Previous.Text}'", at.Current)
            );
    }

    private static (Subject?, Failure?) ReadScaleOrChords(Cursor at, ShowDraft draft, bool hasArticle)
    {
        if (at.Accept("scale"))
        {
            at.Accept("of", "the", "key");
            return (new Subject.ScaleShapes(null, null), null);
        }

        if (SpokenChords.Read(at, isIntroduced: false) is { } spoken)
        {
            return (spoken, null);
        }

        var (scale, count) = Notes.ReadScale(at, 0);
        if (scale is not null)
        {
            at.Skip(count);
            at.Accept("scale");
            return (new Subject.ScaleShapes(scale, null), null);
        }

        if (Notes.ReadKind(at, 0).Kind is not null)
        {
            return ScaleWords.ReadKindFirst(at);
        }

        if (ChordList.IsNumeral(at))
        {
            return ReadNumerals(at, hasArticle);
        }

        var wrong = AfterArticle(at);
        return ChordList.IsSymbol(at) ? ReadSymbols(at, draft, hasArticle, wrong) : (null, wrong);
    }

    // The shapes G, C and D.
    private static (Subject?, Failure?) ReadShapes(Cursor at, ShowDraft draft)
    {
        draft.Shapes ??= at.Previous;
        return ChordList.IsSymbol(at)
            ? (ChordList.ReadSymbols(at, out _), null)
            : (null, Failure.Expected("chords such as 'G, C and D' after 'shapes'", at.Current));
    }

    // V7; the V7 chord; the I IV V progression.
    private static (Subject?, Failure?) ReadNumerals(Cursor at, bool hasArticle)
    {
        var numerals = ChordList.ReadNumerals(at);
        return at.AcceptAny("chord", "chords", "progression") || !hasArticle
            ? (numerals, null)
            : (
                null,
                Failure.Expected($"'chord' or 'chords' after '{at.Previous.Text}'", at.Current, "chord", "chords")
            );
    }

    // C chord; the C, F and G7 chords; with the article the last word must stand.
    private static (Subject?, Failure?) ReadSymbols(Cursor at, ShowDraft draft, bool hasArticle, Failure wrong)
    {
        var chords = ChordList.ReadSymbols(at, out var last);
        if (ScaleWords.Misnamed(at, chords.Chords[^1], last, hasArticle) is { } misnamed)
        {
            return (null, misnamed);
        }

        if (at.Current.IsAny("shape", "shapes"))
        {
            at.Skip();
            draft.Shapes ??= at.Previous;
            return (chords, null);
        }

        var introducesOthers =
            at.Peek(1) is var next && (Chord.TryParse(next.Text, out _) || RomanNumeral.TryParse(next.Text, out _));
        var isClosed = (!introducesOthers && at.AcceptAny("chord", "chords")) || SpokenChords.IsArpeggio(at.Current);
        return hasArticle && !isClosed ? (null, wrong) : (chords, null);
    }

    private static Failure AfterArticle(Cursor at) =>
        IntervalWords.IsOther(at.Current)
            ? Failure.At(
                at.Current,
                $"expected 'thirds', the one interval that is asked for by its name, found {Failure.Shown(at.Current)}; spots can be given one by one, such as 'the spots 4:2 2:1'",
                Edit.Of(at.Current, "thirds")
            )
        : Notes.Read(at, 0, out _) is > 0 and var tonic
            ? Failure.Expected(
                $"a kind of scale such as 'major', 'minor pentatonic' or 'blues' after '{at.Words(0, tonic)}'",
                at.Peek(tonic),
                Notes.KindWords
            )
        : Failure.Expected(
            "'notes of the key', 'landmarks', 'triads', 'seventh chords', 'chord V7' or 'scale' after 'the'",
            at.Current,
            Beginnings.Skip(2).Append("ninth")
        );

    // every D; every D, F and A; every D and every G.
    private static Failure? ReadEvery(Cursor at, ShowDraft draft, Token first)
    {
        var count = Notes.Read(at, 0, out var name);
        if (count == 0)
        {
            return Notes.German(at.Current)
                ?? Failure.Expected("a note name such as 'D' or 'Bb' after 'every'", at.Current);
        }

        for (var skip = 0; count > 0; )
        {
            at.Skip(skip + count);
            draft.Add(new Subject.EveryNote(name), at.Since(first));
            skip = Series.Next(at, 0);
            first = at.Peek(skip);
            var goesOn = skip > 0 && first.Text != "a" && Notes.ReadScale(at, skip).Scale is null;
            count = goesOn ? Notes.Read(at, skip, out name) : 0;
        }

        return null;
    }
}
