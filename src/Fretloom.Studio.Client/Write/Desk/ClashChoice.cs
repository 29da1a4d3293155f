namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>What to do about a <see cref="Clash"/>.</summary>
public enum ClashChoice
{
    /// <summary>What is written here goes to the disk.</summary>
    Mine,

    /// <summary>What is on the disk comes here; where the file is gone, the lesson is let go.</summary>
    Theirs,

    /// <summary>What is written here goes to the disk, the other beside it as a lesson of its own.</summary>
    Both,
}
