using System.Globalization;
using Fretloom.Claims;
using Fretloom.Cli.Json;
using Fretloom.Lessons;
using Fretloom.Pages.Text;
using Fretloom.Sentences;

namespace Fretloom.Cli.Commands;

/// <summary>Checks claims and tells what came of them. Ctrl-C stops a check.</summary>
internal sealed class CheckRun(Terminal terminal)
{
    private static readonly CheckOptions OnAllThreads = CheckOptions.Default with
    {
        Threads = Environment.ProcessorCount,
    };

    /// <summary>Checks the lines of the input.</summary>
    public int CheckLines() => terminal.AnswerLines(line => Check(line, isJson: true));

    /// <summary>Checks one claim.</summary>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public int Check(string text, bool isJson)
    {
        var read = ClaimParser.Parse(text);
        if (!read.IsRead)
        {
            return terminal.Explain(text, read.Errors[0], isJson);
        }

        if (ClaimCost.Of(read.Value).WhyNot(CheckOptions.Default.Budget) is { } refusal)
        {
            return terminal.Fail(refusal, isJson);
        }

        var verdict = Checked(read.Value);
        if (isJson)
        {
            terminal.Print(CheckDocument.Of(verdict), Documents.Contract.CheckDocument);
        }
        else
        {
            terminal.Output.Write(ClaimText.Write(verdict, terminal.Width));
        }

        return verdict.Verdict is Verdict.Holds or Verdict.NothingToTest ? ExitCode.Done : ExitCode.Wrong;
    }

    /// <summary>Checks the claims of a lesson.</summary>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public int CheckLesson(string path, bool isJson)
    {
        var stop = terminal.Listen();
        var lesson = ProgressBar.Over(
            "Checking",
            show =>
                Lesson.LoadUnlessStopped(
                    path,
                    new ClaimChecks(Environment.ProcessorCount, ProgressBar.Share(show), stop)
                )
        );
        if (lesson.Diagnostics is [{ Line: 0 } whole])
        {
            return terminal.Fail(whole.Message, isJson);
        }

        if (isJson)
        {
            var document = new LessonCheckDocument(
                path,
                [.. lesson.Claims.Select(CheckDocument.Of)],
                [.. lesson.Diagnostics.Select(DiagnosticDocument.Of)]
            );
            terminal.Print(document, Documents.Contract.LessonCheckDocument);
        }
        else
        {
            Tell(path, lesson);
        }

        return lesson.HasErrors ? ExitCode.Wrong : ExitCode.Done;
    }

    private void Tell(string path, Lesson lesson)
    {
        foreach (var claim in lesson.Claims)
        {
            var asSaid = claim is { ExpectsFailure: true, IsAsExpected: true } ? " As the lesson says." : "";
            terminal.Output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"line {claim.Line}: {claim.Verdict.Summary}.{asSaid} {claim.Verdict.Sentence}"
                )
            );
        }

        if (lesson.Claims.Count == 0)
        {
            terminal.Output.WriteLine("No claims were checked.");
        }

        foreach (var found in lesson.Diagnostics)
        {
            terminal.Error.WriteLine($"{path}:{found}");
        }
    }

    private ClaimVerdict Checked(ClaimSentence sentence)
    {
        var stop = terminal.Listen();
        return ProgressBar.Over(
            "Checking",
            show => ClaimChecker.Check(sentence, OnAllThreads, ProgressBar.Share(show), stop)
        );
    }
}
