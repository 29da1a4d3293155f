using Fretloom.Exhibits;

namespace Fretloom.Tests.Exhibits;

public class ExhibitNameTests
{
    [Theory]
    [InlineData("the notes of the key, in Bb major", "The notes of the key in B♭ major")]
    [InlineData("the seventh chords from I to IV, in D major", "The seventh chords from I to IV in D major")]
    [InlineData("the chord V7, in A minor", "The chord V7 in A minor")]
    [InlineData("C, F and G7, on a ukulele, in first position", "C, F and G7")]
    [InlineData("A minor pentatonic, in fifth position", "The A minor pentatonic scale")]
    [InlineData("the scale, 3 notes a string, in E dorian", "The scale in E dorian, 3 notes a string")]
    [InlineData("the landmarks and the symmetries, in F# major", "The landmarks and the symmetries in F♯ major")]
    [InlineData("every D", "Every D")]
    public void An_exhibit_is_named_by_what_is_shown_and_its_key_where_it_is_of_the_key(string sentence, string name) =>
        Assert.Equal(name, ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!.Name);
}
