using System.Net;
using Fretloom.Studio.PassPhrase;

namespace Fretloom.Studio.Tests.PassPhrase;

public class DoorTests
{
    private const string Phrase = "four strings & a fret";

    [Fact]
    public async Task Without_the_pass_phrase_nothing_is_told_but_the_question()
    {
        await using var studio = await OpenAsync();

        using var page = await studio.GetAsync("/");
        using var file = await studio.GetAsync("/program.js");
        using var lessons = await studio.GetAsync("/api/lessons");
        using var write = await studio.PutAsync("/api/lessons/new.md", "x", ("If-None-Match", "*"));

        var html = await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("<form method=\"post\" action=\"/login\">", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.All(
            new[] { page, file, lessons, write },
            answer =>
            {
                Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
                Http.SecurityTests.AssertSecure(answer);
            }
        );
        Assert.NotEmpty(await OpenStudio.ErrorOf(lessons));
        Assert.False(File.Exists(studio.PathOf("new.md")));
    }

    [Fact]
    public async Task Who_gives_it_is_known_by_a_cookie_that_no_script_and_no_other_page_can_use()
    {
        await using var studio = await OpenAsync();

        using var answer = await LogInAsync(studio, Phrase);
        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        using var lessons = await studio.GetAsync("/api/lessons", ("Cookie", cookie.Split(';')[0]));
        using var guessed = await studio.GetAsync("/api/lessons", ("Cookie", cookie.Split('=')[0] + "=0123"));

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal("/", answer.Headers.Location!.OriginalString);
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.OK, lessons.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, guessed.StatusCode);
    }

    [Fact]
    public async Task Wrong_tries_have_to_wait_even_with_the_right_one()
    {
        var clock = new HandSetClock();
        await using var studio = await OpenAsync(clock);

        using var wrong = await LogInAsync(studio, "four strings");
        using var soon = await LogInAsync(studio, Phrase);
        clock.Now += TimeSpan.FromSeconds(1);
        using var later = await LogInAsync(studio, Phrase);

        Assert.Equal(HttpStatusCode.Unauthorized, wrong.StatusCode);
        Assert.Equal(HttpStatusCode.TooManyRequests, soon.StatusCode);
        Assert.Equal(TimeSpan.FromSeconds(1), soon.Headers.RetryAfter!.Delta);
        Assert.Equal(HttpStatusCode.SeeOther, later.StatusCode);
    }

    [Fact]
    public async Task Another_page_cannot_try()
    {
        await using var studio = await OpenAsync();

        using var answer = await LogInAsync(studio, Phrase, ("Origin", "http://evil.example"));

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task An_address_that_others_reach_needs_a_pass_phrase()
    {
        var problem = await Assert.ThrowsAsync<StudioException>(() =>
            OpenStudio.OpenAsync(options => options with { Address = IPAddress.Any })
        );

        Assert.Contains("pass phrase", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_comes_in_on_any_address_names_it()
    {
        await using var studio = await OpenStudio.OpenAsync(options =>
            options with
            {
                Address = IPAddress.Any,
                PassPhrase = Phrase,
            }
        );

        using var answer = await studio.GetAsync("/api/lessons", ("Host", $"127.0.0.1:{studio.Address.Port}"));
        using var other = await studio.GetAsync("/api/lessons", ("Host", $"school.example:{studio.Address.Port}"));

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, other.StatusCode);
    }

    [Fact]
    public void The_wait_doubles_to_a_minute_and_is_forgiven()
    {
        var clock = new HandSetClock();
        var (tries, address, other) = (
            new WrongTries(clock),
            IPAddress.Parse("192.0.2.1"),
            IPAddress.Parse("192.0.2.2")
        );
        var waits = new List<double>();
        for (var at = 0; at < 9; at++)
        {
            tries.Add(address);
            waits.Add(tries.WaitOf(address).TotalSeconds);
        }

        Assert.Equal([1, 2, 4, 8, 16, 32, 60, 60, 60], waits);
        Assert.Equal(TimeSpan.Zero, tries.WaitOf(other));
        tries.Forgive(address);
        Assert.Equal(TimeSpan.Zero, tries.WaitOf(address));
    }

    [Fact]
    public void A_newcomer_never_waits_for_what_others_tried_and_the_one_who_tried_last_is_remembered()
    {
        var tries = new WrongTries(new HandSetClock());
        for (var at = 0; at < 3 * WrongTries.MostAddresses; at++)
        {
            var address = Nth(at);
            Assert.Equal(TimeSpan.Zero, tries.WaitOf(address));
            tries.Add(address);
            Assert.Equal(TimeSpan.FromSeconds(1), tries.WaitOf(address));
        }

        // The last thousand are remembered, and of the others none.
        Assert.All(
            Enumerable.Range(0, 3 * WrongTries.MostAddresses),
            at =>
                Assert.Equal(
                    at < 2 * WrongTries.MostAddresses ? TimeSpan.Zero : TimeSpan.FromSeconds(1),
                    tries.WaitOf(Nth(at))
                )
        );
    }

    [Fact]
    public void Who_goes_on_trying_is_not_forgotten_for_others()
    {
        var clock = new HandSetClock();
        var tries = new WrongTries(clock);
        for (var at = 0; at < 6; at++)
        {
            tries.Add(Nth(0));
            for (var other = 1; other < WrongTries.MostAddresses; other++)
            {
                tries.Add(Nth(other));
            }
        }

        Assert.Equal(TimeSpan.FromSeconds(32), tries.WaitOf(Nth(0)));
    }

    // Addresses for examples: RFC 3849 and RFC 5737; IPv4 within IPv6 and networks of 64 bits: RFC 4291, 2.5.5.2 and 2.5.4.
    [Theory]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:2:3:4:5:6", true)]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:3::1", false)]
    [InlineData("::ffff:192.0.2.1", "192.0.2.1", true)]
    [InlineData("192.0.2.1", "192.0.2.2", false)]
    public void Addresses_of_one_computer_wait_together(string one, string other, bool isSame)
    {
        var tries = new WrongTries(new HandSetClock());

        tries.Add(IPAddress.Parse(one));

        Assert.Equal(isSame, tries.WaitOf(IPAddress.Parse(other)) > TimeSpan.Zero);
    }

    private static IPAddress Nth(int number) => new([10, 0, (byte)(number >> 8), (byte)number]);

    private static Task<OpenStudio> OpenAsync(TimeProvider? clock = null) =>
        OpenStudio.OpenAsync(options => options with { PassPhrase = Phrase, Clock = clock ?? TimeProvider.System });

    private static Task<HttpResponseMessage> LogInAsync(
        OpenStudio studio,
        string phrase,
        params (string Name, string Value)[] headers
    ) =>
        studio.SendAsync(
            HttpMethod.Post,
            "/login",
            new FormUrlEncodedContent([new KeyValuePair<string, string>("phrase", phrase)]),
            headers
        );

    private sealed class HandSetClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
