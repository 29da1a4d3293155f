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

    /// <summary>Stopped by Ctrl-C or a request to end: 128 and the number of SIGINT, as shells count.</summary>
    public const int Stopped = 130;
}
