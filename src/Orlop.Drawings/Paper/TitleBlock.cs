using System.Globalization;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Paper;

/// <summary>What stands in the corner of a drawing on paper.</summary>
public sealed record TitleBlock
{
    /// <summary>The warning on every paper drawing.</summary>
    public const string Caution = "Check against local rules; not a survey.";

    private const double WidthMm = 120;
    private const double RowMm = 7;

    /// <summary>Name of the boat.</summary>
    public required string Boat { get; init; }

    /// <summary>What is drawn.</summary>
    public required string Drawing { get; init; }

    /// <summary>Day it was drawn.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Revision of the boat it shows.</summary>
    public required string Revision { get; init; }

    /// <summary>The scale in words: "1:50", "not to scale".</summary>
    public required string Scale { get; init; }

    /// <summary>The block as SVG in true size, 120 mm wide.</summary>
    public string Draw(string id)
    {
        (string Name, string Value)[] cells =
        [
            ("Boat", Boat), ("Drawing", Drawing), ("Date", Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), ("Revision", Revision), ("Scale", Scale),
        ];
        double width = WidthMm * DrawingFrame.UnitsPerMm, row = RowMm * DrawingFrame.UnitsPerMm, nameWidth = 70;
        SvgWriter svg = new();
        DrawingFrame.Start(svg, new Frame(id, $"Title block: {Boat}, {Drawing}", string.Join(", ", cells.Select(cell => $"{cell.Name} {cell.Value}")), width, row * (cells.Length + 1), IsTrueSize: true));
        svg.Rect(new Box(0.5, 0.5, width - 1, (row * (cells.Length + 1)) - 1), "house");
        double y = 0;
        foreach ((string name, string value) in cells)
        {
            svg.Text(6, y + (row * 0.66), name, "soft", size: TextSize.Small);
            svg.Text(nameWidth, y + (row * 0.66), TextSize.Fitted(value, TextSize.Body, width - nameWidth - 6), "strong");
            y += row;
            svg.Line(0, y, width, y, "grid");
        }

        svg.Text(6, y + (row * 0.66), Caution, size: TextSize.Small);
        return svg.End().ToString();
    }
}
