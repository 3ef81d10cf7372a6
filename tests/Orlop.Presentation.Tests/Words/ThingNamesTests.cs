using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Xunit;

namespace Orlop.Presentation.Tests.Words;

/// <summary>No two things of a list are called the same.</summary>
public sealed class ThingNamesTests
{
    private static readonly BoatModel Boat = new()
    {
        Things =
        [
            new Space { Id = "cabin", Name = "Cabin", Use = SpaceUse.Dry, From = new(0, 0, 0), To = new(1, 1, 1) },
            new Space { Id = "deck", Name = "Deck", Use = SpaceUse.Dry, From = new(0, 0, 0), To = new(1, 1, 1) },
            new Gear { Id = "lamp-1", Name = "Lamp", Space = "cabin" },
            new Gear { Id = "lamp-2", Name = "Lamp", Space = "deck" },
            new Gear { Id = "lamp-3", Name = "Lamp", Space = "deck" },
            new Gear { Id = "horn", Name = "Horn", Space = "deck" },
        ],
    };

    [Fact]
    public void Of_ThingsOfOneName_AreToldApartByPlaceAndThenById()
    {
        Dictionary<string, string> names = ThingNames.Of(Boat, Boat.All<Gear>());

        Assert.Distinct(names.Values);
        Assert.Equal("Horn", names["horn"]);
        Assert.Contains("cabin", names["lamp-1"], StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("lamp-1", names["lamp-1"], StringComparison.Ordinal);
        Assert.Contains("lamp-2", names["lamp-2"], StringComparison.Ordinal);
    }

    [Fact]
    public void ForElectrics_EmptyBoat_AsksForTheBatteryAndNotForHerLength()
    {
        BoatModel fresh = new() { Things = [new Particulars { Id = "particulars" }] };

        Assert.Contains("length", NextStep.For(fresh)!.Text, StringComparison.Ordinal);
        Assert.Contains("battery", NextStep.ForElectrics(fresh)!.Text, StringComparison.Ordinal);
    }
}
