using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Tests.State;

public class KeptTests
{
    [Fact]
    public void Whatever_is_asked_for_it_is_what_would_be_worked_out_now()
    {
        var kept = new Kept<int, string>();
        var random = new Random(7);
        for (var turn = 0; turn < 1000; turn++)
        {
            var key = random.Next(200);

            Assert.Equal($"<{key}>", kept.Of(key, () => $"<{key}>"));
        }
    }

    [Fact]
    public void What_was_asked_for_lately_is_not_worked_out_again_until_it_is_let_go()
    {
        var kept = new Kept<string, object>();
        var first = kept.Of("one", () => new object());

        Assert.Same(first, kept.Of("one", () => new object()));
        kept.Clear();

        Assert.NotSame(first, kept.Of("one", () => new object()));
    }

    [Fact]
    public void When_very_much_is_known_the_oldest_is_let_go_alone()
    {
        var kept = new Kept<int, object>();
        var all = Enumerable.Range(0, 129).Select(key => kept.Of(key, () => new object())).ToList();

        Assert.All(Enumerable.Range(1, 128), key => Assert.Same(all[key], kept.Of(key, () => new object())));
        Assert.NotSame(all[0], kept.Of(0, () => new object()));
    }
}
