using Fretloom.Lessons.Syntax;
using Fretloom.Theory;

namespace Fretloom.Lessons;

/// <summary>A lesson in one key, worked out: what a page needs.</summary>
/// <remarks>A lesson with errors holds all that could be read, with a <see cref="Block.Problem"/> in the place of what could not.</remarks>
public sealed class Lesson
{
    private readonly ParsedLesson _parsed;

    internal Lesson(ParsedLesson parsed, Key key)
    {
        _parsed = parsed;
        Key = key;
        var resolver = new LessonResolver(parsed, key);
        Front = resolver.Front;
        Blocks = resolver.Blocks;
        Claims = resolver.Claims;
        Exercises = resolver.Exercises;
        Diagnostics = resolver.Diagnostics;
    }

    /// <summary>The key of the lesson.</summary>
    public Key Key { get; }

    /// <summary>The key the lesson was written in.</summary>
    public Key HomeKey => _parsed.HomeKey;

    /// <summary>What the lesson says of itself; words that follow the key are filled in.</summary>
    public FrontMatter Front { get; }

    /// <summary>The text and the pictures, in order.</summary>
    public ValueList<Block> Blocks { get; }

    /// <summary>The claims that could be checked, in order, those that are errors too.</summary>
    public ValueList<LessonClaim> Claims { get; }

    /// <summary>The exercises that can be played, in order.</summary>
    public ValueList<Block.Exercise> Exercises { get; }

    /// <summary>What the author should know, in the order of the file.</summary>
    public ValueList<Diagnostic> Diagnostics { get; }

    /// <summary>Whether there is an error.</summary>
    public bool HasErrors => Diagnostics.Any(found => found.Severity == Severity.Error);

    /// <summary>Whether the file could be read as text; if not, there is one error and nothing else.</summary>
    public bool IsText => _parsed.IsText;

    /// <summary>The same lesson in another key.</summary>
    /// <remarks>
    /// Sentences that name no key take the new one. Keys, scales, notes and chords that are named move by the interval from
    /// the home key to the new one. A range of frets that begins at the nut stays; one that begins higher moves along the
    /// neck with its notes, to the nearest place where it fits, as does a position above the first. Prose stays, but for
    /// <c>{key}</c> and its like; names in prose that would have to move are warnings. Claims speak of
    /// the keys that they name.
    /// </remarks>
    public Lesson InKey(Key key) => key == Key ? this : new Lesson(_parsed, key);

    /// <summary>Reads a lesson file.</summary>
    public static Lesson Parse(string text) => Of(ParsedLesson.Read(new SourceText(text), ClaimChecks.Default));

    /// <summary>Reads the content of a lesson file, at most <see cref="SourceText.MaxBytes"/> bytes of UTF-8.</summary>
    public static Lesson Decode(ReadOnlySpan<byte> bytes) => Decode(bytes, ClaimChecks.Default);

    private static Lesson Decode(ReadOnlySpan<byte> bytes, ClaimChecks checks) =>
        SourceText.Decode(bytes, out var error) is { } source
            ? Of(ParsedLesson.Read(source, checks))
            : Of(ParsedLesson.Failed(error!.Value));

    /// <summary>Reads a lesson file; a file that cannot be read is an error among <see cref="Diagnostics"/>.</summary>
    public static Lesson Load(string path) => LoadUnlessStopped(path, ClaimChecks.Default);

    /// <summary>The same, for a lesson whose claims may take a while.</summary>
    /// <param name="path">The file.</param>
    /// <param name="checks">How its claims are checked.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Lesson LoadUnlessStopped(string path, ClaimChecks checks)
    {
        try
        {
            using var file = File.OpenRead(path);
            // Some files do not say how long they are, and some never end.
            var bytes = new byte[SourceText.MaxBytes + 1];
            var read = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return read == bytes.Length
                ? Of(ParsedLesson.Failed(SourceText.TooLarge(file.CanSeek ? Math.Max(file.Length, read) : read)))
                : Decode(bytes.AsSpan(0, read), checks);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            var reason = problem switch
            {
                _ when Directory.Exists(path) => "it is a folder.",
                ArgumentException => "this is not the name of a file.",
                FileNotFoundException or DirectoryNotFoundException => "there is no such file.",
                UnauthorizedAccessException => "this user may not read it.",
                _ => problem.Message,
            };
            return Of(ParsedLesson.Failed(Diagnostic.OfFile($"'{path}' cannot be read: {reason}")));
        }
    }

    internal static Lesson Of(ParsedLesson parsed) => new(parsed, parsed.HomeKey);
}
