namespace Fretloom.Cli.Json;

/// <summary>What <c>--json</c> prints when the call or the sentence was wrong.</summary>
/// <param name="Error">The error.</param>
public sealed record ErrorDocument(ErrorBody Error);

/// <summary>An error.</summary>
/// <param name="Message">What is wrong, what was expected, and a suggestion.</param>
/// <param name="Column">The column in the sentence, from 1.</param>
public sealed record ErrorBody(string Message, int Column);
