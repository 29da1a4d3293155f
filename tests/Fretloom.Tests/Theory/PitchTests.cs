using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class PitchTests
{
    [Fact]
    public void Every_pitch_reads_back() =>
        TheoryGen.Pitch.Sample(pitch => Assert.Equal(pitch, Pitch.Parse(pitch.ToString())));

    [Fact]
    public void Transposing_back_gives_the_same_pitch() =>
        Gen.Select(TheoryGen.WrittenPitch, TheoryGen.WrittenPitch)
            .Sample(
                (from, to) =>
                {
                    var interval = from.IntervalTo(to);
                    Assert.Equal(to, from.Plus(interval));
                    Assert.Equal(from, to.Plus(interval.Negated()));
                }
            );

    [Fact]
    public void Transposing_moves_the_MIDI_number_by_the_semitones() =>
        Gen.Select(TheoryGen.WrittenPitch, TheoryGen.WrittenPitch)
            .Sample((from, to) => Assert.Equal(to.MidiNumber - from.MidiNumber, from.IntervalTo(to).Semitones));

    // MIDI 1.0 note numbers with middle C = 60 = C4; A4 = 69 is the note tuned to 440 Hz (ISO 16:1975, from memory).
    [Theory]
    [InlineData("C4", 60)]
    [InlineData("A4", 69)]
    [InlineData("B#3", 60)]
    [InlineData("Cb4", 59)]
    [InlineData("E2", 40)]
    [InlineData("C-1", 0)]
    [InlineData("G9", 127)]
    public void The_octave_goes_with_the_letter(string text, int midiNumber) =>
        Assert.Equal(midiNumber, Pitch.Parse(text).MidiNumber);

    [Fact]
    public void Every_MIDI_number_is_spelled_so_that_it_sounds_the_same()
    {
        for (var number = -24; number <= 140; number++)
        {
            var pitch = Pitch.FromMidiNumber(number);
            Assert.Equal(number, pitch.MidiNumber);
            Assert.InRange(pitch.Name.Alteration, -1, 1);
            Assert.Equal(pitch, Pitch.FromMidiNumber(number, pitch.Name));
        }
    }
}
