using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>A way of naming notes, such as the English letters or the German ones with H.</summary>
/// <remarks><see cref="TryParse"/> reads whatever <see cref="Format"/> writes and gives the same note. Common practice, no source.</remarks>
public abstract class NoteNameSystem
{
    private protected NoteNameSystem(string name) => Name = name;

    /// <summary>Letters A to G: <c>Bb</c>, <c>F##</c>.</summary>
    public static NoteNameSystem English { get; } = new SignedNames("English", ["C", "D", "E", "F", "G", "A", "B"]);

    /// <summary>German: H for B natural, B for B flat; <c>Fis</c>, <c>Es</c>, <c>As</c>, <c>Fisis</c>, <c>Heses</c>.</summary>
    public static NoteNameSystem German { get; } = new GermanNames();

    /// <summary>Latin names that stay with their notes: Do is always C. <c>Sib</c>, <c>Fa##</c>.</summary>
    public static NoteNameSystem FixedDo { get; } =
        new SignedNames("fixed do", ["Do", "Re", "Mi", "Fa", "Sol", "La", "Si"]);

    /// <summary>The systems that need no key.</summary>
    public static ValueList<NoteNameSystem> All { get; } = [English, German, FixedDo];

    /// <summary>The name of the system.</summary>
    public string Name { get; }

    /// <summary>Syllables by place in a key; see <see cref="Theory.MovableDo"/>.</summary>
    public static NoteNameSystem MovableDo(Key key) => new MovableDo(key);

    /// <summary>The system of a choice.</summary>
    /// <param name="naming">The choice.</param>
    /// <param name="key">The key in which movable do finds its places; the others do not ask.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice.</exception>
    public static NoteNameSystem Of(NoteNaming naming, Key key) =>
        naming switch
        {
            NoteNaming.English => English,
            NoteNaming.German => German,
            NoteNaming.FixedDo => FixedDo,
            NoteNaming.MovableDo => MovableDo(key),
            _ => throw new ArgumentOutOfRangeException(nameof(naming), naming, "There is no such naming of notes."),
        };

    /// <summary>The name of a note.</summary>
    /// <param name="note">The note.</param>
    /// <param name="unicode">Whether accidentals are Unicode signs; names that use none do not change.</param>
    public abstract string Format(NoteName note, bool unicode = false);

    /// <summary>Reads a name if the whole text is one; letters in either case, accidentals ASCII or Unicode.</summary>
    public abstract bool TryParse([NotNullWhen(true)] string? text, out NoteName note);

    /// <summary>Reads a name.</summary>
    /// <exception cref="FormatException">The text is not a name in this system.</exception>
    public NoteName Parse(string text) =>
        TryParse(text, out var note) ? note : throw new FormatException($"'{text}' is not a note name ({Name}).");

    /// <summary>The name of the system.</summary>
    public override string ToString() => Name;
}
