using System.Text.RegularExpressions;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Sentences.Claims;

/// <summary>What is said of claims that cannot be read.</summary>
public class ClaimErrorTests
{
    private const int Damages = 30_000;

    private static readonly ClaimDefaults TopStrings = new(
        stringSets: [new NamedStrings("top", StringSet.Run(3, 1)), new NamedStrings("Upper Four", StringSet.Run(4, 1))]
    );

    private const string OpenStrings =
        "expected 'fret 0' for open strings ('fret 0 is a full fret' where each sounds a note of the key, 'fret 0 is an empty fret' where none does; how strings are tuned is no claim)";

    [Theory]
    [InlineData("The open strings of a guitar are E A D G B E.", null)]
    [InlineData(
        "In C major, on guitar, the open strings are notes of the key.",
        "In C major, on guitar, fret 0 is a full fret."
    )]
    [InlineData(
        "On a guitar, every open string belongs to the key of C major.",
        "On a guitar, in every major key, fret 0 is a full fret."
    )]
    public void Open_strings_are_told_what_can_be_claimed_of_them(string text, string? mended)
    {
        var error = ClaimParser.Parse(text).Errors[0];

        Assert.StartsWith(OpenStrings, error.Message, StringComparison.Ordinal);
        Assert.StartsWith("open string", text[(error.Column - 1)..], StringComparison.Ordinal);
        Assert.Equal(mended, error.Repair?.ApplyTo(text));
        Assert.True(mended is null || ClaimParser.Parse(mended).IsRead);
    }

    // What is wrong is between brackets; places and repairs are common sense, no source.
    [Theory]
    [InlineData(
        "In [evry] major key, on guitar strings 4-1, there are exactly 3 full frets.",
        "expected 'every', or 'the key of' and a note name, found 'evry'; did you mean 'every'?"
    )]
    [InlineData(
        "In every major key, on guitar strings [1-4], there are exactly 3 full frets.",
        "a string set goes from the far string down to the one nearest the floor, found '1-4'; did you mean '4-1'?"
    )]
    [InlineData(
        "In every major key, on guitar strings [7]-4, there are exactly 3 full frets.",
        "the guitar has 6 strings; there is no string 7"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the full frets are[.]",
        "expected a fret set (full frets, empty frets, half-turn centres), found '.'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the [seventh shape] spans 4 frets.",
        "which seventh shape? say 'the seventh shape on degree 1' or 'every seventh shape'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, degree [8] stands on string 1 at every full fret.",
        "a key has degrees 1 to 7; there is no degree 8"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the seventh shape on degree 1 [are] the full frets.",
        "expected what the shape does ('spans', 'stretches', 'is', 'begins on', 'ends on', 'has its root on'), found 'are'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, every full fret is [the] empty frets.",
        "expected 'lies on' (use 'are' only after 'the'), found 'the'; did you mean 'lies on'?"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, there are exactly three [ful] frets.",
        "expected a fret set (full frets, empty frets, half-turn centres), found 'ful'; did you mean 'full'?"
    )]
    [InlineData(
        "In the key of [H] major, on guitar, there is at least 1 full fret.",
        "'H' is not a note name; did you mean 'B'?"
    )]
    [InlineData(
        "In every major key, on [guitr], there is at least 1 full fret.",
        "expected an instrument such as 'guitar', found 'guitr'; did you mean 'guitar'?"
    )]
    [InlineData(
        "In every major key, on guitar, [on frets 9 to 5], there is at least 1 full fret.",
        "frets 9 to 5 runs backwards; the lower fret comes first; did you mean 'on frets 5 to 9'?"
    )]
    [InlineData(
        "In every major key, on guitar, there is at least 1 full fret[]",
        "expected a full stop, 'and' or 'or', found the end of the sentence; did you mean 'fret.'?"
    )]
    [InlineData(
        "In every major key, [in every minor key], on guitar, there is at least 1 full fret.",
        "the keys were already chosen earlier in this sentence"
    )]
    [InlineData("In every major key, on guitar, there are 3 full frets[;] really.", "cannot read ';' here")]
    [InlineData(
        "In every major key, on guitar, every [seventh shape] spans 4 frets.",
        "a seventh shape needs 4 strings; the guitar's set has 6. Say \"of strings 4-1\", or choose four strings."
    )]
    [InlineData(
        "In every major key, on guitar strings 3-1, every [seventh shape] spans 4 frets.",
        "a seventh shape needs 4 strings; the guitar's set has 3. Choose four strings."
    )]
    [InlineData(
        "In every major key, on guitar strings 6-3, every [triad shape] spans 4 frets.",
        "a triad shape needs 3 strings; the guitar's set has 4. Say \"of strings 5-3\", or choose three strings."
    )]
    [InlineData(
        "In every major key, on guitar, the [V9 shape] begins on a full fret.",
        "a V9 shape needs 5 strings; the guitar's set has 6. Say \"of strings 5-1\", or choose five strings."
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, on frets 0 to 12, the V7 shape is fingered as the [IV shape] of ukulele strings 4-1.",
        "a IV shape needs 3 strings; 'of strings 4-1' names 4"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, the V7 shape has the same form as the [V7 shape] of banjo.",
        "a V7 shape needs 4 strings; the banjo's set has 5. Say \"of banjo strings 4-1\", or choose four strings."
    )]
    [InlineData(
        "In every major key, on guitar strings 6-3, the full frets are the full frets of strings 4-[2].",
        "string 2 is not in the chosen set, guitar strings 6-3"
    )]
    [InlineData(
        "In the key of A [minor], on guitar, there are 3 full frets.",
        "which minor? say 'A natural minor', 'A harmonic minor' or 'A melodic minor'; did you mean 'natural minor'?"
    )]
    [InlineData(
        "On guitar strings 4-1, [there] are 3 full frets.",
        "a claim names its keys first, such as 'in every major key' or 'in the key of D major'; did you mean 'in every major key, there'?"
    )]
    [InlineData(
        "In every key, there are 3 full frets and there is 1 empty fret [or] there are no half-turn centres.",
        "'and' and 'or' in one sentence can be read in two ways: split it into two sentences"
    )]
    [InlineData(
        "In every key, on strings 4-1, every seventh shape [stretches] at most 90 mm.",
        "a stretch in millimetres depends on where the shape lies: name the frets, such as 'on frets 0 to 12'; did you mean 'on frets 0 to 12, every'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, every seventh shape [can] be played with one finger a note.",
        "what a hand can play depends on where the shape lies: name the frets, such as 'on frets 0 to 12'; did you mean 'on frets 0 to 12, every'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, every seventh shape [is] fingered as the IV7 shape.",
        "a fingering depends on where the shape lies: name the frets, such as 'on frets 0 to 12'; did you mean 'on frets 0 to 12, every'?"
    )]
    [InlineData(
        "In every key, on every 4 string tuning, on frets 0 to 12, every seventh shape [stretches] at most 90 mm.",
        "a stretch in millimetres depends on the instrument, and a tuning has no length: name an instrument"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the dominant seventh shape is [that of degree 4] moved up 2 frets.",
        "'that of degree 4' is said of shapes on a degree, such as 'the seventh shape on degree 1'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the dominant seventh shape [begins on] a full fret.",
        "the dominant seventh shape is a form that may lie anywhere: name its degree, such as 'the V7 shape'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the key pattern of strings 4-2 is the key [pattern].",
        "patterns are compared string by string: one has 3 strings, the other 4"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, the half-turn carries [the V7 shape of ukulele strings 4-1] to itself.",
        "the half-turn is that of the strings chosen; it carries nothing of the ukulele"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, every triad shape of strings 3-1 in [drop 3] spans 4 frets.",
        "drop 3 takes a chord of 4 notes or more; a triad shape has 3"
    )]
    [InlineData(
        "In every key, on guitar strings 5-1, the V9 shape in [drop 2] spans at most 5 frets.",
        "drop 2 takes a chord within an octave; a V9 shape is wider"
    )]
    [InlineData(
        "In every key, on guitar strings 5-1, the [drop-3] V9 shape spans at most 5 frets.",
        "drop 3 takes a chord within an octave; a V9 shape is wider"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, [a full fret] lies next to an empty fret.",
        "which full fret? say 'every full fret' or 'some full fret'"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, [an empty fret of strings 4-2] avoids the full frets.",
        "which empty fret of strings 4-2? say 'every empty fret of strings 4-2' or 'some empty fret of strings 4-2'"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, [a] half-turn centre moved up 2 frets lies on a full fret.",
        "expected 'the' before these frets, found 'a'; did you mean 'the'?"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, [a] root fret of the V7 shape lies on a full fret.",
        "expected 'the' before these frets, found 'a'; did you mean 'the'?"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, every triad shape of strings 3-1 in [third inversion] spans 4 frets.",
        "a triad shape has 3 notes; there is no third inversion of it"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, the V65 shape in [first inversion] spans 4 frets.",
        "the inversion was already chosen for this shape"
    )]
    [InlineData(
        "In every key, on guitar, [on frets 0 to 30], there are 3 full frets.",
        "the guitar has 22 frets; there is no fret 30"
    )]
    [InlineData(
        "In every key, on guitar, on frets 0 to 20, the full frets are the full frets of [the ukulele].",
        "the ukulele has 15 frets; there is no fret 20"
    )]
    [InlineData(
        "In every key, on banjo strings 5-1, [on frets 0 to 20], there are 3 full frets.",
        "the short string of the banjo has 17 frets from its own nut; there is no fret 20"
    )]
    [InlineData(
        "In every key, on banjo strings 4-1, on frets 0 to 20, degree 1 stands on string [5] at some full fret.",
        "the short string of the banjo has 17 frets from its own nut; there is no fret 20"
    )]
    [InlineData(
        "In every key, on banjo strings 4-1, on frets 0 to 20, the frets of degree 1 on string [5] are fret 10.",
        "the short string of the banjo has 17 frets from its own nut; there is no fret 20"
    )]
    [InlineData(
        "In every key, fret 5 [is not always] full.",
        "a claim is said of every case: leave 'not always' out and see where it fails; did you mean 'is'?"
    )]
    [InlineData(
        "In every key, fret 5 is not full and fret 7 [is not always] full.",
        "a claim is said of every case: leave 'not always' out and see where it fails; did you mean 'is'?"
    )]
    [InlineData(
        "The full frets [do not always] lie on fret 5 in every key.",
        "a claim is said of every case: leave 'not always' out and see where it fails"
    )]
    [InlineData(
        "In every key, frets 5 and 7 are [not none] of the full frets.",
        "'not none' says no twice: say 'one of' or 'none of'"
    )]
    [InlineData(
        "In every key, the full frets [are not] the empty frets.",
        "'are not' may be said of each or of all together: say 'avoid' if none is one of these"
    )]
    [InlineData(
        "In every key, fret 5 [is not] frets 7 and 8.",
        "'is not' may be said of each or of all together: say 'avoids' if none is one of these"
    )]
    [InlineData(
        "In every key, fret 5 is not [fred] 7.",
        "expected a fret set (full frets, empty frets, half-turn centres), found 'fred'"
    )]
    [InlineData(
        "In every major key, on strings [11]-4, no seventh shape begins begins on an empty fret.",
        "the guitar has 6 strings; there is no string 11"
    )]
    // What is wrong at the end of a sentence.
    [InlineData(
        "There are 3 full frets in every major key on guitar [strngs] 4-1.",
        "expected 'strings 4-1' or a comma after 'guitar', found 'strngs'; did you mean 'strings'?"
    )]
    [InlineData(
        "There are 3 full frets on guitar [strngs] 4-1 in every major key.",
        "expected 'strings 4-1' or a comma after 'guitar', found 'strngs'; did you mean 'strings'?"
    )]
    [InlineData(
        "Every seventh shape in drop 2 spans at most 5 frets on guitar [strngs] 4-1 in every major key.",
        "expected 'strings 4-1' or a comma after 'guitar', found 'strngs'; did you mean 'strings'?"
    )]
    [InlineData(
        "In every major key, every seventh shape spans at most 5 frets on guitar strings [1-4].",
        "a string set goes from the far string down to the one nearest the floor, found '1-4'; did you mean '4-1'?"
    )]
    [InlineData(
        "There are 3 full frets on guitar in the key of [H] major.",
        "'H' is not a note name; did you mean 'B'?"
    )]
    [InlineData(
        "There are 3 full frets in [evry] major key.",
        "expected 'every', or 'the key of' and a note name, found 'evry'; did you mean 'every'?"
    )]
    [InlineData(
        "There are 3 full frets in A [minor].",
        "which minor? say 'A natural minor', 'A harmonic minor' or 'A melodic minor'; did you mean 'natural minor'?"
    )]
    [InlineData(
        "The V7 shape has the same form as the V7 shape on low-G ukulele in every [majr] key on strings 4-1.",
        "expected 'key', 'mode' or a kind of key such as 'major' or 'harmonic minor' after 'every', found 'majr'; did you mean 'major'?"
    )]
    [InlineData(
        "The V7 shape is the half-turn of the viiø7 shape in [evry] major key on strings 4-1.",
        "expected 'every', or 'the key of' and a note name, found 'evry'; did you mean 'every'?"
    )]
    [InlineData(
        "There are 3 full frets in every major key [on frets 9 to 5].",
        "frets 9 to 5 runs backwards; the lower fret comes first; did you mean 'on frets 5 to 9'?"
    )]
    [InlineData(
        "In every major key, there are 3 full frets [in every minor key].",
        "the keys were already chosen earlier in this sentence"
    )]
    [InlineData(
        "There are 3 full frets in every major key on guitar strings 4-1 [really].",
        "expected a full stop, found 'really'"
    )]
    [InlineData(
        "Every seventh shape stretches at most 90 mm on frets 0 to 12 in every major [ky].",
        "expected 'key' after 'major', found 'ky'"
    )]
    [InlineData(
        "[There] are 3 ful frets.",
        "a claim names its keys first, such as 'in every major key' or 'in the key of D major'"
    )]
    [InlineData("In every [blues] key, there are 3 full frets.", "a key has seven notes and blues has 6")]
    [InlineData(
        "In every key, there is [a] full fret.",
        "expected a number, 'exactly', 'at least', 'at most', 'more than' or 'fewer than', found 'a'; did you mean 'at least 1'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, [9] of the seventh shapes span 4 frets.",
        "a key has 7 shapes of a sort, one on each degree, found '9'"
    )]
    [InlineData(
        "In every key, on every [9] string tuning, there are 3 full frets.",
        "tunings have 2 to 8 strings, found '9'"
    )]
    [InlineData(
        "In every key, on every 4 string tuning with steps [5 to 4], there are 3 full frets.",
        "steps 5 to 4 runs backwards; the smaller step comes first; did you mean '4 to 5'?"
    )]
    [InlineData(
        "In the key [off] D major, there are 3 full frets.",
        "expected 'key of' and a note name after 'the', found 'off'; did you mean 'of'?"
    )]
    [InlineData(
        "In the key of [X] major, there are 3 full frets.",
        "expected a note name such as 'D' or 'Bb' after 'of', found 'X'"
    )]
    [InlineData(
        "In every key, on the [bottom] strings, there are 3 full frets.",
        "no string set is called 'bottom' here: say 'strings 4-1', or name the set in the lesson; did you mean 'strings 6-4'?"
    )]
    [InlineData(
        "In every major key, on the [top four] strings, there are 3 full frets.",
        "no string set is called 'top four' here: say 'strings 4-1', or name the set in the lesson; did you mean 'strings 4-1'?"
    )]
    [InlineData(
        "In every major key, on the [high] strings, there are 3 full frets.",
        "no string set is called 'high' here: say 'strings 4-1', or name the set in the lesson; did you mean 'strings 3-1'?"
    )]
    [InlineData(
        "In every major key, on strings [4321], there are 3 full frets.",
        "no instrument here has more than 20 strings, found '4321'; did you mean '4-1'?"
    )]
    [InlineData(
        "In [Am], there are 3 full frets.",
        "'Am' is a chord, not a key: say 'A natural minor', 'A harmonic minor' or 'A melodic minor'; did you mean 'A natural minor'?"
    )]
    [InlineData(
        "In [G and D major], on guitar, there are 3 full frets.",
        "a claim names one key, or all of a kind: say 'G major', or 'every major key'; did you mean 'every major key'?"
    )]
    [InlineData(
        "In every key, on strings 5-1, every [ninth] chord spans 4 frets.",
        "of ninth chords a claim names one by its numeral, such as 'the V9 shape'; 'every' goes with third, triad, seventh, sixth, octave and tenth shapes"
    )]
    [InlineData(
        "In every key, on guitar strings 3-1, every [tenth] spans 4 frets.",
        "a tenth shape needs 2 strings; the guitar's set has 3. Say \"of strings 2-1\", or choose two strings."
    )]
    [InlineData(
        "In every key, on guitar strings 3-1, every [octave shape] spans 4 frets.",
        "an octave shape needs 2 strings; the guitar's set has 3. Say \"of strings 2-1\", or choose two strings."
    )]
    [InlineData(
        "In every key, on guitar strings 3-2, every [sixth chord] spans 4 frets.",
        "a sixth shape is a triad with an added sixth: it needs 4 strings; the guitar's set has 2. Choose four strings."
    )]
    [InlineData(
        "In every key, on guitar, every [sixth] of strings 3-1 spans 4 frets.",
        "a sixth shape is a triad with an added sixth: it needs 4 strings; 'of strings 3-1' names 3"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, the [I6] chord spans 4 frets.",
        "I6 is I in first inversion, and has 3 notes; with an added sixth it is Iadd6, which has 4; did you mean 'Iadd6'?"
    )]
    [InlineData(
        "In every key, on guitar strings 4-1, every empty fret lies [between] two full frets.",
        "anywhere between them, or in the middle? expected 'halfway between', found 'between'; did you mean 'halfway between'?"
    )]
    [InlineData(
        "In every key, on guitar strings 3-1, the [C] chord has the same form as the F chord.",
        "the C chord is another one in each key: say its numeral, such as 'the V7 shape', or name one key"
    )]
    [InlineData(
        "In every key, on guitar, the full frets include [an empty fret].",
        "one or all of them? say 'include the empty frets', or 'some empty fret lies on ...'; did you mean 'the empty frets'?"
    )]
    [InlineData(
        "In every natural minor key, on guitar strings 3-1, the V chord is [the IV chord] moved up two frets.",
        "one shape is another where both are chords of the key, with as many notes, on the same strings; of forms say 'has the same form as'"
    )]
    [InlineData(
        "There are 3 full frets in every major key, on guitar strings 4-1[]",
        "expected a full stop, 'and' or 'or', found the end of the sentence; did you mean '1.'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, every seventh shape in [every inversion] spans 4 frets.",
        "a claim names one inversion, such as 'in first inversion'; say what holds of others behind 'and'; did you mean 'first inversion'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, every seventh shape spans [4 or 5] frets.",
        "a number has one bound: say 'at least 4', and 'at most 5' in another claim behind 'and'"
    )]
    [InlineData(
        "In every key, on strings 4-1, frets 0-12, every seventh shape stretches at most 13 [cm].",
        "a stretch is measured in millimetres, found 'cm'; did you mean '130 mm'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, frets 0-12, every seventh shape can be played [by] a small hand.",
        "what is meant by playing? expected 'with one finger a note' before 'by'; did you mean 'with one finger a note by'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, the V7 shape is [the I7 shape].",
        "one shape is another where both are chords of the key, with as many notes, on the same strings; of forms say 'has the same form as'; did you mean 'has the same form as'?"
    )]
    [InlineData(
        "In every key, on strings 4-1, the dominant seventh shape [on degree 5] spans 4 frets.",
        "only one shape stands on a degree: say 'the seventh shape on degree 5', or 'the V7 shape'"
    )]
    [InlineData(
        "In every key, [no more than] 3 full frets.",
        "expected what is claimed, such as 'there are', 'the key pattern', 'the half-turn', 'every', 'the full frets' or 'degree 2', found 'no more than'"
    )]
    [InlineData(
        "In every key, every full fret[.] There is 1 empty fret.",
        "a claim is one sentence: cannot read on after '.' here"
    )]
    public void A_mistake_is_pointed_at(string marked, string message)
    {
        var column = marked.IndexOf('[', StringComparison.Ordinal) + 1;
        var text = marked.Replace("[", "", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal);
        var error = Assert.Single(ClaimParser.Parse(text, TopStrings).Errors);

        Assert.Equal((column, message), (error.Column, error.Message));
        Assert.Equal(marked.IndexOf(']', StringComparison.Ordinal) - column, error.Length);
        Assert.True(error.Repair is null || ClaimParser.Parse(error.Repair.ApplyTo(text), TopStrings).IsRead);
    }

    // Places and words that the design of the language asked for before there was a reader.
    [Theory]
    [InlineData(
        "In evry major key, on guitar strings 4-1, there are exactly 3 full frets.",
        4,
        "expected 'every'",
        "found 'evry'",
        "did you mean 'every'?"
    )]
    [InlineData(
        "In every major key, on guitar strings 1-4, there are exactly 3 full frets.",
        39,
        "from the far string down to the one nearest the floor",
        "'1-4'",
        "'4-1'"
    )]
    [InlineData(
        "In every major key, on guitar strings 7-4, there are exactly 3 full frets.",
        39,
        "the guitar has 6 strings; there is no string 7"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the full frets are.",
        62,
        "expected a fret set (full frets, empty frets, half-turn centres), found '.'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the seventh shape spans 4 frets.",
        48,
        "which seventh shape? say 'the seventh shape on degree 1' or 'every seventh shape'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, degree 8 stands on string 1 at every full fret.",
        51,
        "a key has degrees 1 to 7; there is no degree 8"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, the seventh shape on degree 1 are the full frets.",
        74,
        "expected what the shape does",
        "'spans'",
        "'is'",
        "'begins on'",
        "'ends on'",
        "'has its root on'",
        "found 'are'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, every full fret is the empty frets.",
        63,
        "expected 'lies on' (use 'are' only after 'the",
        "found 'the'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, there are exactly three ful frets.",
        68,
        "expected a fret set (full frets, empty frets, half-turn centres), found 'ful'",
        "did you mean 'full'?"
    )]
    [InlineData("In the key of H major, on guitar, there is at least 1 full fret.", 15, "'H' is not a note name")]
    [InlineData(
        "In every major key, on guitr, there is at least 1 full fret.",
        24,
        "expected an instrument",
        "found 'guitr'",
        "did you mean 'guitar'?"
    )]
    [InlineData(
        "In every major key, on guitar, on frets 9 to 5, there is at least 1 full fret.",
        32,
        "frets 9 to 5 runs backwards"
    )]
    [InlineData(
        "In every major key, on guitar, there is at least 1 full fret",
        61,
        "expected a full stop, 'and' or 'or', found the end of the sentence"
    )]
    [InlineData(
        "In every major key, in every minor key, on guitar, there is at least 1 full fret.",
        21,
        "the keys were already chosen earlier in this sentence"
    )]
    [InlineData("In every major key, on guitar, there are 3 full frets; really.", 54, "cannot read ';' here")]
    [InlineData(
        "In every major key, on guitar, every seventh shape spans 4 frets.",
        38,
        "a seventh shape needs 4 strings; the guitar's set has 6. Say \"of strings 4-1\", or choose four strings."
    )]
    public void The_mistakes_of_the_design_are_told_as_it_asks(string text, int column, params string[] said)
    {
        var error = Assert.Single(ClaimParser.Parse(text).Errors);

        Assert.Equal(column, error.Column);
        Assert.All(said, words => Assert.Contains(words, error.Message, StringComparison.Ordinal));
        Assert.True(error.Repair is null || ClaimParser.Parse(error.Repair.ApplyTo(text)).IsRead);
    }

    [Theory]
    [InlineData(
        "there are 3 full frets.",
        "in every major key, there are 3 full frets.",
        "a claim names its keys first"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, frets 0-12, every seventh chord can be played.",
        "In every major key, on guitar strings 4-1, frets 0-12, every seventh chord can be played with one finger a note.",
        "expected 'with one finger a note' after 'played', found '.'"
    )]
    [InlineData(
        "In every major key, on guitar strings 4-1, frets 0-12, every seventh chord can be played wiht one finger a note.",
        "In every major key, on guitar strings 4-1, frets 0-12, every seventh chord can be played with one finger a note.",
        "expected 'with one finger a note' after 'played', found 'wiht'; did you mean 'with'?"
    )]
    public void What_is_left_unsaid_is_put_in(string text, string mended, string said)
    {
        var error = Assert.Single(ClaimParser.Parse(text).Errors);

        Assert.Equal(mended, error.Repair?.ApplyTo(text));
        Assert.StartsWith(said, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("every seventh chord shape")]
    [InlineData("every seventh-chord shape")]
    public void A_shape_may_be_called_a_chord_shape(string shape) =>
        Assert.Equal(
            ClaimParser.Parse("In every key, on guitar strings 4-1, every seventh shape spans at most 5 frets.").Value,
            ClaimParser.Parse($"In every key, on guitar strings 4-1, {shape} spans at most 5 frets.").Value
        );

    [Theory]
    [InlineData("In every key, on the tip strings, there are 3 full frets.", "the top strings")]
    [InlineData("In every key, the full frets are the full frets of the upper for strings.", "the upper four strings")]
    [InlineData("In every key, on strings 4-1, every sevnth shape spans 4 frets.", "every seventh shape")]
    [InlineData("In every key, on strings 4-1, the dominent seventh shape spans 4 frets.", "the dominant seventh")]
    [InlineData("In every key, the half-turn caries degree 1 to degree 2.", "carries")]
    [InlineData("In every key, the key patern is its own half-turn.", "pattern")]
    [InlineData("In every key, the key pattern is its own half-trun.", "half-turn")]
    [InlineData("In every key, every full fret lies nxt to an empty fret.", "next to")]
    [InlineData("In every harmnic minor key, there are 3 full frets.", "harmonic minor")]
    [InlineData("In every key, there's exactly 1 empty fret.", "there is")]
    [InlineData("In every key, on strings 4-1, on fret 0-9, every seventh shape spans at most 90mm.", "90 mm")]
    [InlineData("In every key, thre are 3 full frets.", "there are")]
    [InlineData("In every key, every full fret is carried to itself by the half-tern.", "by the half-turn")]
    public void A_slip_of_the_pen_is_mended(string text, string mended)
    {
        var repair = Assert.Single(ClaimParser.Parse(text, TopStrings).Errors).Repair;

        Assert.NotNull(repair);
        Assert.Contains(mended, repair.ApplyTo(text), StringComparison.Ordinal);
        Assert.True(ClaimParser.Parse(repair.ApplyTo(text), TopStrings).IsRead);
    }

    [Fact]
    public void A_dash_that_joins_nothing_belongs_to_its_word()
    {
        var error = Assert.Single(
            ClaimParser
                .Parse("In every key, on guitar strings 4-1, the seventh- shape on degree 1 spans 3 frets.")
                .Errors
        );
        Assert.Contains("found 'seventh-'", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_is_only_out_of_place_gets_no_suggestion() =>
        Assert.Null(ClaimParser.Parse("In every key, the full frets pattern.").Errors[0].Repair);

    [Fact]
    public void One_wrong_letter_in_a_word_is_mostly_mended()
    {
        const string sentence =
            "In every harmonic minor key, on guitar strings 4-1, every empty fret lies next to a full fret and the dominant seventh shape is the mirror of the half-diminished seventh shape.";
        var (mended, tried) = (0, 0);
        for (var at = 0; at < sentence.Length; at++)
        {
            var wrong = sentence.Remove(at, 1).Insert(at, "q");
            if (char.IsAsciiLetterLower(sentence[at]) && !ClaimParser.Parse(wrong).IsRead)
            {
                tried++;
                mended += ClaimParser.Parse(wrong).Errors[0].Repair?.ApplyTo(wrong) == sentence ? 1 : 0;
            }
        }

        Assert.True(mended >= 0.7 * tried, $"{mended} of {tried}");
    }

    [Fact]
    public void A_damaged_claim_gives_a_claim_or_an_error_that_can_be_pointed_at_and_mended() =>
        ClaimGen.Damaged.SampleSame(AssertAnswered, 10_000);

    [Fact]
    public void A_damaged_judged_claim_gives_a_claim_or_an_error_that_can_be_pointed_at_and_mended() =>
        Gen.OneOf([.. ClaimParserTests.Judged.Select(row => row.Data)])
            .SelectMany(ClaimGen.Damage)
            .SampleSame(AssertAnswered, Damages);

    [Fact]
    public void Any_text_gives_a_claim_or_an_error_that_can_be_pointed_at() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char[' ', '~'], 0, 60], Words).SampleSame(AssertAnswered, 10_000);

    [Theory]
    [InlineData(2000)]
    [InlineData(2001)]
    [InlineData(10_000_000)]
    public void A_long_text_is_answered(int length)
    {
        foreach (var word in new[] { "(", " ", ",", "-", "a", "if ", "In every key, if ", "and ", "of strings " })
        {
            var text = string.Concat(Enumerable.Repeat(word, length / word.Length + 1))[..length];
            var error = Assert.Single(ClaimParser.Parse(text).Errors);
            Assert.Equal(length > ClaimParser.MaxLength, error.Column == ClaimParser.MaxLength + 1);
        }
    }

    // Words of the language in no order at all.
    private static Gen<string> Words =>
        Gen.OneOf([.. ClaimParserTests.Judged.SelectMany(row => row.Data.Split(' ')), ",", "and", "-", ".", "if", "of"])
            .Array[0, 25]
            .Select(words => string.Join(' ', words));

    private static void AssertAnswered(string text)
    {
        var result = ClaimParser.Parse(text);
        Assert.Equal(result.IsRead, result.Value is not null);
        if (result.IsRead)
        {
            Assert.Equal(result.Value, ClaimParser.Parse(result.Value.ToString()).Value);
            return;
        }

        var error = Assert.Single(result.Errors);
        Assert.InRange(error.Column, 1, text.Length + 1);
        Assert.InRange(error.Length, 0, text.Length + 1 - error.Column);
        Assert.DoesNotContain('\n', error.Message);
        AssertTold(text, error);
        if (error.Repair is { } repair)
        {
            AssertMends(text, error, repair);
        }
    }

    // What is said to be found stands there, in as many words; of what may stand there at most six things are named.
    private static void AssertTold(string text, SentenceError error)
    {
        Assert.Matches(Known, error.Message);
        Assert.True(error.Length > 0 || error.Column == text.TrimEnd().Length + 1, error.Message);
        if (Expected.Match(error.Message) is { Success: true } told)
        {
            Assert.InRange(Regex.Count(told.Groups["what"].Value.Split(" after '")[0], "'[^']+'"), 0, 6);
            var (found, stands) = (told.Groups["found"].Value, text.Substring(error.Column - 1, error.Length));
            Assert.True(
                found.Length > 40 || Plain(stands).Contains(Plain(found), StringComparison.Ordinal),
                $"{error.Message} at {stands}"
            );
        }

        static string Plain(string words) => string.Concat(words.Where(char.IsAsciiLetterOrDigit));
    }

    // A repair mends the sentence, or else what is still wrong stands behind the words it changed and behind what was wrong before.
    private static void AssertMends(string text, SentenceError error, SentenceRepair repair)
    {
        var repaired = repair.ApplyTo(text);
        var next = ClaimParser.Parse(repaired);
        Assert.NotEqual(text, repaired);
        if (!next.IsRead)
        {
            // Only a misspelled word is mended where more is wrong.
            var replaced = text.Substring(repair.Column - 1, repair.Length);
            Assert.True(EditDistance.Between(replaced.ToLowerInvariant(), repair.Text.ToLowerInvariant()) <= 2, text);
            var moved = error.Column + (repair.Column < error.Column ? repaired.Length - text.Length : 0);
            Assert.True(next.Errors[0].Column >= repair.Column + repair.Text.Length, $"{text} -> {repaired}");
            Assert.True(next.Errors[0].Column > moved, $"{text} -> {repaired}");
        }

        Assert.True(
            error.Message.Contains($"did you mean '{repair.Text}'?", StringComparison.Ordinal)
                || error.Message.StartsWith("which ", StringComparison.Ordinal)
                || error.Message.Contains("Say \"of ", StringComparison.Ordinal),
            error.Message
        );
    }

    private static readonly Regex Expected = new(
        "expected (?<what>.*), found '(?<found>[^']*)'",
        RegexOptions.CultureInvariant | RegexOptions.NonBacktracking
    );

    private const string Known =
        "expected|already|a hand is|there is no|named twice|runs backwards|far string|seven notes|not a note name|names? its keys|cannot read|which .* shape|which .* fret|which .* centre|which minor|degrees 1 to 7|needs|not in the chosen set|depends on|goes with|takes a chord|has so many|form that may lie anywhere|said of shapes|string by string|carries nothing|two ways|tunings have|listed string sets|1 to 11|shapes of a sort|no string set|names one inversion|one bound|measured|playing|another where|one in each key|not a key|one key|one of them|by its numeral|a claim knows|first inversion|anywhere between|one or all|is tuned to|only one shape|counted from 1|fret 1 to|more than|capo";
}
