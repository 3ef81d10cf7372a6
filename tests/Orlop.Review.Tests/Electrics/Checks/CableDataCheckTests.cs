using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>What is known of a cable is that of its own cross-section, and how its ends are made off is told.</summary>
public sealed class CableDataCheckTests
{
    private const string Check = "cable-data-of-its-size";

    [Fact]
    public void NothingLeftOver_SaysNothing() => Assert.DoesNotContain(SmallBoat.OneLamp().Findings(), finding => finding.CheckId == Check);

    [Fact]
    public void CrossSectionChanged_DiameterAndMassAreAskedFor()
    {
        Finding finding = Changed(cable => cable with { OuterDiameterMm = 8.5, MassKgPerM = 0.1 }, cable => cable with { AreaMm2 = 4 }).Worst(Check, "lamp-cable");
        finding.IsUnknownFor("lamp-cable", "outerDiameterMm");
        finding.IsUnknownFor("lamp-cable", "massKgPerM");
        Assert.Contains("its outer diameter and mass per metre are still that of 2.5 Mm2", finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NoteOfAnotherPart_IsTold()
    {
        CataloguePart part = Catalogue.BuiltIn.Single(part => part.Id == "twin-4-90");
        Finding finding = SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { Note = $"Generic part: {part.Title}." }).Worst(Check, "lamp-cable");
        Assert.Contains(part.Title, finding.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NoteOfItsOwnPart_SaysNothing() => Assert.DoesNotContain(
        SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { Note = $"Generic part: {Catalogue.BuiltIn.Single(part => part.Id == "twin-2-5-90").Title}." }).Findings(), finding => finding.CheckId == Check);

    // Copper of two cores of 35 mm²: 2 × 35 mm² × 8.89 g/(m·mm²) = 0.62 kg/m (IEC 60028); 0.3 kg/m cannot be.
    [Fact]
    public void LighterThanItsCopper_IsTold() => SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { AreaMm2 = 35, MassKgPerM = 0.3 }).Worst(Check, "lamp-cable").IsUnknownFor("lamp-cable", "massKgPerM");

    [Fact]
    public void EndsNotTold_AreAskedFor()
    {
        Finding finding = SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { Cores = [cable.Cores[0] with { ToEnd = null }, cable.Cores[1]] }).Worst("ends-told", "lamp-cable");
        finding.IsUnknownFor("lamp-cable", $"cores/{SmallBoat.OneLamp().Find<Cable>("lamp-cable")!.Cores[0].Id}/toEnd");
        Assert.Contains("kind of end not given at lamp", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(SmallBoat.OneLamp().Findings(), each => each.CheckId == "ends-told");
    }

    // A ring without a thread is told by its stud, or by the other ring on it; by neither it is not told.
    [Fact]
    public void ThreadNotTold_IsAskedFor_UnlessTheStudOrItsNeighbourTellsIt()
    {
        BoatModel bare = SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => cable with { Cores = [cable.Cores[0] with { ToEnd = new Termination(TerminationMeans.Ring, null) }, cable.Cores[1]] });
        Cable lamp = bare.Find<Cable>("lamp-cable")!;
        Terminal at = lamp.Cores[0].To;
        Finding finding = bare.Worst("ends-told", "lamp-cable");
        finding.IsUnknownFor("lamp-cable", $"cores/{lamp.Cores[0].Id}/toEnd/studMm");
        Assert.Contains("thread of the stud not known at lamp", finding.Headline.ToString(), StringComparison.Ordinal);

        BoatModel stud = bare.Change<ElectricLoad>(at.Part, load => load with { Studs = [new Stud(at.Name, 5)] });
        Assert.DoesNotContain(stud.Findings(), each => each.CheckId == "ends-told");
        BoatModel neighbour = bare.WithThings([.. bare.Things, lamp with { Id = "second", Cores = [lamp.Cores[0] with { ToEnd = new Termination(TerminationMeans.Ring, 5) }] }]);
        Assert.DoesNotContain(neighbour.Findings(), each => each.CheckId == "ends-told");
    }

    private static BoatModel Changed(Func<Cable, Cable> first, Func<Cable, Cable> then) => SmallBoat.OneLamp().Change<Cable>("lamp-cable", cable => (Cable)CableSizes.Following(first(cable), then(first(cable))));
}
