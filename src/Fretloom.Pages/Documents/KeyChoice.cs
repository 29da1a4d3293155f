using Fretloom.Lessons;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>In which keys a lesson is made.</summary>
public abstract record KeyChoice
{
    private KeyChoice() { }

    /// <summary>The key it was written in.</summary>
    public static KeyChoice Home { get; } = new HomeKey();

    /// <summary>One key.</summary>
    public static KeyChoice One(Key key) => new OneKey(key);

    /// <summary>The key of the lesson's kind on another tonic.</summary>
    public static KeyChoice On(NoteName tonic) => new OtherTonic(tonic);

    /// <summary>All twelve keys of the lesson's kind, the home key first.</summary>
    public static KeyChoice All(KeyOrder order) => new AllKeys(order);

    /// <summary>The keys, in the order the handouts are made.</summary>
    internal abstract ValueList<Key> For(Lesson lesson);

    /// <summary>In which order, when there are several; else null.</summary>
    internal virtual KeyOrder? Order => null;

    /// <summary>Whether the name of the key belongs into the names of the files.</summary>
    internal bool IsNamed => this is not HomeKey;

    private sealed record HomeKey : KeyChoice
    {
        internal override ValueList<Key> For(Lesson lesson) => [lesson.HomeKey];
    }

    private sealed record OneKey(Key Key) : KeyChoice
    {
        internal override ValueList<Key> For(Lesson lesson) => [Key];
    }

    private sealed record OtherTonic(NoteName Tonic) : KeyChoice
    {
        internal override ValueList<Key> For(Lesson lesson) => [lesson.HomeKey.On(Tonic)];
    }

    private sealed record AllKeys(KeyOrder Way) : KeyChoice
    {
        internal override KeyOrder? Order => Way;

        internal override ValueList<Key> For(Lesson lesson) => TwelveKeys.From(lesson.HomeKey, Way);
    }
}
