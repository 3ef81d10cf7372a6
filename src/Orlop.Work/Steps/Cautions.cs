using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The cautions that belong to what a step touches. They name the risk; local codes, makers' manuals and licensed people go first.</summary>
internal static class Cautions
{
    private const string LivePosts = "A battery's posts stay live whatever is switched off, and can weld a spanner across them. Rings and watch off, insulated tools, goggles.";

    /// <summary>Where leads come off a battery's posts or go onto them: the steps take its minus leads off first and put them on last.</summary>
    public static Caution Battery { get; } = new(CautionKind.Battery, $"{LivePosts} One lead at a time, the other post covered. The minus lead comes off first and goes on last (common practice, no source).");

    /// <summary>Where a battery's posts are near and no lead of theirs is touched.</summary>
    public static Caution BatteryNear { get; } = new(CautionKind.Battery, $"{LivePosts} None of its leads is touched in this step (common practice, no source).");

    public static Caution Mains { get; } = new(CautionKind.Mains,
        "This carries mains voltage, which kills. A licensed person does or checks this work, by the local code. Shore lead out ashore first; prove dead between live, neutral and earth.");

    public static Caution HotWork { get; } = new(CautionKind.HotWork,
        "The lining here burns, or nobody has said that it does not: no welding, grinding or open flame; clear hot swarf at once, extinguisher in reach.");

    public static Caution HotSurface { get; } = new(CautionKind.HotSurface, "Engine space: hot surfaces and moving parts. Engine stopped, key out, and time to cool.");

    public static Caution Drilling { get; } = new(CautionKind.Drilling,
        "Before drilling, look and feel behind: tanks, fuel and gas pipes, cables, hull plating. Put a stop on the bit. Close every hole against chafe and water.");

    public static bool TouchesBattery(PackScope scope) => Touched(scope).Any(id => scope.Whole.Find(id) is BatteryBank);

    public static bool TouchesMains(PackScope scope) => Touched(scope).Any(id => scope.Whole.Find<Part>(id) is { } part && LiveBefore.IsMains(part));

    /// <summary>The parts whose terminals the alteration touches.</summary>
    public static HashSet<string> Touched(PackScope scope) =>
    [
        .. scope.Changes.Where(change => change.Kind != ChangeKind.Record)
            .SelectMany(change => new[] { change.Edit.Was, change.Edit.Becomes }).OfType<Thing>()
            .SelectMany(thing => IsolationPlans.NodesOf(thing)).Select(ElementIds.ThingOf),
    ];

    /// <summary>Cautions for connecting or taking off at these nodes.</summary>
    public static IEnumerable<Caution> AtNodes(PackScope scope, WorkIsolation isolation, IEnumerable<string> nodes)
    {
        string[] at = [.. nodes];
        List<Part> parts = [.. at.Select(ElementIds.ThingOf).Distinct(StringComparer.Ordinal).Select(id => scope.Whole.Find<Part>(id)).OfType<Part>()];
        BatteryBank[] batteries = [.. parts.OfType<BatteryBank>()];
        if (batteries.Length > 0)
        {
            yield return batteries.All(bank => scope.IsNewBattery(bank.Id) || isolation.IsBareMinus(Poles.Giving(bank)!.Minus) || isolation.LiftsMinus(bank)) ? Battery : BatteryNear;
        }

        if (parts.Exists(LiveBefore.IsMains))
        {
            yield return Mains;
        }

        HashSet<string> opened = [.. (isolation.Result?.Openings ?? []).SelectMany(opening => opening.EdgeIds)];
        if (StoredCharge.At(scope.Whole, scope.WholeWiring, at, opened) is { IsEmpty: false } charged)
        {
            yield return new Caution(
                CautionKind.StoredCharge, $"The capacitors of {SentenceText.Listed(charged.Select(part => part.Title))} hold their charge after they are cut off: wait as the maker says and measure before touching.");
        }
    }

    /// <summary>Cautions for work in a space: heat, linings, drilling.</summary>
    public static IEnumerable<Caution> InSpace(Space? space, bool drills)
    {
        if (space?.Use == SpaceUse.Engine)
        {
            yield return HotSurface;
        }

        if (drills)
        {
            yield return Drilling;
            if (space?.LiningBurns != false)
            {
                yield return HotWork;
            }
        }
    }
}
