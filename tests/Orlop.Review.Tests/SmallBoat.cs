using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>A boat with one lamp circuit, everything given: a 12 V battery, a fuse on its post, a lamp, minus bonded at a bar.</summary>
internal static class SmallBoat
{
    public static BoatModel OneLamp(double runningA = 5, double fuseA = 10, string basis = "owner") => new()
    {
        Things =
        [
            new PracticeChoice { Id = "practice", Basis = basis },
            new Condition { Id = "in-use", Name = "In use", ChargeFraction = 0.8, LowestChargeFraction = 0.4 },
            new Space { Id = "cabin", Use = SpaceUse.Dry, From = new Place(0, -1, 0), To = new Place(4, 1, 2), AmbientC = 25 },
            Battery("bank"),
            new Protection { Id = "fuse", Means = ProtectionMeans.Fuse, RatedA = fuseA, RatedV = 58, BreakingA = 2000, Gates = "blade-type-c", ResistanceOhm = 0.005, Place = new Place(1, 0, 1) },
            new Link { Id = "strap", From = new Terminal("bank", "+"), To = new Terminal("fuse", "in"), LengthM = 0.05, ResistanceOhm = 0.0002 },
            new Busbar { Id = "minus", RatedA = 100, IsBonded = true, Place = new Place(1, 0.1, 1) },
            new Link { Id = "minus-strap", From = new Terminal("bank", "-"), To = new Terminal("minus", "bar"), LengthM = 0.05, ResistanceOhm = 0.0002 },
            Lamp("lamp", runningA),
            LampCable("lamp-cable", "lamp"),
        ],
    };

    public static BatteryBank Battery(string id) => new()
    {
        Id = id,
        Chemistry = BatteryChemistry.AbsorbedGlassMat,
        NominalV = 12,
        InternalResistanceOhm = 0.01,
        MostDischargeA = 200,
        OpenCircuit = [new ChargePoint(0, 11.8), new ChargePoint(0.5, 12.3), new ChargePoint(1, 12.8)],
    };

    public static ElectricLoad Lamp(string id, double? runningA) => new()
    {
        Id = id,
        Behaviour = LoadBehaviour.Current,
        NominalV = 12,
        RunningA = runningA is { } current ? current : (Quantity?)null,
        StartRatio = 1,
        LeastV = 10,
        Place = new Place(2, 0, 1.5),
        Uses = [new LoadUse("in-use", 1)],
    };

    /// <summary>A two-core cable of 2.5 mm², 2 m, from the fuse and the minus bar to a load.</summary>
    public static Cable LampCable(string id, string loadId) => new()
    {
        Id = id,
        AreaMm2 = 2.5,
        InsulationC = 90,
        LengthM = 2,
        IsSheathed = true,
        Cores = [Core("plus", "fuse.out", $"{loadId}.+"), Core("minus", "minus.bar", $"{loadId}.-")],
        Run = [new RunLeg { Space = "cabin", LengthM = 2 }],
    };

    public static Core Core(string id, string from, string to) => new()
    {
        Id = id,
        From = Terminal.Parse(from),
        To = Terminal.Parse(to),
        FromEnd = new Termination(TerminationMeans.Ring, 5, 0.0003),
        ToEnd = new Termination(TerminationMeans.Blade, null, 0.0003),
    };

    public static BoatModel With(this BoatModel boat, params Thing[] things) =>
        boat.WithThings(boat.Things.Where(thing => things.All(added => added.Id != thing.Id)).Concat(things));

    public static BoatModel Change<T>(this BoatModel boat, string id, Func<T, T> change)
        where T : Thing => boat.WithThings(boat.Things.Select(thing => thing.Id == id ? change((T)thing) : thing));

    public static BoatModel Without(this BoatModel boat, string id) => boat.WithThings(boat.Things.Where(thing => thing.Id != id));

    public static Finding Worst(this BoatModel boat, string checkId, string subjectId) =>
        Assert.Single(Findings(boat), finding => finding.CheckId == checkId && finding.SubjectId == subjectId).Shown;

    public static IReadOnlyList<PairedFinding> Findings(this BoatModel boat) =>
        new ReviewEngine([new ElectricsDiscipline()]).Review(boat, TestContext.Current.CancellationToken).Findings;

    public static void IsUnknownFor(this Finding finding, string thingId, string field)
    {
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(finding.Inputs, input => input.IsMissing && input.ThingId == thingId && input.Field == field);
    }
}
