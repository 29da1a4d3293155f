namespace Fretloom.Testing;

/// <summary>Approved files: text that somebody read and found right, which must not change unnoticed.</summary>
public static class Approved
{
    /// <summary>Set to 1 to write what the tests found instead of comparing. Has no effect when CI is "true".</summary>
    public const string ApproveVariable = "FRETLOOM_APPROVE";

    /// <summary>Compares with an approved file, or writes it when approving.</summary>
    /// <param name="text">What was made just now. Line ends are compared as \n.</param>
    /// <param name="path">The file below <c>tests/</c>, one part each.</param>
    /// <exception cref="ApprovalException">The file is missing or differs; the message shows the first difference.</exception>
    public static void Matches(string text, params string[] path)
    {
        var file = Repository.PathTo(["tests", .. path]);
        var made = Normal(text);
        if (IsApproving)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, made);
            return;
        }

        var approved = File.Exists(file) ? Normal(File.ReadAllText(file)) : null;
        if (approved != made)
        {
            throw new ApprovalException(string.Join('/', path), FirstDifference(approved, made));
        }
    }

    /// <summary>Whether this run writes approved files.</summary>
    public static bool IsApproving =>
        Environment.GetEnvironmentVariable(ApproveVariable) == "1"
        && Environment.GetEnvironmentVariable("CI") != "true";

    private static string Normal(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";

    private static string FirstDifference(string? approved, string made)
    {
        if (approved is null)
        {
            return "there is no approved file yet";
        }

        var (before, now) = (approved.Split('\n'), made.Split('\n'));
        var line = before.Zip(now).TakeWhile(pair => pair.First == pair.Second).Count();
        return $"""
            line {line + 1} differs:
              approved: {before.ElementAtOrDefault(line)}
              now:      {now.ElementAtOrDefault(line)}
            """;
    }
}

/// <summary>Something differs from what was approved.</summary>
public sealed class ApprovalException(string file, string difference)
    : Exception(
        $"""
        tests/{file}: {difference}
        If the change is meant, run {Approved.ApproveVariable}=1 ./test, read every changed file (git diff), and commit it.
        """
    );
