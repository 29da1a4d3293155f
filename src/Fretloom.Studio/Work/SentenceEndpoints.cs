using Fretloom.Exhibits;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Png;
using Fretloom.Sentences;
using Fretloom.Studio.Http;
using Fretloom.Studio.Site;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Fretloom.Studio.Work;

/// <summary>Makes files of one sentence, at <c>/api/picture</c>, <c>/api/print</c> and <c>/api/exercise</c>.</summary>
/// <param name="workshop">Where they are made.</param>
internal sealed class SentenceEndpoints(Workshop workshop)
{
    /// <summary>Gives them their addresses.</summary>
    public void Map(IEndpointRouteBuilder web)
    {
        web.MapPost("/api/picture", Picture);
        web.MapPost("/api/print", Print);
        web.MapPost("/api/exercise", Exercise);
    }

    private async Task Picture(HttpContext context)
    {
        var asked = await Questions.Json(context, StudioJson.Contract.PictureRequest, Limits.Sentence);
        PngBackground? ground = asked.Ground switch
        {
            null or "paper" => PngBackground.Paper,
            "none" => PngBackground.Transparent,
            _ => null,
        };
        if (!IsKind(asked.Format, PictureFiles.WhyNot) || ground is null)
        {
            await Refuse(context, "'format' takes svg or png, 'ground' paper or none.");
            return;
        }

        var answer = ShowQuestion.Answer(asked.Sentence, ShowDefaults.Standard);
        if (!answer.IsRead)
        {
            await Explain(context, answer.Errors[0]);
            return;
        }

        var name = FileName.Of(answer.Value.Name);
        var files = PictureFiles.Of(answer.Value, $"{name}.{asked.Format}", ground);
        if (files.Count == 0)
        {
            await Explain(context, new SentenceError(1, 0, answer.Value.WhatIsMissing ?? "There is nothing to draw."));
            return;
        }

        await Send(
            context,
            files.Count == 1 ? files[0].Name : name + ".zip",
            () => files.Count == 1 ? files[0].Content() : Zip(files)
        );
    }

    private async Task Print(HttpContext context)
    {
        var asked = await Questions.Json(context, StudioJson.Contract.PrintRequest, Limits.Sentence);
        if (!BuildWords.Papers.TryGetValue(asked.Paper ?? "a4", out var paper))
        {
            await Refuse(context, "'paper' takes a4 or letter.");
        }
        else if (SentenceSheet.Read(asked.Sentence, ShowDefaults.Standard, out var error) is not { } sheet)
        {
            await Explain(context, error!);
        }
        else
        {
            var options = new PrintOptions(paper, asked.LargePrint);
            await Send(context, sheet.FileName + ".pdf", () => sheet.ToPdf(options, workshop.Typst, workshop.Engraver));
        }
    }

    private async Task Exercise(HttpContext context)
    {
        var asked = await Questions.Json(context, StudioJson.Contract.ExerciseRequest, Limits.Sentence);
        if (!IsKind(asked.Format, ExerciseFile.WhyNot))
        {
            await Refuse(context, "'format' takes musicxml, mxl, mid, wav, svg, pdf or txt.");
            return;
        }

        var answer = PlayQuestion.Answer(asked.Sentence, ShowDefaults.Standard);
        if (!answer.IsRead)
        {
            await Explain(context, answer.Errors[0]);
            return;
        }

        var (exercise, options) = (answer.Value, ScoreOptions.Default);
        var name = $"{FileName.Of(exercise.Name)}.{asked.Format}";
        if (ExerciseFile.WhyNot(exercise, name, options) is { } reason)
        {
            await Explain(context, new SentenceError(1, 0, reason));
            return;
        }

        await Send(context, name, () => ExerciseFile.Of(exercise, name, options, stop: context.RequestAborted));
    }

    private async Task Send(HttpContext context, string name, Func<byte[]> make)
    {
        byte[] content;
        try
        {
            content = await workshop.DoAsync(make, context.RequestAborted);
        }
        catch (Exception problem) when (problem is IOException or TypstException)
        {
            await Problems.Write(
                context,
                StatusCodes.Status500InternalServerError,
                $"The file could not be made: {problem.Message}"
            );
            return;
        }

        Answers.Attach(context, name);
        await Answers.Bytes(context, content, ContentKind.Of(name));
    }

    private static bool IsKind(string format, Func<string, string?> whyNot) =>
        format.All(char.IsAsciiLetter) && whyNot("." + format) is null;

    private static byte[] Zip(IReadOnlyList<(string Name, Func<byte[]> Content)> files)
    {
        using var zip = new MemoryStream();
        ZipFiles.Write(
            zip,
            files.Select<(string Name, Func<byte[]> Content), (string, Func<Stream>)>(file =>
                (file.Name, () => new MemoryStream(file.Content()))
            )
        );
        return zip.ToArray();
    }

    private static Task Refuse(HttpContext context, string problem) =>
        Problems.Write(context, StatusCodes.Status400BadRequest, problem);

    private static Task Explain(HttpContext context, SentenceError error) =>
        Problems.Write(context, StatusCodes.Status422UnprocessableEntity, error.Message, error.Column);
}
