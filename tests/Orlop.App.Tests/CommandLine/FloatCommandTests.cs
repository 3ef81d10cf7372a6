using System.Globalization;
using System.Text.Json;
using Orlop.App.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class FloatCommandTests
{
    private static readonly string Barge = BoatJson.Write(AfloatBoat.Read());

    // Archimedes on a wall-sided box: displacement over density over waterplane is the mean draught.
    [Fact]
    public async Task Float_Json_HasTheDraughtOfABox()
    {
        JsonElement condition = await Json("float", "at-anchor");
        double displacement = condition.GetProperty("displacementKg").GetDouble(), heelDeg = condition.GetProperty("heelDeg").GetDouble();
        double amidships = condition.GetProperty("draughts")[1].GetProperty("draughtM").GetDouble();

        Assert.Equal("floats", condition.GetProperty("status").GetString());
        Assert.True(Math.Abs(heelDeg) < 20, $"heel {heelDeg}");
        Assert.Equal(displacement / 1004 / (AfloatBoat.LengthM * AfloatBoat.BreadthM), amidships, 0.001);
    }

    // A hatch on the base line is under water however she lies.
    [Fact]
    public async Task Float_OfABoatThatFills_HasNoGm()
    {
        BoatModel boat = AfloatBoat.Read();
        string holed = BoatJson.Write(boat.WithThings([.. boat.Things.Where(thing => thing.Id != "hatch"), new HullOpening { Id = "hatch", Name = "Fore hatch", Use = OpeningUse.Hatch, Place = new Orlop.Boat.Values.Place(7, 0, 0) }]));
        JsonElement condition = JsonDocument.Parse((await CommandRun.WithInput(holed, "float", "-", "--json")).Out).RootElement.GetProperty("conditions")[0];

        Assert.Equal("fills", condition.GetProperty("status").GetString());
        Assert.All(new[] { "gmM", "gmDeviationM" }, name => Assert.Equal(JsonValueKind.Null, condition.GetProperty(name).ValueKind));
        Assert.Matches(@"GM +fills +no GM of hers: Fore hatch is under water", (await CommandRun.WithInput(holed, "float", "-")).Out);
    }

    [Fact]
    public async Task HullOfAForm_IsSaidInTextJsonAndReview()
    {
        BoatModel boat = AfloatBoat.Read();
        string form = BoatJson.Write(boat.WithThings(boat.Things.Select(thing => thing is HullLines lines ? lines with { Stations = [.. lines.Stations.Select(station => station with { Origin = StationOrigin.Form })] } : thing)));
        const string Said = "2 of 2 stations are the form's, not measured";

        Assert.Contains(Said, (await CommandRun.WithInput(form, "float", "-")).Out, StringComparison.Ordinal);
        Assert.Equal(Said, JsonDocument.Parse((await CommandRun.WithInput(form, "float", "-", "--json")).Out).RootElement.GetProperty("hullNotMeasured").GetString());
        Assert.Contains(Said, (await CommandRun.WithInput(form, "review", "-")).Out, StringComparison.Ordinal);
        Assert.DoesNotContain("stations", (await CommandRun.WithInput(Barge, "float", "-")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Weights_RowsAndTheBareBoat_MakeTheWhole()
    {
        JsonElement condition = await Json("weights", "at-anchor");
        double rows = condition.GetProperty("rows").EnumerateArray().Sum(row => row.GetProperty("massKg").GetDouble());

        Assert.Equal(12_000 + rows, condition.GetProperty("withoutLiquids").GetProperty("massKg").GetDouble(), 0.001);
    }

    // The rows and the rest are the whole.
    [Fact]
    public async Task Weights_Csv_EndsEachConditionWithItsSums()
    {
        CommandRun run = await CommandRun.WithInput(Barge, "weights", "-", "--condition", "At anchor", "--csv");
        string[][] lines = [.. run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Skip(1).Select(line => line.Split(','))];
        // A title may hold commas: the mass stands after the kind.
        double Mass(string kind) => double.Parse(lines.Select(line => line.SkipWhile(cell => cell != kind)).Single(rest => rest.Any()).ElementAt(1), CultureInfo.InvariantCulture);

        Assert.Equal(Mass("sum-whole"), Mass("sum-listed") + Mass("sum-rest"), 1e-6);
    }

    // Feet and inches are longer than metres: two columns never touch.
    [Fact]
    public async Task Weights_InUsUnits_KeepTheirColumnsApart()
    {
        CommandRun run = await CommandRun.WithInput(Barge, "weights", "-", "--units", "us");
        Assert.DoesNotMatch(@"in-?\d", run.Out);
        Assert.Contains(" ft ", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Float_Csv_RunsFromPortToStarboard()
    {
        CommandRun run = await CommandRun.WithInput(Barge, "float", "-", "--condition", "At anchor", "--csv");
        string[] lines = run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        double[] heels = [.. lines.Skip(1).Select(line => double.Parse(line.Split(',')[1], CultureInfo.InvariantCulture))];

        Assert.Equal("condition,heel_deg,gz_m,draught_m,trim_deg,flooded", lines[0]);
        Assert.Equal((-180, 180), (heels[0], heels[^1]));
        Assert.Equal(heels.Order(), heels);
        Assert.Equal(heels.Distinct().Count(), heels.Length);
    }

    // An open boat: in text a lever past the heel at which she floods has a mark and a line that says what it means; in JSON each says it.
    [Fact]
    public async Task Float_OfAnOpenBoat_MarksTheLeversPastFlooding()
    {
        BoatModel afloat = AfloatBoat.Read();
        string open = BoatJson.Write(afloat.WithThings(afloat.Things.Select(thing => thing is Particulars boat ? boat with { Deck = DeckKind.Open } : thing)));
        CommandRun text = await CommandRun.WithInput(open, "float", "-", "--condition", "at-anchor"), json = await CommandRun.WithInput(open, "float", "-", "--condition", "at-anchor", "--json");
        JsonElement side = JsonDocument.Parse(json.Out).RootElement.GetProperty("conditions")[0].GetProperty("starboard");
        double flooding = side.GetProperty("downfloodingDeg").GetDouble();
        string[] rows = [.. text.Out.Split('\n').Where(line => System.Text.RegularExpressions.Regex.IsMatch(line, @"^  \d+° "))];

        Assert.Equal(19, rows.Length);
        Assert.All(rows, row => Assert.Equal(double.Parse(row.Trim().Split('°')[0], CultureInfo.InvariantCulture) >= flooding, row[..46].Contains('*', StringComparison.Ordinal)));
        Assert.Contains("* Flooded: to starboard from ", text.Out, StringComparison.Ordinal);
        Assert.All(side.GetProperty("levers").EnumerateArray(), lever => Assert.Equal(lever.GetProperty("heelDeg").GetDouble() >= flooding, lever.GetProperty("isFlooded").GetBoolean()));
        Assert.True(side.GetProperty("greatestDryGzDeg").GetDouble() <= flooding);
    }

    [Theory]
    [InlineData("hydrostatics", "draught_m,displacement_kg")]
    [InlineData("kn", "displacement_kg,heel_deg,kn_m")]
    public async Task Float_Table_WritesCsv(string table, string heads)
    {
        CommandRun run = await CommandRun.WithInput(Barge, "float", "-", "--table", table);

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.StartsWith(heads, run.Out, StringComparison.Ordinal);
        Assert.True(run.Out.Split('\n').Length > 10);
    }

    [Theory]
    [InlineData("--table", "nothing")]
    [InlineData("--draws", null)]
    [InlineData("--paper", "sheets", "--json")]
    public async Task Float_OptionsThatDoNotGoTogether_AreRefused(params string?[] options)
    {
        CommandRun run = await CommandRun.WithInput(Barge, ["float", "-", .. options.OfType<string>()]);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Empty(run.Out);
    }

    [Fact]
    public async Task Float_Paper_WritesTheSheet()
    {
        using TemporaryFolder folder = new();
        CommandRun run = await CommandRun.WithInput(Barge, "float", "-", "--condition", "at-anchor", "--paper", folder.At("sheets"));

        Assert.Equal(ExitCode.Good, run.Code);
        string page = Path.Combine(folder.At("sheets"), "loading-and-stability.html");
        Assert.Contains(page, run.Out, StringComparison.Ordinal);
        Assert.Contains("What she is held against", await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Float_Text_SaysDisplacementAndTheCaution()
    {
        CommandRun run = await CommandRun.WithInput(Barge, "float", "-", "--condition", "at-anchor");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("Displacement", run.Out, StringComparison.Ordinal);
        Assert.Contains("matter of life", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Float_UnknownCondition_NamesThoseThereAre()
    {
        CommandRun run = await CommandRun.WithInput(Barge, "float", "-", "--condition", "at-ancor");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Contains("Did you mean at-anchor", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Float_JsonAndCsvTogether_IsRefused()
    {
        CommandRun run = await CommandRun.WithInput(Barge, "float", "-", "--json", "--csv");

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.Empty(run.Out);
    }

    private static async Task<JsonElement> Json(string command, string condition)
    {
        CommandRun run = await CommandRun.WithInput(Barge, command, "-", "--condition", condition, "--json");
        Assert.Equal(ExitCode.Good, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Out);
        return json.RootElement.GetProperty("conditions")[0].Clone();
    }

    [Fact]
    public async Task Float_Motions_SayWhatIsNotStated()
    {
        CommandRun text = await CommandRun.WithInput(Barge, "float", "-", "--condition", "at-anchor", "--motions");
        CommandRun json = await CommandRun.WithInput(Barge, "float", "-", "--condition", "at-anchor", "--motions", "--json");

        Assert.Contains("No motion is stated for this condition.", text.Out, StringComparison.Ordinal);
        JsonElement motions = JsonDocument.Parse(json.Out).RootElement.GetProperty("conditions")[0].GetProperty("motions");
        Assert.NotEqual(0, motions.GetArrayLength());
        Assert.All(motions.EnumerateArray(), motion => Assert.Equal(JsonValueKind.Null, motion.GetProperty("acrossMPerS2").ValueKind));
    }

    [Fact]
    public async Task Float_PaperWithDraws_TellsHowFarItIs()
    {
        using TemporaryFolder folder = new();
        CommandRun run = await CommandRun.Of("float", Repository.At("examples", "box-barge.json"), "--condition", "laden", "--paper", folder.At("sheets"), "--draws");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("Drawing her weight, Laden: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("Ctrl+C stops it.", run.Error, StringComparison.Ordinal);
    }
}
