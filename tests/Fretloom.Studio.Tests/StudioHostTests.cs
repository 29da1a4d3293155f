using System.Net;
using System.Net.Sockets;

namespace Fretloom.Studio.Tests;

public class StudioHostTests
{
    [Fact]
    public async Task A_port_that_is_in_use_is_told()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;

        var problem = await Assert.ThrowsAsync<StudioException>(() =>
            OpenStudio.OpenAsync(options => options with { Port = port })
        );

        Assert.Contains($"Port {port} is in use", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_address_of_another_computer_is_told()
    {
        // Of a network that documents alone use (RFC 5737).
        var problem = await Assert.ThrowsAsync<StudioException>(() =>
            OpenStudio.OpenAsync(options =>
                options with
                {
                    Address = IPAddress.Parse("192.0.2.1"),
                    PassPhrase = "four strings",
                }
            )
        );

        Assert.Contains("not an address of this computer", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_runs_until_it_is_asked_to_stop()
    {
        var folder = Directory.CreateTempSubdirectory("fretloom-run-");
        using var stop = new CancellationTokenSource();
        var opened = new TaskCompletionSource<Uri>();

        var running = StudioHost.RunAsync(
            new StudioOptions(folder.FullName, folder.FullName),
            opened.SetResult,
            stop.Token
        );
        var address = await opened.Task;
        using var client = new HttpClient();
        var lessons = await client.GetStringAsync(
            new Uri(address, "/api/lessons"),
            TestContext.Current.CancellationToken
        );
        await stop.CancelAsync();
        await running;

        Assert.Equal("[]", lessons);
        await Assert.ThrowsAsync<HttpRequestException>(() =>
            client.GetAsync(address, TestContext.Current.CancellationToken)
        );
        folder.Delete(recursive: true);
    }
}
