using Fretloom.Hand;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>What comes back is the optimum of the model, against every fingering there is and against a plain shortest path.</summary>
public class ExactnessTests
{
    private const int Wanted = 6;

    [Fact]
    public void Lines_with_given_spots_have_the_best_of_all_fingerings() => CompareWithAll(6, 0, false, 1200);

    [Fact]
    public void Lines_with_given_spots_keep_rules_and_have_the_best_of_all_fingerings() =>
        CompareWithAll(6, 0, true, 1200);

    [Fact]
    public void Free_lines_have_the_best_of_all_fingerings() => CompareWithAll(4, 1, false, 400);

    [Fact]
    public void Half_free_lines_keep_rules_and_have_the_best_of_all_fingerings() => CompareWithAll(5, 0.5, true, 600);

    [Fact]
    public void Longer_lines_cost_what_a_plain_shortest_path_costs() =>
        (
            from player in LineGen.AnyPlayer
            from notes in LineGen.Line(player.Instrument, 30, 0.5)
            from rules in LineGen.Rule(notes.Count, player.Instrument.Strings.Count).Array[0, 2]
            select (player, notes, rules: rules.ToValueList())
        ).Sample(
            line =>
            {
                var answer = LineFingering.Find(line.player, line.notes, line.rules, Wanted);
                var slow = new SlowLines(line.player).Cheapest(line.notes, line.rules);

                Assert.Equal(slow, answer.Best is { } best ? Thousandths(best) : null);
                Assert.Equal(answer.Fingerings.OrderBy(one => Thousandths(one)), answer.Fingerings);
                Assert.Equal(answer.Fingerings.Count, answer.Fingerings.Select(one => one.Notes).Distinct().Count());
            },
            iter: 60
        );

    [Fact]
    public void Lines_cost_the_same_backwards() =>
        (
            from player in LineGen.AnyPlayer
            from notes in LineGen.Line(player.Instrument, 30, 0.5)
            select (player, notes)
        ).Sample(
            line =>
                Assert.Equal(
                    LineFingering.Find(line.player, line.notes, []).Best!.Cost,
                    LineFingering.Find(line.player, line.notes.Reverse().ToValueList(), []).Best!.Cost,
                    0.0005
                ),
            iter: 300
        );

    [Fact]
    public void The_terms_and_the_sum_of_the_costs_agree() =>
        (
            from player in LineGen.AnyPlayer
            from notes in LineGen.Line(player.Instrument, 12, 0.5)
            select (player, notes)
        ).Sample(
            line =>
            {
                foreach (var fingering in LineFingering.Find(line.player, line.notes, [], 3).Fingerings)
                {
                    var rules = fingering.Notes.Select(
                        (note, at) =>
                            new LineRule[]
                            {
                                new LineRule.WithFinger(at, note.Finger),
                                new LineRule.OnString(at, note.Spot.String),
                            }
                    );
                    var slow = new SlowLines(line.player).Cheapest(
                        line.notes,
                        rules.SelectMany(two => two).ToValueList()
                    );

                    Assert.Equal(slow, Thousandths(fingering));
                }
            },
            iter: 60
        );

    private static long Thousandths(Fingering fingering) => (long)Math.Round(fingering.Cost * 1000);

    private static void CompareWithAll(int mostNotes, double freeShare, bool withRules, int iterations) =>
        (
            from player in LineGen.AnyPlayer
            from notes in LineGen.Line(player.Instrument, mostNotes, freeShare)
            from rules in LineGen.Rule(notes.Count, player.Instrument.Strings.Count).Array[
                withRules ? 1 : 0,
                withRules ? 3 : 0
            ]
            select (player, notes, rules: rules.ToValueList())
        ).Sample(
            line =>
            {
                var answer = LineFingering.Find(line.player, line.notes, line.rules, Wanted);
                var all = new SlowLines(line.player).All(line.notes, line.rules);

                Assert.Equal(all.Take(Wanted).Select(one => one.Notes), answer.Fingerings.Select(one => one.Notes));
                Assert.Equal(all.Take(Wanted).Select(one => one.Cost), answer.Fingerings.Select(Thousandths));
                Assert.Equal(all.Count == 0, answer.Refusal is not null);
            },
            iter: iterations
        );
}
