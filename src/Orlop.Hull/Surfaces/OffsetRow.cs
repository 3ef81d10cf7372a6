using System.Collections.Immutable;

namespace Orlop.Hull.Surfaces;

/// <summary>A column of a table of offsets; the unit is null for one that holds no length.</summary>
internal sealed record OffsetColumn(string Name, string Quantity, OffsetUnit? Unit);

/// <summary>One line of a table of offsets.</summary>
internal sealed record OffsetRow(int LineNumber, string Station, string Side, bool? IsSharp, SectionPoint Point)
{
    private const double FarthestM = 200;

    /// <summary>Adds all that is wrong with the line; what it returns is then of no use.</summary>
    public static OffsetRow Read(int line, ImmutableArray<string> cells, ImmutableArray<OffsetColumn> columns, ImmutableArray<OffsetProblem>.Builder problems)
    {
        if (cells.Length != columns.Length)
        {
            problems.Add(new OffsetProblem(line, "", $"{cells.Length} cells", $"{columns.Length}, one for each column; decimals take a point, not a comma"));
            return new OffsetRow(line, "", "", null, new SectionPoint(0, 0, 0));
        }

        var station = Text("station");
        if (station.Length == 0)
        {
            problems.Add(new OffsetProblem(line, "station", "", "the station's name"));
        }

        var side = OneOf("side", "", "port", "starboard");
        var sharp = OneOf("sharp", "", "0", "1");
        var name = Text("line");
        return new OffsetRow(line, station, side, sharp.Length == 0 ? null : sharp == "1",
            new SectionPoint(Length("x", -FarthestM), Length("half_breadth", 0), Length("height", -FarthestM), name.Length == 0 ? null : name));

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

        double Length(string quantity, double leastM)
        {
            var column = columns.First(column => column.Quantity == quantity);
            var found = Text(quantity);
            if (column.Unit!.Read(found) is { } value && value >= leastM && value <= FarthestM)
            {
                return value;
            }

            problems.Add(new OffsetProblem(line, column.Name, found, FormattableString.Invariant($"{column.Unit.Allowed}; {leastM} to {FarthestM} m")));
            return 0;
        }
    }
}
