namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Where the open lesson stands.</summary>
public enum SaveState
{
    /// <summary>What is written is on the disk.</summary>
    Saved,

    /// <summary>It will be saved when the keys rest.</summary>
    Waiting,

    /// <summary>It is on its way.</summary>
    Saving,

    /// <summary>It could not be saved; it is tried again.</summary>
    Failed,

    /// <summary>It cannot be saved as it is; what is wrong must change first.</summary>
    Refused,
}
