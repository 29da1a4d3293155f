namespace Fretloom.Lessons;

/// <summary>How the claims of a lesson are checked. What comes of those that are checked does not depend on it.</summary>
/// <param name="Threads">How many threads at most, at least 1.</param>
/// <param name="Progress">Told the share of the work done, from 0 to 1, from any thread; null for nobody.</param>
/// <param name="Cancellation">Stops a check.</param>
public sealed record ClaimChecks(
    int Threads = 1,
    IProgress<double>? Progress = null,
    CancellationToken Cancellation = default
)
{
    /// <summary>Claims that are foreseen to take more nanoseconds than this on one thread are put off: a warning stands in their place.</summary>
    public long PutOff { get; init; } = long.MaxValue;

    /// <summary>On one thread, without being stopped.</summary>
    public static ClaimChecks Default { get; } = new();
}
