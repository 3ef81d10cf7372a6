using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Stability;
using Orlop.Review.Tests.Stability.Checks;
using Xunit;

namespace Orlop.Review.Tests.Stability;

/// <summary>What the tool says would settle a result does: a test made exactly as good as it says brings the band to the limit, or within it.</summary>
public sealed partial class SettlingTestTests
{
    private const double WaterPlaneKgPerM = 41_000;

    // No source but itself: the statement, and the estimate with the test that it asks for put in as a thing of the boat.
    [Fact]
    public void RandomBoats_ATestAsGoodAsAsked_SettlesIt()
    {
        int inclined = 0, surveyed = 0, both = 0, near = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            Random random = new(seed);
            BoatModel boat = RandomBoat(random);
            (double gm, double band) = GmOf(boat);
            double limit = gm - (band * (0.1 + (0.85 * random.NextDouble())));
            string said = Said(boat, limit);
            double? kg = Stated(said, Kg()), weight = Stated(said, Weight());
            Assert.True(kg is not null || weight is not null || said.Contains("too near", StringComparison.Ordinal) || said.Contains("knows TCG", StringComparison.Ordinal) || said.Contains("knows LCG", StringComparison.Ordinal), said);
            if (kg is null && weight is null)
            {
                near++;
                continue;
            }

            BoatModel with = weight is { } massBand ? Surveyed(boat, massBand / 2) : boat;
            with = kg is { } kgBand ? Inclined(with, kgBand / 2) : with;
            (double after, double left) = GmOf(with);
            Assert.True(left <= 1.03 * (after - limit), FormattableString.Invariant($"seed {seed}: {said}; ± {left} of {after - limit}"));
            inclined += kg is not null && weight is null ? 1 : 0;
            surveyed += kg is null ? 1 : 0;
            both += kg is not null && weight is not null ? 1 : 0;
        }

        Assert.True(inclined > 5, $"{inclined} {surveyed} {both} {near}");
        Assert.True(surveyed + both > 0, $"{inclined} {surveyed} {both} {near}");
    }

    // The list knows little: what is asked is what the test must tell, and a test that is a fifth worse leaves it open.
    [Fact]
    public void ATestWorseThanAsked_LeavesItOpen()
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(massPlusMinus: 100, kgPlusMinus: 0.5));
        (double gm, _) = GmOf(boat);
        double limit = gm - 0.1, kg = Stated(Said(boat, limit), Kg())!.Value;

        (double asked, double settled) = GmOf(Inclined(boat, kg / 2));
        (double worse, double open) = GmOf(Inclined(boat, 1.2 * kg / 2));
        Assert.InRange(settled / (asked - limit), 0.95, 1.0);
        Assert.True(open > worse - limit);
    }

    // A box of 10 × 4 m, KM = d/2 + B²/(12 d): KG = KM(Δ) - S/Δ, its deviation √((σS/Δ)² + ((KM' + S/Δ²)·σΔ)²) with KM' = (1/2 - B²/(12 d²))/41 000. GM and KM taken as independent gave
    // √((σS/Δ)² + (S/Δ²)²·σΔ² + KM'²·σΔ²), which is more.
    [Fact]
    public void Inclined_KgIsAsSureAsTheTestSays()
    {
        BoatModel boat = Inclined(Surveyed(JudgedBox.Of(JudgedBox.Bare(massPlusMinus: 2000, kgPlusMinus: 1)), 600), 0.02);
        StabilityView view = boat.View();
        InclinationFound read = view.Read(boat.All<InclinationTest>().Single());
        double slope = read.Fit.WithIntercept.SlopeKgM, mass = view.Weight.Total!.MassKg, draught = mass / WaterPlaneKgPerM;
        double perMass = (0.5 - (16 / (12 * draught * draught))) / WaterPlaneKgPerM, ofSlope = read.Fit.WithIntercept.SlopeDeviationKgM / mass, massDeviation = view.Weight.Total.MassDeviationKg;
        double expected = Math.Sqrt((ofSlope * ofSlope) + Math.Pow((perMass + (slope / (mass * mass))) * massDeviation, 2));

        Assert.Equal(expected, view.Weight.Total.KgDeviationM, 0.02 * expected);
        Assert.Equal(read.KgDeviationM, view.Weight.Total.KgDeviationM, 0.02 * expected);
        Assert.True(view.Weight.Total.KgDeviationM < 0.8 * Math.Sqrt((expected * expected) + Math.Pow(slope / (mass * mass) * massDeviation, 2)));
    }

    // GM hangs on the displacement by KM' - (KM - KG)/Δ and more: with ± 3 t no KG settles it.
    [Fact]
    public void KgDoesNotSuffice_SaysSo_AndWhatDoes()
    {
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(massPlusMinus: 6000, kgPlusMinus: 0.1));
        (double gm, double band) = GmOf(boat);
        string said = Said(boat, gm - (0.5 * band));

        Assert.StartsWith("even KG known exactly would leave it open; ", said, StringComparison.Ordinal);
        Assert.Contains("a freeboard survey that knows her weight to ± ", said, StringComparison.Ordinal);
    }

    // A crew of ± 4 · 75 kg · 0.3 on a hull known to a kilogram: the crew it is, whether they came since or were aboard at the test.
    [Fact]
    public void CrewOfUnknownWeight_IsNamed()
    {
        Deadweight crew = new() { Id = "crew", Name = "Crew", Use = DeadweightUse.People, MassKg = JudgedBox.Sure(75, 22.5), Place = new Place(5, 0, 3), Aboard = [new DeadweightCount("at-sea", 4)] };
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(kgPlusMinus: 1e-4), crew);
        (double gm, double band) = GmOf(boat);

        Assert.Contains("weighing Crew, ± 180 kg now,", Said(boat, gm - (0.05 * band)), StringComparison.Ordinal);
    }

    private static BoatModel RandomBoat(Random random)
    {
        Deadweight crew = new()
        {
            Id = "crew",
            Use = DeadweightUse.People,
            MassKg = JudgedBox.Sure(80, 24 * random.NextDouble()),
            Place = new Place(4, 0, 2.5),
            Aboard = [new DeadweightCount("at-sea", random.Next(0, 4))],
        };
        BoatModel boat = JudgedBox.Of(JudgedBox.Bare(25_000 + (15_000 * random.NextDouble()), 0.9 + (0.4 * random.NextDouble()), massPlusMinus: 100 + (3000 * random.NextDouble()), kgPlusMinus: 0.05 + (0.3 * random.NextDouble())), crew);
        boat = random.Next(2) == 0 ? boat : Surveyed(boat, 100 + (900 * random.NextDouble()), "earlier");
        return random.Next(4) > 0 ? boat : Inclined(boat, 0.1 + (0.1 * random.NextDouble()), "earlier-inclining");
    }

    private static (double GmM, double BandM) GmOf(BoatModel boat)
    {
        (StabilityView view, LoadedBoat loaded) = Loaded(boat);
        return (Gm(view, loaded).Value, Gm(view, loaded).Half);
    }

    private static string Said(BoatModel boat, double limit)
    {
        (StabilityView view, LoadedBoat loaded) = Loaded(boat);
        Banded gm = Gm(view, loaded);
        return SettlingTest.Of(view, loaded, gm.Slopes!.Value, null, gm.Value - limit);
    }

    private static (StabilityView View, LoadedBoat Loaded) Loaded(BoatModel boat)
    {
        StabilityView view = boat.View();
        return (view, view.LoadedIn(view.Conditions[0]));
    }

    private static Banded Gm(StabilityView view, LoadedBoat loaded) =>
        view.NearbyIn(loaded.Condition).Banded(view.FloatingIn(loaded.Condition)!.Rest.Position!.MetacentricHeightM, near => near.MetacentricHeightM);

    // Nothing of the list aboard, as heavy as the estimate says, read so finely that it tells the displacement to so much.
    private static BoatModel Surveyed(BoatModel boat, double deviationKg, string id = "survey")
    {
        double freeboard = 2 - (boat.View().Weight.Total!.MassKg / WaterPlaneKgPerM), factor = 1;
        for (int i = 0; ; i++)
        {
            FreeboardSurvey survey = new()
            {
                Id = id,
                IsBare = true,
                WaterDensityKgPerM3 = JudgedBox.Sure(1025, 0),
                HogM = JudgedBox.Sure(0.005 * factor, 0),
                Marks = [.. from x in new[] { 0.0, 5, 10 } from y in new[] { -2.0, 2 } select new FreeboardMark($"{x} {y}", new Place(x, y, 2), freeboard, 0.005 * factor)],
            };
            double now = boat.View().Read(survey).DisplacementDeviationKg;
            if (i == 4)
            {
                return boat.With([survey]);
            }

            factor *= deviationKg / now;
        }
    }

    // Moments that fit the estimate, read by a pendulum so long that the test by itself tells KG to so much.
    private static BoatModel Inclined(BoatModel boat, double kgDeviationM, string id = "inclined")
    {
        (double low, double high) = (1e-4, 1e3);
        for (int i = 0; i < 30; i++)
        {
            double middle = Math.Sqrt(low * high);
            BoatModel with = boat.With([Test(middle)]);
            (low, high) = with.View().Read(Test(middle)).KgDeviationM > kgDeviationM ? (middle, high) : (low, middle);
        }

        return boat.With([Test(high)]);

        InclinationTest Test(double pendulumM)
        {
            double moment = boat.View().Weight.Metacentre!.RightingMomentKgM;
            return new()
            {
                Id = id,
                IsBare = true,
                WaterDensityKgPerM3 = JudgedBox.Sure(1025, 0),
                Readings = [.. new[] { -0.04, -0.02, 0, 0.02, 0.04 }.Select(tangent => new InclinedReading($"at {tangent}", 100, moment * tangent / 100, DeflectionM: tangent * pendulumM, PendulumM: pendulumM))],
            };
        }
    }

    private static double? Stated(string said, Regex number) => number.Match(said) is { Success: true } match ? double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex("knows KG to ± ([0-9.]+) m")]
    private static partial Regex Kg();

    [GeneratedRegex("knows her weight to ± ([0-9.]+) kg")]
    private static partial Regex Weight();
}
