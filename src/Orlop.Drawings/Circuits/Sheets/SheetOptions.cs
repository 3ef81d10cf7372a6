using System.Globalization;
using Orlop.Drawings.Paper;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Circuits.Sheets;

/// <summary>What the sheets of a one-line diagram are printed on, and what their foot says.</summary>
public sealed record SheetOptions
{
    /// <summary>The paper, used on its side.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>What the foot says after the boat's name: state, day, revision.</summary>
    public string About { get; init; } = "";

    /// <summary>Units of the labels.</summary>
    public DisplayUnits Units { get; init; } = DisplayUnits.Metric;

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;
}
