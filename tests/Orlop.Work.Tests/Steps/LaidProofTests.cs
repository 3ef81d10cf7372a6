using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Isolation;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>Whatever is called dead behind a lining is proved dead at a point that it could only be fed through, at its own voltage (common practice, no source).</summary>
public class LaidProofTests
{
    [Fact]
    public void BehindAConverter_IsProvedAtItsOwnBarAndVoltage()
    {
        WorkPack pack = Plan(
            new DcConverter { Id = "converter", Name = "Converter", OutputV = 24, RatedA = 10 },
            Boats.Wire("converter-in", "plus.bar", "converter.in+", 4, 1, 6),
            Boats.Wire("converter-minus", "minus.bar", "converter.in-", 4, 1, 6),
            new Busbar { Id = "high", Name = "High bar" },
            Boats.Wire("converter-out", "converter.out+", "high.bar", 4, 1, 6),
            Laid("radio-feed", "high.bar", "radio.+"));

        WorkStep prove = pack.Steps.Single(step => step.Key == "prove-dead:high");
        Assert.Equal(("high.bar", "minus.bar"), Assert.Single(prove.WriteDown!.Accepts).At);
        AcceptedReading before = Assert.Single(pack.Steps.Single(step => step.Key == "read-before:all").WriteDown!.Accepts, accepted => accepted.At == ("high.bar", "minus.bar"));
        Assert.True(before.Least > 15, "the point is read live at 24 V, not at 12 V");
        Assert.Contains("proved at High bar.", LineOf(pack, "radio-feed"), StringComparison.Ordinal);
        Assert.True(Index(pack, "isolate:isolator") < Index(pack, "prove-dead:high") && Index(pack, "prove-dead:high") < pack.Steps.IndexOf(Opening(pack)));
    }

    [Fact]
    public void OfAFloatingConverter_BothPolesAreProvedAgainstEachOther()
    {
        WorkPack pack = Plan(
            new DcConverter { Id = "converter", Name = "Converter", OutputV = 24, RatedA = 10, IsIsolated = true },
            Boats.Wire("converter-in", "plus.bar", "converter.in+", 4, 1, 6),
            Boats.Wire("converter-minus", "minus.bar", "converter.in-", 4, 1, 6),
            Laid("radio-feed", "converter.out+", "radio.+") with { Cores = [Core("plus", "converter.out+", "radio.+"), Core("minus", "converter.out-", "radio.-")] });

        Assert.Contains(pack.Steps.Single(step => step.Key == "prove-dead:converter").WriteDown!.Accepts, accepted => accepted.At is ("converter.out+", "converter.out-") or ("converter.out-", "converter.out+"));
    }

    [Fact]
    public void BehindItsOwnFuse_IsProvedAtTheBarThatFeedsIt_WhichTheWorkProvesAnyhow()
    {
        WorkPack pack = Plan(new Protection { Id = "radio-fuse", Name = "Radio fuse", Means = ProtectionMeans.Fuse, RatedA = 5 }, Boats.Wire("radio-lead", "plus.bar", "radio-fuse.in", 4, 1, 6), Laid("radio-feed", "radio-fuse.out", "radio.+"));

        Assert.EndsWith("proved at Plus bar.", LineOf(pack, "radio-feed"), StringComparison.Ordinal);
        Assert.DoesNotContain(pack.Steps, step => step.Key.StartsWith("prove-dead:radio", StringComparison.Ordinal));
    }

    [Fact]
    public void BetweenTwoPosts_CannotBeProved_AndIsTakenAsLive()
    {
        BatteryBank second = Boats.Small.Find<BatteryBank>("bank")! with { Id = "bank-2", Name = "Second bank" };
        WorkPack pack = Plan(second, Boats.Wire("second-minus", "bank-2.-", "minus.bar", 25, 0.5, 8), Laid("second-plus", "bank-2.+", "bank.+"));

        Assert.Contains("nothing is drawn where a probe could prove it: take it as live. Bare one of its ends", LineOf(pack, "second-plus"), StringComparison.Ordinal);
        Assert.Contains(Opening(pack).Cautions, caution => caution.Kind == CautionKind.StaysLive && caution.Text.Contains("second-plus", StringComparison.Ordinal));
    }

    // A plain walk from every pole that gives, every switch closed: what is proved, and the metal joined to it, cuts each cable that is called dead from all of them.
    [Theory]
    [InlineData("fridge")]
    [InlineData("drying-locker")]
    [InlineData("second-bilge-pump")]
    public void EachCableCalledDead_IsFedOnlyThroughWhatIsProved(string alteration)
    {
        WorkPack pack = alteration == "fridge" ? LiveBehindTests.Fridge.Value : DemoBoat.Pack(alteration);
        BoatModel boat = DemoBoat.Read();
        Wiring wiring = Wiring.Of(boat);
        HashSet<string> reference = ReferenceNodes.Of(boat, wiring);
        string[] lines = [.. pack.Steps.SelectMany(step => step.Details).Select(detail => detail.ToString()).Where(text => text.Contains(", dead by ", StringComparison.Ordinal) && text.Contains(", proved at ", StringComparison.Ordinal))];
        Cable[] dead = [.. boat.All<Cable>().Where(cable => lines.Any(line => line.Contains($": {cable.Title}, ", StringComparison.Ordinal)))];
        Assert.NotEmpty(dead);

        HashSet<string> proved = Reached(wiring, pack.Steps.Where(step => step.Key.StartsWith("prove-dead:", StringComparison.Ordinal)).SelectMany(step => step.WriteDown!.Accepts).SelectMany(accepted => new[] { accepted.At?.Node, accepted.At?.OtherNode }).OfType<string>().Where(node => !reference.Contains(node)), edge => edge.Kind is WiringEdgeKind.Joint or WiringEdgeKind.Core or WiringEdgeKind.Link, _ => true);
        HashSet<string> fed = Reached(wiring, boat.All<Part>().Select(Poles.Giving).OfType<PolePair>().SelectMany(poles => new[] { poles.Plus, poles.Minus }).Where(node => !reference.Contains(node) && !proved.Contains(node)), _ => true, node => !reference.Contains(node) && !proved.Contains(node));
        Assert.All(dead, cable => Assert.DoesNotContain(LaidCables.NodesOf(cable), fed.Contains));
    }

    private static HashSet<string> Reached(Wiring wiring, IEnumerable<string> from, Func<WiringEdge, bool> passes, Func<string, bool> enters)
    {
        HashSet<string> reached = [.. from];
        Queue<string> open = new(reached);
        while (open.TryDequeue(out string? node))
        {
            foreach (string next in wiring.At(node).Where(passes).Select(edge => edge.Other(node)).Where(next => enters(next) && reached.Add(next)))
            {
                open.Enqueue(next);
            }
        }

        return reached;
    }

    private static WorkPack Plan(params Thing[] more)
    {
        BoatModel boat = Boats.Small.WithThings(
        [
            .. Boats.Small.Things.Where(thing => thing.Id is not ("solar" or "solar-plus" or "solar-minus")).Select(thing => thing is Way way ? way with { Opened = "Locker lining, six screws" } : thing),
            .. more,
            new ElectricLoad { Id = "radio", Name = "Radio", Behaviour = LoadBehaviour.Power, NominalV = 24, RunningW = 10 },
        ]);
        return Boats.Plan(boat, new Alteration { Id = "work", Edits = [BoatEdits.Remove(boat.Find("lamp-cable")!)] });
    }

    private static Cable Laid(string id, string from, string to) => Boats.Wire(id, from, to, 4, 2, 6) with { Run = [new RunLeg { Way = "tray", LengthM = 2 }] };

    private static Core Core(string id, string from, string to) => new() { Id = id, From = Terminal.Parse(from), To = Terminal.Parse(to) };

    private static WorkStep Opening(WorkPack pack) => pack.Steps.Single(step => step.Key.StartsWith("open:", StringComparison.Ordinal));

    private static string LineOf(WorkPack pack, string cable) => Opening(pack).Details.Select(detail => detail.ToString()).Single(text => text.StartsWith($"Behind it now: {cable}, ", StringComparison.Ordinal));

    private static int Index(WorkPack pack, string key) => pack.Steps.IndexOf(pack.Steps.Single(step => step.Key == key));
}
