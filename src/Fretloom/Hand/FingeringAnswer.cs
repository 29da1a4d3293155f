using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Hand;

/// <summary>Fingerings, or why there are none.</summary>
public sealed record FingeringAnswer
{
    private FingeringAnswer(ValueList<Fingering> fingerings, FingeringRefusal? refusal) =>
        (Fingerings, Refusal) = (fingerings, refusal);

    /// <summary>The best first, at most as many as were asked for; empty when there is a <see cref="Refusal"/>.</summary>
    public ValueList<Fingering> Fingerings { get; }

    /// <summary>What stands in the way; null when there is a fingering.</summary>
    public FingeringRefusal? Refusal { get; }

    /// <summary>The best fingering; null when there is a <see cref="Refusal"/>.</summary>
    public Fingering? Best => IsFound ? Fingerings[0] : null;

    /// <summary>Whether there is a fingering.</summary>
    [MemberNotNullWhen(true, nameof(Best))]
    [MemberNotNullWhen(false, nameof(Refusal))]
    public bool IsFound => Refusal is null;

    /// <summary>Fingerings that were found.</summary>
    /// <param name="fingerings">At least one, the best first.</param>
    internal static FingeringAnswer Found(ValueList<Fingering> fingerings) => new(fingerings, null);

    /// <summary>None, and why.</summary>
    internal static FingeringAnswer Refused(FingeringRefusal refusal) => new([], refusal);
}

/// <summary>Why no hand can play some notes.</summary>
/// <param name="Message">What is wrong, with the note and the rule concerned, and what would go.</param>
/// <param name="Note">The note concerned, counted from 0 in the order asked; null when it is not about one note.</param>
/// <param name="Rule">The teacher's rule concerned, counted from 0 in the order given; null when it is not about a rule.</param>
public sealed record FingeringRefusal(string Message, int? Note = null, int? Rule = null)
{
    /// <inheritdoc cref="FingeringRefusal(string, int?, int?)"/>
    /// <exception cref="ArgumentException">It is empty.</exception>
    public string Message { get; } =
        string.IsNullOrEmpty(Message) ? throw new ArgumentException("Say what is wrong.", nameof(Message)) : Message;

    /// <inheritdoc cref="FingeringRefusal(string, int?, int?)"/>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public int? Note { get; } =
        Note is < 0 ? throw new ArgumentOutOfRangeException(nameof(Note), Note, "Notes are counted from 0.") : Note;

    /// <inheritdoc cref="FingeringRefusal(string, int?, int?)"/>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public int? Rule { get; } =
        Rule is < 0 ? throw new ArgumentOutOfRangeException(nameof(Rule), Rule, "Rules are counted from 0.") : Rule;
}
