using Fretloom.Claims;
using Fretloom.Neck;

namespace Fretloom.Tests.Claims;

/// <summary>A string by its number and what it sounds when open.</summary>
internal readonly record struct SlowString(int Number, int Midi);

/// <summary>A string set.</summary>
/// <param name="Chosen">The strings looked at, far first.</param>
/// <param name="All">All strings of the instrument, far first.</param>
/// <param name="Instrument">The instrument; null for a mere tuning.</param>
internal sealed record SlowPlace(List<SlowString> Chosen, List<SlowString> All, Instrument? Instrument = null)
{
    // As the list of string sets stands in docs/claims.md.
    private const string Listed =
        "guitar 6-1, guitar 4-1, guitar 5-2, guitar 6-3, guitar in fourths 6-1, guitar in fourths 4-1, drop D guitar 6-1, "
        + "drop D guitar 6-3, DADGAD guitar 6-1, DADGAD guitar 4-1, open G guitar 6-1, open G guitar 5-2, low-G ukulele 4-1, "
        + "re-entrant ukulele 4-1, baritone ukulele 4-1, bass 4-1, five-string bass 5-1, mandolin 4-1, banjo 5-1, banjo 4-1";

    public static IEnumerable<SlowPlace> Of(PlaceScope scope) =>
        scope switch
        {
            PlaceScope.On on => [Of(on.Instrument, on.Strings)],
            PlaceScope.Listed listed => AllListed()
                .Where(place => !listed.IsPalindromic || place.IsPalindromic)
                .Where(place => !listed.IsFourString || place.Chosen.Count == 4),
            PlaceScope.Tunings tunings => Tuned(tunings, [new SlowString(tunings.Strings, 40)])
                .Where(place => !tunings.IsPalindromic || place.IsPalindromic),
            _ => throw new ArgumentOutOfRangeException(nameof(scope)),
        };

    /// <summary>The strings that a phrase means; null when they are not there.</summary>
    public List<SlowString>? Resolve(OtherStrings? other)
    {
        if (other is null)
        {
            return Chosen;
        }

        var from = other.Instrument is { } instrument ? Of(instrument, null).Chosen : Chosen;
        var numbers = other.Strings?.Numbers ?? from.Select(s => s.Number).ToValueList();
        var found = from.Where(s => numbers.Contains(s.Number)).ToList();
        return found.Count == numbers.Count ? found : null;
    }

    public SlowString String(int number) => All.Single(s => s.Number == number);

    private bool IsPalindromic
    {
        get
        {
            var steps = Chosen.Zip(Chosen.Skip(1), (far, near) => near.Midi - far.Midi).ToList();
            return steps.SequenceEqual(Enumerable.Reverse(steps));
        }
    }

    private static SlowPlace Of(Instrument instrument, StringSet? strings)
    {
        var all = instrument
            .Strings.Select((course, at) => new SlowString(at + 1, course.Open.MidiNumber))
            .Reverse()
            .ToList();
        return new SlowPlace(
            all.Where(s => strings is null || strings.Value.Numbers.Contains(s.Number)).ToList(),
            all,
            instrument
        );
    }

    private static IEnumerable<SlowPlace> AllListed() =>
        Listed
            .Split(", ")
            .Select(name =>
            {
                var space = name.LastIndexOf(' ');
                Assert.True(Catalogue.TryFind(name[..space], out var instrument));
                return Of(instrument, StringSet.Parse(name[(space + 1)..]));
            });

    private static IEnumerable<SlowPlace> Tuned(PlaceScope.Tunings tunings, List<SlowString> far)
    {
        if (far.Count == tunings.Strings)
        {
            return [new SlowPlace(far, far)];
        }

        return Enumerable
            .Range(tunings.Least, tunings.Most - tunings.Least + 1)
            .SelectMany(step => Tuned(tunings, [.. far, new SlowString(far[^1].Number - 1, far[^1].Midi + step)]));
    }
}
