using System.Globalization;
using System.Text.Json;
using Orlop.App.CommandLine;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class RouteCommandTests
{
    private static readonly string Demo = Repository.At("examples", "sandgrouse.json");

    /// <summary>The table and the JSON tell the same: lengths of stretches add up to the route's, costs of a plan to those together.</summary>
    [Fact]
    public async Task Csv_TellsWhatTheJsonDoes_AndAddsUp()
    {
        CommandRun csv = await CommandRun.Of("route", Demo, "searchlight-cable", "deck-light-cable", "--csv"), json = await CommandRun.Of("route", Demo, "searchlight-cable", "deck-light-cable", "--json");
        string[] lines = csv.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string[] names = lines[0].Split(',');
        var rows = lines.Skip(1).Select(line => names.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second)).ToArray();
        var routes = rows.GroupBy(row => (row["plan"], row["cable"], row["route"])).ToArray();
        Assert.All(routes, route => Assert.Equal(Number(route.First()["route_length_m"]), route.Sum(row => Number(row["length_m"])), 1e-6));

        using JsonDocument told = JsonDocument.Parse(json.Out);
        JsonElement together = told.RootElement.GetProperty("together");
        Assert.Equal(together.GetProperty("togetherM").GetDouble(), routes.Where(route => route.Key.Item1 == "together").Sum(route => Number(route.First()["cost_m"])), 1e-5);
        Assert.True(together.GetProperty("isProved").GetBoolean());
        Assert.Equal(told.RootElement.GetProperty("cables").EnumerateArray().Sum(cable => cable.GetProperty("routes").GetArrayLength()), routes.Count(route => route.Key.Item1 == "alone"));
    }

    [Fact]
    public async Task CsvAndJson_OrTooManyCables_IsBadInput()
    {
        Assert.Equal(ExitCode.BadInput, (await CommandRun.Of("route", Demo, "horn-cable", "--csv", "--json")).Code);
        Assert.Equal(ExitCode.BadInput, (await CommandRun.Of(["route", Demo, .. Enumerable.Repeat("horn-cable", 25)])).Code);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
