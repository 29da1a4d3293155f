using Fretloom.Exhibits;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>Brackets below a row of cards that tie those which are images of one another.</summary>
internal sealed record CardTies(
    ValueList<Node> Nodes,
    double Height,
    ValueList<LegendItem> Legend,
    ValueList<string> Sentences
)
{
    private const double LevelHeight = 19;
    private const double Corner = 5;

    private sealed record Tie(string Motion, ValueList<int> Cards);

    private sealed record Motion(string Name, Func<double, double, Node> Emblem, Func<Shape, Shape, bool> IsTrue);

    private static readonly Motion[] Motions =
    [
        new("half-turn", Emblem.HalfTurn, (one, other) => one.IsHalfTurnOf(other)),
        new("mirror", Emblem.Mirror, (one, other) => one.IsMirrorOf(other)),
        new("same form", Emblem.SameForm, (one, other) => one.HasTheSameFormAs(other)),
    ];

    /// <summary>The ties of a row, from 0 downward; empty unless the exhibit tells of symmetries.</summary>
    public static CardTies Draw(Exhibit exhibit, IReadOnlyList<Shape> row, CardLayout layout)
    {
        var ties = Motions
            .SelectMany(motion => TiesOf(exhibit, row, motion))
            .OrderBy(tie => tie.Cards[^1] - tie.Cards[0])
            .ToList();
        var levels = Levels(ties);
        var nodes = ties.Select<Tie, Node>((tie, at) => Bracket(tie, row, layout, LevelY(at)))
            .Concat(ties.Select((tie, at) => Sign(tie, layout, LevelY(at))));
        return new CardTies(
            ties.Count == 0 ? [] : [new Node.Group("ties", nodes.ToValueList())],
            ties.Count == 0 ? 0 : (levels.Max() + 1) * LevelHeight + 6,
            Motions
                .Where(motion => ties.Exists(tie => tie.Motion == motion.Name))
                .Select(motion => new LegendItem(motion.Emblem, Emblem.HalfTurnWidth, Meaning(motion.Name)))
                .ToValueList(),
            ties.Select(tie => Sentence(tie, row)).ToValueList()
        );

        double LevelY(int at) => (levels[at] + 0.5) * LevelHeight + 4;
    }

    /// <summary>Ties between cards of different rows, in words beside the sign of their motion; empty unless the exhibit tells of symmetries.</summary>
    public static IEnumerable<LegendItem> Across(Exhibit exhibit, IReadOnlyList<Shape[]> rows)
    {
        var all = rows.SelectMany(row => row).ToList();
        var rowOf = rows.SelectMany((row, at) => row.Select(_ => at)).ToList();
        return from motion in Motions
            from tie in TiesOf(exhibit, all, motion)
            let names = tie.Cards.Select(card => CardHeading.LargeText(all[card])).Distinct().ToList()
            where rowOf[tie.Cards[0]] != rowOf[tie.Cards[^1]] && names.Count > 1
            select new LegendItem(
                motion.Emblem,
                Emblem.HalfTurnWidth,
                $"{Wording.List(names)} are {Meaning(motion.Name)}"
            );
    }

    /// <summary>The pairs of one motion, those that share a card joined to one tie; the cards' own forms must agree.</summary>
    private static IEnumerable<Tie> TiesOf(Exhibit exhibit, IReadOnlyList<Shape> row, Motion motion)
    {
        var groups = new List<SortedSet<int>>();
        foreach (var pair in (exhibit.Symmetries?.Pairs ?? []).Where(pair => pair.Motion == motion.Name))
        {
            var cards = CardsOf(pair, row, motion);
            if (cards.Count == 0)
            {
                continue;
            }

            var touched = groups.Where(group => group.Overlaps(cards)).ToList();
            cards.UnionWith(touched.SelectMany(group => group));
            groups.RemoveAll(touched.Contains);
            groups.Add(cards);
        }

        return groups.Select(group => new Tie(motion.Name, group.ToValueList()));
    }

    private static SortedSet<int> CardsOf(ShapePair pair, IReadOnlyList<Shape> row, Motion motion)
    {
        var cards = new SortedSet<int>();
        for (var a = 0; a < row.Count; a++)
        {
            for (var b = a; b < row.Count; b++)
            {
                var isPair =
                    IsFor(row[a], pair.A) && IsFor(row[b], pair.B) || IsFor(row[a], pair.B) && IsFor(row[b], pair.A);
                var isItself = pair.A == pair.B && a != b;
                if (isPair && !isItself && motion.IsTrue(row[a], row[b]))
                {
                    cards.Add(a);
                    cards.Add(b);
                }
            }
        }

        return cards;

        bool IsFor(Shape shape, string numeral) =>
            shape.Strings == pair.Strings && (shape.Source as ShapeSource.OfChord)?.Roman?.ToString() == numeral;
    }

    /// <summary>For each tie the nearest level at which it meets no other.</summary>
    private static List<int> Levels(List<Tie> ties)
    {
        var levels = new List<int>();
        foreach (var tie in ties)
        {
            var level = 0;
            while (ties.Take(levels.Count).Where((_, at) => levels[at] == level).Any(other => Meet(tie, other)))
            {
                level++;
            }

            levels.Add(level);
        }

        return levels;
    }

    private static bool Meet(Tie one, Tie other) => one.Cards[0] <= other.Cards[^1] && other.Cards[0] <= one.Cards[^1];

    private static Node.Group Bracket(Tie tie, IReadOnlyList<Shape> row, CardLayout layout, double y)
    {
        var line = new Stroke(Tone.Ink, 0.9);
        var xs = tie.Cards.Select(card => X(tie, card, layout)).ToList();
        var nodes = new List<Node>();
        if (xs.Count == 1)
        {
            nodes.Add(new Node.Line(xs[0], 0, xs[0], y, line));
        }
        else
        {
            nodes.Add(
                new Node.Path(
                    [
                        PathStep.MoveTo(xs[0], 0),
                        PathStep.LineTo(xs[0], y - Corner),
                        PathStep.ArcTo(xs[0] + Corner, y, Corner, false),
                        PathStep.LineTo(xs[^1] - Corner, y),
                        PathStep.ArcTo(xs[^1], y - Corner, Corner, false),
                        PathStep.LineTo(xs[^1], 0),
                    ],
                    Tone.None,
                    line
                )
            );
            nodes.AddRange(xs[1..^1].Select(x => new Node.Line(x, 0, x, y, line)));
            nodes.AddRange(xs[1..^1].Select(x => new Node.Circle(x, y, 1.5, Tone.Ink)));
        }

        return new Node.Group($"{tie.Motion}: {Names(tie, row)}", nodes.ToValueList());
    }

    /// <summary>The sign of the motion, on the bracket half-way between two cards, where no other leg passes.</summary>
    private static Node Sign(Tie tie, CardLayout layout, double y)
    {
        var (first, last) = (tie.Cards[0], tie.Cards[^1]);
        var place = first == last ? first : Math.Floor((first + last - 1) / 2.0) + 0.5;
        return Array.Find(Motions, motion => motion.Name == tie.Motion)!.Emblem(X(tie, place, layout), y);
    }

    private static double X(Tie tie, double card, CardLayout layout) =>
        CardLayout.NumbersWidth + (card + 0.5) * layout.CardWidth + Aside(tie);

    /// <summary>Legs of different motions stand side by side below a card.</summary>
    private static double Aside(Tie tie) =>
        tie.Motion switch
        {
            "half-turn" => 0,
            "mirror" => -9,
            _ => 9,
        };

    private static string Meaning(string motion) =>
        motion switch
        {
            "half-turn" => "half-turns of each other",
            "mirror" => "mirrors of each other",
            _ => "of the same form",
        };

    private static string Names(Tie tie, IReadOnlyList<Shape> row) =>
        Wording.List(tie.Cards.Select(card => CardHeading.LargeText(row[card])));

    private static string Sentence(Tie tie, IReadOnlyList<Shape> row) =>
        tie.Cards.Count == 1
            ? $"{Names(tie, row)} is its own {tie.Motion}."
            : $"{Names(tie, row)} are {Meaning(tie.Motion)}.";
}
