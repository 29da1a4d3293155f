using System.Globalization;
using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Tests.Hand;

/// <summary>Short ways to write players, spots and fingers.</summary>
internal static class Hands
{
    /// <summary>An instrument of the catalogue under a hand, 189 mm long unless said otherwise.</summary>
    public static Player On(string instrument, double handMm = 189) =>
        Catalogue.TryFind(instrument, out var found)
            ? new Player(found, new HandSize(handMm))
            : throw new ArgumentException($"No {instrument} in the catalogue.", nameof(instrument));

    /// <summary>Frets of all strings, the one farthest from the floor first: <c>x 3 2 0 1 0</c>.</summary>
    public static ValueList<Spot> Frets(string frets)
    {
        var texts = frets.Split(' ');
        return texts
            .Select((text, at) => (text, String: texts.Length - at))
            .Where(note => note.text != "x")
            .Select(note => new Spot(note.String, int.Parse(note.text, CultureInfo.InvariantCulture)))
            .ToValueList();
    }

    /// <summary>The fingers of the notes in their order: <c>32010</c>, <c>T</c> for the thumb.</summary>
    public static string Fingers(this Fingering fingering) =>
        string.Concat(fingering.Notes.Select(note => note.Finger == Finger.Thumb ? "T" : $"{(int)note.Finger}"));

    /// <summary>The best fingers of a chord, or why there are none.</summary>
    public static string Chord(Player player, string frets) => Said(ChordFingering.Find(player, Frets(frets)));

    /// <summary>The best fingers of an arpeggio, or why there are none.</summary>
    public static string Arpeggio(Player player, string frets) => Said(ArpeggioFingering.Find(player, Frets(frets)));

    private static string Said(FingeringAnswer answer) =>
        answer.IsFound ? answer.Best.Fingers() : answer.Refusal.Message;
}
