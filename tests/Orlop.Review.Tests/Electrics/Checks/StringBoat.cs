using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>The boat with one lamp, its bank made of several batteries; everything is given and alike.</summary>
internal static class StringBoat
{
    public static readonly DateOnly New = new(2026, 3, 1);

    /// <summary>Two 12 V batteries side by side, each with a fuse and leads of one length to the fuse of the lamp and the minus bar.</summary>
    public static BoatModel Beside(double leadM = 0.5, double otherLeadM = 0.5) => SmallBoat.OneLamp(runningA: 20, fuseA: 25).Without("strap").Without("minus-strap").With(
        Battery("bank"), Battery("bank-2"), Fuse("fuse-1"), Fuse("fuse-2"),
        Lead("plus-1", "bank.+", "fuse-1.in", leadM), Lead("plus-2", "bank-2.+", "fuse-2.in", otherLeadM),
        Strap("strap-1", "fuse-1.out", "fuse.in"), Strap("strap-2", "fuse-2.out", "fuse.in"),
        Lead("minus-1", "bank.-", "minus.bar", leadM), Lead("minus-2", "bank-2.-", "minus.bar", otherLeadM));

    /// <summary>Two 6 V batteries one on another, which make 12 V.</summary>
    public static BoatModel InSeries() => SmallBoat.OneLamp().Without("minus-strap").With(
        Battery("bank", 6), Battery("bank-2", 6), Lead("series", "bank.-", "bank-2.+", 0.3), Lead("minus-strap", "bank-2.-", "minus.bar", 0.5));

    public static BatteryBank Battery(string id, double nominalV = 12) => SmallBoat.Battery(id) with
    {
        NominalV = nominalV,
        CapacityAh = 100,
        InUseSince = New,
        MostChargeA = 30,
        OpenCircuit = [new ChargePoint(0, nominalV * 11.8 / 12), new ChargePoint(1, nominalV * 12.8 / 12)],
        Studs = [new Stud("+", 8, HasWasherUnder: false), new Stud("-", 8, HasWasherUnder: false)],
    };

    public static Cable Lead(string id, string from, string to, double lengthM, double areaMm2 = 25) => new()
    {
        Id = id,
        AreaMm2 = areaMm2,
        InsulationC = 90,
        LengthM = lengthM,
        Cores = [new Core { Id = "one", From = Terminal.Parse(from), To = Terminal.Parse(to), FromEnd = Ring(areaMm2), ToEnd = Ring(areaMm2) }],
        Run = [new RunLeg { Space = "cabin", LengthM = lengthM }],
    };

    public static Termination Ring(double lugMm2, double studMm = 8, int? fromFaceCount = null) => new(TerminationMeans.Ring, studMm, new Quantity(0.0001, Knowledge.Measured), lugMm2, fromFaceCount);

    /// <summary>The same lead with its first end made off otherwise.</summary>
    public static Cable FirstEnd(Cable lead, Termination? end) => lead with { Cores = [lead.Cores[0] with { FromEnd = end }] };

    private static Protection Fuse(string id) => new() { Id = id, Means = ProtectionMeans.Fuse, RatedA = 60, RatedV = 58, BreakingA = 5000, Gates = "strip-sf51", ResistanceOhm = 0.001, Place = new Place(1, 0, 1) };

    private static Link Strap(string id, string from, string to) => new() { Id = id, From = Terminal.Parse(from), To = Terminal.Parse(to), LengthM = 0.05, ResistanceOhm = 0.0001 };
}
