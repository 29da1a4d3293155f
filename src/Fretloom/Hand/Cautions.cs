namespace Fretloom.Hand;

/// <summary>What is said beside stretches that may strain a hand. General words; no medical figure, no limit of time.</summary>
public static class Cautions
{
    /// <summary>What is said wherever something wide is shown.</summary>
    /// <param name="hand">A child is sent to the teacher or a parent.</param>
    public static string General(HandSize hand) =>
        hand.IsChild
            ? "Do not force it. Stop and tell your teacher or a parent if it hurts, tingles or goes numb. Children's hand sizes are not in the data behind this: the teacher decides."
            : "Warm up first and do not force it. Stop if there is pain, tingling, numbness or weakness, and rest. If it comes back, see a doctor or physiotherapist; ask your teacher for another fingering.";

    /// <summary>What wide and very wide are.</summary>
    public const string Settings = "Wide is our setting, not a medical limit.";

    /// <summary>How a sentence begins that tells what is wide: <c>Very wide for a hand of 165 mm on this instrument</c>.</summary>
    /// <param name="width">Wide or very wide.</param>
    /// <param name="hand">The hand it was judged for.</param>
    public static string Opening(Width width, HandSize hand) =>
        $"{(width == Width.VeryWide ? "Very wide" : "Wide")} for a hand of {hand} on this instrument";

    /// <summary>What is said beside one fingering: of its widest stretch, then in general; nothing when it is in reach.</summary>
    /// <param name="fingering">The fingering.</param>
    /// <param name="hand">The hand it was found for.</param>
    public static IEnumerable<string> Of(Fingering fingering, HandSize hand) =>
        fingering.Widest is { } widest && Of(widest, hand) is { } said ? [said, General(hand)] : [];

    /// <summary>What is said of one stretch; null when it is in reach.</summary>
    /// <param name="stretch">The stretch.</param>
    /// <param name="hand">The hand it was judged for.</param>
    public static string? Of(Stretch stretch, HandSize hand) =>
        stretch.Width == Width.InReach ? null : $"{Opening(stretch.Width, hand)}: {stretch.Words}. {Settings}";
}
