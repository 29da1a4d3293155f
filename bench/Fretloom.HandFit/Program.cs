using System.Globalization;
using Fretloom;
using Fretloom.Hand;
using Fretloom.Hand.Chords;
using Fretloom.HandFit;
using Fretloom.Neck;
using Fretloom.Testing;

// Fits the weights of ChordWeights to the tuning half of the published fingerings, prints them in the form of that table, and
// says how well the weights that stand in the table agree with each part. With --cross-validate it compares forces first.
const double Ridge = 0.1;
const double Tie = 0.3;
string[] instruments = ["guitar", "ukulele"];

var tuning = instruments
    .SelectMany(
        (name, column) =>
            PublishedFingerings
                .Of(name)
                .Where(shape => shape.Part == FingeringPart.Tuning)
                .Select(shape =>
                    Choice.Of(new Player(Catalogue.All.First(instrument => instrument.Name == name)), shape, column)
                )
    )
    .ToList();

if (args.Contains("--cross-validate"))
{
    foreach (var ridge in new[] { 0.1, 0.3 })
    {
        foreach (var tie in new[] { 0.1, 0.3, 1, 3 })
        {
            Write($"ridge {ridge}, tie {tie}: surprise {CrossValidation.Surprise(tuning, ridge, tie):0.0000}");
        }
    }
}

var weights = new ConditionalLogit(tuning, Ridge, Tie).Fit();
foreach (var weight in ChordWeights.Table.Where(weight => weight.Origin == ChordWeights.Fitted))
{
    var (longNeck, shortNeck) = (weights[(int)weight.Term], weights[Choice.Terms + (int)weight.Term]);
    Write($"new(ChordTerm.{weight.Term}, \"{weight.Unit}\", {longNeck:0.00}, {shortNeck:0.00}, Fitted),");
}

(string Name, Func<PublishedFingering, bool> Which)[] parts =
[
    ("tuning", shape => shape.Part == FingeringPart.Tuning),
    ("held out", shape => shape.Part != FingeringPart.Tuning),
    ("new", shape => shape.Part == FingeringPart.New),
];
foreach (var instrument in instruments)
{
    foreach (var (name, which) in parts)
    {
        Write($"{instrument}, {name}: {Agreement.OfModel(instrument, which)}");
        Write($"{instrument}, {name}, a fret for a finger: {Agreement.Of(instrument, which, NaiveFingering.Best)}");
    }
}

static void Write(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
