using Fretloom.Claims;
using Fretloom.Claims.Checking;
using Fretloom.Claims.Checking.Blocks;
using Fretloom.Claims.Discovery;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims.Discovery;

/// <summary>Statements tried together come to what each comes to alone.</summary>
public class TruthTableTests
{
    private static readonly ValueList<Key> Kinds = new KeyScope.EveryKey()
        .Keys.DistinctBy(key => key.Kind)
        .ToValueList();

    [Theory]
    [InlineData("guitar", "4-1")]
    [InlineData("re-entrant ukulele", "4-1")]
    [InlineData("guitar", "6-2")]
    public void Every_template_gives_what_the_evaluator_gives_word_by_word(string name, string strings)
    {
        Assert.True(Catalogue.TryFind(name, out var instrument));
        var place = Place.On(instrument, StringSet.Parse(strings));
        var chosen = new ChosenStrings(place.Strings.Numbers, place.Strings.Numbers);
        var claims = Statement
            .All(chosen, chosen)
            .Select(one => one.Here)
            .Where(claim => Applicability.Applies(place, claim))
            .ToList();
        var truths = TruthTable.Of(
            claims,
            Kinds,
            StringLayout.Of(place),
            [place.All.Opens],
            null,
            TestContext.Current.CancellationToken
        );
        for (var at = 0; at < claims.Count; at += 3)
        {
            for (var kind = 0; kind < Kinds.Count; kind++)
            {
                var expected = Evaluator.Of(new Case(place, Kinds[kind], new NeckLine(null)), claims[at]);
                var found =
                    truths[at].Fails[kind, 0] ? Outcome.Fails
                    : truths[at].Holds[kind, 0] ? Outcome.Holds
                    : Outcome.Untested;
                Assert.Equal((claims[at], expected), (claims[at], found));
            }
        }
    }
}
