using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.App.Tests;

/// <summary>The demo boat with the hull of a box barge, 10 m by 3 m by 1.8 m, and her own weight: what floats by hand-worked numbers.</summary>
internal static class AfloatBoat
{
    public const double LengthM = 10, BreadthM = 3, DepthM = 1.8;

    public static BoatModel Read()
    {
        BoatModel demo = BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!;
        return demo.WithThings(
        [
            .. demo.Things.Where(thing => thing is not (HullLines or BareBoat or HullOpening or Tank or Deadweight or StabilityBasis or BerthTest)),
            new HullLines { Id = "hull-lines", Name = "Box hull", Stations = [End("transom", 0), End("bow", LengthM)] },
            new BareBoat { Id = "bare-boat", Name = "Bare boat", MassKg = new Quantity(12_000, Knowledge.Estimated, 400), LcgM = new Quantity(LengthM / 2, Knowledge.Estimated, 0.2), KgM = new Quantity(0.8, Knowledge.Estimated, 0.1) },
            new HullOpening { Id = "hatch", Name = "Fore hatch", Use = OpeningUse.Hatch, Place = new Place(7, 0, 1.9) },
            new StabilityBasis { Id = "stability-basis", Rules = [StabilityRule.GeneralIntact] },
        ]);
    }

    private static HullStation End(string name, double xM) => new()
    {
        Name = name,
        IsSharp = true,
        Points = [new StationPoint(xM, BreadthM / 2, 0, "bilge"), new StationPoint(xM, BreadthM / 2, DepthM)],
    };
}
