namespace Fretloom.Scores.Tests.Sound;

public class EarTests
{
    [Fact]
    public void It_hears_tones_of_known_pitch_with_partials_that_die_away() =>
        Gen.Select(Gen.Double[30, 2000], Gen.Double[0.5, 5], Gen.Int[3, 12])
            .Sample(
                tone =>
                {
                    var (hz, fall, partials) = tone;
                    const int Rate = 44_100;
                    var sound = new double[Rate / 4];
                    for (var at = 0; at < sound.Length; at++)
                    {
                        var time = (double)at / Rate;
                        for (var n = 1; n <= partials && n * hz < Rate / 2; n++)
                        {
                            sound[at] += Math.Exp(-fall * n * time) * Math.Sin(2 * Math.PI * n * hz * time + n) / n;
                        }
                    }

                    Assert.Equal(0, Ear.Cents(Ear.Hz(sound, Rate), hz), tolerance: 0.3);
                },
                iter: 60
            );
}
