using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>A hull's lines in plain words.</summary>
public static class HullWords
{
    private const double SmallM = 0.001;

    /// <summary>"10 of 11 stations are the form's, not measured: …", a whole sentence wherever her numbers stand; null where all are measured, or nothing is told.</summary>
    public static string? NotMeasured(HullLines? lines) => UnmeasuredStations.Of(lines) is { } said ? $"{said}: how she floats and stands up is told of that hull, and is hers only so far as she is like it." : null;

    /// <summary>Where a station's points are from: "the form's".</summary>
    public static string Of(StationOrigin? origin) => origin switch
    {
        StationOrigin.Form => "the form's",
        StationOrigin.Between => "laid between others",
        StationOrigin.Measured => "measured",
        _ => "not told",
    };

    /// <summary>How a station becomes a measured one; null where it is, or where it is not told.</summary>
    public static string? HowToMeasure(StationOrigin? origin) => origin is StationOrigin.Form or StationOrigin.Between
        ? $"A point that is typed or moved leaves the station {Of(origin)}: once every point of it is measured on the boat or read off her lines, say so." : null;

    /// <summary>"18 mm wide, 5 mm high": short enough for a drawing.</summary>
    public static string Off(FormDoubt doubt, DisplayUnits units, CultureInfo culture) => Off(doubt, ("wide", "inboard", "high", "low", "off"), units, culture);

    /// <summary>"18 mm wide of, 5 mm above a fair line": as a tape finds it, across and up.</summary>
    public static string OffLine(FormDoubt doubt, DisplayUnits units, CultureInfo culture) => $"{Off(doubt, ("wide of", "inboard of", "above", "below", "off"), units, culture)} a fair line";

    /// <summary>"Point 3 of station 5 is 18 mm wide of, 5 mm above a fair line through its neighbours along the boat."</summary>
    public static string Doubt(FormDoubt doubt, DisplayUnits units, CultureInfo culture) =>
        $"Point {doubt.PointNumber} of {(doubt.IsStarboard ? "starboard " : "")}{doubt.SectionId} is {OffLine(doubt, units, culture)} through its neighbours {(doubt.Run == FormRun.AlongTheBoat ? "along the boat" : "on its own station")}.";

    /// <summary>Where a fair line would have it.</summary>
    public static string Fair(FormDoubt doubt, DisplayUnits units, CultureInfo culture) =>
        $"Fair there: half-breadth {HullCell.Text(doubt.ExpectedHalfBreadthM, units, culture)}, height {HullCell.Text(doubt.ExpectedHeightM, units, culture)}.";

    /// <summary>Why a station, or a point of it, cannot stand where it was typed: "Typed: station 2 at 4 m; allowed forward of station 1 at 0.9 m and abaft station 3 at 2.6 m, at every height."</summary>
    /// <param name="typed">The hull with the place that was typed.</param>
    /// <param name="spot">The station that was moved, and its side.</param>
    public static string OutOfOrder(HullFacts typed, HullSpot spot, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(typed);
        IReadOnlyList<HullStation> side = HullEdit.Side(typed.Lines, spot.IsStarboard);
        IEnumerable<string> allowed = new[] { ("forward of", spot.Station - 1), ("abaft", spot.Station + 1) }.Where(one => one.Item2 >= 0 && one.Item2 < side.Count).Select(one => $"{one.Item1} {Placed(side[one.Item2])}");
        return $"Typed: {Placed(side[spot.Station])}; allowed {string.Join(" and ", allowed)}, at every height.";

        // A station square across the boat has one place, a raked one two.
        string Placed(HullStation station)
        {
            string least = HullCell.Text(station.Points.Min(point => point.XM), units, culture), most = HullCell.Text(station.Points.Max(point => point.XM), units, culture);
            return $"{Station(station.Name)} at {(least == most ? least : $"{least} to {most}")}";
        }
    }

    // A name may say already what it is.
    private static string Station(string name) => name.StartsWith("station", StringComparison.OrdinalIgnoreCase) ? name : $"station {name}";

    private static string Off(FormDoubt doubt, (string Wide, string Narrow, string High, string Low, string Off) words, DisplayUnits units, CultureInfo culture)
    {
        string[] ways =
        [
            .. new[] { (By: doubt.WideM, Word: doubt.WideM > 0 ? words.Wide : words.Narrow), (By: doubt.HighM, Word: doubt.HighM > 0 ? words.High : words.Low) }
                .Where(way => Math.Abs(way.By) > SmallM).Select(way => $"{Small(Math.Abs(way.By), units, culture)} {way.Word}"),
        ];
        return ways.Length == 0 ? $"{Small(doubt.OffM, units, culture)} {words.Off}" : string.Join(", ", ways);
    }

    private static string Small(double m, DisplayUnits units, CultureInfo culture) => units == DisplayUnits.Metric
        ? $"{Math.Round(m * 1000).ToString(culture)} mm"
        : QuantityText.Format(m, "M", units, culture);
}
