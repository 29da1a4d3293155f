namespace Fretloom.Pages.Documents;

/// <summary>A kind of file that a lesson is made into.</summary>
public enum HandoutFormat
{
    /// <summary>A tagged PDF to print.</summary>
    Pdf,

    /// <summary>A page that needs no other file.</summary>
    Html,

    /// <summary>Every picture as SVG.</summary>
    Svg,

    /// <summary>Every picture as PNG.</summary>
    Png,

    /// <summary>Every exercise as MusicXML, for notation programs.</summary>
    MusicXml,

    /// <summary>Every exercise as a Standard MIDI File.</summary>
    Midi,

    /// <summary>Every exercise as sound.</summary>
    Wav,
}
