using System.Globalization;
using System.Text;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Studio.Http;
using Fretloom.Studio.Work;
using Fretloom.Theory;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Fretloom.Studio.Site;

/// <summary>
/// The neck of a sentence at <c>/api/opening</c>, as the studio will draw it: it is seen while the program is still on its way to the browser.
/// Asked for with <c>show</c>, the sentence; <c>names</c>, how notes are named, or nothing; and <c>room</c>, the points there are.
/// </summary>
/// <param name="workshop">Where the sentence is worked out.</param>
internal sealed class OpeningNeck(Workshop workshop)
{
    // Points; any window that a neck can be seen in. Limits of our own.
    private const double LeastRoom = 100;
    private const double MostRoom = 5000;

    /// <summary>Gives it its address.</summary>
    public void Map(IEndpointRouteBuilder web) => web.MapGet("/api/opening", Answer);

    private async Task Answer(HttpContext context)
    {
        var asked = context.Request.Query;
        if (
            !double.TryParse(asked["room"], NumberStyles.Float, CultureInfo.InvariantCulture, out var room)
            || !(room is >= LeastRoom and <= MostRoom)
            || NamingOf(asked["names"]) is not { } naming
        )
        {
            await Problems.Write(
                context,
                StatusCodes.Status400BadRequest,
                $"'room' takes {LeastRoom} to {MostRoom} points, 'names' a way to name notes or nothing."
            );
            return;
        }

        var defaults = ShowDefaults.Standard with { NoteNames = naming };
        var answer = await workshop.DoAsync(
            () => ShowQuestion.Answer(asked["show"].ToString(), defaults),
            context.RequestAborted
        );
        if (!answer.IsRead)
        {
            var error = answer.Errors[0];
            await Problems.Write(context, StatusCodes.Status422UnprocessableEntity, error.Message, error.Column);
            return;
        }

        var svg = SvgWriter.Write(LiveNeck.Of(answer.Value, null, room).Drawing, SvgTheme.Screen, "opening-neck");
        context.Response.Headers.CacheControl = "no-store";
        await Answers.Bytes(context, Encoding.UTF8.GetBytes(svg), ContentKind.Of(".svg"));
    }

    private static NoteNaming? NamingOf(string? name) =>
        string.IsNullOrEmpty(name) ? NoteNaming.English
        : Enum.TryParse<NoteNaming>(name, out var naming) && Enum.IsDefined(naming) ? naming
        : null;
}
