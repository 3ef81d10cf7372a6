using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Tests.Circuits;

/// <summary>Reads a sheet of a one-line diagram back: words, symbols and lines where they stand on the paper.</summary>
internal sealed partial class SheetReader
{
    private readonly XElement _drawing;

    internal SheetReader(string svg)
    {
        _drawing = DrawnText.Parse(svg);
        Texts = [.. _drawing.Descendants(DrawnText.Svg + "text").Where(text => text.Value.Length > 0).Select(Placed)];
        Symbols = [.. _drawing.Descendants(DrawnText.Svg + "g").Where(group => (string?)group.Attribute("class") == "symbol").Select(Symbol)];
        Lines =
        [
            .. _drawing.Descendants(DrawnText.Svg + "polyline").Where(IsConductor).SelectMany(line => Segment.Along(Spots(line))),
            .. _drawing.Descendants(DrawnText.Svg + "line").Where(IsConductor).Select(line => new Segment(new(line.Number("x1"), line.Number("y1")), new(line.Number("x2"), line.Number("y2")))),
        ];
    }

    internal XElement Drawing => _drawing;

    internal IReadOnlyList<(string Words, Box Room, double Size, XElement Element)> Texts { get; }

    /// <summary>The part that each symbol stands for, and its room.</summary>
    internal IReadOnlyList<(string Id, Box Room)> Symbols { get; }

    /// <summary>Conductors and bars.</summary>
    internal IReadOnlyList<Segment> Lines { get; }

    internal IEnumerable<string> Overlaps() =>
        from one in Enumerable.Range(0, Texts.Count)
        from other in Enumerable.Range(one + 1, Texts.Count - one - 1)
        where Texts[one].Room.Overlaps(Texts[other].Room)
        select $"{Texts[one].Words} / {Texts[other].Words}";

    internal IEnumerable<string> OffTheSheet()
    {
        double[] sheet = [.. ((string)_drawing.Attribute("viewBox")!).Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
        Box room = new(sheet[0], sheet[1], sheet[2], sheet[3]);
        return Texts.Where(text => !room.Contains(text.Room)).Select(text => text.Words);
    }

    internal IEnumerable<string> CrossedSymbols() => Symbols.Where(symbol => Lines.Any(line => line.Crosses(symbol.Room.Grown(-1)))).Select(symbol => symbol.Id);

    internal IEnumerable<string> CrossedWords() => Texts.Where(text => Lines.Any(line => line.Crosses(text.Room.Grown(-0.5)))).Select(text => text.Words);

    /// <summary>Zone of a spot by the letters and numbers drawn along the frame.</summary>
    internal string ZoneOf(Spot spot)
    {
        (string Words, Box Room, double Size, XElement Element)[] zones = [.. Texts.Where(text => (string?)text.Element.Attribute("class") == "zone")];
        string down = zones.Where(zone => char.IsLetter(zone.Words[0])).MinBy(zone => Math.Abs(zone.Room.Centre.Y - spot.Y)).Words;
        string across = zones.Where(zone => char.IsDigit(zone.Words[0])).MinBy(zone => Math.Abs(zone.Room.Centre.X - spot.X)).Words;
        return down + across;
    }

    /// <summary>Sheets and zones that words name.</summary>
    internal static IEnumerable<(int Sheet, string Zone)> Named(string words) =>
        Reference().Matches(words).Select(match => (int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), match.Groups[2].Value));

    private static bool IsConductor(XElement line) => ((string?)line.Attribute("class"))?.Split(' ') is [var first, ..] && first is "run" or "bar" && line.Ancestors().All(above => (string?)above.Attribute("class") != "symbol");

    private static (string Words, Box Room, double Size, XElement Element) Placed(XElement text)
    {
        (double x, double y, double scale) = Frame(text);
        Box room = DrawnText.RoomOf(text);
        return (text.Value, new Box(x + (room.X * scale), y + (room.Y * scale), room.Width * scale, room.Height * scale), text.Number("font-size") * scale, text);
    }

    // A symbol is 28 units wide and 22 high in its own frame, or the other way round where it is entered from above.
    private static (string Id, Box Room) Symbol(XElement group)
    {
        (double x, double y, double scale) = Frame(group);
        bool isTurned = group.Elements(DrawnText.Svg + "g").Any(inner => ((string?)inner.Attribute("transform"))?.StartsWith("rotate", StringComparison.Ordinal) == true);
        return ((string)group.Ancestors().First(above => above.Attribute("data-id") is not null).Attribute("data-id")!, Box.Around(new Spot(x, y), (isTurned ? 22 : 28) * scale, (isTurned ? 28 : 22) * scale));
    }

    private static (double X, double Y, double Scale) Frame(XElement element)
    {
        XElement? frame = element.AncestorsAndSelf().FirstOrDefault(above => (string?)above.Attribute("class") == "symbol");
        if (frame is null)
        {
            return (0, 0, 1);
        }

        double[] numbers = [.. Number().Matches((string)frame.Attribute("transform")!).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];
        return (numbers[0], numbers[1], numbers[2]);
    }

    private static Spot[] Spots(XElement line) =>
        [.. ((string)line.Attribute("points")!).Split(' ').Select(pair => pair.Split(',')).Select(pair => new Spot(double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture)))];

    [GeneratedRegex(@"sheet\u00A0(\d+),\u00A0([A-Z]\d+)")]
    private static partial Regex Reference();

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
