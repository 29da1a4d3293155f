using Fretloom.Neck;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>What string sets have in common that are worked out side by side: which strings there are, and their order by sound.</summary>
/// <param name="Chosen">The strings looked at.</param>
/// <param name="All">All strings of the instrument.</param>
/// <param name="FromLowest">All of them, the lowest-sounding first.</param>
internal sealed record StringLayout(StringSet Chosen, StringSet All, ValueList<int> FromLowest)
{
    public static StringLayout Of(Place place) =>
        new(
            place.Strings.Numbers,
            place.All.Numbers,
            place.All.FromLowest.Select(at => place.All.Numbers.Numbers[at]).ToValueList()
        );

    /// <summary>The strings that a phrase means. Those of another instrument sound the same in every lane.</summary>
    public CompiledStrings Resolve(OtherStrings? other, Code code)
    {
        if (other?.Instrument is { } instrument)
        {
            var strings = OpenStrings.Of(instrument, other.Strings ?? instrument.AllStrings);
            return new CompiledStrings(
                strings.Numbers.Numbers,
                strings.Opens.Select(open => code.Number(open)).ToValueList(),
                strings.FromLowest
            );
        }

        var numbers = (other?.Strings ?? Chosen).Numbers;
        return new CompiledStrings(
            numbers,
            numbers.Select(code.Open).ToValueList(),
            FromLowest.Where(number => numbers.Contains(number)).Select(numbers.IndexOf).ToValueList()
        );
    }
}

/// <summary>Some strings, the farthest first.</summary>
/// <param name="Numbers">Their numbers.</param>
/// <param name="Opens">The register of what each sounds when open.</param>
/// <param name="FromLowest">Their indexes, the lowest-sounding first.</param>
internal sealed record CompiledStrings(ValueList<int> Numbers, ValueList<int> Opens, ValueList<int> FromLowest)
{
    public int Count => Numbers.Count;
}
