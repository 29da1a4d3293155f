using Fretloom.Scores.Engraving;

namespace Fretloom.Scores.Tests.Engraving;

/// <summary>An engraver that many tests use one after another.</summary>
public sealed class WarmEngraver : IDisposable
{
    /// <summary>The engraver.</summary>
    public Engraver Engraver { get; } = new();

    /// <inheritdoc/>
    public void Dispose() => Engraver.Dispose();
}
