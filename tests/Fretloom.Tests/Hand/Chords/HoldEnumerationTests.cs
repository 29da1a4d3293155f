using Fretloom.Hand;
using Fretloom.Hand.Chords;
using Fretloom.Neck;
using Fretloom.Testing;

namespace Fretloom.Tests.Hand.Chords;

public class HoldEnumerationTests
{
    private static readonly Gen<Player> Players = Gen.Select(
        Gen.OneOf("guitar", "ukulele", "banjo", "bass"),
        Gen.Bool,
        Gen.Bool,
        (name, isTurnedOver, usesThumb) => Hands.On(name) with { IsTurnedOver = isTurnedOver, UsesThumb = usesThumb }
    );

    [Fact]
    public void Every_hold_is_found_that_the_slow_way_finds() =>
        Gen.Select(Players, Gen.Int[-1, 5].Array[6], Gen.Bool)
            .Sample(
                (player, frets, isOneFingerANote) =>
                {
                    var spots = Spots(player, frets);
                    var slow = SlowHolds
                        .All(player, spots, isOneFingerANote)
                        .Select(fingers => string.Join(' ', fingers));
                    var fast = HoldEnumeration
                        .All(new HeldChord(player, spots), isOneFingerANote)
                        .Select(hold => string.Join(' ', spots.Select(spot => hold.At(player.PlaceOf(spot.String)))));

                    Assert.Equal(slow.Order(StringComparer.Ordinal), fast.Order(StringComparer.Ordinal));
                }
            );

    [Fact]
    public void The_best_is_the_cheapest_of_those_the_slow_way_finds() =>
        Gen.Select(Players, Gen.Int[-1, 5].Array[6])
            .Sample(
                (player, frets) =>
                {
                    var spots = Spots(player, frets);
                    var weights = ChordWeights.For(player);
                    var slow = SlowHolds
                        .All(player, spots)
                        .Select(fingers => ChordCost.Of(Held(player, spots, fingers), weights))
                        .DefaultIfEmpty(double.NaN)
                        .Min();
                    var best = spots.Count == 0 ? null : ChordFingering.Find(player, spots).Best;

                    // The terms add up in another order than the charges.
                    Assert.True(
                        best is null ? spots.Count == 0 || double.IsNaN(slow) : Math.Abs(best.Cost - slow) < 1e-8
                    );
                }
            );

    private static ChordHold Held(Player player, ValueList<Spot> spots, ValueList<Finger> fingers)
    {
        var chord = new HeldChord(player, spots);
        return new ChordHold(chord, [.. chord.Notes.Select(note => fingers[spots.IndexOf(note.Spot)])]);
    }

    private static ValueList<Spot> Spots(Player player, int[] frets) =>
        frets
            .Select((fret, at) => (fret, at))
            .Where(note => note.fret >= 0)
            .Select(note => new Spot(note.at + 1, note.fret))
            .Where(player.Instrument.Has)
            .ToValueList();
}
