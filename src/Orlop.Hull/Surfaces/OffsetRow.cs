using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>A column of a table of offsets; the unit is null for one that holds no length.</summary>
internal sealed record OffsetColumn(string Name, string Quantity, OffsetUnit? Unit);

/// <summary>One line of a table of offsets.</summary>
internal sealed record OffsetRow(int LineNumber, string Station, string Side, bool? IsSharp, SectionPoint Point)
{
    /// <summary>Adds all that is wrong with the line; null where its station or its side cannot be told.</summary>
    public static OffsetRow? Read(int line, ImmutableArray<string> cells, ImmutableArray<OffsetColumn> columns, OffsetLimits limits, ImmutableArray<OffsetProblem>.Builder problems)
    {
        if (cells.Length != columns.Length)
        {
            problems.Add(new OffsetProblem(line, "", $"{cells.Length} cells", $"{columns.Length}, one for each column; decimals take a point, not a comma"));
            return null;
        }

        var station = Text("station");
        if (station.Length == 0 && Has("station"))
        {
            problems.Add(new OffsetProblem(line, "station", "", "the station's name"));
        }

        var side = OneOf("side", "", "port", "starboard");
        var sharp = OneOf("sharp", "", "0", "1");
        var name = Text("line");
        SectionPoint point = new(Length("x", limits.XM), Length("half_breadth", limits.HalfBreadthM), Length("height", limits.HeightM), name.Length == 0 ? null : name);
        return station.Length == 0 || side is not ("" or "port" or "starboard") ? null : new OffsetRow(line, station, side, sharp.Length == 0 ? null : sharp == "1", point);

        bool Has(string quantity) => columns.Any(column => column.Quantity == quantity);

        string Text(string quantity) =>
            columns.FirstOrDefault(column => column.Quantity == quantity) is { } column ? cells[columns.IndexOf(column)] : "";

        string OneOf(string quantity, params string[] allowed)
        {
            var found = Text(quantity);
            if (!allowed.Contains(found))
            {
                problems.Add(new OffsetProblem(line, quantity, found, $"{string.Join(", ", allowed.Skip(1))} or nothing"));
            }

            return found;
        }

        double Length(string quantity, OffsetRange range)
        {
            // A column that is missing, or whose unit is, is told once, by its name.
            if (columns.FirstOrDefault(column => column.Quantity == quantity) is not { Unit: { } unit } column)
            {
                return 0;
            }

            var found = Text(quantity);
            if (unit.Read(found) is { } value && value >= range.LeastM && value <= range.MostM)
            {
                return value;
            }

            problems.Add(new OffsetProblem(line, column.Name, found, FormattableString.Invariant($"{unit.Allowed}; {range.LeastM} to {range.MostM} m")));
            return 0;
        }
    }
}
