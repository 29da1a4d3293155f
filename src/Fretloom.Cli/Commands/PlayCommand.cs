using System.CommandLine;
using System.CommandLine.Parsing;
using Fretloom.Cli.Json;
using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Pages.Documents;
using Fretloom.Scores.Midi;
using Fretloom.Scores.Sound;
using Fretloom.Scores.Tab;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom play</c>: one sentence, or one a line, worked out as an exercise: tablature, JSON or a file.</summary>
internal static class PlayCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var call = new SentenceCall(
            "sentence",
            "What to play, such as \"the seventh chords from I to IV, up and down, in eighths, at 72\".",
            "Say what to play, such as \"the scale, up and down, in eighths\"."
        );
        var file = SentenceCall.File(
            "Write the exercise to this file: .musicxml, .mxl, .mid, .wav, .svg, .pdf or .txt.",
            ExerciseFile.WhyNot
        );
        var title = new Option<string?>("--title")
        {
            Description = "The heading, instead of what is played.",
            HelpName = "WORDS",
        };
        var caption = new Option<string?>("--caption")
        {
            Description = "Words to the student below the heading of a .pdf file.",
            HelpName = "WORDS",
        };
        var fingers = new Option<bool>("--fingers")
        {
            Description = "Put a line with the fretting fingers under text tablature.",
        };
        var click = new Option<bool>("--click")
        {
            Description = "Click through a .wav or .mid file; a count-in clicks in any case.",
        };
        var channels = new Option<bool>("--channel-per-string")
        {
            Description = "Give each string of a .mid file a channel of its own.",
        };
        var rate = new Option<int>("--rate")
        {
            Description = "Samples in a second of a .wav file: 44100 (if left out) or 48000.",
            HelpName = "HZ",
            DefaultValueFactory = _ => new SoundOptions().Rate,
            CustomParser = Rate,
        };
        var seed = new Option<int>("--seed")
        {
            Description =
                "Decides the noise of the plucks in a .wav file (1 if left out); the same gives the same file.",
            HelpName = "N",
            DefaultValueFactory = _ => new SoundOptions().Seed,
            CustomParser = WholeNumber.Read,
        };
        var mute = StringOptions.Mute();
        var pan = StringOptions.Pan();
        var command = call.Command(
            "play",
            "Works out an exercise: tablature, notation, MIDI and sound.",
            file,
            title,
            caption,
            fingers,
            click,
            channels,
            rate,
            seed,
            mute,
            pan
        );
        command.Validators.Add(result =>
        {
            var ending = Path.GetExtension(result.GetResult(file)?.Tokens is [var path] ? path.Value : "");
            void Suits(Option option, params string[] endings)
            {
                if (
                    result.GetResult(option) is { Implicit: false }
                    && !endings.Contains(ending, StringComparer.OrdinalIgnoreCase)
                )
                {
                    result.AddError($"{option.Name} goes with --out and a {string.Join(" or ", endings)} file.");
                }
            }

            foreach (var option in new[] { title, caption })
            {
                if (result.GetValue(option) is { } words && (words.Trim().Length == 0 || words.Any(char.IsControl)))
                {
                    result.AddError($"{option.Name} takes a line of words.");
                }
            }

            Suits(caption, ".pdf");
            Suits(click, ".wav", ".mid");
            Suits(channels, ".mid");
            Suits(rate, ".wav");
            Suits(seed, ".wav");
            Suits(mute, ".wav");
            Suits(pan, ".wav");
        });
        command.SetAction(parsed =>
        {
            var options = new ScoreOptions(
                new SoundOptions
                {
                    Rate = parsed.GetValue(rate),
                    Seed = parsed.GetValue(seed),
                    HasClick = parsed.GetValue(click),
                    Muted = parsed.GetValue(mute),
                    Pan = parsed.GetValue(pan),
                },
                new MidiOptions { HasChannelPerString = parsed.GetValue(channels), HasClick = parsed.GetValue(click) },
                parsed.GetValue(fingers),
                parsed.GetValue(caption)
            );
            var heading = parsed.GetValue(title);
            return call.IsLines(parsed)
                ? terminal.AnswerLines(line => Play(line, file: null, heading, options, isJson: true, terminal))
                : Play(call.Text(parsed), parsed.GetValue(file), heading, options, call.IsJson(parsed), terminal);
        });
        return command;
    }

    private static int Rate(ArgumentResult given)
    {
        var rate = WholeNumber.Read(given);
        if (rate is not (0 or 44_100 or 48_000))
        {
            given.AddError($"--rate takes 44100 or 48000, not {rate}.");
        }

        return rate;
    }

    private static int Play(
        string text,
        string? file,
        string? title,
        ScoreOptions options,
        bool isJson,
        Terminal terminal
    )
    {
        var answer = PlayQuestion.Answer(text, ShowDefaults.Standard);
        if (!answer.IsRead)
        {
            return terminal.Explain(text, answer.Errors[0], isJson);
        }

        var exercise = title is null ? answer.Value : answer.Value with { Name = title };
        if (file is not null && Write(exercise, file, options, terminal) is { } problem)
        {
            return terminal.Fail(problem, isJson);
        }

        if (isJson)
        {
            terminal.Print(PlayDocument.Of(exercise), Documents.Contract.PlayDocument);
        }
        else if (file is null)
        {
            terminal.Output.Write(TabText.Write(exercise, terminal.Width, options.HasFingers || exercise.ShowsFingers));
        }
        else
        {
            terminal.Output.WriteLine(file);
        }

        if (!isJson)
        {
            Warn(exercise, terminal);
        }

        return ExitCode.Done;
    }

    private static string? Write(Exercise exercise, string file, ScoreOptions options, Terminal terminal)
    {
        var stop = terminal.Listen();
        return ExerciseFile.WhyNot(exercise, file, options)
            ?? OutFiles.Write(
                file,
                () =>
                    ProgressBar.Over(
                        $"Writing {Path.GetFileName(file)}",
                        report =>
                            ExerciseFile.Of(
                                exercise,
                                file,
                                options,
                                ProgressBar.Share(report),
                                words => terminal.Error.WriteLine($"{words}."),
                                stop
                            )
                    ),
                stop
            );
    }

    private static void Warn(Exercise exercise, Terminal terminal)
    {
        if (exercise.Widest is { } widest && Cautions.Of(widest, exercise.Player.Hand) is { } caution)
        {
            terminal.Error.WriteLine(caution);
            terminal.Error.WriteLine(Cautions.General(exercise.Player.Hand));
        }
    }
}
