using System.Globalization;
using Orlop.Boat.Alterations;
using Orlop.Boat.Tables;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.Boat.Tests.Tables;

public sealed class ClimateMonthsTableTests
{
    private const string Header = "climate,calendar_month,air_c,sun_wh_per_m2";
    private const double OutsideWhPerM2 = 8000;

    private static readonly Climate Home = new() { Id = "home", LatitudeDeg = 52, Months = [.. Enumerable.Range(1, 12).Select(month => new ClimateMonth(month, month - 4.5, 300.5 * month))] };

    private static readonly Climate Away = Home with { Id = "away", LatitudeDeg = -20, Table = "us-miami", Months = [.. Home.Months.Select(month => month with { SunWhPerM2 = null })] };

    private static readonly BoatModel Boat = new() { Things = [Home, Away] };

    private static readonly BoatModel One = new() { Things = [Home] };

    [Theory]
    [InlineData(',')]
    [InlineData('\t')]
    public void ImportOfExport_IsTheSameBoat(char separator)
    {
        string csv = ClimateMonthsTable.Export(Boat, separator);
        TableImport same = ClimateMonthsTable.Import(Boat, csv, Outside);
        BoatModel emptied = new() { Things = [Home with { Months = [] }, Away with { Months = [] }] };
        TableImport filled = ClimateMonthsTable.Import(emptied, csv, Outside);

        Assert.Empty(same.Problems);
        Assert.Empty(same.Edits);
        Assert.Equal(Boat.Things, BoatEdits.Apply(emptied, filled.Edits).Boat.Things);
    }

    [Fact]
    public void Export_ClimateWithoutMonths_IsTwelveRowsToFillIn()
    {
        string[] rows = ClimateMonthsTable.Export(new BoatModel { Things = [Home with { Months = [new ClimateMonth(2, 1.5)] }] }).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal([Header, "home,1,,", "home,2,1.5,", "home,3,,"], rows.Take(4).Select(row => row.TrimEnd('\r')));
        Assert.Equal(13, rows.Length);
    }

    // 1 kWh is 1000 Wh and 3.6 MJ; clearness is the light over that outside the air.
    [Theory]
    [InlineData("sun_wh_per_m2", 2160)]
    [InlineData("sun_kwh_per_m2", 2.16)]
    [InlineData("sun_mj_per_m2", 7.776)]
    [InlineData("clearness_ratio", 0.27)]
    public void Light_InAnyOfItsColumns_IsTheSame(string column, double value)
    {
        TableImport import = ClimateMonthsTable.Import(One, Twelve($"calendar_month,air_c,{column}", month => $"{month},5,{value.ToString(CultureInfo.InvariantCulture)}"), Outside);
        Assert.Empty(import.Problems);
        Assert.All(Assert.IsType<Climate>(Assert.Single(import.Edits).Becomes).Months, month => Assert.Equal((2160, 5), (month.SunWhPerM2!.Value, month.AirC)));
    }

    [Fact]
    public void ColumnLeftOut_KeepsItsValues_AndABlankLightIsTheTables()
    {
        Climate air = Read(Twelve("calendar_month,air_c", month => $"{month},7"));
        Climate light = Read(Twelve("calendar_month,sun_wh_per_m2", month => $"{month},"));

        Assert.Equal(Home.Months.Select(month => month with { AirC = 7 }), air.Months);
        Assert.Equal(Home.Months.Select(month => month with { SunWhPerM2 = null }), light.Months);

        static Climate Read(string csv) => Assert.IsType<Climate>(Assert.Single(ClimateMonthsTable.Import(One, csv, Outside).Edits).Becomes);
    }

    [Theory]
    [InlineData(3, "home,2,5,8001", "sun_wh_per_m2", "8001 Wh/m2", "outside the air")]
    [InlineData(3, "home,2,5,-1", "sun_wh_per_m2", "-1 Wh/m2", "below nothing")]
    [InlineData(3, "home,2,5,much", "sun_wh_per_m2", "'much'", "does not fit")]
    [InlineData(3, "home,2,5,\"12,5\"", "sun_wh_per_m2", "'12,5'", "decimal point")]
    [InlineData(3, "home,2,5,NaN", "sun_wh_per_m2", "'NaN'", "does not fit")]
    [InlineData(3, "home,2,,100", "air_c", "nothing", "missing")]
    [InlineData(3, "home,2,\"4,5\",100", "air_c", "'4,5'", "decimal point")]
    [InlineData(3, "home,2,61,100", "air_c", "61 degC", "outside its range")]
    [InlineData(3, "home,0,5,100", "calendar_month", "0", "outside its range")]
    [InlineData(3, "home,2.5,5,100", "calendar_month", "'2.5'", "does not fit")]
    [InlineData(3, "home,,5,100", "calendar_month", "nothing", "missing")]
    [InlineData(3, "home,1,5,100", "calendar_month", "month 1 of 'home' again", "given twice")]
    [InlineData(3, "there,2,5,100", "climate", "'there'", "no such climate")]
    [InlineData(3, ",2,5,100", "climate", "nothing", "which climate")]
    [InlineData(3, "home,2,5,100,9", "row", "5 cells", "more cells")]
    public void OneBadCell_IsToldByRowAndColumn_AndNothingChanges(int row, string line, string column, string found, string message)
    {
        TableImport import = ClimateMonthsTable.Import(Boat, Twelve(Header, month => month == 2 ? line : $"home,{month},5,100"), Outside);
        TableProblem problem = Assert.Single(import.Problems, one => one.Row == row);

        Assert.Equal((column, found), (problem.Column, problem.Found));
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Allowed);
        Assert.Empty(import.Edits);
    }

    [Theory]
    [InlineData("calendar_month,air_c,sun_wh_per_m2,sun_kwh_per_m2", "sun_kwh_per_m2", "more than one column")]
    [InlineData("climate,air_c", "calendar_month", "which month")]
    [InlineData("calendar_month,air_f", "air_f", "degrees Celsius are wanted: air_c")]
    [InlineData("calendar_month,air_c,air_c", "air_c", "more than once")]
    public void BadHeader_IsTold(string header, string column, string message) =>
        Assert.Contains(ClimateMonthsTable.Import(One, Twelve(header, _ => "1,1,1,1"), Outside).Problems, problem => problem.Row == 1 && problem.Column == column && problem.Message.Contains(message, StringComparison.Ordinal));

    [Fact]
    public void ElevenMonths_AreRefused_AndTheMissingOneIsNamed()
    {
        TableProblem problem = Assert.Single(ClimateMonthsTable.Import(One, string.Join('\n', Twelve(Header, month => $"home,{month},5,100").Split('\n').Where((_, index) => index != 6)), Outside).Problems);
        Assert.Equal((1, "calendar_month", "11 months of 'home', without 6", "each of 1 to 12, once"), (problem.Row, problem.Column, problem.Found, problem.Allowed));
    }

    [Fact]
    public void LightWithoutALatitude_IsRefused_AndAirAloneIsNot()
    {
        BoatModel nowhere = new() { Things = [Home with { LatitudeDeg = null }] };
        Assert.All(ClimateMonthsTable.Import(nowhere, Twelve(Header, month => $"home,{month},5,100"), Outside).Problems, problem => Assert.Contains("latitude", problem.Allowed, StringComparison.Ordinal));
        Assert.NotEmpty(ClimateMonthsTable.Import(nowhere, Twelve(Header, month => $"home,{month},5,100"), Outside).Problems);
        Assert.Empty(ClimateMonthsTable.Import(nowhere, Twelve("calendar_month,air_c", month => $"{month},5"), Outside).Problems);
    }

    [Theory]
    [InlineData("")]
    [InlineData("climate,calendar_month,air_c\n")]
    [InlineData("climate,calendar_month,air_c\n,,\n")]
    public void EmptyTable_IsRefused(string csv) => Assert.Contains("empty", Assert.Single(ClimateMonthsTable.Import(One, csv, Outside).Problems).Message, StringComparison.Ordinal);

    [Fact]
    public void BoatWithoutAClimate_SaysWhatComesFirst() => Assert.Contains(
        ClimateMonthsTable.Import(new BoatModel(), Twelve("calendar_month,air_c", month => $"{month},5"), Outside).Problems, problem => problem.Allowed.Contains("added first", StringComparison.Ordinal));

    private static double Outside(double latitudeDeg, int month) => OutsideWhPerM2;

    private static string Twelve(string header, Func<int, string> row) => $"{header}\n{string.Join('\n', Enumerable.Range(1, 12).Select(row))}\n";
}
