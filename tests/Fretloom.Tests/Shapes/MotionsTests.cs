using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class MotionsTests
{
    private static readonly StringSet Four = StringSet.Run(4, 1);

    /// <summary>Up to six spots in the middle of strings 4-1, so that small motions stay on the neck.</summary>
    private static readonly Gen<ValueList<Spot>> AnySpots = Gen.Select(
            Gen.Int[1, 4],
            Gen.Int[30, 50],
            (number, fret) => new Spot(number, fret)
        )
        .Array[1, 6]
        .Select(spots => spots.Distinct().ToValueList());

    private static readonly Gen<double> AnyCentre = Gen.Int[60, 100].Select(twice => twice / 2.0);

    [Fact]
    public void Two_half_turns_about_one_centre_change_nothing() =>
        Gen.Select(AnySpots, AnyCentre)
            .Sample(
                (spots, centre) =>
                    Assert.Equal(
                        spots,
                        Motions.HalfTurned(Motions.HalfTurned(spots, Four, centre)!.Value, Four, centre)
                    )
            );

    [Fact]
    public void Two_mirrors_about_one_centre_change_nothing() =>
        Gen.Select(AnySpots, AnyCentre)
            .Sample(
                (spots, centre) => Assert.Equal(spots, Motions.Mirrored(Motions.Mirrored(spots, centre)!.Value, centre))
            );

    [Fact]
    public void Half_turns_about_two_centres_move_by_twice_their_distance() =>
        Gen.Select(AnySpots, AnyCentre, AnyCentre)
            .Sample(
                (spots, first, second) =>
                    Assert.Equal(
                        Motions.MovedAlong(spots, (int)(2 * (second - first))),
                        Motions.HalfTurned(Motions.HalfTurned(spots, Four, first)!.Value, Four, second)
                    )
            );

    [Fact]
    public void A_half_turn_is_a_mirror_with_the_strings_read_backwards() =>
        Gen.Select(AnySpots, AnyCentre)
            .Sample(
                (spots, centre) =>
                    Assert.Equal(
                        Motions.Mirrored(spots, centre)!.Value.Select(spot => new Spot(5 - spot.String, spot.Fret)),
                        Motions.HalfTurned(spots, Four, centre)!.Value
                    )
            );

    [Fact]
    public void Moving_up_and_down_again_changes_nothing_and_motions_add_up() =>
        Gen.Select(AnySpots, Gen.Int[-12, 12], Gen.Int[-12, 12])
            .Sample(
                (spots, one, other) =>
                {
                    var moved = Motions.MovedAlong(spots, one)!.Value;
                    Assert.Equal(spots, Motions.MovedAlong(moved, -one));
                    Assert.Equal(Motions.MovedAlong(spots, one + other), Motions.MovedAlong(moved, other));
                }
            );

    [Fact]
    public void Carrying_to_other_strings_and_back_changes_nothing()
    {
        var other = StringSet.Parse("6, 5, 3 and 2");
        AnySpots.Sample(spots =>
            Assert.Equal(spots, Motions.MovedToStrings(Motions.MovedToStrings(spots, Four, other)!.Value, other, Four))
        );
    }

    [Fact]
    public void Moving_along_or_to_other_strings_keeps_the_form() =>
        Gen.Select(AnySpots, Gen.Int[-12, 12])
            .Sample(
                (spots, frets) =>
                {
                    var far = StringSet.Parse("6, 5, 3 and 2");
                    var form = ShapeForm.Of(Four, spots);
                    Assert.Equal(form, ShapeForm.Of(Four, Motions.MovedAlong(spots, frets)!.Value));
                    Assert.Equal(form, ShapeForm.Of(far, Motions.MovedToStrings(spots, Four, far)!.Value));
                }
            );

    [Fact]
    public void The_form_of_an_image_is_the_image_of_the_form() =>
        Gen.Select(AnySpots, AnyCentre)
            .Sample(
                (spots, centre) =>
                {
                    var form = ShapeForm.Of(Four, spots);
                    Assert.Equal(form.HalfTurned(), ShapeForm.Of(Four, Motions.HalfTurned(spots, Four, centre)!.Value));
                    Assert.Equal(form.Mirrored(), ShapeForm.Of(Four, Motions.Mirrored(spots, centre)!.Value));
                    Assert.Equal(form, form.HalfTurned().HalfTurned());
                    Assert.Equal(form, form.Mirrored().Mirrored());
                    Assert.Equal(form.Mirrored().HalfTurned(), form.HalfTurned().Mirrored());
                }
            );

    [Fact]
    public void A_form_does_not_depend_on_the_order_of_its_spots() =>
        AnySpots.Sample(spots => Assert.Equal(ShapeForm.Of(Four, spots), ShapeForm.Of(Four, spots.Reverse())));

    [Fact]
    public void What_falls_off_the_nut_is_null()
    {
        Spot[] low = [new(4, 1), new(3, 3)];

        Assert.Null(Motions.MovedAlong(low, -2));
        Assert.Null(Motions.Mirrored(low, 1));
        Assert.Null(Motions.HalfTurned(low, Four, 1));
        Assert.Null(Motions.MovedAlong(low, 97));
        Assert.Equal([new(4, 0), new(3, 2)], Motions.MovedAlong(low, -1)!.Value);
        Assert.Equal([new(1, 2), new(2, 0)], Motions.HalfTurned(low, Four, 1.5)!.Value);
    }

    [Fact]
    public void Impossible_motions_are_refused()
    {
        Spot[] spots = [new(4, 5)];

        Assert.Throws<ArgumentException>(() => Motions.Mirrored(spots, 1.25));
        Assert.Throws<ArgumentException>(() => Motions.Mirrored(spots, double.NaN));
        Assert.Throws<ArgumentException>(() => Motions.HalfTurned(spots, StringSet.Run(3, 1), 5));
        Assert.Throws<ArgumentException>(() => Motions.MovedToStrings(spots, Four, StringSet.Run(3, 1)));
        Assert.Throws<ArgumentException>(() => ShapeForm.Of(StringSet.Run(3, 1), spots));
        Assert.Throws<ArgumentException>(() => ShapeForm.Of(Four, []));
        Assert.Throws<ArgumentException>(() => ShapeForm.OneNotePerString([]));
        Assert.Equal(default, default(ShapeForm).HalfTurned());
    }

    // Common practice, no source: the dominant seventh is the half-diminished seventh turned upside down on these strings.
    [Fact]
    public void Shapes_found_on_a_neck_are_compared_by_their_form()
    {
        var map = Necks.Map("guitar", "C major", "4-1", "0-12");
        var one = new Voicing.OneNotePerString(Arrangement.Close, [0]);
        Shape Find(string numeral) =>
            ShapeFinder.Find(map, new ShapeSource.OfChord(RomanNumeral.Parse(numeral).InKey(map.Key), null), one)[0];

        Assert.True(Find("V7").IsHalfTurnOf(Find("viiø7")));
        Assert.False(Find("V7").HasTheSameFormAs(Find("viiø7")));
        Assert.True(Find("Imaj7").HasTheSameFormAs(Find("IVmaj7")));
        Assert.True(Find("Imaj7").IsHalfTurnOf(Find("Imaj7")));
        Assert.False(Find("V7").IsMirrorOf(Find("V7")));
    }
}
