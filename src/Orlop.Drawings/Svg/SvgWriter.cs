using System.Globalization;
using System.Text;

namespace Orlop.Drawings.Svg;

/// <summary>Writes well-formed SVG: every text and attribute is escaped, every number is invariant.</summary>
internal sealed class SvgWriter
{
    private readonly StringBuilder _text = new();
    private readonly Stack<string> _open = new();

    /// <summary>The finished drawing; every element must be closed.</summary>
    public override string ToString() => _open.Count == 0
        ? _text.ToString()
        : throw new InvalidOperationException($"<{_open.Peek()}> is not closed.");

    internal SvgWriter Start(string element, params ReadOnlySpan<(string Name, SvgValue Value)> attributes)
    {
        Tag(element, attributes);
        _text.Append('>');
        _open.Push(element);
        return this;
    }

    internal SvgWriter End()
    {
        _text.Append(CultureInfo.InvariantCulture, $"</{_open.Pop()}>");
        return this;
    }

    internal SvgWriter Leaf(string element, params ReadOnlySpan<(string Name, SvgValue Value)> attributes)
    {
        Tag(element, attributes);
        _text.Append("/>");
        return this;
    }

    internal SvgWriter Content(string text)
    {
        Escape(text);
        return this;
    }

    internal SvgWriter Text(double x, double y, string text, string style = "", string anchor = "start", double size = TextSize.Body) =>
        Start("text", ("x", x), ("y", y), ("class", style), ("text-anchor", anchor), ("font-size", size)).Content(text).End();

    internal SvgWriter Line(double x1, double y1, double x2, double y2, string style) =>
        Leaf("line", ("x1", x1), ("y1", y1), ("x2", x2), ("y2", y2), ("class", style));

    internal SvgWriter Rect(Box box, string style) =>
        Leaf("rect", ("x", box.X), ("y", box.Y), ("width", box.Width), ("height", box.Height), ("class", style));

    internal SvgWriter Circle(Spot centre, double radius, string style) =>
        Leaf("circle", ("cx", centre.X), ("cy", centre.Y), ("r", radius), ("class", style));

    internal SvgWriter Path(string data, string style) => Leaf("path", ("d", data), ("class", style));

    internal SvgWriter Polyline(IEnumerable<Spot> spots, string style, bool isClosed = false) =>
        Leaf(isClosed ? "polygon" : "polyline", ("points", Points(spots)), ("class", style));

    /// <summary>All of another finished writer.</summary>
    internal SvgWriter Insert(SvgWriter other)
    {
        _text.Append(other.ToString());
        return this;
    }

    internal SvgWriter Title(string text) => Start("title").Content(text).End();

    /// <summary>An element that stands for a thing: the page reacts to it by <c>data-id</c>, a keyboard reaches it.</summary>
    internal SvgWriter StartThing(string id, string name, bool isInteractive, string style = "")
    {
        if (isInteractive)
        {
            Start("g", ("class", $"thing {style}".TrimEnd()), ("data-id", id), ("role", "button"), ("tabindex", "0"), ("aria-label", name));
        }
        else
        {
            Start("g", ("class", $"thing {style}".TrimEnd()), ("data-id", id));
        }

        return Title(name);
    }

    private static string Points(IEnumerable<Spot> spots) =>
        string.Join(' ', spots.Select(spot => $"{SvgValue.Number(spot.X)},{SvgValue.Number(spot.Y)}"));

    private void Tag(string element, ReadOnlySpan<(string Name, SvgValue Value)> attributes)
    {
        _text.Append('<').Append(element);
        foreach ((string name, SvgValue value) in attributes)
        {
            if (value.Text.Length > 0)
            {
                _text.Append(' ').Append(name).Append("=\"");
                Escape(value.Text);
                _text.Append('"');
            }
        }
    }

    private void Escape(string text)
    {
        foreach (Rune rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '<' => _text.Append("&lt;"),
                '>' => _text.Append("&gt;"),
                '&' => _text.Append("&amp;"),
                '"' => _text.Append("&quot;"),
                '\'' => _text.Append("&#39;"),
                < 0x20 or 0x7F or 0xFFFE or 0xFFFF => _text.Append(' '),
                _ => _text.Append(rune.ToString()),
            };
        }
    }
}
