using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Pages.Statements;

/// <summary>What is to be seen of a discovered statement: where it is true, and where it is not.</summary>
internal static class DiscoveredPictures
{
    /// <summary>Where a statement is true; none where nothing that it speaks of lies on a neck.</summary>
    public static ValueList<Exhibit> Of(DiscoveredClaim claim) => Resolved(claim.Pictures);

    /// <summary>Where it is not: the frets or spots to blame, or what it speaks of as it lies there.</summary>
    public static ValueList<Exhibit> Of(NearestFailure failure) =>
        Counterexample.Of(failure.Case) is { } exhibit ? [exhibit] : Resolved(failure.Pictures);

    /// <summary>The heading of the pictures: <c>On the neck, in C major</c>.</summary>
    public static string Heading(ValueList<Exhibit> exhibits) =>
        Accidentals.Pretty($"On the neck, in {exhibits[0].Map.Key}");

    /// <summary>The heading of the failure: <c>Nearest failure: guitar strings 6-3, in C major</c>.</summary>
    public static string Heading(NearestFailure failure) =>
        Accidentals.Pretty($"Nearest failure: {failure.Place}, in {failure.Case.Key}");

    /// <summary>The failure as a sentence.</summary>
    public static string Why(NearestFailure failure) =>
        Accidentals.Pretty(failure.Case.CountingNote is { } note ? $"{failure.Case.Why} {note}" : failure.Case.Why);

    private static ValueList<Exhibit> Resolved(ValueList<ShowSentence> sentences) =>
        sentences
            .Select(sentence => ShowResolver.Resolve(sentence, ShowDefaults.Standard).Exhibit)
            .OfType<Exhibit>()
            .Select(WithoutUnaskedThreads)
            .Select(OwnNut.Of)
            .ToValueList();

    /// <summary>Threads would hide what is spoken of, where it is not of them.</summary>
    private static Exhibit WithoutUnaskedThreads(Exhibit exhibit) =>
        exhibit is { Landmarks: { } landmarks, ShowsThirds: false }
            ? exhibit with
            {
                Landmarks = landmarks with { Thirds = [], Hinge = null },
            }
            : exhibit;
}
