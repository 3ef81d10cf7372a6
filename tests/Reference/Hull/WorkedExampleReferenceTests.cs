using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Reference.Tests.Hull;

/// <summary>
/// Published problems of stability-worked-examples.csv that can be put to the engine as a hull, a load or a list of weights; only those that the file marks as right. Tons and feet
/// stand for kg and m where a problem is free of units.
/// </summary>
public sealed class WorkedExampleReferenceTests
{
    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceCsv.Load("stability-worked-examples.csv", expectedRows: 84);

    [Fact]
    public void Weights_TwoLoadingSheets_Agree()
    {
        var first = Sum((1247.66, 32.04, 5.93), (3.60, 11.00, 9.60), (5.00, 3.50, 7.30), (177.21, 30.88, 1.56), (4.50, 8.45, 4.65), (103.09, 27.19, 4.61), (993.94, 42.62, 4.35), (90.00, 38.66, 6.08));
        Row("W1", "displacement").Agrees(2625.00, first.MassKg, 5e-3);
        Row("W1", "KG").Agrees(Row("W1", "KG").Number("computed"), first.Centre!.Value.ZM, 1e-8);
        Row("W1", "LCG").Agrees(Row("W1", "LCG").Number("computed"), first.Centre.Value.XM, 1e-8);
        var second = Sum((148.46, -0.65, 3.48), (8.9, 5.05, 2.06), (9.0, 3.45, 1.78), (13.10, 1.25, 1.17), (12.8, -1.78, 1.20), (12.6, -4.83, 2.40), (0.55, -7.90, 2.50), (1.0, 6.0, 4.0), (4.0, 0, 3.0), (2.0, 7.0, 2.0));
        Row("W2", "displacement").Agrees(212.41, second.MassKg, 5e-3);
        Row("W2", "KG").Agrees(2.98, second.Centre!.Value.ZM, 5e-3);
        Row("W2", "LCG").Agrees(Row("W2", "LCG").Number("computed"), second.Centre.Value.XM, 5e-6);
    }

    [Fact]
    public void Weights_PublishedCentres_Agree()
    {
        Row("K1", "KG").Agrees(9.82, Sum((1800, 0, 10), (3400, 0, 9), (400, 0, 16)).Centre!.Value.ZM, 5e-3);
        Row("K2", "GM").Agrees(Row("K2", "GM").Number("computed"), 22 - Sum((10000, 0, 20), (2000, 0, 30), (4500, 0, 18)).Centre!.Value.ZM, 5e-6);
        Row("K5", "GM").Agrees(0.8, 22 - Sum((3250, 0, 20), (1000, 0, 24), (1500, 0, 22), (1250, 0, 21), (1100, 0, 19), (900, 0, 23), (600, 0, 25), (400, 0, 18)).Centre!.Value.ZM, 0.05);
    }

    // Boxes: B1 200 × 40 × 18 ft at 10 ft; B2 beam 36 ft at 18 ft; B4 1640 t, 50 × 10 m; B6 beam 10 m at draught B/√6.
    [Fact]
    public void Hydrostatics_PublishedBoxes_Agree()
    {
        Row("B1", "KM").Agrees(18.33, Box(200, 40, 18, 10).KmM, 5e-3);
        Row("B2", "BM").Agrees(6, Box(100, 36, 40, 18).BmM, 1e-12);
        Row("B4", "KB").Agrees(1.6, Box(50, 10, 8, 1640 / (50 * 10 * 1.025)).KbM, 1e-12);
        Row("B6", "KM").Agrees(4.08, Box(50, 10, 8, 10 / Math.Sqrt(6)).KmM, 5e-3);
        Row("B6", "KM").Agrees(Row("B6", "KM").Number("computed"), Box(50, 10, 8, 10 / Math.Sqrt(6)).KmM, 5e-8);
    }

    // B7: box 40 × 6 m at 2 m, 10 m amidships open to the sea, GM 0.6 m before: 0.5583 m (the print, 0.5559, rounded the new draught).
    [Fact]
    public void Flooding_PublishedBox_HasTheComputedGm()
    {
        var boat = Loaded(40, 6, 5, 2, (2.0 / 2) + (36 / 24.0) - 0.6);
        var flooded = boat with { Flooded = [new FloodedSpace("amidships", Solids.Box(new Point3(15, -3, 0), new Point3(25, 3, 5)), 1)] };
        Row("B7", "GM").Agrees(Row("B7", "GM").Number("computed"), Equilibrium.Solve(flooded).Position!.MetacentricHeightM, 5e-8);
    }

    // G3: box 55 × 7.5 × 6 m, KG 2.7 m, draught 4 m, salt: righting moment at 24° 404.498 t·m by the wall-sided formula, which is exact to 28°.
    [Fact]
    public void Righting_PublishedBoxAtTwentyFourDegrees_Agrees()
    {
        var boat = Loaded(55, 7.5, 6, 4, 2.7);
        var curve = RightingCurve.Calculate(new RightingInput { Boat = boat, ToDeg = 30 });
        var row = Rows.Single(row => row.Text("id") == "G3" && row.Text("inputs").Contains("24 deg", StringComparison.Ordinal));
        row.Agrees(404.498, curve.At(24)!.GzM * boat.MassKg / 1000, 5e-4);
    }

    // A2: box of beam 12 m at 4 m, loll 25°: GM -0.326. A5: box 100 × 12 m at 4 m, loll 18°: KG 5.158 m.
    [Fact]
    public void Loll_PublishedBoxes_Agree()
    {
        var km = (4 / 2.0) + (144 / 48.0);
        var first = Equilibrium.Solve(Loaded(100, 12, 10, 4, km - Row("A2", "GM").Number("computed"))).Position!;
        Row("A2", "GM").Agrees(25, first.Attitude.HeelDeg, 1e-5);
        Assert.True(first.IsLoll);
        var second = Equilibrium.Solve(Loaded(100, 12, 10, 4, Row("A5", "KG").Number("computed"))).Position!;
        Row("A5", "KG").Agrees(18, second.Attitude.HeelDeg, 1e-4);
    }

    // F4: 16 000 t, tank 20 m long and 8 m wide, liquid 1.010: loss of GM 0.0539 m (printed 0.054). Put to the engine at half size: an eighth of the mass, half the loss.
    [Fact]
    public void FreeSurface_PublishedTank_Agrees()
    {
        var boat = Loaded(50, 10, 7.5, 4, 2.5);
        var tank = new Tank { Id = "tank", Shape = Solids.Box(new Point3(20, -2, 0.5), new Point3(30, 2, 1.5)), FillFraction = 0.5, LiquidKgPerM3 = 1010 };
        var light = boat with { MassKg = 2_000_000 - (1010 * 20), Tanks = [tank] };
        var frozen = (light with { Tanks = [] }).With(new WeightItem("ice", 1010 * 20, new Point3(25, 0, 0.75)));
        var loss = Equilibrium.Solve(frozen).Position!.MetacentricHeightM - Equilibrium.Solve(light).Position!.MetacentricHeightM;
        Rows.Single(row => row.Text("id") == "F4").Agrees(0.0538667, 2 * loss, 5e-8);
    }

    // L3: KM 7.4, KG 6.8 after the move, 1000 t·m across: 9.462° by tan = w·d/(W·GM). A round hull keeps its metacentre at every angle, so the rule is exact on it.
    [Fact]
    public void List_PublishedShift_AgreesOnARoundHull()
    {
        var hull = Solids.Cylinder(0, 50, 0, 7.4, 7.4, 2880);
        var boat = new FloatingInput { Subject = "L3", Buoyancy = [hull], MassKg = 4_000_000, CentreOfGravity = new Point3(25, -1000.0 / 10_000, 6.8), WaterKgPerM3 = 1025 };
        var row = Rows.Single(row => row.Text("id") == "L3");
        row.Agrees(row.Number("computed"), Equilibrium.Solve(boat).Position!.Attitude.HeelDeg, 5e-4);
    }

    private static ReferenceRow Row(string id, string quantity) => Rows.First(row => row.Text("id") == id && row.Text("quantity") == quantity);

    private static WeightSumResult Sum(params (double Mass, double X, double Z)[] items) =>
        WeightSum.Calculate(items.Select((item, i) => new WeightItem($"item-{i:00}", item.Mass, new Point3(item.X, 0, item.Z))));

    private static HydrostaticRow Box(double length, double beam, double depth, double draught) => HydrostaticTable.Calculate(new HydrostaticInput
    {
        Subject = "box",
        Hull = Solids.Box(new Point3(0, -beam / 2, 0), new Point3(length, beam / 2, depth)),
        DraughtsM = [draught],
        WaterKgPerM3 = 1025,
        TrimLengthM = length,
    }).Rows[0];

    private static FloatingInput Loaded(double length, double beam, double depth, double draught, double kg) => new()
    {
        Subject = "box",
        Buoyancy = [Solids.Box(new Point3(0, -beam / 2, 0), new Point3(length, beam / 2, depth))],
        MassKg = 1025 * length * beam * draught,
        CentreOfGravity = new Point3(length / 2, 0, kg),
        WaterKgPerM3 = 1025,
    };
}
