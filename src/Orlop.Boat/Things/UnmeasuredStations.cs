namespace Orlop.Boat.Things;

/// <summary>Stations of a hull that nobody measured: those of a starting form, and those laid between others. Where it is not told, nothing is said.</summary>
public static class UnmeasuredStations
{
    /// <summary>How many there are; a station counts once, whichever side is not measured.</summary>
    public static int CountOf(HullLines lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return Origins(lines).Count(IsUnmeasured);
    }

    /// <summary>"10 of 11 stations are the form's, not measured", within a sentence; null without lines, or where all are measured or not told.</summary>
    public static string? Of(HullLines? lines)
    {
        if (lines is null || CountOf(lines) is not (> 0 and var count))
        {
            return null;
        }

        bool hasForm = Origins(lines).Any(origins => origins.Contains(StationOrigin.Form)), hasBetween = Origins(lines).Any(origins => !origins.Contains(StationOrigin.Form) && origins.Contains(StationOrigin.Between));
        string from = (hasForm, hasBetween) switch { (true, true) => "the form's or laid between others", (true, false) => "the form's", _ => "laid between others" };
        return FormattableString.Invariant($"{count} of {lines.Stations.Count} stations {(count == 1 ? "is" : "are")} {from}, not measured");
    }

    private static bool IsUnmeasured(StationOrigin?[] origins) => origins.Any(origin => origin is StationOrigin.Form or StationOrigin.Between);

    private static IEnumerable<StationOrigin?[]> Origins(HullLines lines) => lines.Stations.Select((station, index) => index < lines.StarboardStations.Count ? new[] { station.Origin, lines.StarboardStations[index].Origin } : [station.Origin]);
}
