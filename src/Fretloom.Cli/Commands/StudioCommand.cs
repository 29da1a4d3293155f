using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Fretloom.Studio;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom studio</c>: pages to work in, in the browser.</summary>
internal static class StudioCommand
{
    // Spells FRET on the keys of a telephone. Not in the list of assigned ports as far as is known from memory.
    private const int Usual = 3738;

    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var lessons = new Option<string?>("--lessons")
        {
            Description = "The folder of the lessons (your own copy of the demo lessons if left out).",
            HelpName = "DIR",
        };
        lessons.Validators.Add(result =>
        {
            var folder = result.GetValueOrDefault<string?>() ?? "";
            if (!Directory.Exists(folder))
            {
                result.AddError($"There is no folder '{folder}' for --lessons.");
            }
        });
        var port = new Option<int>("--port")
        {
            Description = "The port; 0 takes one that is free (3738, or one that is free, if left out).",
            HelpName = "N",
            CustomParser = Port,
        };
        var listen = new Option<string?>("--listen")
        {
            Description =
                "Let others in your network come in at this address of your computer, with a pass phrase. What goes to and fro is not encrypted.",
            HelpName = "ADDRESS",
        };
        listen.Validators.Add(result =>
        {
            if (!IPAddress.TryParse(result.GetValueOrDefault<string?>(), out _))
            {
                result.AddError(
                    "--listen takes an address of this computer, such as 192.168.1.20, or 0.0.0.0 for all."
                );
            }
        });
        var open = new Option<bool>("--open") { Description = "Open it in the browser." };
        var command = new Command("studio", "Opens pages to work in, in the browser, until Ctrl-C.")
        {
            port,
            lessons,
            open,
            listen,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(lessons),
                parsed.GetResult(port) is { Implicit: false } ? parsed.GetValue(port) : UsualPort(),
                parsed.GetValue(listen) is { } address ? IPAddress.Parse(address) : IPAddress.Loopback,
                parsed.GetValue(open),
                terminal
            )
        );
        return command;
    }

    // What a browser keeps for the studio, drafts and settings, it keeps by the port.
    private static int UsualPort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, Usual);
        try
        {
            probe.Start();
            return Usual;
        }
        catch (SocketException)
        {
            return 0;
        }
    }

    private static int Port(ArgumentResult given)
    {
        var port = WholeNumber.Read(given);
        if (port is < 0 or > IPEndPoint.MaxPort)
        {
            given.AddError("--port takes 0 to 65535.");
        }

        return port;
    }

    private static int Run(string? lessons, int port, IPAddress address, bool isOpened, Terminal terminal)
    {
        if (PagesFolder() is not { } pages)
        {
            return terminal.Fail(
                "The pages of the studio are not there: start it with ./fretloom, which builds them.",
                isJson: false
            );
        }

        if ((lessons ?? OwnLessons(terminal)) is not { } folder)
        {
            return terminal.Fail("Name a folder with --lessons: this user has none for data.", isJson: false);
        }

        string? phrase = null;
        if (!IPAddress.IsLoopback(address) && (phrase = PassPhraseQuestion.Ask(terminal)) is null)
        {
            return ExitCode.Misused;
        }

        var options = new StudioOptions(folder, pages)
        {
            Port = port,
            Address = address,
            PassPhrase = phrase,
        };
        try
        {
            StudioHost.RunAsync(options, Opened, terminal.Listen()).GetAwaiter().GetResult();
            terminal.Error.WriteLine("The studio is closed.");
            return ExitCode.Stopped;
        }
        catch (StudioException problem)
        {
            return terminal.Fail(problem.Message, isJson: false);
        }

        void Opened(Uri at)
        {
            terminal.Error.WriteLine($"Lessons: {Path.GetFullPath(folder)}");
            terminal.Output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Fretloom's studio is at {at}"));
            terminal.Output.Flush();
            if (phrase is not null)
            {
                terminal.Error.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Others in your network come in at {(at.IsLoopback ? "your computer's address there" : at.Host)}, port {at.Port}, with the pass phrase. What goes to and fro is not encrypted."
                    )
                );
            }

            if (isOpened && Browser.WhyNotOpened(at) is { } problem)
            {
                terminal.Error.WriteLine(problem);
            }
        }
    }

    // The launcher builds them apart from the program; a program that was shipped has them beside it.
    private static string? PagesFolder() =>
        new[]
        {
            Environment.GetEnvironmentVariable("FRETLOOM_STUDIO"),
            Path.Combine(AppContext.BaseDirectory, "studio"),
        }.FirstOrDefault(folder => Directory.Exists(folder));

    private static string? OwnLessons(Terminal terminal)
    {
        if (DemoLessons.UsersFolder() is not { } folder)
        {
            return null;
        }

        if (!Directory.Exists(folder))
        {
            DemoLessons.CopyOnce(DemoCommand.LessonsFolder, folder);
            terminal.Error.WriteLine($"The demo lessons were copied to {folder}; they are yours to change.");
        }

        return folder;
    }
}
