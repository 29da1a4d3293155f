namespace Fretloom.Cli;

/// <summary>What a run tells the program that started it.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>A lesson has errors, or a claim fails or does not apply.</summary>
    public const int Wrong = 1;

    /// <summary>The call or the sentence was wrong.</summary>
    public const int Misused = 2;
}
