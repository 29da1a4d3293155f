using System.Diagnostics;
using Spectre.Console;

namespace Fretloom.Cli;

/// <summary>A bar on the error stream that says how far a long task has come; nothing where nobody watches, or a task is short.</summary>
internal static class ProgressBar
{
    private const int Whole = 1000;

    /// <summary>A bar for less would only flicker.</summary>
    private static readonly TimeSpan Short = TimeSpan.FromSeconds(0.3);

    private static readonly TimeSpan Between = TimeSpan.FromSeconds(0.1);

    /// <summary>Runs a task under a bar.</summary>
    /// <param name="title">What the bar says.</param>
    /// <param name="task">Is given a function to call, from any thread, with what is done and what there is to do.</param>
    /// <returns>What the task gives.</returns>
    public static T Over<T>(string title, Func<Action<int, int>, T> task)
    {
        if (Console.IsErrorRedirected)
        {
            return task((_, _) => { });
        }

        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return console
            .Progress()
            .AutoClear(true)
            .AutoRefresh(false)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn())
            .Start(progress =>
            {
                var bar = progress.AddTask(Markup.Escape(title));
                var (clock, next, gate) = (Stopwatch.StartNew(), Short, new Lock());
                return task(
                    (done, total) =>
                    {
                        lock (gate)
                        {
                            bar.MaxValue = total;
                            bar.Value = done;
                            if (clock.Elapsed >= next)
                            {
                                progress.Refresh();
                                next = clock.Elapsed + Between;
                            }
                        }
                    }
                );
            });
    }

    /// <summary>Tells a bar what share of a task is done, at once and on whatever thread tells it.</summary>
    public static IProgress<double> Share(Action<int, int> show) => new Told(show);

    private sealed class Told(Action<int, int> show) : IProgress<double>
    {
        public void Report(double value) => show((int)(value * Whole), Whole);
    }
}
