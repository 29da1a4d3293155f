using Spectre.Console;

namespace Fretloom.Cli;

/// <summary>A bar on the error stream that says how far a long task has come; nothing where nobody watches.</summary>
internal static class ProgressBar
{
    /// <summary>Runs a task under a bar.</summary>
    /// <param name="title">What the bar says.</param>
    /// <param name="task">Is given a function to call with what is done and what there is to do.</param>
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
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn())
            .Start(progress =>
            {
                var bar = progress.AddTask(Markup.Escape(title));
                return task(
                    (done, total) =>
                    {
                        bar.MaxValue = total;
                        bar.Value = done;
                    }
                );
            });
    }
}
