using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Sentences;

public class ShowParserTests
{
    private static readonly SentenceLaws<ShowSentence> Laws = new(text => ShowParser.Parse(text));

    [Fact]
    public void What_is_printed_reads_back_as_the_same_sentence() => SentenceGen.Show.SampleSame(Laws.ReadsBack, 5_000);

    // Each line: what is typed, and the canonical sentence, whose meaning the next test and the round trip pin down.
    [Theory]
    [InlineData("SHOW THE TRIADS , IN D MAJOR.", "show the triads, in D major")]
    [InlineData(
        "the triads in D minor on guitar strings 3-1",
        "show the triads, on a guitar, in D minor, on strings 3-1"
    )]
    [InlineData("on an octave mandolin and the thirds", "show the thirds, on an octave mandolin")]
    [InlineData("every D, F and A", "show every D, every F and every A")]
    [InlineData("every D, A minor pentatonic", "show every D and the A minor pentatonic scale")]
    [InlineData("C F G7(b9,#11) frets 0 – 5", "show C, F and G7b9#11, frets 0-5")]
    [InlineData("B♭m7♭5, E♭7, in E flat minor", "show Bbm7b5 and Eb7, in Eb minor")]
    [InlineData("C maj7 and A sus4", "show Cmaj7 and Asus4")]
    [InlineData("the chords vii m7b5, I and V7/ii", "show the chords viiø7 I V7/ii")]
    [InlineData("Am, the landmarks, and Dm", "show Am, the landmarks and the chord Dm")]
    [InlineData("a minor pentatonic in fifth position", "show the A minor pentatonic scale, in fifth position")]
    [InlineData("the scale", "show the notes of the key")]
    [InlineData("the scale, in D major, three notes per string", "show the scale, 3 notes a string, in D major")]
    [InlineData("the triads on a baritone guitar in A minor", "show the triads, on a baritone guitar, in A minor")]
    [InlineData(
        "the triads on a baritone guitar in A, in A minor",
        "show the triads, on a baritone guitar in A, in A minor"
    )]
    [InlineData(
        "the triads on strings 6, 4, 3 and 2, 3 notes a string, the scale",
        "show the triads and the scale, 3 notes a string, on strings 6, 4, 3 and 2"
    )]
    [InlineData("the triads on a guitar with capo on the 3rd fret", "show the triads, on a guitar, with a capo at 3")]
    [InlineData("C, easy, three strings, F", "show C and F, easy, three strings")]
    [InlineData(
        "the seventh chords in second and first inversion",
        "show the seventh chords, in first and second inversion"
    )]
    [InlineData("C on left handed ukulele", "show C, on a ukulele, for a left-handed player")]
    [InlineData("C, for a lefty, on my left-handed banjo", "show C, on a banjo, for a left-handed player")]
    [InlineData("G chord, on a ukulele", "show G, on a ukulele")]
    [InlineData("the C, F and G7 chords", "show C, F and G7")]
    [InlineData("C chord V7", "show C and the chord V7")]
    [InlineData("the chords G major and D minor, strummed", "show G and Dm, strummed")]
    [InlineData("easy, three strings, the A half-diminished seventh chord", "show Am7b5, easy, three strings")]
    [InlineData("C major and A minor", "show the C major scale and the A minor scale")]
    [InlineData("C pentatonic minor scale", "show the C minor pentatonic scale")]
    [InlineData("the notes of A pentatonic major", "show the A major pentatonic scale")]
    [InlineData("the minor pentatonic scale, in A major", "show the A minor pentatonic scale, in A major")]
    [InlineData("the major scale in the key of E flat", "show the Eb major scale")]
    [InlineData("C, in the open position", "show C, in first position")]
    [InlineData("the triads for a child’s hand", "show the triads, for a child's hand")]
    [InlineData("the triads for a hand of 189mm", "show the triads, for an adult hand")]
    [InlineData(
        "the triads on a guitar tuned to D2, A2, D3, F♯3, A3, D4",
        "show the triads, on a guitar tuned D2 A2 D3 F#3 A3 D4"
    )]
    public void A_sentence_has_one_canonical_form(string typed, string canonical) => Laws.HasForm(canonical, typed);

    [Fact]
    public void Every_part_of_a_sentence_is_understood()
    {
        var sentence = Laws.Read(
            "show the notes of the key, on a guitar, with a capo at 2, in D major, on strings 4-1, frets 0-12, one note per string, "
                + "in drop 2, in every inversion, in fifth position, as degrees, with fingers, for a small hand, for a left-handed player"
        );

        Assert.Equal(Catalogue.Default, sentence.Instrument);
        Assert.Equal(2, sentence.Capo);
        Assert.Equal(Key.Parse("D major"), sentence.Key);
        Assert.Equal([4, 3, 2, 1], sentence.Strings!.Value.Numbers);
        Assert.Equal(new FretRange(0, 12), sentence.Frets);
        Assert.Equal([new Subject.NotesOfTheKey()], sentence.Subjects);
        Assert.Equal(
            new VoicingPhrase(VoicingKind.OneNotePerString, Arrangement.DropTwo, ValueList.Create<int>([]), 5, null),
            sentence.Voicing
        );
        Assert.Equal((LabelStyle.Degrees, true), (sentence.Labels, sentence.IsWithFingers));
        Assert.Equal((HandSize.Small, true), (sentence.Hand, sentence.IsLeftHanded));
    }

    [Fact]
    public void What_is_unsaid_stays_unsaid() =>
        Assert.Equal(new ShowSentence { Subjects = [new Subject.TheThirds()] }, Laws.Read("the thirds"));

    [Fact]
    public void A_tuning_is_said_from_the_far_string_on()
    {
        var instrument = Laws.Read("the thirds, on a guitar tuned D2 A2 D3 G3 A3 E4").Instrument!;

        Assert.Equal(Pitch.Parse("E4"), instrument.String(1).Open);
        Assert.Equal(Pitch.Parse("D2"), instrument.String(6).Open);
    }

    [Fact]
    public void Phrases_come_in_any_order_with_or_without_commas()
    {
        var kinds = Enumerable.Range(1, Phrases.All.Count - 1).ToArray();
        Gen.Select(
                Gen.Shuffle(kinds, 2, 6),
                Gen.Int[0, 99].Array[kinds.Length + 1],
                Gen.OneOf(", ", " ", " and ", ", and ").Array[6]
            )
            .Sample(
                (order, choices, separators) =>
                {
                    string Example(int kind) =>
                        Phrases.All[kind].Examples[choices[kind] % Phrases.All[kind].Examples.Count];
                    var inOrder = string.Join(", ", order.Order().Select(Example));
                    var shuffled = string.Concat(order.Zip(separators, (kind, separator) => Example(kind) + separator));

                    var expected = ShowParser.Parse($"the scale, {inOrder}");
                    var actual = ShowParser.Parse($"{shuffled}the scale");

                    Assert.Equal(expected.IsRead, actual.IsRead);
                    Assert.Equal(expected.Value, actual.Value);
                },
                iter: 5_000
            );
    }

    public static TheoryData<string> Examples => [.. Phrases.All.SelectMany(kind => kind.Examples)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_every_phrase_reads(string phrase) =>
        Assert.NotNull(
            Laws.Read(
                new[] { phrase, $"{phrase}, the scale", $"{phrase}, capo 2" }.FirstOrDefault(
                    text => ShowParser.Parse(text).IsRead,
                    phrase
                )
            )
        );

    [Fact]
    public void Every_kind_of_phrase_but_the_subject_stands_at_most_once()
    {
        foreach (var kind in Phrases.All.Skip(1))
        {
            var text = $"the scale, {kind.Examples[0]}, {kind.Examples[^1]}";
            var error = Assert.Single(ShowParser.Parse(text).Errors);

            Assert.Matches($"^{kind.Name} (was|were) already chosen earlier in this sentence$", error.Message);
            Assert.Equal(kind.Examples[^1], text.Substring(error.Column - 1, error.Length));
        }
    }

    [Fact]
    public void Every_instrument_of_the_catalogue_is_understood_under_all_its_names()
    {
        foreach (var entry in Catalogue.Entries)
        {
            foreach (var name in entry.OtherNames.Prepend(entry.Instrument.Name))
            {
                Assert.Equal(entry.Instrument, Laws.Read($"the thirds, on a {name}").Instrument);
                Assert.Equal(
                    entry.Instrument,
                    Laws.Read($"the thirds on {name.ToUpperInvariant()} in D minor").Instrument
                );
            }
        }
    }

    [Fact]
    public void Every_key_is_understood_however_its_tonic_is_written()
    {
        foreach (var kind in ScaleKind.All.Where(kind => kind.IsSevenNote))
        {
            foreach (var step in Enum.GetValues<Step>())
            {
                Equal(new NoteName(step), $"{step}");
                Equal(new NoteName(step, -1), $"{step}b", $"{step}-flat", $"{step} flat", $"{step}♭", $"{step}–flat");
                Equal(new NoteName(step, 1), $"{step}#", $"{step}-sharp", $"{step} sharp", $"{step}♯");
                Equal(new NoteName(step, -2), $"{step}bb", $"{step} double flat", $"{step}-double-flat");
                Equal(new NoteName(step, 2), $"{step}##", $"{step}x", $"{step} double sharp", $"{step}-double-sharp");
            }

            void Equal(NoteName tonic, params string[] written) =>
                Assert.All(
                    written,
                    text => Assert.Equal(new Key(tonic, kind), Laws.Read($"the thirds, in {text} {kind}").Key)
                );
        }
    }

    [Fact]
    public void A_part_can_be_found_in_the_text_again()
    {
        const string text = "the triads, in D major, on strings 3-1";

        Assert.Equal((13, 10), ShowParser.PlaceOf(text, ShowPhrase.Key));
        Assert.Equal((25, 14), ShowParser.PlaceOf(text, ShowPhrase.Strings));
        Assert.Equal((1, 10), ShowParser.PlaceOf(text, ShowPhrase.Subject));
        Assert.Null(ShowParser.PlaceOf(text, ShowPhrase.Hand));
    }

    [Fact]
    public void Instrument_key_and_hand_can_be_read_alone()
    {
        Assert.Equal("low-G ukulele", ShowParser.ParseInstrument("low-G ukulele").Value!.Name);
        Assert.Equal(
            "guitar tuned D2 A2 D3 G3 A3 D4",
            ShowParser.ParseInstrument("a guitar tuned D2 A2 D3 G3 A3 D4").Value!.Name
        );
        Assert.Equal("Bb major", ShowParser.ParseKey("B-flat major").Value!.ToString());
        Assert.Equal(HandSize.Small, ShowParser.ParseHand("small").Value);
        Assert.Equal(HandSize.Child, ShowParser.ParseHand("a child's hand").Value);
        Assert.Equal(new HandSize(176), ShowParser.ParseHand("176 mm").Value);
        Assert.Equal(
            "expected an instrument such as 'guitar', found 'guitr'; did you mean 'guitar'?",
            ShowParser.ParseInstrument("guitr").Errors[0].Message
        );
        Assert.Equal("expected nothing more, found 'please'", ShowParser.ParseKey("D major please").Errors[0].Message);
    }
}
