namespace Fretloom.Pages.Scene;

/// <summary>Something drawn. Coordinates and sizes are points (1/72 inch), x to the right, y downward.</summary>
public abstract record Node
{
    private Node() { }

    /// <summary>The same, moved or mirrored.</summary>
    public abstract Node Placed(Placement placement);

    /// <summary>Things that belong together.</summary>
    /// <param name="Name">What they are, for whoever reads the file: <c>strings</c>, <c>marks</c>.</param>
    /// <param name="Children">In the order they are drawn.</param>
    public sealed record Group(string Name, ValueList<Node> Children) : Node
    {
        /// <summary>Every node in it that is not a group, in the order drawn.</summary>
        public IEnumerable<Node> Leaves => Children.SelectMany(child => child is Group group ? group.Leaves : [child]);

        /// <inheritdoc/>
        public override Node Placed(Placement placement) =>
            this with
            {
                Children = Children.Select(child => child.Placed(placement)).ToValueList(),
            };
    }

    /// <summary>A straight line.</summary>
    public sealed record Line(double X1, double Y1, double X2, double Y2, Stroke Stroke) : Node
    {
        /// <inheritdoc/>
        public override Node Placed(Placement placement) =>
            new Line(placement.X(X1), placement.Y(Y1), placement.X(X2), placement.Y(Y2), Stroke);
    }

    /// <summary>A circle around (<paramref name="X"/>, <paramref name="Y"/>).</summary>
    public sealed record Circle(double X, double Y, double Radius, Tone Fill, Stroke? Stroke = null) : Node
    {
        /// <inheritdoc/>
        public override Node Placed(Placement placement) => this with { X = placement.X(X), Y = placement.Y(Y) };
    }

    /// <summary>An upright rectangle with its corner nearest the origin at (<paramref name="X"/>, <paramref name="Y"/>).</summary>
    public sealed record Rect(
        double X,
        double Y,
        double Width,
        double Height,
        Tone Fill,
        Stroke? Stroke = null,
        double Corner = 0
    ) : Node
    {
        /// <inheritdoc/>
        public override Node Placed(Placement placement) =>
            this with
            {
                X = placement.IsMirrored ? placement.X(X + Width) : placement.X(X),
                Y = placement.Y(Y),
            };
    }

    /// <summary>An outline of lines and arcs.</summary>
    public sealed record Path(ValueList<PathStep> Steps, Tone Fill, Stroke? Stroke = null) : Node
    {
        /// <inheritdoc/>
        public override Node Placed(Placement placement) =>
            this with
            {
                Steps = Steps.Select(step => step.Placed(placement)).ToValueList(),
            };
    }

    /// <summary>A line of writing; (<paramref name="X"/>, <paramref name="Y"/>) is on its baseline.</summary>
    /// <param name="X">Where the anchor is.</param>
    /// <param name="Y">The baseline.</param>
    /// <param name="Text">What it says, with Unicode accidentals.</param>
    /// <param name="Style">Face and size.</param>
    /// <param name="Tone">What it is for.</param>
    /// <param name="Anchor">Which part of the text stands at x.</param>
    public sealed record Label(double X, double Y, string Text, TextStyle Style, Tone Tone, Anchor Anchor) : Node
    {
        /// <summary>Where the writing begins.</summary>
        public double Left =>
            Anchor switch
            {
                Anchor.Start => X,
                Anchor.Middle => X - Style.WidthOf(Text) / 2,
                _ => X - Style.WidthOf(Text),
            };

        /// <summary>Where it ends.</summary>
        public double Right => Left + Style.WidthOf(Text);

        /// <inheritdoc/>
        public override Node Placed(Placement placement) =>
            this with
            {
                X = placement.X(X),
                Y = placement.Y(Y),
                Anchor = placement.IsMirrored ? Mirrored(Anchor) : Anchor,
            };

        private static Anchor Mirrored(Anchor anchor) =>
            anchor switch
            {
                Anchor.Start => Anchor.End,
                Anchor.End => Anchor.Start,
                _ => anchor,
            };
    }
}
