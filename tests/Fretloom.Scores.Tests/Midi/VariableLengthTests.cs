using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Scores.Midi;
using Fretloom.Testing;
using NAudio.Midi;

namespace Fretloom.Scores.Tests.Midi;

/// <summary>Numbers of MIDI files are written as the table says.</summary>
public class VariableLengthTests
{
    private static readonly Beats Sounding = Beats.FromTicks(20);

    public static TheoryData<int, string> Rows
    {
        get
        {
            var rows = new TheoryData<int, string>();
            var lines = File.ReadAllLines(Repository.PathTo("tests", "Fretloom.Scores.Tests", "Data", "smf_vlq.csv"));
            foreach (var line in lines.SkipWhile(line => line[0] == '#').Skip(1))
            {
                var cells = line.Split(',');
                rows.Add(Convert.ToInt32(cells[0], 16), cells[1]);
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_number_takes_the_bytes_of_the_table(int value, string bytes)
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);

        MidiEvent.WriteVarInt(writer, value);

        Assert.Equal(bytes.Replace(" ", "", StringComparison.Ordinal), Convert.ToHexString(stream.ToArray()));
    }

    /// <summary>The waits that an exercise can have.</summary>
    public static TheoryData<int, string> Waits => [.. Rows.Where(row => row.Data.Item1 is > 0 and < 3_000_000)];

    // The wait before a second note is such a number in the file itself.
    [Theory]
    [MemberData(nameof(Waits))]
    public void A_file_writes_its_waits_so(int value, string bytes)
    {
        var open = new Spot(1, 0);
        var exercise = Played.InTurn(Catalogue.Default, [open, open], 72);
        var first = exercise.Notes[0] with { Length = Sounding };
        var second = exercise.Notes[1] with { At = Sounding + Beats.FromTicks(value), Length = Sounding };
        var bar = default(Metre).Bar;
        var file = MidiWriter.Write(
            exercise with
            {
                Notes = [first, second],
                Length = bar * (second.End / bar + 1),
            },
            new MidiOptions()
        );

        var text = Convert.ToHexString(file);
        var wait = bytes.Replace(" ", "", StringComparison.Ordinal);
        Assert.Contains($"{wait}9040", text);
    }

    [Fact]
    public void The_table_was_found() => Assert.True(Rows.Count >= 10);
}
