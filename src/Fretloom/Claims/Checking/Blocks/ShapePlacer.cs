namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes where shapes lie; see <see cref="PlacedShape"/>.</summary>
internal sealed class ShapePlacer(Code code, NeckCompiler neck)
{
    /// <summary>A multiple of twelve that keeps frets from being negative; the highest open string sounds below it.</summary>
    private const int Octaves = 144;

    private readonly Logic _logic = new(code);

    /// <summary>Frets covered, inclusively.</summary>
    public int Span(CompiledShape shape) =>
        code.WithNumber(Op.Add, code.Binary(Op.Subtract, Highest(shape), Lowest(shape)), 1);

    /// <summary>Whether it lies anywhere in the window; null on the endless neck, where every shape does.</summary>
    public int? IsSeen(CompiledShape shape) =>
        neck.Window is not { } window ? null
        : shape.HasPlace ? neck.IsAny(Ends(shape, ShapeEnd.First))
        : _logic.Not(code.WithNumber(Op.IsAbove, Span(shape), window.Count));

    /// <summary>One of its frets at each place where it lies.</summary>
    public FretBits Ends(CompiledShape shape, ShapeEnd end) =>
        end switch
        {
            ShapeEnd.Root => Of(shape, shape.RootAt),
            ShapeEnd.First => At(shape, Lowest(shape)),
            _ => At(shape, Highest(shape)),
        };

    /// <summary>The fret of one of its strings at each place where it lies.</summary>
    public FretBits Of(CompiledShape shape, int at) => At(shape, Fret(shape, at));

    private FretBits At(CompiledShape shape, int fret)
    {
        var inOctave = code.LookUp(code.Unary(Op.ModuloTwelve, fret), (_, number) => 1 << number);
        if (neck.Window is not { } window)
        {
            return neck.Seen(inOctave);
        }

        // The lowest fret must not lie below the window, nor the highest above it.
        var below = code.Binary(Op.Subtract, fret, Lowest(shape));
        var above = code.Binary(Op.Subtract, Highest(shape), fret);
        var places = new FretBits();
        foreach (var octave in neck.Octaves)
        {
            var isHighEnough = code.LookUp(
                UpToTwelve(below, window.First - 12 * octave),
                (_, frets) => Twelve.All << frets & Twelve.All
            );
            var isLowEnough = code.LookUp(
                UpToTwelve(above, 12 * octave + 11 - window.Last),
                (_, frets) => Twelve.All >> frets
            );
            places.Add(
                new Octave(octave, IsHalf: false),
                code.Binary(Op.And, inOctave, code.Binary(Op.And, isHighEnough, isLowEnough)),
                code
            );
        }

        return places;
    }

    /// <summary>A number with another added, not less than 0 nor more than 12.</summary>
    private int UpToTwelve(int register, int added) =>
        code.Binary(
            Op.Least,
            added >= 0
                ? code.WithNumber(Op.Add, register, added)
                : code.WithNumber(Op.Add, code.Binary(Op.Most, register, code.Number(-added)), added),
            code.Number(12)
        );

    private int Lowest(CompiledShape shape) => Extreme(shape, Op.Least);

    private int Highest(CompiledShape shape) => Extreme(shape, Op.Most);

    private int Extreme(CompiledShape shape, Op op) =>
        Enumerable
            .Range(0, shape.Strings.Count)
            .Select(at => Fret(shape, at))
            .Aggregate((all, fret) => code.Binary(op, all, fret));

    private int Fret(CompiledShape shape, int at) =>
        code.WithNumber(Op.SubtractFrom, shape.Strings.Opens[at], key => shape.Notes[at][key] + Octaves);
}
