using Fretloom.Exhibits;
using Fretloom.Neck;

namespace Fretloom.Tests.Exhibits;

public class ScaleInPositionTests
{
    [Theory]
    [InlineData("guitar")]
    [InlineData("bass")]
    [InlineData("mandolin")]
    public void A_scale_in_a_position_is_not_cut_by_frets_that_were_not_said(string name)
    {
        Catalogue.TryFind(name, out var instrument);
        foreach (var tonic in "C Db D Eb E F F# G Ab A Bb B".Split(' '))
        {
            for (var position = 1; position + 4 <= instrument!.Frets; position++)
            {
                var said = $"the {tonic} major scale, on a {name}, in position {position}";

                Assert.Equal(Spots($"{said}, frets 0-{instrument.Frets}"), Spots(said));
            }
        }
    }

    private static List<Spot> Spots(string sentence) =>
        [
            .. ShowQuestion
                .Answer(sentence, ShowDefaults.Standard)
                .Value!.Shapes!.Value[0]
                .Notes.Select(note => note.Spot),
        ];
}
