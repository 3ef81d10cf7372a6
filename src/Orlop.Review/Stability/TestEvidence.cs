using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using FreeboardSurvey = Orlop.Boat.Things.FreeboardSurvey;
using InclinationTest = Orlop.Boat.Things.InclinationTest;
using Tank = Orlop.Boat.Things.Tank;

namespace Orlop.Review.Stability;

/// <summary>
/// What each berth test says of the boat with another list aboard: measured, then the listed things that came and went since put in with their own errors.
/// A test that cannot be read is refused with an <see cref="ArgumentException"/> that says why.
/// </summary>
internal sealed class TestEvidence(BoatModel boat, HullBodies bodies)
{
    // Common practice, no source: hog or sag that may hide in a small boat of a metre's depth.
    private const double HogDeviationM = 0.005;

    // Res. A.749(18) annex 3 table: deep-sea fishing boats 0.80, scatter 0.05. Used where the owner gives none.
    public const double RollingFactor = 0.80;
    public const double RollingScatter = 0.05;

    private const double SeaWaterKgPerM3 = 1025;

    // How finely a heel is read, one standard deviation: a pendulum on its batten to 1 mm, an angle to 0.1° (common practice, no source).
    private const double BattenDeviationM = 0.0005;
    private const double AngleDeviationDeg = 0.05;

    private const double ReactionS = 0.2;

    // Fuller than this a tank counts as pressed up: 98 %, as in the tables of the trade (from memory).
    private const double FullFraction = 0.98;

    /// <summary>The evidence of a test about the boat with <paramref name="aboard"/> on her.</summary>
    /// <param name="test">The test.</param>
    /// <param name="aboard">What is to be aboard.</param>
    /// <param name="about">A first estimate, for what depends a little on it; null when there is none yet.</param>
    public IEnumerable<WeightEvidence> Of(BerthTest test, ImmutableArray<LedgerItem> aboard, WeightTotal? about) => test switch
    {
        FreeboardSurvey survey => Of(survey, aboard, about),
        RollingTest rolling => Of(rolling, aboard, about),
        InclinationTest inclining => Of(inclining, aboard, about),
        _ => [],
    };

    /// <summary>A freeboard survey, as read by the engine.</summary>
    public FreeboardResult Read(FreeboardSurvey survey) => FreeboardSurveyOf(survey);

    /// <summary>A rolling test, as read.</summary>
    public RollingReading Read(RollingTest rolling)
    {
        (double period, double periodDeviation) = PeriodOf(rolling);
        double factor = rolling.RollingFactor?.Value ?? RollingFactor;
        double scatter = rolling.RollingFactor?.PlusMinus ?? RollingScatter;
        double beam = boat.Particulars?.BeamM?.Value ?? throw new ArgumentException("the boat's beam is not given, and a rolling period is worth nothing without it");
        double gm = RollPeriod.Gm(factor, beam, period).GmM;
        return new RollingReading(period, periodDeviation, factor, gm, 2 * gm * Together(scatter / factor, periodDeviation / period));
    }

    // In s, and one standard deviation.
    private static (double PeriodS, double DeviationS) PeriodOf(RollingTest rolling)
    {
        if (rolling.Runs.Count == 0)
        {
            throw new ArgumentException("no run of timed rolls is written down");
        }

        double rolls = rolling.Runs.Sum(run => run.RollCount);
        double[] periods = [.. rolling.Runs.Select(run => run.TimeS / run.RollCount)];
        double mean = rolling.Runs.Sum(run => run.TimeS) / rolls;
        double hand = ReactionS * Math.Sqrt(2 * rolling.Runs.Count) / rolls;
        double scatter = periods.Length < 2 ? 0 : Math.Sqrt(periods.Sum(period => (period - mean) * (period - mean)) / (periods.Length - 1) / periods.Length);
        return (mean, Math.Max(hand, scatter));
    }

    private IEnumerable<WeightEvidence> Of(FreeboardSurvey survey, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        FreeboardResult read = FreeboardSurveyOf(survey);
        if (SpoiltTest.Marks(read) is { } why)
        {
            throw new ArgumentException(why);
        }

        Point3 centre = read.CentreOfGravityAt(about?.Centre.ZM ?? read.CentreOfBuoyancy.ZM);
        (double mass, Point3 moment, double deviation) = Since(survey, aboard);
        double total = read.DisplacementKg + mass;
        double massDeviation = Together(read.DisplacementDeviationKg, deviation);
        double lever = Math.Abs(moment.XM) > 0 || deviation > 0 ? deviation * LengthM / total : 0;
        yield return WeightEvidence.OfDisplacement(survey.Id, total, massDeviation);
        yield return WeightEvidence.OfLcg(survey.Id, ((read.DisplacementKg * centre.XM) + moment.XM) / total, Together(read.LcbDeviationM, lever));
        yield return WeightEvidence.OfTcg(survey.Id, ((read.DisplacementKg * centre.YM) + moment.YM) / total, Together(read.TcbDeviationM, lever / 4));
    }

    private FreeboardResult FreeboardSurveyOf(FreeboardSurvey survey) => Orlop.Hull.Measuring.FreeboardSurvey.Calculate(new FreeboardInput
    {
        Subject = survey.Title,
        Hull = Hull,
        WaterKgPerM3 = WaterOf(survey),
        HogDeviationM = survey.HogM?.Value ?? HogDeviationM,
        Readings = [.. survey.Marks.Select(mark => new FreeboardReading(mark.Name, WeightLedger.At(mark.Mark), mark.FreeboardM, mark.DeviationM))],
    });

    private IEnumerable<WeightEvidence> Of(RollingTest rolling, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        RollingReading read = Read(rolling);
        if (SpoiltTest.Runs(rolling) is { } why)
        {
            throw new ArgumentException(why);
        }

        return GmEvidence(rolling, read.GmM, read.GmDeviationM, aboard, about);
    }

    /// <summary>An inclining test, as read, of the boat as she was then: <paramref name="aboard"/> and <paramref name="about"/> tell her weight.</summary>
    public InclinationFound Read(InclinationTest inclining, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        WeightTotal then = Then(inclining, aboard, about);
        InclinationInput input = new()
        {
            Subject = inclining.Title,
            DisplacementKg = then.MassKg,
            DisplacementDeviationKg = then.MassDeviationKg,
            Readings = [.. inclining.Readings.Where(reading => !reading.IsLeftOut).Select(reading => new InclinationReading(reading.Name, reading.MassKg * reading.MovedM, TangentOf(reading), ReadToOf(reading)))],
        };
        InclinationResult fit = Orlop.Hull.Measuring.InclinationTest.Calculate(input);
        LineFit line = fit.WithIntercept;
        double km = KmM(inclining, then.MassKg, then.Centre.XM), loss = FreeSurfaceLossM(inclining, then.MassKg);
        // Displacement moves KM one way and, through the slope, GM the other.
        double perKg = KmPerKg(inclining, then) + (line.GmM / then.MassKg);
        return new InclinationFound(
            input, fit, km, loss, km - line.GmM - loss, Together(line.SlopeDeviationKgM / then.MassKg, perKg * then.MassDeviationKg));
    }

    private IEnumerable<WeightEvidence> Of(InclinationTest inclining, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        InclinationResult fit = Read(inclining, aboard, about).Fit;
        if (SpoiltTest.Shifts(fit) is { } why)
        {
            throw new ArgumentException(why);
        }

        LineFit line = fit.WithIntercept;
        return GmEvidence(inclining, line.GmM, line.GmDeviationM, aboard, about);
    }

    private static double TangentOf(InclinedReading reading) => reading switch
    {
        { HeelDeg: { } heel, DeflectionM: null, PendulumM: null } => Math.Tan(heel * Math.PI / 180),
        { HeelDeg: null, DeflectionM: { } deflection, PendulumM: { } pendulum } => deflection / pendulum,
        _ => throw new ArgumentException($"reading “{reading.Name}” needs either a pendulum's deflection and length, or the heel as an angle"),
    };

    private static double ReadToOf(InclinedReading reading) => reading.PendulumM is { } pendulum ? BattenDeviationM / pendulum : AngleDeviationDeg * Math.PI / 180;

    private double KmPerKg(BerthTest test, WeightTotal then)
    {
        double step = 0.02 * then.MassKg;
        return (KmM(test, then.MassKg + step, then.Centre.XM) - KmM(test, then.MassKg - step, then.Centre.XM)) / (2 * step);
    }

    // GM measured then is KM then less KG then; KG with what is aboard now follows by moments.
    private IEnumerable<WeightEvidence> GmEvidence(BerthTest test, double gm, double deviation, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        WeightTotal then = Then(test, aboard, about);
        (double mass, Point3 moment, _) = Since(test, aboard);
        double total = then.MassKg + mass;
        double km = KmM(test, then.MassKg, then.Centre.XM);
        double perKg = KmPerKg(test, then);
        double kg = ((then.MassKg * (km - gm - FreeSurfaceLossM(test, then.MassKg))) + moment.ZM) / total;
        yield return WeightEvidence.OfGm(test.Id, km - kg, deviation * then.MassKg / total, km, total, perKg);
    }

    // Tanks that were slack by the mass of their liquid then: second moment of the free surface at that level, the boat upright.
    private double FreeSurfaceLossM(BerthTest test, double massKg) => test.Aboard.Sum(item =>
    {
        if (boat.Find<Tank>(item.Id) is not { LiquidKgPerM3: { } density } tank || bodies.ShapeOf(tank) is not { } shape)
        {
            return 0;
        }

        double fill = item.MassKg / (density.Value * shape.SignedVolumeM3);
        return item.MassKg > 0 && fill < FullFraction ? density.Value * FreeSurface.TransverseM4(shape, fill) / massKg : 0;
    });

    private static WeightTotal Then(BerthTest test, ImmutableArray<LedgerItem> aboard, WeightTotal? about) =>
        about?.With(Changes(aboard, BoatWeighing.ItemsOf(test))) ?? throw new ArgumentException("it needs the displacement, from a freeboard survey that can be read or from the bare boat's mass and centre");

    /// <summary>What came and went from one list to another.</summary>
    public static IEnumerable<WeightChange> Changes(ImmutableArray<LedgerItem> was, ImmutableArray<LedgerItem> now)
    {
        Dictionary<string, LedgerItem> before = was.DistinctBy(item => item.Id).ToDictionary(item => item.Id, StringComparer.Ordinal);
        Dictionary<string, LedgerItem> after = now.DistinctBy(item => item.Id).ToDictionary(item => item.Id, StringComparer.Ordinal);
        return before.Keys.Union(after.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Select(id => new WeightChange(before.GetValueOrDefault(id), after.GetValueOrDefault(id)))
            .Where(change => change.Was != change.Now);
    }

    // Mass and moments that came since, and the deviation of that mass.
    private static (double MassKg, Point3 MomentKgM, double DeviationKg) Since(BerthTest test, ImmutableArray<LedgerItem> aboard)
    {
        double mass = 0, variance = 0;
        Point3 moment = default;
        foreach (WeightChange change in Changes(BoatWeighing.ItemsOf(test), aboard))
        {
            double was = change.Was?.MassKg ?? 0, now = change.Now?.MassKg ?? 0;
            mass += now - was;
            moment = moment + (now * (change.Now?.Place ?? default)) + (-was * (change.Was?.Place ?? default));
            variance += was == now ? 0 : Square(change.Was?.MassDeviationKg ?? 0) + Square(change.Now?.MassDeviationKg ?? 0);
        }

        return (mass, moment, Math.Sqrt(variance));
    }

    private double KmM(BerthTest test, double massKg, double lcgM)
    {
        FloatingResult result = Equilibrium.Solve(new FloatingInput
        {
            Subject = test.Title,
            Buoyancy = bodies.All,
            MassKg = massKg,
            CentreOfGravity = new Point3(lcgM, 0, Hull.Lowest.ZM),
            WaterKgPerM3 = WaterOf(test),
        });
        return result.Position is { } at ? at.CentreOfBuoyancy.ZM + at.MetacentricRadiusM : throw new ArgumentException($"she would not float then: {result.Message}");
    }

    private TriangleMesh Hull => bodies.Hull ?? throw new ArgumentException("the hull's lines are not given, or make no closed surface");

    private double LengthM => Hull.Highest.XM - Hull.Lowest.XM;

    private double WaterOf(BerthTest test) => (test.WaterDensityKgPerM3 ?? boat.Particulars?.WaterDensityKgPerM3)?.Value ?? SeaWaterKgPerM3;

    private static double Together(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static double Square(double value) => value * value;
}
