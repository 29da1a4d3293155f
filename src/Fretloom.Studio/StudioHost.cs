using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Fretloom.Studio.Folder;
using Fretloom.Studio.Http;
using Fretloom.Studio.PassPhrase;
using Fretloom.Studio.Site;
using Fretloom.Studio.Work;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace Fretloom.Studio;

/// <summary>The open studio: answers on one address until it is disposed.</summary>
/// <remarks>
/// It reads no settings of the framework, neither files nor variables, writes no log, and leaves signals to its caller.
/// </remarks>
/// <example>
/// <code>
/// await using var studio = await StudioHost.StartAsync(new StudioOptions("lessons", "artifacts/fretloom/studio"));
/// Console.WriteLine(studio.Address);
/// </code>
/// </example>
public sealed class StudioHost : IAsyncDisposable
{
    // Open event streams end at once; an answer under way gets this long.
    private static readonly TimeSpan Farewell = TimeSpan.FromSeconds(2);

    private readonly WebApplication _web;
    private readonly List<IAsyncDisposable> _parts;

    private StudioHost(WebApplication web, List<IAsyncDisposable> parts)
    {
        (_web, _parts) = (web, parts);
        var addresses = web.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!;
        Address = Reached(new Uri(addresses.Addresses.First()));
    }

    /// <summary>Where it answers, with the port that was taken; where it listens on every address, the one of this computer to itself.</summary>
    public Uri Address { get; }

    /// <summary>Opens the studio.</summary>
    /// <exception cref="StudioException">The address or port cannot be had, or a pass phrase is missing.</exception>
    public static async Task<StudioHost> StartAsync(StudioOptions options, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (options.PassPhrase is null && !IPAddress.IsLoopback(options.Address))
        {
            throw new StudioException($"Others can reach {options.Address}: a pass phrase is needed.");
        }

        var pages = new StudioPages(options.Pages, options.Assets);
        var folder = new LessonFolder(options.Lessons);
        folder.RemoveAbandoned();
        var changes = new FolderChanges(folder, options.Clock);
        var scratch = new ScratchFolder();
        var workshop = new Workshop();
        var desk = new HandoutDesk(workshop, scratch);
        List<IAsyncDisposable> parts = [changes, desk, workshop, scratch];

        var web = Build(options);
        var ending = web.Lifetime.ApplicationStopping;
        web.Use(SecurityHeaders.Add);
        web.Use(Problems.Tell);
        web.Use(OwnAddress.Check);
        if (options.PassPhrase is { } phrase)
        {
            web.Use(new Door(phrase, options.Clock).Guard);
        }

        web.Use(SameOrigin.Check);
        web.UseRouting();
        new LessonEndpoints(folder, changes, ending).Map(web);
        new HandoutEndpoints(desk, folder).Map(web);
        new SentenceEndpoints(workshop).Map(web);
        new OpeningNeck(workshop).Map(web);
        web.UseEndpoints(_ => { });
        web.Run(pages.Send);
        try
        {
            await web.StartAsync(stop);
            changes.Begin();
            return new StudioHost(web, parts);
        }
        catch (Exception problem)
        {
            await DisposeAsync(web, parts);
            throw WhyNot(problem, options) is { } reason ? new StudioException(reason, problem) : problem;
        }
    }

    /// <summary>Opens the studio, and closes it when asked to.</summary>
    /// <param name="options">How.</param>
    /// <param name="opened">Told the address.</param>
    /// <param name="stop">Asks.</param>
    /// <exception cref="StudioException">It cannot be opened.</exception>
    public static async Task RunAsync(StudioOptions options, Action<Uri> opened, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(opened);
        await using var studio = await StartAsync(options, stop);
        opened(studio.Address);
        await Task.Delay(Timeout.Infinite, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => DisposeAsync(_web, _parts);

    private static async ValueTask DisposeAsync(WebApplication web, List<IAsyncDisposable> parts)
    {
        using var patience = new CancellationTokenSource(Farewell);
        await web.StopAsync(patience.Token);
        await web.DisposeAsync();
        foreach (var part in parts)
        {
            await part.DisposeAsync();
        }
    }

    private static WebApplication Build(StudioOptions options)
    {
        var builder = WebApplication.CreateEmptyBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, ApplicationName = "Fretloom" }
        );
        builder.Services.AddRoutingCore();
        builder.Services.AddSingleton<IHostLifetime, CallersLifetime>();
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = Farewell);
        builder.WebHost.UseKestrelCore();
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;
            server.Listen(options.Address, options.Port, listen => listen.Protocols = HttpProtocols.Http1);
            Limits.Set(server.Limits);
        });
        return builder.Build();
    }

    private static Uri Reached(Uri bound) =>
        bound.Host is "0.0.0.0" or "[::]"
            ? new UriBuilder(bound) { Host = bound.Host == "[::]" ? "[::1]" : "127.0.0.1" }.Uri
            : bound;

    private static string? WhyNot(Exception problem, StudioOptions options)
    {
        var port = options.Port.ToString(CultureInfo.InvariantCulture);
        for (var at = problem; at is not null; at = at.InnerException)
        {
            if (at is Microsoft.AspNetCore.Connections.AddressInUseException)
            {
                return $"Port {port} is in use. Take another with --port, or leave it out for one that is free.";
            }

            if (at is SocketException { SocketErrorCode: SocketError.AccessDenied })
            {
                return $"This user may not take port {port}. Take one above 1023 with --port.";
            }

            if (at is SocketException { SocketErrorCode: SocketError.AddressNotAvailable })
            {
                return $"{options.Address} is not an address of this computer.";
            }
        }

        return null;
    }

    // Ctrl-C and requests to end are the caller's to hear.
    private sealed class CallersLifetime : IHostLifetime
    {
        public Task WaitForStartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
    }
}
