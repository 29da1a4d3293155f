using System.Globalization;
using System.Xml;

namespace Fretloom.Scores;

/// <summary>Writes elements one inside the other.</summary>
internal sealed class Elements(XmlWriter writer)
{
    private const string XmlId = "xml:id";

    /// <summary>An element with what <paramref name="inside"/> writes.</summary>
    public void Within(string name, Action inside, params ReadOnlySpan<(string Name, object? Value)> attributes)
    {
        Open(name, attributes);
        inside();
        writer.WriteEndElement();
    }

    /// <summary>An element with a text.</summary>
    public void Leaf(string name, object value, params ReadOnlySpan<(string Name, object? Value)> attributes)
    {
        Open(name, attributes);
        writer.WriteString(Text(value));
        writer.WriteEndElement();
    }

    /// <summary>An element with nothing in it.</summary>
    public void Empty(string name, params ReadOnlySpan<(string Name, object? Value)> attributes)
    {
        Open(name, attributes);
        writer.WriteEndElement();
    }

    // An attribute of null is left out.
    private void Open(string name, ReadOnlySpan<(string Name, object? Value)> attributes)
    {
        writer.WriteStartElement(name);
        foreach (var (key, value) in attributes)
        {
            if (value is not null)
            {
                writer.WriteAttributeString(
                    key == XmlId ? "xml" : null,
                    key[(key.IndexOf(':', StringComparison.Ordinal) + 1)..],
                    null,
                    Text(value)
                );
            }
        }
    }

    private static string Text(object value) => Convert.ToString(value, CultureInfo.InvariantCulture)!;
}
