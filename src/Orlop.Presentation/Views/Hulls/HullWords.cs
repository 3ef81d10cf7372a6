using System.Globalization;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>A hull's lines in plain words.</summary>
public static class HullWords
{
    private const double SmallM = 0.001;

    /// <summary>"18 mm outside": short enough for a drawing.</summary>
    public static string Off(FormDoubt doubt, DisplayUnits units, CultureInfo culture) =>
        $"{Small(doubt.OffM, units, culture)} {Way(doubt)}";

    /// <summary>"Point 3 of station 5 is 18 mm outside a fair line through its neighbours along the boat."</summary>
    public static string Doubt(FormDoubt doubt, DisplayUnits units, CultureInfo culture) =>
        $"Point {doubt.PointNumber} of {(doubt.IsStarboard ? "starboard " : "")}{doubt.SectionId} is {Off(doubt, units, culture)} a fair line through its neighbours {(doubt.Run == FormRun.AlongTheBoat ? "along the boat" : "on its own station")}.";

    /// <summary>Where a fair line would have it.</summary>
    public static string Fair(FormDoubt doubt, DisplayUnits units, CultureInfo culture) =>
        $"Fair there: half-breadth {HullCell.Text(doubt.ExpectedHalfBreadthM, units, culture)}, height {HullCell.Text(doubt.ExpectedHeightM, units, culture)}.";

    private static string Way(FormDoubt doubt) => Math.Abs(doubt.OutwardM) <= SmallM ? "off" : doubt.OutwardM > 0 ? "outside" : "inside";

    private static string Small(double m, DisplayUnits units, CultureInfo culture) => units == DisplayUnits.Metric
        ? $"{Math.Round(m * 1000).ToString(culture)} mm"
        : QuantityText.Format(m, "M", units, culture);
}
