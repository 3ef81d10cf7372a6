using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>Things of which nobody told whether they are what was aboard at a test, in the boat as built. The box of 32.8 t was surveyed with an engine guessed at 850 kg.</summary>
public sealed class UntoldThingTests
{
    private static readonly Gear Engine = new() { Id = "engine", Name = "Engine", MassKg = new Quantity(850, Knowledge.Guessed), Place = new Place(5, 0, 0.6) };

    // A guess that is wider than the first, one beyond its band, and a thing that had no mass then: none is known to have come.
    [Fact]
    public void AnotherMassThanInTheList_IsUnknownAndNamesBoth()
    {
        Quantity[] masses = [new Quantity(1200, Knowledge.Guessed), StableBoats.Known(1500, 10)];
        Assert.All(masses, mass =>
        {
            Finding drift = Boat(Engine with { MassKg = mass }).Only("drift-since-test", "survey");
            Assert.Equal(Verdict.Unknown, drift.Verdict);
            Assert.Contains($"Engine (850 Kg in its list, {mass.Value} Kg now)", drift.Headline.ToString(), StringComparison.Ordinal);
            Assert.Contains("correct it in the test's list", drift.Headline.ToString(), StringComparison.Ordinal);
            Assert.Contains(new FindingInput("survey", "aboard"), drift.Inputs);
        });
        Finding cooker = Boat(Engine, JudgedBox.Gear("cooker", 40, 6, 0, 1)).Only("drift-since-test", "survey");
        Assert.Equal(Verdict.Unknown, cooker.Verdict);
        Assert.Contains("cooker (not in its list, 40 Kg now)", cooker.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, Boat(Engine).Only("drift-since-test", "survey").Verdict);
    }

    // 900 kg told as fitted are over 2 % of 32.8 t whatever the engine was.
    [Fact]
    public void WhatFailsWithoutThem_Fails()
    {
        Gear crane = JudgedBox.Gear("crane", 900, 5, 0, 1.2);
        Alteration fitting = new() { Id = "fitting", Status = AlterationStatus.Built, Edits = [new Edit { Id = "crane", Becomes = crane, BuiltOn = new DateOnly(2026, 11, 1) }] };

        Assert.Equal(Verdict.Fails, Boat(Engine with { MassKg = StableBoats.Known(1500, 10) }, crane, fitting).Only("drift-since-test", "survey").Verdict);
    }

    // 4 t more at 0.6 m: Δ·KG = 39 360 + 2400 on 36.8 t is KG 1.1348 m, KM at 0.8976 m draught 0.4488 + 1.4855 m, GM 0.7995 m; had they been there, 27.95 t at 1.216 m and 4.85 t at 0.6 m, KG 1.1249 m, GM 0.9418 m (closed form).
    [Theory]
    [InlineData(0.70, Verdict.Holds)]
    [InlineData(0.87, Verdict.Unknown)]
    [InlineData(1.05, Verdict.Fails)]
    public void CriterionThatDiffersBothWays_IsUnknown(double leastM, Verdict verdict)
    {
        Finding finding = Weighed(Engine with { MassKg = StableBoats.Known(4850, 1) }, JudgedBox.Own(LimitIds.LeastGmM, leastM)).Only("least-gm");

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Unknown, finding.Headline.ToString().Contains("nothing tells whether Engine", StringComparison.Ordinal));
    }

    private static BoatModel Boat(Gear engine, params Thing[] more) => Listed(engine, 255, more);

    // The engine of the list was on the scales.
    private static BoatModel Weighed(Gear engine, params Thing[] more) => Listed(engine, 1, more);

    private static BoatModel Listed(Gear engine, double thenDeviationKg, Thing[] more) => JudgedBox.Of(
    [
        JudgedBox.Bare(massKg: 31_950, massPlusMinus: 4000, kgM: ((JudgedBox.MassKg * 1.2) - (850 * 0.6)) / 31_950, kgPlusMinus: 1e-4), engine,
        new FreeboardSurvey
        {
            Id = "survey",
            On = new DateOnly(2026, 10, 1),
            Aboard = [new AboardItem("engine", 850, Engine.Place!, thenDeviationKg, 0.05, IsCarried: false)],
            Marks = [.. new[] { 0.0, 10 }.SelectMany(x => new[] { -2.0, 2 }.Select(y => new FreeboardMark($"mark {x} {y}", new Place(x, y, 2), 1.2, 0.0005)))],
        },
        .. more,
    ]);
}
