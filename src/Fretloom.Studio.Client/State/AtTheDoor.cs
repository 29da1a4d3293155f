using System.Net;

namespace Fretloom.Studio.Client.State;

/// <summary>Goes to the host's door where a pass phrase is asked for: a page that the browser kept does not know that it was not given.</summary>
public sealed class AtTheDoor(Page page) : DelegatingHandler(new HttpClientHandler())
{
    /// <inheritdoc/>
    protected override async Task<HttpResponseMessage> SendAsync(
        HttpRequestMessage request,
        CancellationToken cancellationToken
    )
    {
        var answer = await base.SendAsync(request, cancellationToken);
        if (answer.StatusCode == HttpStatusCode.Unauthorized)
        {
            page.Go("/login");
        }

        return answer;
    }
}
