using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;
using Orlop.Review.Tests.Stability.Checks;
using Xunit;
using FreeboardSurvey = Orlop.Boat.Things.FreeboardSurvey;

namespace Orlop.Review.Tests.Stability;

/// <summary>What an alteration makes of a mass is a change of the boat since a test, drafted or built; what is typed into the boat as built is better known. The survey weighed the box with an engine guessed at 850 kg, 32.8 t together.</summary>
public sealed class AlteredSinceTests
{
    private static readonly DateOnly Surveyed = new(2026, 10, 1), Later = new(2026, 11, 1), Earlier = new(2026, 9, 1);
    private static readonly Gear Engine = new() { Id = "engine", MassKg = new Quantity(850, Knowledge.Guessed), Place = new Place(3, 0, 0.6) };
    private static readonly BoatModel AsBuilt = StableBoats.Box(StableBoats.Bare(massKg: 31_950), Engine, new FreeboardSurvey
    {
        Id = "survey",
        On = Surveyed,
        WaterDensityKgPerM3 = 1025,
        Aboard = [new AboardItem("engine", 850, Engine.Place!, 255, 0.05, IsCarried: false)],
        Marks = [.. new[] { 0.0, 10 }.SelectMany(x => new[] { -2.0, 2 }.Select(y => new FreeboardMark($"mark {x} {y}", new Place(x, y, 2), 1.2)))],
    });

    // Within two deviations of the guess, and all the same another engine: 450 kg more, its own ± in place of the guess's.
    [Fact]
    public void MassOfADraft_IsAChangeOfTheBoat()
    {
        WeightTotal was = AsBuilt.Loaded().Total!, drafted = Drafted(Engine with { MassKg = StableBoats.Known(1300, 10) }).Loaded().Total!;

        Assert.Equal(was.MassKg + 450, drafted.MassKg, 1e-6);
        Assert.Equal(((was.MassKg * was.Centre.ZM) + (450 * 0.6)) / drafted.MassKg, drafted.Centre.ZM, 1e-9);
        Finding drift = Drafted(Engine with { MassKg = StableBoats.Known(1300, 10) }).Only("drift-since-test", "survey");
        Assert.Contains(drift.Working, line => line.What == "engine" && Math.Abs(line.Value!.Value - 450) < 1e-6);
    }

    // Typed into the boat as built it is the engine that was weighed with her.
    [Fact]
    public void MassTypedIntoTheBoatAsBuilt_IsBetterKnown() =>
        Assert.Equal(AsBuilt.Loaded().Total!.MassKg, AsBuilt.With(Engine with { MassKg = StableBoats.Known(1300, 10) }).Loaded().Total!.MassKg, 5.0);

    // What a draft only moves or names keeps what is known of it, and what is learnt of it later.
    [Fact]
    public void MovedByAnAlteration_AndWeighedLater_IsTheSameEngine()
    {
        BoatModel moved = Built(AsBuilt, Draft(AsBuilt, Engine with { Place = new Place(4, 0, 0.6) }), Later);
        BoatModel weighed = moved.With(moved.Find<Gear>("engine")! with { MassKg = StableBoats.Known(900, 10) });

        Assert.Equal(moved.Loaded().Total!.MassKg, weighed.Loaded().Total!.MassKg, 5.0);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void DraftAndBuilt_WeighTheSame(int seed)
    {
        Random random = new(seed);
        for (int run = 0; run < 20; run++)
        {
            Gear? becomes = random.Next(5) == 0 ? null : Engine with
            {
                MassKg = random.Next(2) == 0 ? StableBoats.Known(random.Next(1, 2000), random.Next(1, 300)) : new Quantity(random.Next(1, 2000), Knowledge.Guessed),
                Place = random.Next(2) == 0 ? Engine.Place : new Place(random.Next(10), 0, 1),
            };
            Alteration draft = Draft(AsBuilt, becomes);
            WeightTotal drafted = AlteredBoat.Of(AsBuilt.With(draft), draft).Boat.Loaded().Total!, built = Built(AsBuilt, draft, Later).Loaded().Total!;
            AssertSame(drafted, built);
            Assert.Equal(AsBuilt.Loaded().Total!.MassKg - 850 + (becomes?.MassKg!.Value ?? 0), built.MassKg, 1e-6);
        }
    }

    [Fact]
    public void PutInAndTakenOutAgain_ReturnsTheSameBits()
    {
        BoatModel heavy = Built(AsBuilt, Draft(AsBuilt, Engine with { MassKg = StableBoats.Known(1300, 10) }), Later);
        BoatModel back = Built(heavy, Draft(heavy, Engine) with { Id = "back" }, Later.AddDays(1));
        Gear crate = StableBoats.Gear("crate", 300, new Place(6, 0.5, 1));
        BoatModel with = Built(AsBuilt, Draft(AsBuilt, crate), Later);
        BoatModel without = Built(with, new Alteration { Id = "off", Edits = [BoatEdits.Remove(crate)] }, Later.AddDays(1));

        Assert.NotEqual(AsBuilt.Loaded().Total!.MassKg, with.Loaded().Total!.MassKg);
        AssertSame(AsBuilt.Loaded().Total!, back.Loaded().Total!);
        AssertSame(AsBuilt.Loaded().Total!, without.Loaded().Total!);
    }

    // Built before she was surveyed, or on the day: she was surveyed with it.
    [Fact]
    public void BuiltBeforeTheTest_WasWeighedWithHer()
    {
        FreeboardSurvey survey = AsBuilt.Find<FreeboardSurvey>("survey")! with { Aboard = [new AboardItem("engine", 1300, Engine.Place!, 10, 0.05, IsCarried: false)] };
        Alteration draft = Draft(AsBuilt, Engine with { MassKg = StableBoats.Known(1300, 10) });

        Assert.All(new[] { Earlier, Surveyed }, day => Assert.Equal(AsBuilt.Loaded().Total!.MassKg, Built(AsBuilt, draft, day).With(survey).Loaded().Total!.MassKg, 5.0));
    }

    private static BoatModel Drafted(Gear becomes) => Draft(AsBuilt, becomes) is var draft ? AlteredBoat.Of(AsBuilt.With(draft), draft).Boat : AsBuilt;

    private static Alteration Draft(BoatModel boat, Gear? becomes) => AlteredBoat.WithEdit(boat, new Alteration { Id = "exchange" }, becomes?.Id ?? "engine", becomes);

    private static BoatModel Built(BoatModel boat, Alteration draft, DateOnly on)
    {
        BoatModel with = boat.With(draft);
        EditOutcome outcome = BoatEdits.Apply(with, AlteredBoat.Build(with, draft, [.. draft.Edits.Select(edit => edit.Id)], on));
        Assert.Empty(outcome.Clashes);
        return outcome.Boat;
    }

    private static void AssertSame(WeightTotal one, WeightTotal other) => Assert.Equal(
        (one.MassKg, one.Centre, one.MassDeviationKg, one.LcgDeviationM, one.KgDeviationM), (other.MassKg, other.Centre, other.MassDeviationKg, other.LcgDeviationM, other.KgDeviationM));
}
