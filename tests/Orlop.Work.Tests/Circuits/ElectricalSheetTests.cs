using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Paper;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Readings;
using Orlop.Work.Circuits;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Circuits;

public sealed class ElectricalSheetTests
{
    private static readonly ElectricalSheet Demo = ElectricalSheet.Make(new ReviewEngine([new ElectricsDiscipline()]), DemoBoat.Read(), null, "at-anchor");

    [Fact]
    public void Make_EveryPartThatTakesPower_HasALine() =>
        Assert.Equal(Demo.Boat.All<Part>().Where(part => Boat.Topology.Poles.Taking(part) is not null).Select(part => part.Id), Demo.Circuits.Select(line => line.Taker.Id));

    [Fact]
    public void Make_CircuitOfThePanel_BeginsAtItsBar()
    {
        CircuitLine horn = Demo.Circuits.Single(line => line.Taker.Id == "horn");
        Assert.Equal("panel-plus", horn.From!.Id);
        Assert.Equal(["horn-breaker"], horn.Devices.Select(device => device.Id));
        Assert.Equal(["horn-cable"], horn.Cables.Select(cable => cable.Id));
    }

    // Its cable's length is not given: nothing of it may be told.
    [Fact]
    public void Make_LengthNotGiven_TellsNoFault() => Assert.Null(Demo.Circuits.Single(line => line.Taker.Id == "anchor-light").WeakestFaultA);

    [Fact]
    public void Make_DeviceThatFails_SaysSoInTheSchedule() =>
        Assert.Contains(Demo.Protection.Single(line => line.Device.Id == "solar-fuse").Findings, finding => finding.CheckId == "breaking-capacity");

    [Fact]
    public void Render_EveryCircuit_HasItsChartAndItsIsolation_AndAsksNothingOutside()
    {
        string html = ElectricalSheetHtml.Render(Demo, new PaperOptions(new DateOnly(2026, 11, 29)));
        Assert.Contains("To make it dead: hang by the panel", html, StringComparison.Ordinal);
        Assert.Contains("Protection of Dive compressor", html, StringComparison.Ordinal);
        Assert.Contains("Prove it dead before you touch it", html, StringComparison.Ordinal);
        Assert.DoesNotContain("http://", html.Replace("http://www.w3.org", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("https://", html, StringComparison.Ordinal);
    }

    // Two AC loads, each from the shore and from the inverter.
    [Fact]
    public void Render_AcSide_HasEachCircuitFromEachSource_WithItsCaution()
    {
        Assert.Equal(
            [("kettle", "inverter"), ("kettle", "shore-inlet"), ("pack-charger", "inverter"), ("pack-charger", "shore-inlet")],
            Demo.AcSide.Select(row => (row.Taker.Id, row.Source.Id)).Order());
        string html = ElectricalSheetHtml.Render(Demo, new PaperOptions(new DateOnly(2026, 11, 29)));
        string ac = html[html.IndexOf("id=\"ac-side\"", StringComparison.Ordinal)..];
        Assert.Contains("limited by its source", ac, StringComparison.Ordinal);
        Assert.Contains("Residual-current breaker 30 mA", ac, StringComparison.Ordinal);
        Assert.Contains("licensed electrician", ac, StringComparison.Ordinal);
        // 50 V over 30 mA (IEC 60364-4-41), and of it two thirds as read cold, as in the steps of a pack.
        Assert.Contains("at most 1111", ac, StringComparison.Ordinal);
        Assert.DoesNotContain("1667", ac, StringComparison.Ordinal);
    }

    // ISO 216: A3 297 mm by 420 mm, A4 210 mm by 297 mm; the pages stay A4.
    [Theory]
    [InlineData(null, "297mm 210mm")]
    [InlineData(PaperSize.A3, "420mm 297mm")]
    public void Render_Diagram_IsOnTheChosenPaper_AndThePagesOnTheirs(PaperSize? diagram, string page)
    {
        string html = ElectricalSheetHtml.Render(Demo, new PaperOptions(new DateOnly(2026, 11, 29)) { DiagramSize = diagram });
        Assert.Contains($"@page diagram{{size:{page};margin:0", html, StringComparison.Ordinal);
        Assert.Contains("@page{size:A4 portrait", html, StringComparison.Ordinal);
        Assert.Contains($"width=\"{page.Split(' ')[0]}\" height=\"{page.Split(' ')[1]}\"", html, StringComparison.Ordinal);
        Assert.All(Demo.Circuits, line => Assert.Contains($"data-id=\"{line.Taker.Id}\"", html, StringComparison.Ordinal));
    }

    // The locker that is too warm, and each way with what table and network say of its cables.
    [Fact]
    public void Render_Heat_HasSpacesWithTheirCurves_AndWays()
    {
        string html = ElectricalSheetHtml.Render(Demo, new PaperOptions(new DateOnly(2026, 11, 29)));
        string heat = html[html.IndexOf("id=\"heat\"", StringComparison.Ordinal)..];
        Assert.Contains("Temperature, Inverter locker", heat, StringComparison.Ordinal);
        Assert.Contains("Copper by the network", heat, StringComparison.Ordinal);
        Assert.Contains("Port side lining", heat, StringComparison.Ordinal);
    }

    [Fact]
    public void Render_ReadingOutsideWhatItShouldBe_IsSaidBeforeTheCircuits()
    {
        ElectricalSheet sheet = ElectricalSheet.Make(new ReviewEngine([new ElectricsDiscipline(), new ReadingsDiscipline()]), DemoBoat.Read(), null, "at-anchor", TestContext.Current.CancellationToken);
        string html = ElectricalSheetHtml.Render(sheet, new PaperOptions(new DateOnly(2026, 11, 29)));

        Assert.Equal("drying-reading-minus", Assert.Single(sheet.ReadingsOutside).SubjectId);
        Assert.InRange(html.IndexOf("Minus side, fan heater to bar", StringComparison.Ordinal), 1, html.IndexOf("id=\"circuits\"", StringComparison.Ordinal));
        Assert.Contains("Live and hot. Do not touch it", html, StringComparison.Ordinal);
    }

    // With no condition asked for, each number is the extreme of those that each condition tells by itself.
    [Fact]
    public void Make_WithoutACondition_TellsTheExtremeOverAll_WithItsCondition()
    {
        ReviewEngine engine = new([new ElectricsDiscipline()]);
        ElectricalSheet all = ElectricalSheet.Make(engine, DemoBoat.Read(), null, token: TestContext.Current.CancellationToken);
        ElectricalSheet[] each = [.. all.Conditions.Select(condition => ElectricalSheet.Make(engine, DemoBoat.Read(), null, condition.Id, TestContext.Current.CancellationToken))];

        Assert.True(all.Conditions.Length > 1);
        Assert.Contains(all.Circuits, line => line.RunningA is not null && each[0].Circuits.Single(one => one.Taker.Id == line.Taker.Id).RunningA is null);
        Assert.All(all.Circuits, line =>
        {
            CircuitLine[] lines = [.. each.Select(sheet => sheet.Circuits.Single(one => one.Taker.Id == line.Taker.Id))];
            Assert.Equal(lines.Max(one => one.RunningA?.Value), line.RunningA?.Value);
            Assert.Equal(lines.Min(one => one.LeastV?.Value), line.LeastV?.Value);
            Assert.Equal(lines.Min(one => one.WeakestFaultA?.Value), line.WeakestFaultA?.Value);
        });
    }

    [Fact]
    public void Render_Schedule_HasKindsInWords_AndSaysWhatADeviceStandsIn()
    {
        Assert.Contains(Demo.Protection, line => line.Feeds.IsEmpty && !line.From.IsEmpty);
        string html = ElectricalSheetHtml.Render(Demo, new PaperOptions(new DateOnly(2026, 11, 29)));
        Assert.Contains("Breaker, type C (IEC 60898-1)", html, StringComparison.Ordinal);
        Assert.DoesNotContain("breaker-c", html, StringComparison.Ordinal);
        Assert.Contains("takes what ", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Render_BoatWithoutAnything_SaysSo()
    {
        ElectricalSheet empty = ElectricalSheet.Make(new ReviewEngine([new ElectricsDiscipline()]), new BoatModel(), null, token: TestContext.Current.CancellationToken);
        Assert.Contains("No part of the boat takes power yet", ElectricalSheetHtml.Render(empty, new PaperOptions(new DateOnly(2026, 11, 29))), StringComparison.Ordinal);
    }
}
