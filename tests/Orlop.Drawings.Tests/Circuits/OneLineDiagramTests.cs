using System.Xml.Linq;
using CsCheck;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Circuits;
using Orlop.Drawings.Svg;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Drawings.Tests.Circuits;

public sealed class OneLineDiagramTests
{
    private static readonly OneLineOptions Options = new();

    [Fact]
    public void Draw_Example_HasEveryPartAndSupplyCable()
    {
        IReadOnlyList<string> ids = DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, null, Options)).Ids();

        Assert.Empty(SampleBoats.Example.All<Part>().Select(part => part.Id).Except(ids));
        Assert.Contains("inverter-plus", ids);
        Assert.DoesNotContain("inverter-minus", ids);
    }

    [Theory]
    [InlineData(DisplayUnits.Metric)]
    [InlineData(DisplayUnits.Us)]
    public void Draw_Example_NoWordsOverlap(DisplayUnits units)
    {
        XElement drawing = DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, null, Options with { Units = units }));

        Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text").Where(IsWords)));
    }

    [Fact]
    public void Draw_FortyCircuits_NothingOverlapsAndEachHasItsRow()
    {
        BoatModel boat = SampleBoats.WithCircuits(40);
        IReadOnlyList<(string Id, Box Room)> rooms = OneLineDiagram.RoomsOf(boat, Options);

        Assert.Empty(Overlaps(rooms));
        Assert.Equal(40, rooms.Where(room => room.Id.StartsWith("load-", StringComparison.Ordinal)).Select(room => room.Room.Y).Distinct().Count());
        Assert.Empty(DrawnText.Overlaps(DrawnText.Parse(OneLineDiagram.Draw(boat, null, Options)).Descendants(DrawnText.Svg + "text").Where(IsWords)));
    }

    [Fact]
    public void Layout_AnyNetwork_NoPartsOverlapAndAllAreThere() => Networks.Sample(boat =>
    {
        IReadOnlyList<(string Id, Box Room)> rooms = OneLineDiagram.RoomsOf(boat, Options);
        IReadOnlyList<string> ids = DrawnText.Parse(OneLineDiagram.Draw(boat, null, Options)).Ids();
        return Overlaps(rooms).Count == 0 && boat.All<Part>().All(part => ids.Contains(part.Id));
    }, iter: 500);

    [Fact]
    public void Draw_Twice_IsTheSame() =>
        Assert.Equal(OneLineDiagram.Draw(SampleBoats.Example, null, Options), OneLineDiagram.Draw(SampleBoats.Example, null, Options));

    [Fact]
    public void Flow_FromSourceToLoad_RunsLeftToRight()
    {
        Dictionary<string, Box> rooms = OneLineDiagram.RoomsOf(SampleBoats.Example, Options).ToDictionary(room => room.Id, room => room.Room);

        Assert.True(rooms["bank"].Centre.X < rooms["main-fuse"].Centre.X);
        Assert.True(rooms["main-isolator"].Centre.X < rooms["main-plus"].Centre.X);
        Assert.True(rooms["solar"].Centre.X < rooms["main-plus"].Centre.X); // a charger feeds the bar from its own side
        Assert.True(rooms["inverter"].Centre.X < rooms["kettle"].Centre.X);
    }

    [Fact]
    public void Draw_ReversedDevice_StillRunsFromTheSource()
    {
        BoatModel boat = SampleBoats.Small.WithThings(SampleBoats.Small.Things.Select(thing => thing.Id switch
        {
            "post" => ((Link)thing) with { To = new("fuse", "out") },
            "feed" => SampleBoats.Cable("feed", new("winch", "+"), new("fuse", "in")),
            _ => thing,
        }));
        Dictionary<string, Box> rooms = OneLineDiagram.RoomsOf(boat, Options).ToDictionary(room => room.Id, room => room.Room);

        Assert.True(rooms["bank"].Centre.X < rooms["fuse"].Centre.X && rooms["fuse"].Centre.X < rooms["winch"].Centre.X);
    }

    [Fact]
    public void Draw_Alteration_MarksWhatItAdds()
    {
        Alteration draft = SampleBoats.Example.All<Alteration>().First(alteration => alteration.Status == AlterationStatus.Draft);
        BoatModel altered = AlteredBoat.Of(SampleBoats.Example, draft).Boat;
        XElement drawing = DrawnText.Parse(OneLineDiagram.Draw(SampleBoats.Example, altered, Options));
        string[] added = [.. draft.Edits.Where(edit => edit.Was is null && edit.Becomes is Part).Select(edit => edit.Id)];

        Assert.NotEmpty(added);
        foreach (string id in added)
        {
            Assert.Contains(drawing.Descendants().Where(element => (string?)element.Attribute("data-id") == id).Descendants(),
                element => ((string?)element.Attribute("class"))?.Contains("added", StringComparison.Ordinal) == true);
        }
    }

    [Fact]
    public void Draw_CableWithoutLength_AsksForIt()
    {
        BoatModel boat = SampleBoats.Small.WithThings(SampleBoats.Small.Things.Select(thing => thing is Cable cable ? cable with { LengthM = null } : thing));

        Assert.Contains("16 mm² · length?", OneLineDiagram.Draw(boat, null, Options), StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_NoParts_IsAnEmptyDrawingAndNotAnError() =>
        Assert.Equal("img", (string?)DrawnText.Parse(OneLineDiagram.Draw(new BoatModel(), null, Options)).Attribute("role"));

    private static bool IsWords(XElement text) => text.Number("font-size") == TextSize.Small;

    private static IReadOnlyList<string> Overlaps(IReadOnlyList<(string Id, Box Room)> rooms) =>
        [.. from one in Enumerable.Range(0, rooms.Count)
            from other in Enumerable.Range(one + 1, rooms.Count - one - 1)
            where rooms[one].Room.Overlaps(rooms[other].Room)
            select $"{rooms[one].Id} / {rooms[other].Id}"];

    /// <summary>Networks of every shape: up to 24 parts of five kinds, joined at random, loops and loose parts among them.</summary>
    internal static readonly Gen<BoatModel> Networks =
        Gen.Select(Gen.Int[0, 4].Array[1, 24], Gen.Select(Gen.Int[0, 23], Gen.Int[0, 23]).Array[0, 40]).Select((kinds, joins) => new BoatModel
        {
            Things =
            [
                .. kinds.Select((kind, index) => Part(kind, index)),
                .. joins.Where(join => join.Item1 < kinds.Length && join.Item2 < kinds.Length)
                    .Select((join, index) => SampleBoats.Cable($"cable-{index}", End(kinds, join.Item1, 0), End(kinds, join.Item2, 1))),
            ],
        });

    private static Thing Part(int kind, int index) => kind switch
    {
        0 => new BatteryBank { Id = $"part-{index}", Chemistry = BatteryChemistry.Gel, NominalV = 12 },
        1 => new Busbar { Id = $"part-{index}" },
        2 => new Protection { Id = $"part-{index}", Means = ProtectionMeans.Breaker, RatedA = 10 },
        3 => new Charger { Id = $"part-{index}", Drive = ChargerDrive.Sun, LimitA = 10, SetpointV = 14 },
        _ => new ElectricLoad { Id = $"part-{index}", Behaviour = LoadBehaviour.Current, NominalV = 12 },
    };

    private static Terminal End(int[] kinds, int index, int side) => new($"part-{index}", kinds[index] switch { 1 => "bar", 2 => side == 0 ? "out" : "in", _ => "+" });
}
