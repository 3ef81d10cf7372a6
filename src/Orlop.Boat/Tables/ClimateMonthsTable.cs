using System.Globalization;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;

namespace Orlop.Boat.Tables;

/// <summary>The months of a boat's climates as a table for a spreadsheet, a month a row, and back (see <c>docs/file-format.md</c>).</summary>
public static class ClimateMonthsTable
{
    /// <summary>Name of the list, beside the kinds of things.</summary>
    public const string ListName = "climate-months";

    /// <summary>Text with a header and the twelve months of each climate; blank cells where nothing is told.</summary>
    /// <param name="boat">Whose climates.</param>
    /// <param name="separator">What parts the cells; a tab for what is pasted into a spreadsheet.</param>
    public static string Export(BoatModel boat, char separator = ',') => TableText.Write([ClimateColumns.Written, .. boat.All<Climate>().SelectMany(Rows)], separator);

    /// <summary>
    /// What a table would change. Each climate that it names has its twelve months in it, once each. The light is read as Wh/m², kWh/m², MJ/m² or clearness, in one column; more than there is outside
    /// the air is refused. A column that is left out leaves its values as they are; a blank light is the built-in table's.
    /// </summary>
    /// <param name="boat">Whose climates; one that she has not is refused.</param>
    /// <param name="csv">The table.</param>
    /// <param name="outsideWhPerM2">Light outside the air on the horizontal, Wh/m², mean day of a month: of a latitude in degrees, north positive, and a month, 1 to 12.</param>
    public static TableImport Import(BoatModel boat, string csv, Func<double, int, double> outsideWhPerM2)
    {
        ProblemList problems = new();
        Climate[] read = [.. new ClimateMonthsReading(boat, outsideWhPerM2, problems).Read(csv)];
        TableProblem[] told = [.. problems.WithSpots().Select(entry => new TableProblem(entry.Spot.Order, string.Join('/', entry.Spot.Steps), entry.Problem.Found, entry.Problem.Allowed, entry.Problem.Message))];
        return new TableImport(told.Length > 0 ? [] : [.. Edits(boat, read)], [], told);
    }

    private static IEnumerable<Edit> Edits(BoatModel boat, Climate[] read) =>
        from becomes in read
        let was = boat.Find<Climate>(becomes.Id)!
        where !Equals(was, becomes)
        select BoatEdits.Replace(was, becomes);

    private static IEnumerable<string[]> Rows(Climate climate) =>
        from number in Enumerable.Range(1, 12)
        from month in climate.Months.Where(month => month.CalendarMonth == number).DefaultIfEmpty()
        select new[] { climate.Id, number.ToString(CultureInfo.InvariantCulture), Text(month?.AirC), Text(month?.SunWhPerM2) };

    private static string Text(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
