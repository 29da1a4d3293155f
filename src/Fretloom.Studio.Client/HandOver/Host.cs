using System.Net.Http.Json;
using System.Text.Json;
using Fretloom.Studio.Client.Words;

namespace Fretloom.Studio.Client.HandOver;

/// <summary>Asks the host for files that a browser cannot make: it sets PDFs, and makes sound faster.</summary>
public sealed class Host(HttpClient http, Labels labels)
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(150);

    /// <summary>One sheet of a sentence, without a lesson.</summary>
    /// <returns>The PDF, or what went wrong in words.</returns>
    public Task<HostAnswer> PrintAsync(string sentence, string paper, CancellationToken stop) =>
        PostAsync(
            "api/print",
            JsonContent.Create(new PrintRequest(sentence, paper), HostJson.Default.PrintRequest),
            stop
        );

    /// <summary>The files of a lesson.</summary>
    /// <param name="request">Which lesson, and what to make of it.</param>
    /// <param name="progress">Told how many files of how many are done, and which was the last.</param>
    /// <param name="stop">Calls it off, at the host too once it has begun there.</param>
    /// <returns>One file, a ZIP of several, or what went wrong in words.</returns>
    public async Task<HostAnswer> BuildAsync(
        HandoutRequest request,
        Action<HandoutState> progress,
        CancellationToken stop
    )
    {
        try
        {
            using var begun = await http.PostAsync(
                "api/handouts",
                JsonContent.Create(request, HostJson.Default.HandoutRequest),
                stop
            );
            if (!begun.IsSuccessStatusCode)
            {
                return HostAnswer.Failed(await WhyAsync(begun));
            }

            var id = (await begun.Content.ReadFromJsonAsync(HostJson.Default.HandoutBegun, stop))!.Id;
            return await FollowAsync(id, progress, stop);
        }
        catch (Exception away) when (IsAway(away, stop))
        {
            return HostAnswer.Failed(labels["host-away"]);
        }
    }

    private async Task<HostAnswer> FollowAsync(string id, Action<HandoutState> progress, CancellationToken stop)
    {
        try
        {
            while (true)
            {
                var state = (await http.GetFromJsonAsync($"api/handouts/{id}", HostJson.Default.HandoutState, stop))!;
                progress(state);
                if (state.State == "done" && state.File is { } file)
                {
                    var bytes = await http.GetByteArrayAsync(file, stop);
                    return new HostAnswer(bytes, Uri.UnescapeDataString(file.Split('/')[^1]), null);
                }

                if (state.State != "working")
                {
                    var said = (state.Diagnostics ?? []).Where(found => found.Severity == "error").ToList();
                    return said.Count > 0
                        ? new HostAnswer(null, "", labels["files-nothing"], said)
                        : HostAnswer.Failed(labels["host-failed"]);
                }

                await Task.Delay(Pause, stop);
            }
        }
        catch (OperationCanceledException)
        {
            using var _ = await http.DeleteAsync($"api/handouts/{id}", CancellationToken.None);
            throw;
        }
    }

    // A host that does not answer for long is as good as gone.
    private static bool IsAway(Exception problem, CancellationToken stop) =>
        problem is HttpRequestException || (problem is OperationCanceledException && !stop.IsCancellationRequested);

    private async Task<HostAnswer> PostAsync(string path, HttpContent content, CancellationToken stop)
    {
        try
        {
            using var answer = await http.PostAsync(path, content, stop);
            return answer.IsSuccessStatusCode
                ? new HostAnswer(
                    await answer.Content.ReadAsByteArrayAsync(stop),
                    answer.Content.Headers.ContentDisposition?.FileName?.Trim('"') ?? "fretloom.pdf",
                    null
                )
                : HostAnswer.Failed(await WhyAsync(answer));
        }
        catch (Exception away) when (IsAway(away, stop))
        {
            return HostAnswer.Failed(labels["host-away"]);
        }
    }

    private async Task<string> WhyAsync(HttpResponseMessage answer)
    {
        try
        {
            return (await answer.Content.ReadFromJsonAsync(HostJson.Default.HostError))?.Error.Message
                ?? labels["host-failed"];
        }
        catch (JsonException)
        {
            return labels["host-failed"];
        }
    }
}

/// <summary>A file from the host, or what went wrong.</summary>
/// <param name="Bytes">The file; null when something went wrong.</param>
/// <param name="Name">Its name.</param>
/// <param name="Problem">What went wrong, in words; null when nothing did.</param>
/// <param name="Findings">What in the lesson is to be mended first; null or empty for nothing.</param>
public sealed record HostAnswer(
    byte[]? Bytes,
    string Name,
    string? Problem,
    IReadOnlyList<HandoutFinding>? Findings = null
)
{
    internal static HostAnswer Failed(string problem) => new(null, "", problem);
}
