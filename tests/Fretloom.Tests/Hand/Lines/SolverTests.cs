using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Lines of 30 notes cost what an independent solver proves to be the least (Google OR-Tools, CP-SAT).</summary>
[Trait("Group", "slow")]
public class SolverTests
{
    [Theory]
    [InlineData("guitar", 189, 1)]
    [InlineData("guitar", 165, 2)]
    [InlineData("bass", 181, 3)]
    [InlineData("mandolin", 189, 4)]
    [InlineData("banjo", 210, 5)]
    [InlineData("ukulele", 150, 6)]
    public void Thirty_notes_with_given_spots_cost_what_a_solver_proves_to_be_least(
        string instrument,
        double handMm,
        int seed
    ) => Compare(new Player(Necks.Find(instrument), new HandSize(handMm)), Walk(instrument, seed, isFree: false));

    [Theory]
    [InlineData("ukulele", 189, 7)]
    public void Thirty_free_notes_cost_what_a_solver_proves_to_be_least(string instrument, double handMm, int seed) =>
        Compare(new Player(Necks.Find(instrument), new HandSize(handMm)), Walk(instrument, seed, isFree: true));

    private static void Compare(Player player, ValueList<LineNote> notes) =>
        Assert.Equal(
            SolverLines.Cheapest(player, notes),
            (long)Math.Round(LineFingering.Find(player, notes, []).Best!.Cost * 1000)
        );

    // A walk by steps of up to a fifth, each note on one of its spots.
    private static ValueList<LineNote> Walk(string name, int seed, bool isFree)
    {
        var random = new Random(seed);
        var instrument = Necks.Find(name);
        var midi = instrument.Strings[1].Open.MidiNumber + 5;
        var notes = new List<LineNote>();
        while (notes.Count < 30)
        {
            var next = midi + random.Next(-7, 8);
            var spots = instrument.SpotsOf(next).ToList();
            if (spots.Count > 0)
            {
                midi = next;
                notes.Add(
                    isFree
                        ? new LineNote.Sounding(Pitch.FromMidiNumber(midi))
                        : new LineNote.At(spots[random.Next(spots.Count)])
                );
            }
        }

        return notes.ToValueList();
    }
}
