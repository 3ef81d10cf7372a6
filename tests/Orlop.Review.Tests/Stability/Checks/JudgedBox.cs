using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>A box of 10 × 4 × 2 m that floats 0.8 m deep, KG 1.2 m, GM 0.8667 m; weights sure to a gram unless a test says otherwise; one vent amidships 4 m up.</summary>
internal static class JudgedBox
{
    public const double MassKg = 32_800;
    public const double DraughtM = 0.8;
    public const double BmM = 16.0 / (12 * 0.8);
    public const double GmM = 0.4 + BmM - 1.2;

    public static BoatModel Of(params Thing[] more) => new BoatModel
    {
        Things =
        [
            new Particulars { Id = "particulars", LengthOverAllM = 10, BeamM = 4, Deck = DeckKind.Closed, WaterDensityKgPerM3 = 1025 },
            new PracticeChoice { Id = "practice", Basis = "owner" },
            new Condition { Id = "at-sea", Name = "At sea" },
            new HullLines { Id = "hull-lines", Stations = [Station("aft", 0), Station("middle", 5), Station("fore", 10)] },
            new HullOpening { Id = "vent", Use = OpeningUse.Vent, Place = new Place(5, 0, 4) },
            Bare(),
        ],
    }.With(more);

    public static BareBoat Bare(double massKg = MassKg, double kgM = 1.2, double tcgM = 0, double lcgM = 5, double massPlusMinus = 0.001, double kgPlusMinus = 1e-6, double tcgPlusMinus = 1e-6) => new()
    {
        Id = "bare-boat",
        MassKg = Sure(massKg, massPlusMinus),
        LcgM = Sure(lcgM, 1e-6),
        TcgM = Sure(tcgM, tcgPlusMinus),
        KgM = Sure(kgM, kgPlusMinus),
    };

    public static Gear Gear(string id, double massKg, double x, double y, double z) => new() { Id = id, MassKg = Sure(massKg, 0), Place = new Place(x, y, z), PlaceDeviationM = 0 };

    public static Deadweight Aboard(string id, DeadweightUse use, double massKg, double x, double y, double z, int count = 1) =>
        new() { Id = id, Use = use, MassKg = Sure(massKg, 0), Place = new Place(x, y, z), Aboard = [new DeadweightCount("at-sea", count)] };

    public static StabilityBasis Rules(params StabilityRule[] rules) => new() { Id = "stability-basis", Rules = [.. rules] };

    public static PracticeChoice Own(string limitId, double value) => new() { Id = "practice", Basis = "owner", Own = [new OwnLimit(limitId, value, "as wanted")] };

    public static Quantity Sure(double value, double plusMinus) => new(value, Knowledge.Measured, plusMinus);

    public static ReviewResult Review(this BoatModel boat, Alteration? alteration = null)
    {
        ReviewEngine engine = new([new StabilityDiscipline()]);
        return alteration is null ? engine.Review(boat, TestContext.Current.CancellationToken) : engine.Review(boat, alteration, TestContext.Current.CancellationToken);
    }

    public static Finding[] Found(this BoatModel boat, string checkId) => [.. Review(boat).Findings.Where(pair => pair.CheckId == checkId).SelectMany(pair => pair.After!.All)];

    public static Finding Only(this BoatModel boat, string checkId, string subjectId = "particulars") => Assert.Single(Found(boat, checkId), finding => finding.SubjectId == subjectId);

    public static double Number(this Finding finding, string what) => Assert.Single(finding.Working, line => line.What == what).Value!.Value;

    /// <summary>The amounts of the sentence, in order.</summary>
    public static double[] Amounts(this Finding finding) => [.. finding.Headline.Parts.Select(part => part.Amount?.Value).OfType<double>()];

    /// <summary>Wall-sided: (GM + ½ BM tan² φ) tan φ = y, G off the centre line by y.</summary>
    public static double WallSidedDeg(double gmM, double bmM, double offM)
    {
        double low = 0, high = 2;
        for (int i = 0; i < 200; i++)
        {
            double tan = 0.5 * (low + high);
            (low, high) = (gmM + (0.5 * bmM * tan * tan)) * tan < offM ? (tan, high) : (low, tan);
        }

        return Math.Atan(low) * 180 / Math.PI;
    }

    private static HullStation Station(string name, double x) =>
        new() { Name = name, IsSharp = true, Points = [new StationPoint(x, 0, 0), new StationPoint(x, 2, 0, "chine"), new StationPoint(x, 2, 2)] };
}
