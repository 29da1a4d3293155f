namespace Fretloom.Claims.Checking;

/// <summary>A claim that differs a little from another.</summary>
/// <param name="Claim">The changed claim.</param>
/// <param name="Words">The phrase that is new in it, as it is written.</param>
/// <param name="Cost">How much was changed; a number by one costs 1.</param>
/// <param name="IsWeaker">Whether a number that was exact is now only a bound, so that less is said.</param>
internal readonly record struct ClaimChange(Claim Claim, string Words, int Cost, bool IsWeaker = false);
