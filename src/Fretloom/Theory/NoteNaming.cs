namespace Fretloom.Theory;

/// <summary>The ways of naming notes that a teacher can choose; see <see cref="NoteNameSystem"/>.</summary>
public enum NoteNaming
{
    /// <summary>Letters A to G.</summary>
    English,

    /// <summary>H for B natural, B for B flat.</summary>
    German,

    /// <summary>Do is always C.</summary>
    FixedDo,

    /// <summary>Do is the tonic of the major scale of the same notes.</summary>
    MovableDo,
}
