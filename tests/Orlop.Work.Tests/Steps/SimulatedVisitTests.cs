using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>Every reading that a pack asks for can be had when it is asked for: proved live, made dead, proved dead at the same points (IEC 60364-6 and EN 50110-1, from memory: tester proved, read, proved again).</summary>
public sealed class SimulatedVisitTests
{
    public static TheoryData<string> Works => [.. DemoBoat.Alterations, "stern-light", "chart-computer", "pump", "cabin-fan"];

    [Theory]
    [MemberData(nameof(Works))]
    public void EachReading_WithTheSwitchesAsTheStepsLeftThem_LiesInsideWhatIsAccepted(string work)
    {
        (BoatModel boat, Alteration alteration) = Of(work);
        (WorkStep Step, AcceptedReading Accepted, double Volts)[] all = [.. new SimulatedVisit(boat, alteration).Readings()];
        Assert.Contains(all, reading => reading.Step.Kind == StepKind.ProveDead);
        string[] wrong = [.. all.Where(reading => !IsAccepted(reading)).Select(reading => FormattableString.Invariant($"{reading.Step.Key}: {reading.Accepted.Name ?? "supply"} {reading.Accepted.At}: {reading.Volts:0.###} V, {StepTest.Range(reading.Accepted)}"))];
        Assert.Empty(wrong);
    }

    // Each point that is compared with a reading before was read before, between the same two points.
    [Theory]
    [MemberData(nameof(Works))]
    public void EachPointThatIsReadLive_IsReadDeadAfterwards(string work)
    {
        (BoatModel boat, Alteration alteration) = Of(work);
        WorkPack pack = WorkPacks.Plan(boat, alteration, TestContext.Current.CancellationToken);
        var dead = pack.Steps.Where(step => step.Kind == StepKind.ProveDead).SelectMany(step => step.WriteDown?.Accepts ?? []).Select(accepted => accepted.At).ToHashSet();
        var live = pack.Steps.Where(step => step.Key == "read-before:all").SelectMany(step => step.WriteDown!.Accepts).Select(accepted => accepted.At).ToArray();
        Assert.NotEmpty(live);
        Assert.All(live, point => Assert.Contains(point, dead));
    }

    // The breaker that carries the point is what a hand would have switched off.
    [Fact]
    public void PointBehindABreaker_StepNamesTheBreakerAndSaysThatItGoesOffAgain()
    {
        (BoatModel boat, Alteration alteration) = Of("cabin-fan");
        WorkStep read = WorkPacks.Plan(boat, alteration, TestContext.Current.CancellationToken).Steps.Single(step => step.Key == "read-before:all");
        Assert.Equal(["isolator", "fan-breaker"], read.PutOn);
        Assert.Contains("Fan breaker", read.Text.ToString(), StringComparison.Ordinal);
        Assert.Contains(read.Details, detail => detail.ToString().Contains("switch off again what you put on", StringComparison.Ordinal));
    }

    private static bool IsAccepted((WorkStep Step, AcceptedReading Accepted, double Volts) reading)
    {
        (_, AcceptedReading accepted, double volts) = reading;
        double seen = accepted.IsEitherSign ? Math.Abs(volts) : volts;
        return seen >= (accepted.Least ?? double.NegativeInfinity) && seen <= (accepted.Most ?? double.PositiveInfinity);
    }

    private static (BoatModel Boat, Alteration Alteration) Of(string work) => work switch
    {
        "pump" => (Boats.Small, Boats.Pump),
        "cabin-fan" => Fan(),
        "stern-light" or "chart-computer" => Mended(work),
        _ => (DemoBoat.Read(), DemoBoat.Read().Find<Alteration>(work)!),
    };

    // A fan on its own breaker, whose cable is exchanged.
    private static (BoatModel Boat, Alteration Alteration) Fan()
    {
        BoatModel boat = BoatEdits.Apply(Boats.Small,
        [
            BoatEdits.Add(new Protection { Id = "fan-breaker", Name = "Fan breaker", Means = ProtectionMeans.Breaker, RatedA = 10, ResistanceOhm = 0.001, Space = "locker" }),
            BoatEdits.Add(Boats.Wire("fan-feed", "plus.bar", "fan-breaker.in", 2.5, 0.3, 5)),
            BoatEdits.Add(new ElectricLoad { Id = "fan", Name = "Fan", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 20, Uses = [new("at-anchor", 1)] }),
            BoatEdits.Add(Boats.Pair("fan-cable", "fan-breaker.out", "fan", 1, 4)),
        ]).Boat;
        return (boat, new Alteration { Id = "fan-work", Name = "Fan cable", Edits = [BoatEdits.Replace(boat.Find("fan-cable")!, boat.Find<Cable>("fan-cable")! with { AreaMm2 = 2.5 })] });
    }

    private static (BoatModel Boat, Alteration Alteration) Mended(string load)
    {
        BoatModel boat = DemoBoat.Read();
        Cable cable = boat.All<Cable>().First(each => each.Cores.Any(core => core.To.Part == load || core.From.Part == load));
        double thicker = cable.AreaMm2.Value * 2;
        return (boat, new Alteration { Id = "thicker", Name = "Thicker", Edits = [BoatEdits.Replace(cable, cable with { AreaMm2 = thicker })] });
    }
}
