using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace Orlop.Work.Paper;

/// <summary>Writes HTML: every text is escaped, every element closed.</summary>
internal sealed partial class HtmlText
{
    private readonly StringBuilder _text = new();
    private readonly Stack<string> _open = new();

    /// <summary>Opens an element; its attributes' values are escaped.</summary>
    public HtmlText Open(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Tag(element, attributes);
        _open.Push(element);
        return this;
    }

    /// <summary>Closes the innermost element.</summary>
    public HtmlText Close()
    {
        _text.Append(CultureInfo.InvariantCulture, $"</{_open.Pop()}>");
        if (_open.Count < 4)
        {
            _text.Append('\n');
        }

        return this;
    }

    /// <summary>An element with text in it.</summary>
    public HtmlText Put(string element, string text, params ReadOnlySpan<(string Name, string Value)> attributes) => Open(element, attributes).Text(text).Close();

    /// <summary>An element that holds nothing and has no end tag.</summary>
    public HtmlText Void(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Tag(element, attributes);
        return this;
    }

    /// <summary>Text; a number is not parted from its unit at a line's end.</summary>
    public HtmlText Text(string text)
    {
        _text.Append(WebUtility.HtmlEncode(BeforeUnit().Replace(text, "\u00a0")));
        return this;
    }

    /// <summary>Markup that another writer has made and escaped.</summary>
    public HtmlText Markup(string markup)
    {
        _text.Append(markup);
        return this;
    }

    /// <summary>The finished page; every element must be closed.</summary>
    public override string ToString() => _open.Count == 0
        ? _text.ToString()
        : throw new InvalidOperationException($"<{_open.Peek()}> is not closed.");

    [GeneratedRegex(@"(?<=^|\d) (?=(?:[kmµ]?[ΩVAWN]|N·m|mm|cm|m|kg|g|Ah|Wh|kWh|°C|°F|lb|lbf|ft|AWG|h|min|s|%)(?![\w·]))")]
    private static partial Regex BeforeUnit();

    private void Tag(string element, ReadOnlySpan<(string Name, string Value)> attributes)
    {
        _text.Append('<').Append(element);
        foreach ((string name, string value) in attributes)
        {
            _text.Append(CultureInfo.InvariantCulture, $" {name}=\"{WebUtility.HtmlEncode(value)}\"");
        }

        _text.Append('>');
    }
}
