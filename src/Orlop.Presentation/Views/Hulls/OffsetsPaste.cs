using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Surfaces;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>A table of offsets that was pasted or read from a file: the lines, or all that is wrong with it.</summary>
/// <param name="Lines">The lines; null where something is wrong.</param>
/// <param name="Problems">Each with its row and what is allowed.</param>
public sealed record OffsetsPaste(HullLines? Lines, IReadOnlyList<string> Problems)
{
    /// <summary>A table in feet, inches and eighths, to show how it is written.</summary>
    public const string Example =
        """
        station,x_m,half_breadth_ft_in_8,height_ft_in_8,line
        transom,0,0-0-0,1-2-4,
        transom,0,4-1-0,1-10-6,chine
        transom,0,4-7-2+,5-6-0,
        """;

    /// <summary>Reads a table; cells may be parted by tabs, as a spreadsheet copies them.</summary>
    public static OffsetsPaste Read(string text, HullLines? before)
    {
        ArgumentNullException.ThrowIfNull(text);
        OffsetTableResult read = OffsetTable.Read("table", text.Contains('\t', StringComparison.Ordinal) ? Commas(text) : text, Limits());
        return read.Form is null
            ? new OffsetsPaste(null, [.. read.Problems.Select(problem => Capital(problem.ToString()))])
            : new OffsetsPaste(Told(HullEdit.Of(read.Form, before, origin: StationOrigin.Measured), before), []);
    }

    // A station of which a point comes back as it stood is from where it was: not all of it was typed.
    private static HullLines Told(HullLines lines, HullLines? before)
    {
        ValueList<HullStation> Side(ValueList<HullStation> side, ValueList<HullStation>? stood) =>
            [.. side.Select(station => stood?.FirstOrDefault(other => other.Name == station.Name && other.Points.Intersect(station.Points).Any()) is { } same ? station with { Origin = same.Origin } : station)];
        return lines with { Stations = Side(lines.Stations, before?.Stations), StarboardStations = Side(lines.StarboardStations, before?.StarboardStations) };
    }

    // What a point of the lines may be: told together with what cannot be read.
    private static OffsetLimits Limits()
    {
        RecordSchema point = RecordSchema.Of(typeof(StationPoint));
        OffsetRange Range(string field) => point.Field(field)!.Allowed is { } allowed ? new OffsetRange(allowed.Least, allowed.Most) : throw new InvalidOperationException($"{field} has no range");
        return new OffsetLimits(Range("xM"), Range("halfBreadthM"), Range("heightM"));
    }

    private static string Commas(string text) =>
        string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(line => string.Join(',', line.Split('\t').Select(cell => cell.Contains(',', StringComparison.Ordinal) ? $"\"{cell}\"" : cell))));

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..] + ".";
}
