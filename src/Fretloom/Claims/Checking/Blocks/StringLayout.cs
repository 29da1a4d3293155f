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

    /// <summary>The strings that a phrase means; those of the instrument itself.</summary>
    public ValueList<int> Resolve(OtherStrings? other) => (other?.Strings ?? Chosen).Numbers;

    /// <summary>Some strings, the lowest-sounding first.</summary>
    public IEnumerable<int> Sorted(ValueList<int> numbers) => FromLowest.Where(number => numbers.Contains(number));
}
