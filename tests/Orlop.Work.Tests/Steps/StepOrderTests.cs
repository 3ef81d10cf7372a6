using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>What must hold in every pack, whatever the boat. That plugs are mated dead and that nothing is tried before it is whole: common practice, no source.</summary>
public class StepOrderTests
{
    public static TheoryData<string> Packs => [.. DemoBoat.Alterations, "pump", "moved plug load", "unplugged by the plan", "new plug behind an old isolator"];

    [Theory]
    [MemberData(nameof(Packs))]
    public void Plan_NothingThatFeedsAPlug_IsClosedBeforeThePlugIsIn(string name)
    {
        WorkPack pack = PackOf(name);
        foreach (WorkStep mate in pack.Steps.Where(step => step.Kind == StepKind.Energise && PlugOf(pack, step) is not null))
        {
            foreach (WorkStep close in pack.Steps.Where(step => step.Kind == StepKind.Energise && FeedsPlug(pack, step, PlugOf(pack, mate)!)))
            {
                Assert.True(Index(pack, mate) < Index(pack, close), $"{mate.Key} comes after {close.Key}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Packs))]
    public void Plan_EveryPlugThatIsFittedOrPulled_IsPutTogetherOnce(string name)
    {
        WorkPack pack = PackOf(name);
        IEnumerable<string> apart = pack.Steps.Where(step => step.Key.StartsWith("unplug:", StringComparison.Ordinal) || (step.Kind is StepKind.Isolate or StepKind.Fit && PlugOf(pack, step) is not null))
            .Select(step => PlugOf(pack, step)!.Id).Distinct();
        IEnumerable<string> together = pack.Steps.Where(step => step.Kind == StepKind.Energise).Select(step => PlugOf(pack, step)?.Id).OfType<string>();
        Assert.Equal(apart.Order(), together.Order());
    }

    [Theory]
    [MemberData(nameof(Packs))]
    public void Plan_NothingIsTested_BeforeItIsConnected(string name)
    {
        WorkPack pack = PackOf(name);
        foreach (WorkStep test in pack.Steps.Where(step => step.Kind is StepKind.Test or StepKind.Commission))
        {
            Assert.All(pack.Steps.Where(step => step.Kind is StepKind.Fit or StepKind.Run or StepKind.MakeOff or StepKind.Connect), built => Assert.True(Index(pack, built) < Index(pack, test), $"{test.Key} before {built.Key}"));
        }

        foreach (WorkStep tried in pack.Steps.Where(step => step.Kind == StepKind.Commission))
        {
            Assert.All(pack.Steps.Where(step => step.Kind == StepKind.Energise), on => Assert.True(Index(pack, on) < Index(pack, tried), $"{tried.Key} before {on.Key}"));
        }
    }

    [Fact]
    public void Plan_WorkInTheSpaceOfTheBattery_CoversItsPostsBeforeAnythingIsProvedOrFitted()
    {
        WorkPack pack = DemoBoat.Pack("sampling-winch-second");
        int cover = Index(pack, Assert.Single(pack.Steps, step => step.Key == "cover:bank"));
        Assert.True(cover < pack.Steps.ToList().FindIndex(step => step.Kind == StepKind.ProveDead));
        Assert.Contains(pack.Steps[cover].Cautions, caution => caution == Cautions.BatteryNear);
        Assert.Contains(pack.Bring, item => item.Key == "safety:terminal-covers");
        Assert.Contains(pack.Bring, item => item.Key == "sealant");
    }

    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    [InlineData("drying-locker")]
    public void Plan_WhatIsCovered_ComesUncoveredOnce_AfterAllIsMeasured(string id)
    {
        WorkPack pack = DemoBoat.Pack(id);
        string[] covered = [.. pack.Steps.Where(step => step.Key.StartsWith("cover:", StringComparison.Ordinal)).Select(step => step.Key.Split(':')[1])];
        WorkStep[] off = [.. pack.Steps.Where(step => step.Key.StartsWith("uncover:", StringComparison.Ordinal))];
        Assert.Equal(covered, off.Select(step => step.Key.Split(':')[1]));
        int measured = pack.Steps.ToList().FindLastIndex(step => step.Kind == StepKind.Commission), closed = pack.Steps.ToList().FindIndex(step => step.Key.StartsWith("close:", StringComparison.Ordinal));
        Assert.All(off, step => Assert.InRange(Index(pack, step), measured + 1, closed < 0 ? pack.Steps.Length : closed));
        Assert.All(off, step => Assert.Contains(Cautions.BatteryNear, step.Cautions));
    }

    // The bank of the boat of the tests stands in the locker, where a fuse is fitted; its main fuse's lead goes back onto its plus post.
    [Fact]
    public void Plan_LeadGoesOntoACoveredPost_ItsCoverComesOffForItAndGoesBack()
    {
        WorkPack pack = Boats.PumpPack;
        Assert.Single(pack.Steps, step => step.Key == "cover:bank");
        Assert.All(pack.Steps.Where(step => step.Key is "restore:bank-fuse.one@from" or "restore:minus:bank"), step => Assert.Contains(step.Details, IsOfTheCover));
        Assert.Contains(pack.Steps, step => step.Key == "restore:bank-fuse.one@from");
        Assert.DoesNotContain(pack.Steps.Single(step => step.Key == "connect:pump-cable").Details, IsOfTheCover);

        static bool IsOfTheCover(Orlop.Review.Findings.Sentence detail) => detail.ToString().StartsWith("The cover of that one post of bank", StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_BatteryThatIsStillToBeFitted_IsCoveredWhereItIsFitted()
    {
        BatteryBank second = Boats.Small.Find<BatteryBank>("bank")! with { Id = "second", Name = "Second bank" };
        WorkPack pack = Boats.Plan(Boats.Small, new Orlop.Boat.Things.Alteration { Id = "second-bank", Edits = [BoatEdits.Add(second), BoatEdits.Add(Boats.Wire("second-minus", "second.-", "minus.bar", 25, 0.5, 8))] });
        Assert.DoesNotContain(pack.Steps, step => step.Key == "cover:second");
        Assert.Contains(pack.Steps.Single(step => step.Key == "fit:second").Details, detail => detail.ToString().StartsWith("Cover both posts", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_LoadOnAPlugIsMoved_PlugIsPulledThenReachSeenThenPluggedInThenTried()
    {
        WorkPack pack = DemoBoat.Pack("sampling-winch-second");
        int[] order = [.. new[] { "prove-dead:dive-compressor", "unplug:compressor-plug", "move:dive-compressor", "plug-in:compressor-plug", "restore:main-isolator", "try:dive-compressor" }.Select(key => Index(pack, pack.Steps.Single(step => step.Key == key)))];
        Assert.Equal(order.Order(), order);
        // Straight from (5.6, 0.7, 1.8) to (5.4, 0.95, 1.5): √(0.2² + 0.25² + 0.3²) = 0.439 m, told up to the centimetre; its lead is 0.8 m.
        Assert.Contains(pack.Steps.Single(step => step.Key == "move:dive-compressor").Details, detail => detail.ToString().StartsWith("See first that Dive compressor lead reaches", StringComparison.Ordinal) && detail.ToString().Contains("0.44 M", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_LeadTooShortForTheNewPlace_SaysThatItDoesNotReach()
    {
        WorkPack pack = PackOf("moved plug load");
        Assert.Contains(pack.Steps.Single(step => step.Key == "move:saw").Details, detail => detail.ToString().StartsWith("Saw lead does not reach", StringComparison.Ordinal));
    }

    private static int Index(WorkPack pack, WorkStep step) => pack.Steps.IndexOf(step);

    private static PlugAndSocket? PlugOf(WorkPack pack, WorkStep step) => step.About.IsEmpty ? null : pack.AsAltered.Find<PlugAndSocket>(step.About[0]);

    // Reached from the device's far side over conductors alone, neither through the device itself nor through another device's load.
    private static bool FeedsPlug(WorkPack pack, WorkStep step, PlugAndSocket plug)
    {
        if (step.About.IsEmpty || pack.AsAltered.Find<Part>(step.About[0]) is not (Protection or IsolatorSwitch) || pack.AsAltered.Find<Part>(step.About[0]) is not { } device)
        {
            return false;
        }

        Wiring wiring = Wiring.Of(pack.AsAltered);
        HashSet<string> seen = [device.At("out").ToString()];
        Queue<string> queue = new(seen);
        while (queue.TryDequeue(out string? node))
        {
            foreach (string next in wiring.At(node).Where(edge => edge.Owner.Id != device.Id).Select(edge => edge.Other(node)).Where(seen.Add))
            {
                queue.Enqueue(next);
            }
        }

        return seen.Contains(plug.At("in").ToString());
    }

    private static WorkPack PackOf(string name) => name switch
    {
        "pump" => Boats.PumpPack,
        "moved plug load" => Boats.Plan(WithSaw, Work(BoatEdits.Replace(Saw, Saw with { Place = new(4, 0, 1) }))),
        "unplugged by the plan" => Boats.Plan(WithSaw, Work(BoatEdits.Replace(WithSaw.Find("saw-lead")!, WithSaw.Find<Cable>("saw-lead")! with { AreaMm2 = 6 }), BoatEdits.Replace(WithSaw.Find("lamp-cable")!, WithSaw.Find<Cable>("lamp-cable")! with { AreaMm2 = 2.5 }))),
        "new plug behind an old isolator" => Boats.Plan(Boats.Small, Work([.. SawThings.Select(BoatEdits.Add)])),
        _ => DemoBoat.Pack(name),
    };

    private static Alteration Work(params Edit[] edits) => new() { Id = "work", Edits = [.. edits] };

    private static ElectricLoad Saw { get; } = new() { Id = "saw", Name = "Saw", Behaviour = LoadBehaviour.Power, NominalV = 12, RunningW = 300, Uses = [], Place = new(1.2, 0, 1) };

    private static Thing[] SawThings { get; } =
    [
        Saw,
        new PlugAndSocket { Id = "saw-plug", Name = "Saw plug", RatedA = 50, Place = new(1, 0, 1) },
        Boats.Pair("saw-cable", "plus.bar", "saw", 6, 2) with { Cores = [Core("plus", "plus.bar", "saw-plug.in"), Core("minus", "minus.bar", "saw-plug.in2")] },
        Boats.Pair("saw-lead", "plus.bar", "saw", 4, 0.8) with { Name = "Saw lead", Cores = [Core("plus", "saw-plug.out", "saw.+"), Core("minus", "saw-plug.out2", "saw.-")] },
    ];

    private static BoatModel WithSaw { get; } = Boats.Small.WithThings([.. Boats.Small.Things, .. SawThings]);

    private static Core Core(string id, string from, string to) => new() { Id = id, From = Orlop.Boat.Values.Terminal.Parse(from), To = Orlop.Boat.Values.Terminal.Parse(to) };
}
