using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Tests;

/// <summary>Reads a drawing back.</summary>
internal static class DrawnText
{
    internal static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    internal static XElement Parse(string svg) => XDocument.Parse(svg).Root!;

    internal static double Number(this XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);

    internal static IReadOnlyList<string> Ids(this XElement drawing) =>
        [.. drawing.Descendants().Select(element => (string?)element.Attribute("data-id")).OfType<string>().Distinct()];

    /// <summary>The room of a text by the widths of a broad sans-serif, cut to the height of its letters.</summary>
    internal static Box RoomOf(XElement text)
    {
        double size = text.Number("font-size"), width = TextSize.Width(text.Value, size), x = text.Number("x");
        double left = (string?)text.Attribute("text-anchor") switch { "middle" => x - (width / 2), "end" => x - width, _ => x };
        return new(left, text.Number("y") - (size * 0.76), width, size * 0.96);
    }

    /// <summary>Texts that reach beyond the sheet.</summary>
    internal static IReadOnlyList<string> OffTheSheet(XElement drawing)
    {
        string[] sheet = ((string)drawing.Attribute("viewBox")!).Split(' ');
        Box room = new(0, 0, double.Parse(sheet[2], CultureInfo.InvariantCulture), double.Parse(sheet[3], CultureInfo.InvariantCulture));
        return [.. drawing.Descendants(Svg + "text").Where(text => !room.Contains(RoomOf(text))).Select(text => text.Value)];
    }

    /// <summary>Things whose accessible name leaves out a text drawn in them. WCAG 2.2, 2.5.3: the name contains the text that is shown.</summary>
    internal static IReadOnlyList<string> NamesWithoutTheirText(XElement drawing) =>
        [.. from thing in drawing.Descendants(Svg + "g").Where(element => element.Attribute("aria-label") is not null)
            let name = Words((string)thing.Attribute("aria-label")!)
            let shown = Words(string.Join(' ', thing.Descendants(Svg + "text").Where(text => (string?)text.Attribute("aria-hidden") != "true").Select(text => text.Value.TrimEnd('…'))))
            where !name.Contains(shown, StringComparison.Ordinal)
            select $"{shown} / {name}"];

    private static string Words(string text) =>
        string.Join(' ', new string([.. text.Where(letter => !char.IsPunctuation(letter))]).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    internal static IReadOnlyList<string> Overlaps(IEnumerable<XElement> texts)
    {
        (string Text, Box Room)[] rooms = [.. texts.Where(text => text.Value.Length > 0).Select(text => (text.Value, RoomOf(text)))];
        return [.. from one in Enumerable.Range(0, rooms.Length)
                   from other in Enumerable.Range(one + 1, rooms.Length - one - 1)
                   where rooms[one].Room.Overlaps(rooms[other].Room)
                   select $"{rooms[one].Text} / {rooms[other].Text}"];
    }
}
