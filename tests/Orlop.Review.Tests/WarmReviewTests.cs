using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>What an engine remembers never shows: after any edit its findings are those of an engine that has seen nothing before.</summary>
public sealed class WarmReviewTests
{
    private const int EditCount = 40;
    private const double HalfChance = 0.5;

    private static readonly BoatModel Demo = ExampleBoats.Read("sandgrouse");

    [Fact]
    public void Review_AfterEachRandomEditAndItsUndo_IsThatOfAFreshEngine()
    {
        ReviewEngine warm = new([new ElectricsDiscipline()]);
        Random random = new(20_261);
        BoatModel boat = Demo;
        string asBuilt = Text(warm.Review(boat, TestContext.Current.CancellationToken));
        for (int k = 0; k < EditCount; k++)
        {
            BoatModel edited = Edited(boat, random);
            string after = Text(warm.Review(edited, TestContext.Current.CancellationToken));
            Assert.Equal(Text(new ReviewEngine([new ElectricsDiscipline()]).Review(edited, TestContext.Current.CancellationToken)), after);
            Assert.Equal(asBuilt, Text(warm.Review(boat, TestContext.Current.CancellationToken)));
            (boat, asBuilt) = (edited, after);
        }
    }

    [Fact]
    public void Review_FromSeveralThreads_IsThatOfOne()
    {
        ReviewEngine warm = new([new ElectricsDiscipline()]);
        Random random = new(7);
        BoatModel[] boats = [.. Enumerable.Range(0, 8).Select(_ => Edited(Demo, random))];
        string[] alone = [.. boats.Select(boat => Text(new ReviewEngine([new ElectricsDiscipline()]).Review(boat, TestContext.Current.CancellationToken)))];
        string[] together = [.. boats.AsParallel().AsOrdered().Select(boat => Text(warm.Review(boat, TestContext.Current.CancellationToken)))];
        Assert.Equal(alone, together);
    }

    [Fact]
    public void Review_GearMoved_SolvesNothing()
    {
        ReviewEngine engine = new([new ElectricsDiscipline()]);
        engine.Review(Demo, TestContext.Current.CancellationToken);
        long solved = engine.Memo.ComputedCountOf<Orlop.Electrics.Networks.NetworkResult>();
        Gear gear = Demo.All<Gear>().First();
        engine.Review(With(Demo, gear with { Note = "moved" }), TestContext.Current.CancellationToken);
        Assert.Equal(solved, engine.Memo.ComputedCountOf<Orlop.Electrics.Networks.NetworkResult>());
        Assert.True(solved > 0);
    }

    private static string Text(ReviewResult review) => string.Join('\n', review.Findings
        .SelectMany(pair => pair.After!.All.Select(finding => $"{pair.Change} {finding.CheckId} {finding.SubjectId} {finding.ConditionId} {finding.Verdict} {finding.UseFraction:R} {finding.Headline} {string.Join('/', finding.Working)} {string.Join('/', finding.Inputs)} {finding.Caution}")));

    private static BoatModel With(BoatModel boat, Thing thing) => boat.WithThings(boat.Things.Select(other => other.Id == thing.Id ? thing : other));

    private static BoatModel Edited(BoatModel boat, Random random)
    {
        Thing[] things = [.. boat.Things.Where(thing => thing is Part or Cable or Link or Space or Condition or Gear)];
        Thing thing = things[random.Next(things.Length)];
        return random.Next(20) == 0 && thing is Link or Gear ? boat.WithThings(boat.Things.Where(other => other != thing)) : With(boat, Edited(thing, random));
    }

    private static Thing Edited(Thing thing, Random random)
    {
        double factor = HalfChance + random.NextDouble();
        bool isHeads = random.NextDouble() < HalfChance;
        Quantity? Scaled(Quantity? quantity) => quantity is null ? null : quantity with { Value = quantity.Value * factor };
        string[] some = [.. Demo.All<Condition>().Where(_ => random.NextDouble() < HalfChance).Select(condition => condition.Id)];
        return thing switch
        {
            ElectricLoad load => isHeads
                ? load with { Uses = some.Select(id => new LoadUse(id, factor / 2)).ToValueList() }
                : load with { RunningW = Scaled(load.RunningW), RunningA = Scaled(load.RunningA) },
            Cable cable => isHeads ? cable with { LengthM = random.Next(4) == 0 ? null : Scaled(cable.LengthM) } : cable with { AreaMm2 = Scaled(cable.AreaMm2)! },
            Protection device => device with { RatedA = Scaled(device.RatedA)! },
            IsolatorSwitch device => device with { OpenIn = some.ToValueList() },
            BatteryBank bank => bank with { InternalResistanceOhm = random.Next(4) == 0 ? null : Scaled(bank.InternalResistanceOhm) },
            Space space => space with { AmbientC = random.Next(4) == 0 ? null : Scaled(space.AmbientC) },
            Condition condition => condition with { EngineRuns = isHeads, SunShines = !isHeads },
            _ => thing with { Name = $"renamed {random.Next(1000)}" },
        };
    }
}
