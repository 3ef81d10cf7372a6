using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;

namespace Orlop.Boat.Tables;

/// <summary>Reads the rows of a table into the months of climates, as far as it goes; what does not fit becomes a problem of its cell.</summary>
internal sealed class ClimateMonthsReading(BoatModel boat, Func<double, int, double> outsideWhPerM2, ProblemList problems)
{
    private const int MonthCount = 12;

    private readonly CellReading _cells = new(boat, problems);
    private readonly Climate[] _climates = [.. boat.All<Climate>()];

    private sealed record Row(Spot Spot, Climate Climate, int? Month, double? AirC, double? SunWhPerM2);

    /// <summary>The climates with the months of the table; none as soon as there is a problem.</summary>
    public IReadOnlyList<Climate> Read(string csv)
    {
        List<string[]> rows = TableText.Cells(csv);
        if (rows.Count(cells => cells.Any(cell => cell.Length > 0)) < 2)
        {
            problems.Add(TableHeader.Spot, rows.Count == 0 ? "nothing" : "no rows", "a header and a row for each month", "The table is empty.");
            return [];
        }

        TableHeader header = new(rows, ClimateColumns.Known, ClimateColumns.Written, name => NearestField.Advice(ClimateColumns.Schema, name, field => field.Column), problems);
        LightColumn[] light = [.. ClimateColumns.Light.Where(column => header.Has(column.Name))];
        CheckHeader(header, light);
        if (problems.Count > 0)
        {
            return [];
        }

        Row[] months =
        [
            .. rows.Select((cells, index) => (Cells: cells, Spot: Spot.Row(index + 1))).Skip(1).Where(row => row.Cells.Any(cell => cell.Length > 0))
                .Select(row => OfRow(header, light.FirstOrDefault(), row.Cells, row.Spot)).OfType<Row>(),
        ];
        IGrouping<Climate, Row>[] climates = [.. months.GroupBy(row => row.Climate)];
        foreach (IGrouping<Climate, Row> climate in climates)
        {
            CheckTwelve(climate.Key, [.. climate]);
        }

        return problems.Count > 0 ? [] : [.. climates.Select(climate => climate.Key with
        {
            Months = climate.OrderBy(row => row.Month).Select(row => new ClimateMonth(row.Month!.Value, row.AirC!.Value, row.SunWhPerM2)).ToValueList(),
        })];
    }

    private void CheckHeader(TableHeader header, LightColumn[] light)
    {
        if (!header.Has(ClimateColumns.Month.Column))
        {
            problems.Add(TableHeader.Spot.At(ClimateColumns.Month.Column), $"no column '{ClimateColumns.Month.Column}'", $"a column '{ClimateColumns.Month.Column}'", "The table does not say which month a row is.");
        }

        if (light.Length > 1)
        {
            problems.Add(TableHeader.Spot.At(light[1].Name), string.Join(" and ", light.Select(column => column.Name)), $"one of {string.Join(", ", ClimateColumns.Light.Select(column => column.Name))}", "Light is told in more than one column.");
        }
    }

    private Row? OfRow(TableHeader header, LightColumn? light, string[] cells, Spot row)
    {
        header.CheckLength(cells, row);
        if (ClimateOf(header.Cell(ClimateColumns.Climate, cells), row.At(ClimateColumns.Climate)) is not { } climate)
        {
            return null;
        }

        int? month = (int?)Value(ClimateColumns.Month, header.Cell(ClimateColumns.Month.Column, cells), row, isNeeded: true);
        ClimateMonth? kept = climate.Months.FirstOrDefault(one => one.CalendarMonth == month);
        double? air = header.Has(ClimateColumns.Air.Column) || kept is null ? (double?)Value(ClimateColumns.Air, header.Cell(ClimateColumns.Air.Column, cells), row, isNeeded: true) : kept.AirC;
        return new Row(row, climate, month, air, light is null ? kept?.SunWhPerM2 : LightOf(light, header.Cell(light.Name, cells), row, climate, month));
    }

    private Climate? ClimateOf(string cell, Spot spot)
    {
        if ((cell.Length == 0 ? _climates.Length == 1 ? _climates[0] : null : _climates.FirstOrDefault(climate => climate.Id == cell)) is { } found)
        {
            return found;
        }

        problems.Add(
            spot, cell.Length == 0 ? "nothing" : $"'{FoundJson.Short(cell)}'", _climates.Length == 0 ? "a climate that is added first, with its latitude" : string.Join(", ", _climates.Select(climate => climate.Id)),
            cell.Length == 0 ? "The row does not say of which climate it is." : "The boat has no such climate.");
        return null;
    }

    // A value of its field and in its range; null with a problem where it is not.
    private object? Value(FieldSchema field, string cell, Spot row, bool isNeeded)
    {
        Spot spot = row.At(field.Column);
        if (cell.Length == 0 && isNeeded)
        {
            problems.Add(spot, "nothing", AllowedWords.Of(field, field.Type), $"{field.Label} is missing.");
        }

        object? value = _cells.Value(field, cell, spot);
        if (value is not null && field.Allowed is { } allowed && Convert.ToDouble(value, CultureInfo.InvariantCulture) is var number && !(number >= allowed.Least && number <= allowed.Most))
        {
            problems.Add(spot, FormattableString.Invariant($"{number} {field.Unit?.Text}").TrimEnd(), field.AllowedText!, $"{field.Label} is outside its range.");
            return null;
        }

        return value;
    }

    private double? LightOf(LightColumn column, string cell, Spot row, Climate climate, int? month)
    {
        Spot spot = row.At(column.Name);
        if (cell.Length == 0 || month is null)
        {
            return null;
        }

        if (climate.LatitudeDeg?.Value is not { } latitude)
        {
            problems.Add(spot, $"light at no latitude of '{climate.Id}'", "a latitude of the climate first", "Without a latitude nobody can tell how much light there can be.");
            return null;
        }

        double outside = outsideWhPerM2(latitude, month.Value), unit = column.WhPerM2(outside), most = outside / unit;
        if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double light) || !double.IsFinite(light))
        {
            problems.Add(spot, $"'{FoundJson.Short(cell)}'", Allowed(), cell.Contains(',', StringComparison.Ordinal) ? "Light is not a number; write a decimal point, not a comma." : "Light does not fit.");
            return null;
        }

        if (!(light >= 0 && light <= most))
        {
            problems.Add(spot, FormattableString.Invariant($"{light} {column.Unit}").TrimEnd(), Allowed(), light < 0 ? "Light is below nothing." : "It is more light than the sun gives there outside the air; no place on the ground gets so much.");
            return null;
        }

        // To a thousandth of a Wh/m²: what the change of units leaves beyond it is no light.
        return Math.Round(light * unit, 3);

        string Allowed() => FormattableString.Invariant($"a number, 0 to {Math.Floor(most * 1000) / 1000:0.###} {column.Unit}").TrimEnd() + FormattableString.Invariant($", in month {month} at {latitude:0.##}°");
    }

    private void CheckTwelve(Climate climate, Row[] rows)
    {
        Dictionary<int, Spot> first = [];
        foreach (Row row in rows.Where(row => row.Month is not null && !first.TryAdd(row.Month.Value, row.Spot)))
        {
            problems.Add(row.Spot.At(ClimateColumns.Month.Column), $"month {row.Month} of '{climate.Id}' again", $"each month once; {first[row.Month!.Value]} has this one", "A month is given twice.");
        }

        int[] without = [.. Enumerable.Range(1, MonthCount).Except(first.Keys)];
        if (without.Length > 0 && rows.All(row => row.Month is not null))
        {
            problems.Add(
                TableHeader.Spot.At(ClimateColumns.Month.Column), FormattableString.Invariant($"{first.Count} {(first.Count == 1 ? "month" : "months")} of '{climate.Id}', without {string.Join(", ", without)}"), "each of 1 to 12, once",
                "A year has twelve months, and the rest cannot be guessed.", climate.Id);
        }
    }
}
