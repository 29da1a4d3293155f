using Fretloom.Exhibits;
using Fretloom.Lessons;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Studio.Client.State;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.Tests.State;

public class LinkTests
{
    private static readonly string[] Sentences =
    [
        "show the notes of the key and the landmarks",
        "show the thirds",
        "show the seventh chords, in every inversion",
        "show the scale, 3 notes a string",
        "show A minor pentatonic, in fifth position, with fingers",
        "show C, F and G7, strummed",
        "show the symmetries",
        "show the open strings",
        "show the chromatic scale",
    ];

    private static ShowDefaults Lesson(string instrument, string key, NoteNaming names = NoteNaming.English) =>
        new(
            ShowParser.ParseInstrument(instrument).Value!,
            ShowParser.ParseKey(key).Value!,
            Frets: new FretRange(0, 7),
            Hand: Hand.HandSize.Small,
            IsLeftHanded: true,
            NoteNames: names
        );

    private static Client.State.Studio At(ShowDefaults defaults)
    {
        var studio = new Client.State.Studio(new History());
        studio.Assume(defaults);
        return studio;
    }

    public static TheoryData<string, string, string> Cases =>
        [
            .. from sentence in Sentences
            from lesson in new[]
            {
                ("low-G ukulele", "F major"),
                ("guitar tuned D2 A2 D3 G3 A3 D4", "D dorian"),
                ("drop D guitar", "E minor"),
                ("five-string banjo", "G major"),
            }
            select (sentence, lesson.Item1, lesson.Item2),
        ];

    /// <summary>A link made beside a lesson shows the same where no lesson is open.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void A_link_means_the_same_without_the_lesson(string sentence, string instrument, string key)
    {
        var here = At(Lesson(instrument, key));
        here.Say(sentence, "");
        Assert.Null(here.Error);
        var link = Link.To(here);

        var there = At(ShowDefaults.Standard);
        there.Set(new View(link.ToSay(null, there)));

        Assert.Null(there.Error);
        Assert.Equal(here.Exhibit.Sentence, there.Exhibit.Sentence);
        Assert.Equal(here.Exhibit.Map.Instrument, there.Exhibit.Map.Instrument);
        Assert.Equal(here.Exhibit.Notes, there.Exhibit.Notes);
        Assert.Equal(here.Exhibit.Shapes, there.Exhibit.Shapes);
        Assert.Equal(here.Exhibit.IsLeftHanded, there.Exhibit.IsLeftHanded);
        Assert.Equal(link, Link.To(there));
    }

    [Theory]
    [InlineData("show the thirds", "German", NoteNaming.German)]
    [InlineData("show the thirds", null, NoteNaming.English)]
    [InlineData("show the thirds", "Cipher", NoteNaming.English)]
    public void An_address_holds_a_sentence_and_perhaps_names(string sentence, string? names, NoteNaming read) =>
        Assert.Equal(new Link(sentence, read), Link.Of(sentence, names));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    public void An_address_without_a_sentence_is_no_link(string? sentence) => Assert.Null(Link.Of(sentence, "German"));

    [Fact]
    public void Note_names_are_part_of_the_link() =>
        Assert.Equal(NoteNaming.German, Link.To(At(Lesson("guitar", "B major", NoteNaming.German))).Names);

    [Fact]
    public void What_was_said_is_said_again_only_where_it_means_the_same()
    {
        var here = At(Lesson("low-G ukulele", "F major"));
        here.Say("show the thirds", "");
        var link = Link.To(here);

        Assert.Equal("show the thirds", link.ToSay("show the thirds", here));
        Assert.Equal(link.Sentence, link.ToSay("show the thirds", At(ShowDefaults.Standard)));
        Assert.Equal(link.Sentence, link.ToSay(null, here));
    }

    /// <summary>What a lesson says above its text is enough to leave unsaid what was left unsaid beside it.</summary>
    [Fact]
    public void What_was_said_beside_a_lesson_is_said_again_from_what_stands_above_it()
    {
        const string Lesson =
            "---\ntitle: T\ninstrument: low-G ukulele\nkey: F major\nhand: small\nplayer: left-handed\n---\n\nText.\n";
        var here = new Client.State.Studio(new History());
        here.Assume(FrontMatter.Of(Lesson).Defaults, LessonSlices.Front(Lesson));
        here.Say("show the thirds", "");
        var link = Link.To(here);

        var again = new Client.State.Studio(new History());
        again.Assume(FrontMatter.Of(here.Above).Defaults, here.Above);

        Assert.Equal(here.Defaults, again.Defaults);
        Assert.Equal("show the thirds", link.ToSay("show the thirds", again));
    }

    [Fact]
    public void A_sentence_with_an_error_stands_as_it_is()
    {
        var studio = At(ShowDefaults.Standard);
        studio.Set(new View("show the thirds, in X major"));

        Assert.Equal("show the thirds, in X major", Link.To(studio).Sentence);
        Assert.Equal("show nonsense", new Link("show nonsense", default).ToSay("show nonsense", studio));
    }
}
