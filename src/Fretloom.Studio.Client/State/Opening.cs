using System.Globalization;
using System.Runtime.InteropServices.JavaScript;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.State;

/// <summary>What the browser says when the studio is opened. Asked for all at once, and not as JSON: while the program is new every question costs time.</summary>
public sealed partial record Opening
{
    /// <summary>The link in the address; null when there is none.</summary>
    public Link? Link { get; init; }

    /// <summary>What was said when that address was written in this tab; null when it was not.</summary>
    public string? Said { get; init; }

    /// <summary>What the lesson beside it said of itself above its text; null or empty for none.</summary>
    public string? Above { get; init; }

    /// <summary>Whether the lesson is to be written: the address names one, or it was being written last.</summary>
    public bool IsWriting { get; init; }

    /// <summary>The language that was chosen here, else the browser's, such as <c>de-AT</c>.</summary>
    public string Language { get; init; } = "";

    /// <summary>The theme that was chosen here; null when none was.</summary>
    public string? Theme { get; init; }

    /// <summary>Whether the page is pointed at with fingers.</summary>
    public bool IsTouched { get; init; }

    /// <summary>The room there will be for the neck, in CSS pixels.</summary>
    public double NeckRoom { get; init; }

    /// <summary>Whether the neck is seen already, drawn by the host.</summary>
    public bool HasNeck { get; init; }

    /// <summary>Asks the browser.</summary>
    public static Opening Now()
    {
        var said = Ask();
        return new Opening
        {
            Link = Link.Of(said[0], said[1]),
            Said = said[2],
            Above = said[3],
            IsWriting = said[4] == "true",
            Language = said[5] ?? "",
            Theme = said[6],
            IsTouched = said[7] == "true",
            NeckRoom = double.Parse(said[8]!, CultureInfo.InvariantCulture),
            HasNeck = said[9] == "true",
        };
    }

    // The properties from the first to the last, the link as its sentence and its names.
    [JSImport("globalThis.studio.opening")]
    [return: JSMarshalAs<JSType.Array<JSType.String>>]
    private static partial string?[] Ask();
}
