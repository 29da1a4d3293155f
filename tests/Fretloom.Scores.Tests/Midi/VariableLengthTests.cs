using Fretloom.Testing;
using NAudio.Midi;

namespace Fretloom.Scores.Tests.Midi;

/// <summary>Numbers of MIDI files are written as the table says.</summary>
public class VariableLengthTests
{
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

    [Fact]
    public void The_table_was_found() => Assert.True(Rows.Count >= 10);
}
