using Fretloom.Exhibits;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.State;

/// <summary>What the address holds of a view, so that it is the same wherever it is opened.</summary>
/// <param name="Sentence">The whole sentence: what a lesson supplies is said out loud.</param>
/// <param name="Names">How notes are named, which no sentence says.</param>
public sealed record Link(string Sentence, NoteNaming Names)
{
    /// <summary>The link that an address holds; null when it has no sentence. Names it does not know are English.</summary>
    public static Link? Of(string? sentence, string? names) =>
        sentence is { Length: > 0 }
            ? new Link(sentence, Enum.GetValues<NoteNaming>().FirstOrDefault(one => one.ToString() == names))
            : null;

    /// <summary>The link to what is seen; a sentence that cannot be read stands as it is.</summary>
    public static Link To(Studio studio) =>
        new(studio.Error is null ? studio.Exhibit.Sentence : studio.View.Sentence, studio.Defaults.NoteNames);

    /// <summary>What to say so that this link's view is seen.</summary>
    /// <param name="said">What was said when the link was made here; null elsewhere.</param>
    /// <param name="studio">Where it is to be seen.</param>
    /// <returns>What was said, where it still means the same; else the whole sentence.</returns>
    public string ToSay(string? said, Studio studio) =>
        said is not null && (studio.Answer(said).Value?.Sentence ?? said) == Sentence ? said : Sentence;
}
