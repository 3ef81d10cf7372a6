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

    // Res. A.749(18) annex 3 table: deep-sea fishing boats 0.80, scatter 0.05, taken as one standard deviation. Used where the owner gives none.
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
        return new RollingReading(period, periodDeviation, factor, scatter, gm, 2 * gm * Together(scatter / factor, periodDeviation / period));
    }

    /// <summary>KG of the boat as she was at a rolling test, by its GM alone and the metacentre of so much weight, slack tanks put back.</summary>
    public double ReadKgM(RollingTest rolling, ImmutableArray<LedgerItem> aboard, WeightTotal about)
    {
        MetacentreThen at = MetacentreAt(rolling, aboard, about);
        return at.KmM - Read(rolling).GmM - (at.FreeSurfaceKgM / at.Boat.MassKg);
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

        return FreeboardEvidence.Of(survey.Id, read, about?.Centre.ZM ?? read.CentreOfBuoyancy.ZM, Came(survey, aboard));
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

        return [WeightEvidence.OfGm(rolling.Id, read.GmM, read.GmDeviationM, MetacentreAt(rolling, aboard, about))];
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
        MetacentreThen at = MetacentreAt(inclining, aboard, about);
        double loss = at.FreeSurfaceKgM / then.MassKg, kg = at.KmM - line.GmM - loss;
        // Displacement moves KM one way and, through the slope, GM the other.
        double perKg = at.KmPerKg + ((at.KmM - kg) / then.MassKg);
        return new InclinationFound(input, fit, at.KmM, loss, kg, Together(line.SlopeDeviationKgM / then.MassKg, perKg * then.MassDeviationKg));
    }

    private IEnumerable<WeightEvidence> Of(InclinationTest inclining, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        InclinationResult fit = Read(inclining, aboard, about).Fit;
        if (SpoiltTest.Shifts(fit) is { } why)
        {
            throw new ArgumentException(why);
        }

        LineFit line = fit.WithIntercept;
        return [WeightEvidence.OfRightingMoment(inclining.Id, line.SlopeKgM, line.SlopeDeviationKgM, MetacentreAt(inclining, aboard, about))];
    }

    private static double TangentOf(InclinedReading reading) => reading switch
    {
        { HeelDeg: { } heel, DeflectionM: null, PendulumM: null } => Math.Tan(heel * Math.PI / 180),
        { HeelDeg: null, DeflectionM: { } deflection, PendulumM: { } pendulum } => deflection / pendulum,
        _ => throw new ArgumentException($"reading “{reading.Name}” needs either a pendulum's deflection and length, or the heel as an angle"),
    };

    private static double ReadToOf(InclinedReading reading) => reading.PendulumM is { } pendulum ? BattenDeviationM / pendulum : AngleDeviationDeg * Math.PI / 180;

    /// <summary>The metacentre of a boat of so much weight with no tank slack and nothing to come, in the water she floats in: what an inclining test still to be made will find.</summary>
    public MetacentreThen MetacentreOf(WeightTotal total) =>
        MetacentreOf("the boat", WaterOf(null), total, WeightTotal.Nothing, 0);

    private MetacentreThen MetacentreAt(BerthTest test, ImmutableArray<LedgerItem> aboard, WeightTotal? about) =>
        MetacentreOf(test.Title, WaterOf(test), Then(test, aboard, about), Came(test, aboard), FreeSurfaceKgM(test));

    private MetacentreThen MetacentreOf(string subject, double waterKgPerM3, WeightTotal then, WeightTotal came, double freeSurfaceKgM)
    {
        double massStep = 0.02 * then.MassKg, lcgStep = 0.01 * LengthM;
        return new MetacentreThen
        {
            Boat = then,
            Came = came,
            KmM = Km(0, 0),
            KmPerKg = (Km(massStep, 0) - Km(-massStep, 0)) / (2 * massStep),
            KmPerLcgRatio = (Km(0, lcgStep) - Km(0, -lcgStep)) / (2 * lcgStep),
            FreeSurfaceKgM = freeSurfaceKgM,
        };

        double Km(double moreKg, double forwardM) => KmM(subject, waterKgPerM3, then.MassKg + moreKg, then.Centre.XM + forwardM);
    }

    // Tanks that were slack by the mass of their liquid then: second moment of the free surface at that level, the boat upright.
    private double FreeSurfaceKgM(BerthTest test) => SlackIn(test).Sum(tank => tank.FreeSurfaceKgM ?? 0);

    private IEnumerable<SlackTank> SlackIn(BerthTest test)
    {
        foreach (AboardItem item in test.Aboard.Where(item => item.MassKg > 0))
        {
            if (boat.Find<Tank>(item.Id) is not { } tank)
            {
                continue;
            }

            if (tank.LiquidKgPerM3 is not { } density || bodies.ShapeOf(tank) is not { } shape)
            {
                yield return new SlackTank(tank.Title, null, null);
            }
            else if (item.MassKg / (density.Value * shape.SignedVolumeM3) is < FullFraction and var fill)
            {
                yield return new SlackTank(tank.Title, fill, density.Value * FreeSurface.TransverseM4(shape, fill));
            }
        }
    }

    /// <summary>Tanks that were slack while she was rolled or inclined, and what they took; null where none was. <paramref name="aboard"/> and <paramref name="about"/> tell her weight.</summary>
    public SlackAtTest? Slack(BerthTest test, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        SlackTank[] slack = [.. SlackIn(test)];
        return slack.Length == 0 ? null : new SlackAtTest([.. slack], about is null ? null : slack.Sum(tank => tank.FreeSurfaceKgM ?? 0) / Then(test, aboard, about).MassKg);
    }

    private WeightTotal Then(BerthTest test, ImmutableArray<LedgerItem> aboard, WeightTotal? about) =>
        about?.With(Changes(aboard, AboardThen.Of(boat, test))) ?? throw new ArgumentException("it needs the displacement, from a freeboard survey that can be read or from the bare boat's mass and centre");

    /// <summary>What came and went from one list to another.</summary>
    public static IEnumerable<WeightChange> Changes(ImmutableArray<LedgerItem> was, ImmutableArray<LedgerItem> now)
    {
        Dictionary<string, LedgerItem> before = was.DistinctBy(item => item.Id).ToDictionary(item => item.Id, StringComparer.Ordinal);
        Dictionary<string, LedgerItem> after = now.DistinctBy(item => item.Id).ToDictionary(item => item.Id, StringComparer.Ordinal);
        return before.Keys.Union(after.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal)
            .Select(id => new WeightChange(before.GetValueOrDefault(id), after.GetValueOrDefault(id)))
            .Where(change => change.Was != change.Now);
    }

    // What came since, less what went, each thing's errors once.
    private WeightTotal Came(BerthTest test, ImmutableArray<LedgerItem> aboard) => WeightTotal.Nothing.With(Changes(AboardThen.Of(boat, test), aboard));

    private double KmM(string subject, double waterKgPerM3, double massKg, double lcgM)
    {
        FloatingResult result = Equilibrium.Solve(new FloatingInput
        {
            Subject = subject,
            Buoyancy = bodies.All,
            MassKg = massKg,
            CentreOfGravity = new Point3(lcgM, 0, Hull.Lowest.ZM),
            WaterKgPerM3 = waterKgPerM3,
        });
        return result.Position is { } at ? at.CentreOfBuoyancy.ZM + at.MetacentricRadiusM : throw new ArgumentException($"she would not float then: {result.Message}");
    }

    private TriangleMesh Hull => bodies.Hull ?? throw new ArgumentException("the hull's lines are not given, or make no closed surface");

    private double LengthM => Hull.Highest.XM - Hull.Lowest.XM;

    private double WaterOf(BerthTest? test) => (test?.WaterDensityKgPerM3 ?? boat.Particulars?.WaterDensityKgPerM3)?.Value ?? SeaWaterKgPerM3;

    private static double Together(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
