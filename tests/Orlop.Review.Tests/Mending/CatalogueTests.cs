using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Protection;
using Orlop.Review.Mending;
using Xunit;

namespace Orlop.Review.Tests.Mending;

public sealed class CatalogueTests
{
    // Density of copper: CRC Handbook, 8.96 g/cm³; stranded conductors have a few percent less than their nominal section (IEC 60228 sets their resistance).
    private const double CopperKgPerM3 = 8960;
    private const double LeastCopperFraction = 0.9;

    [Fact]
    public void BuiltIn_EveryCable_WeighsMoreThanItsCopperAndLessThanFourTimes() => Assert.All(
        Catalogue.BuiltIn.Where(part => part.Use == CatalogueUse.Cable),
        part => Assert.InRange(part.MassKgPerM!.Value / (part.CoreCount!.Value * part.AreaMm2!.Value * 1e-6 * CopperKgPerM3), LeastCopperFraction, 4));

    [Fact]
    public void BuiltIn_EveryFuseAndBreaker_HasGatesForItsRating() => Assert.All(
        Catalogue.BuiltIn.Where(part => part.Use is CatalogueUse.Fuse or CatalogueUse.Breaker),
        part => Assert.NotNull(OperatingGateTable.Find(part.Gates!, part.RatedA!.Value)));

    [Fact]
    public void BuiltIn_EveryPart_HasMassAndPrice_MarkedAsFromMemory() => Assert.All(Catalogue.BuiltIn, part =>
    {
        var (mass, price) = part.Use == CatalogueUse.Cable ? (part.MassKgPerM, part.PriceMoneyPerM) : (part.MassKg, part.PriceMoney);
        Assert.True(mass!.Value > 0 && price!.Value > 0, part.Id);
        Assert.Contains("from memory", mass.Method, StringComparison.Ordinal);
        Assert.Contains("from memory", price.Method, StringComparison.Ordinal);
    });

    [Fact]
    public void BuiltIn_EveryFuseAndBreaker_TellsWhatItIsFittedIn_AndPartsOfOneMountAgree() => Assert.All(
        Catalogue.BuiltIn.Where(part => part.Use is CatalogueUse.Fuse or CatalogueUse.Breaker).GroupBy(part => part.Mount),
        mount =>
        {
            Assert.NotNull(mount.Key);
            Assert.Single(mount.Select(part => (part.MountPriceMoney!.Value, part.MountMassKg!.Value, part.MassKg!.Value)).Distinct());
            Assert.True(mount.First() is { MountPriceMoney.Value: > 0, MountMassKg.Value: > 0 });
        });

    [Fact]
    public void BuiltIn_VentsAndFans_CostAndWeighMoreTheMoreTheyPass()
    {
        CataloguePart[] vents = [.. Catalogue.BuiltIn.Where(part => part.Use == CatalogueUse.Vent).OrderBy(part => part.AreaCm2!.Value)];
        Assert.True(vents.Length >= 3);
        Assert.All(vents.Zip(vents.Skip(1)), pair => Assert.True(pair.First.PriceMoney!.Value < pair.Second.PriceMoney!.Value && pair.First.MassKg!.Value < pair.Second.MassKg!.Value));
        Assert.All(Catalogue.BuiltIn.Where(part => part.Use == CatalogueUse.Fan).GroupBy(part => part.RatedV!.Value), volts =>
        {
            CataloguePart[] fans = [.. volts.OrderBy(part => part.FanM3PerH!.Value)];
            Assert.All(fans.Zip(fans.Skip(1)), pair => Assert.True(pair.First.PriceMoney!.Value < pair.Second.PriceMoney!.Value && pair.First.RunningW!.Value < pair.Second.RunningW!.Value));
        });
    }

    [Fact]
    public void OwnersPart_StandsInPlaceOfTheBuiltIn_AndPricesAreInHisCurrency()
    {
        CataloguePart own = Catalogue.BuiltIn.First(part => part.Id == "fuse-gg-125") with { PriceMoney = 99 };
        Catalogue catalogue = Catalogue.Of(new BoatModel { Things = [new Particulars { Id = "particulars", Currency = "SEK", CurrencyRatio = 11 }, own] });
        Assert.Equal((99, "SEK", true), (catalogue.Find("fuse-gg-125")!.PriceMoney!.Value, catalogue.Currency, catalogue.IsOwn("fuse-gg-125")));
        Assert.Equal(11 * Catalogue.BuiltIn.First(part => part.Id == "fuse-gg-100").PriceMoney!.Value, catalogue.Find("fuse-gg-100")!.PriceMoney!.Value, 9);
        Assert.Equal(Catalogue.BuiltIn.Length, catalogue.Parts.Length);
    }
}
