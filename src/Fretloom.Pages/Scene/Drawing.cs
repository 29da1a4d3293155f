namespace Fretloom.Pages.Scene;

/// <summary>A finished layout: what is drawn where, without colours and without a file format.</summary>
/// <param name="Width">Points. Place the drawing at this width and no type is smaller than <see cref="TextStyle.SmallestSize"/>.</param>
/// <param name="Height">Points.</param>
/// <param name="Title">A few words.</param>
/// <param name="Description">What the drawing says, in plain sentences, for those who do not see it.</param>
/// <param name="Nodes">In the order they are drawn.</param>
public sealed record Drawing(double Width, double Height, string Title, string Description, ValueList<Node> Nodes)
{
    /// <summary>Every node that is not a group, in the order drawn.</summary>
    public IEnumerable<Node> Leaves => Nodes.SelectMany(node => node is Node.Group group ? group.Leaves : [node]);
}
