using System.Text.Json;
using Json.Schema;
using Orlop.App.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

/// <summary>Every JSON that a command writes is as the schema in docs says, checked by another implementation.</summary>
public sealed class PublishedSchemaTests : IDisposable
{
    private static readonly string Demo = Repository.At("examples", "sandgrouse.json");
    private readonly TemporaryFolder _folder = new();

    [Theory]
    [InlineData("sandgrouse.json", null)]
    [InlineData("sandgrouse.json", "sampling-winch")]
    [InlineData("sandgrouse.json", "drying-locker")]
    [InlineData("one-circuit.json", null)]
    [InlineData("open-workboat.json", null)]
    public async Task Review(string example, string? alteration)
    {
        string boat = Repository.At("examples", example);
        MustFit("review", (await CommandRun.Of(alteration is null ? ["review", boat, "--json"] : ["review", boat, "--json", "-a", alteration])).Out);
    }

    [Theory]
    [InlineData("panel-plus", null, "can-be-made-dead")]
    [InlineData("bank", null, "cannot-be-made-dead")]
    [InlineData("inverter", null, "can-be-made-dead")]
    [InlineData("winch", "sampling-winch", "can-be-made-dead")]
    public async Task Isolate(string part, string? alteration, string status)
    {
        CommandRun run = await CommandRun.Of(alteration is null ? ["isolate", Demo, part, "--json"] : ["isolate", Demo, part, "--json", "-a", alteration]);

        Assert.Equal(ExitCode.Good, run.Code);
        JsonElement plan = MustFit("isolation", run.Out);
        Assert.Equal(status, plan.GetProperty("status").GetString());
        Assert.Equal(alteration, plan.GetProperty("alteration").GetString());
    }

    [Fact]
    public async Task Isolate_PartThatNothingFeeds_IsUnknown()
    {
        CommandRun run = await CommandRun.WithInput("""{"formatVersion":1,"things":[{"kind":"load","id":"lamp","nominalV":12,"behaviour":"current","drop":"general"}]}""", "isolate", "-", "lamp", "--json");

        Assert.Equal("unknown", MustFit("isolation", run.Out).GetProperty("status").GetString());
    }

    [Theory]
    [InlineData("float", null)]
    [InlineData("float", "sampling-winch")]
    [InlineData("weights", null)]
    [InlineData("weights", "sampling-winch")]
    [InlineData("faults", null)]
    [InlineData("faults", "sampling-winch")]
    [InlineData("start", null)]
    [InlineData("start", "sampling-winch")]
    [InlineData("energy", null)]
    [InlineData("energy", "sampling-winch")]
    [InlineData("heat", null)]
    [InlineData("heat", "sampling-winch")]
    public async Task FloatWeightsFaultsAndEnergy(string command, string? alteration)
    {
        CommandRun run = await CommandRun.WithInput(BoatJson.Write(AfloatBoat.Read()), alteration is null ? [command, "-", "--json"] : [command, "-", "--json", "-a", alteration]);

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Equal(alteration, MustFit(command, run.Out).GetProperty("alteration").GetString());
    }

    [Theory]
    [InlineData(null, "anchor-light-cable")]
    [InlineData(null, "panel-feed", "stern-light-cable", "kettle-cable")]
    [InlineData("sampling-winch-second", "winch-feed", "winch-tail")]
    public async Task Route(string? alteration, params string[] cables)
    {
        CommandRun run = await CommandRun.Of(["route", Demo, .. cables, "--json", .. alteration is null ? [] : new[] { "-a", alteration }]);

        Assert.Equal(ExitCode.Good, run.Code);
        JsonElement found = MustFit("route", run.Out);
        Assert.Equal(cables, found.GetProperty("cables").EnumerateArray().Select(cable => cable.GetProperty("cable").GetString()));
        Assert.All(found.GetProperty("cables").EnumerateArray(), cable => Assert.NotEmpty(cable.GetProperty("routes").EnumerateArray()));
        Assert.Equal(cables.Length > 1, found.GetProperty("together").ValueKind == JsonValueKind.Object);
    }

    [Theory]
    [InlineData("hydrostatics", "sandgrouse.json")]
    [InlineData("gz", "box-barge.json")]
    [InlineData("kn", "box-barge.json")]
    [InlineData("kn", "one-circuit.json")]
    public async Task Table(string table, string example)
    {
        CommandRun run = await CommandRun.Of("float", Repository.At("examples", example), "--table", table, "--json");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Equal(table, MustFit("table", run.Out).GetProperty("table").GetString());
    }

    [Theory]
    [InlineData("one-circuit.json")]
    [InlineData("open-workboat.json")]
    public async Task Float_BoatWithoutHullOrWeight_IsUnknown(string example)
    {
        CommandRun run = await CommandRun.Of("float", Repository.At("examples", example), "--json");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.All(MustFit("float", run.Out).GetProperty("conditions").EnumerateArray(), condition =>
        {
            Assert.Equal("unknown", condition.GetProperty("status").GetString());
            Assert.Equal(JsonValueKind.Null, condition.GetProperty("gmM").ValueKind);
        });
    }

    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("drying-locker")]
    [InlineData("second-bilge-pump")]
    public async Task Pack(string alteration)
    {
        await CommandRun.Of("pack", Demo, "-a", alteration, "-o", _folder.At("pack"));
        MustFit("pack", await File.ReadAllTextAsync(Path.Combine(_folder.At("pack"), "pack.json"), TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("cost")]
    [InlineData("mass")]
    public async Task Mend(string aim)
    {
        JsonElement mended = MustFit("mend", (await CommandRun.WithInput(MendCommandTests.WeakFuse(), "mend", "-", "--for", aim, "--json")).Out);

        Assert.Equal(("cleared", aim), (mended.GetProperty("outcome").GetString(), mended.GetProperty("for").GetString()));
        Assert.Equal(1, mended.GetProperty("set").GetProperty("changes").GetArrayLength());
        Assert.Equal("nothing-fails", MustFit("mend", (await CommandRun.Of("mend", Repository.At("examples", "one-circuit.json"), "--json")).Out).GetProperty("outcome").GetString());
    }

    /// <summary>Six times the length of a critical lamp's cable; the switch at its end takes 6 mm², as typed, or 10 mm² as is common up to 30 A (common practice, no source).</summary>
    [Theory]
    [InlineData(6.0, 6)]
    [InlineData(null, 10)]
    public async Task Mend_SaysWhatTerminalsTake_AndWhoseClassIsTheOwners(double? terminalMm2, double most)
    {
        BoatModel boat = BoatJson.Read(await File.ReadAllTextAsync(Repository.At("examples", "one-circuit.json"), TestContext.Current.CancellationToken)).Boat!;
        boat = boat.WithThings(boat.Things.Select(thing => thing switch
        {
            ElectricLoad lamp => lamp with { Drop = DropClass.Critical },
            IsolatorSwitch isolator => isolator with { TerminalMm2 = terminalMm2 },
            Cable cable => cable with { LengthM = 18, Run = [.. cable.Run.Select(leg => leg with { LengthM = 18 })] },
            _ => thing,
        }));
        JsonElement mended = MustFit("mend", (await CommandRun.WithInput(BoatJson.Write(boat), "mend", "-", "--json")).Out);

        Assert.Equal(["lamp"], mended.GetProperty("classes").EnumerateArray().Select(hint => hint.GetProperty("thing").GetString()));
        Assert.Equal(("lamp-cable", most), (mended.GetProperty("set").GetProperty("changes")[0].GetProperty("thing").GetString(), mended.GetProperty("set").GetProperty("changes")[0].GetProperty("terminalsMostMm2").GetDouble()));
        Assert.NotEmpty(mended.GetProperty("commonTerminals").EnumerateArray());
    }

    /// <summary>A lamp that may stand in 10 °C at most, in a space whose temperature is typed as more and which is not described: no opening can be reckoned with.</summary>
    [Fact]
    public async Task Mend_OfWhatNoChoiceClears_SaysWhy()
    {
        BoatModel boat = BoatJson.Read(await File.ReadAllTextAsync(Repository.At("examples", "one-circuit.json"), TestContext.Current.CancellationToken)).Boat!;
        string space = boat.All<Space>().First(each => each.AmbientC?.Value > 10).Id;
        boat = boat.WithThings(boat.Things.Select(thing => thing is ElectricLoad lamp ? lamp with { Space = space, MostAmbientC = 10 } : thing));
        JsonElement mended = MustFit("mend", (await CommandRun.WithInput(BoatJson.Write(boat), "mend", "-", "--json")).Out);

        JsonElement beyond = mended.GetProperty("beyond").EnumerateArray().Single(finding => finding.GetProperty("check").GetString() == "space-temperature");
        Assert.Equal((space, JsonValueKind.String), (beyond.GetProperty("subject").GetString(), beyond.GetProperty("why").ValueKind));
    }

    [Fact]
    public async Task Export()
    {
        MustFit("boat", (await CommandRun.Of("export", Demo, "-o", "-")).Out);
    }

    public void Dispose() => _folder.Dispose();

    private static JsonElement MustFit(string schema, string text)
    {
        JsonSchema published = JsonSchema.FromText(File.ReadAllText(Repository.At("docs", $"{schema}.schema.json")));
        using JsonDocument json = JsonDocument.Parse(text);
        EvaluationResults results = published.Evaluate(json.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(results.IsValid, string.Join('\n', results.Details?.Where(detail => detail.Errors is not null).Take(5).Select(detail => $"{detail.InstanceLocation}: {string.Join(", ", detail.Errors!.Values)}") ?? []));
        return json.RootElement.Clone();
    }
}
