using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Protection;
using Orlop.Review.Electrics;
using Orlop.Review.Networks;
using Xunit;

namespace Orlop.Review.Tests.Networks;

/// <summary>The searches of the wiring against trying every way, on small boats wired at random.</summary>
public sealed class WiringSearchTests
{
    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(0, 60)];

    // An edge lies in a loop exactly when its ends stay joined without it.
    [Theory, MemberData(nameof(Seeds))]
    public void Loops_AreTheEdgesWhoseEndsStayJoinedWithoutThem(int seed)
    {
        Wiring wiring = Wiring.Of(RandomWiring.Boat(seed));
        Dictionary<string, int> loops = WiringLoops.Of(wiring, RandomWiring.Condition);
        Assert.All(wiring.Edges.Where(edge => edge.IsClosedIn(RandomWiring.Condition)), edge => Assert.Equal(AreJoined(wiring, edge.A, edge.B, id => id == edge.Id), loops.ContainsKey(edge.Id)));
    }

    // Two edges have the same number exactly when no third edge, taken away, parts them.
    [Theory, MemberData(nameof(Seeds))]
    public void Loops_OfTheSameNumber_AreThoseNoSingleEdgeParts(int seed)
    {
        Wiring wiring = Wiring.Of(RandomWiring.Boat(seed));
        Dictionary<string, int> loops = WiringLoops.Of(wiring, RandomWiring.Condition);
        WiringEdge[] closed = [.. wiring.Edges.Where(edge => edge.IsClosedIn(RandomWiring.Condition))];
        foreach (WiringEdge one in closed.Where(edge => loops.ContainsKey(edge.Id)))
        {
            foreach (WiringEdge other in closed.Where(edge => loops.ContainsKey(edge.Id)))
            {
                bool isParted = !AreJoined(wiring, one.A, other.A, _ => false) || closed.Any(cut => !AreJoined(wiring, one.A, other.A, id => id == cut.Id));
                Assert.Equal(!isParted, loops[one.Id] == loops[other.Id]);
            }
        }
    }

    // The most that can feed each end of a core without it: the least sum over all sets of devices whose opening parts that end from every bank.
    [Theory, MemberData(nameof(Seeds))]
    public void ProtectionReach_IsTheLeastSumOfDevicesThatPartsAnEndFromEveryBank(int seed)
    {
        BoatModel boat = RandomWiring.Boat(seed);
        Wiring wiring = Wiring.Of(boat);
        Grounding grounding = Grounding.Of(boat, wiring);
        ProtectionReach reach = new([.. boat.All<Part>()], wiring, grounding, RandomWiring.Condition);
        string[] banks = [.. boat.All<BatteryBank>().Select(bank => bank.At(TerminalNames.Plus).ToString())];
        foreach (WiringEdge edge in wiring.Edges.Where(edge => edge.Kind == WiringEdgeKind.Link && !grounding.IsGrounded(edge)))
        {
            (FeedLimit atA, FeedLimit atB) = reach.FeedsWithout(edge);
            Assert.Equal(ByTryingEverySet(boat, wiring, banks, edge, edge.A), atA.MostA);
            Assert.Equal(ByTryingEverySet(boat, wiring, banks, edge, edge.B), atB.MostA);
            Assert.Equal(Math.Max(atA.MostA, atB.MostA), reach.FeedOf(edge).MostA);
            Assert.All([atA, atB], feed => Assert.Equal(feed.MostA, feed.LimitedBy.Sum(part => part.LimitA)));
        }
    }

    private static double ByTryingEverySet(BoatModel boat, Wiring wiring, string[] banks, WiringEdge without, string end)
    {
        Protection[] devices = [.. boat.All<Protection>()];
        double least = double.PositiveInfinity;
        for (int set = 0; set < 1 << devices.Length; set++)
        {
            HashSet<string> cut = [.. devices.Where((_, k) => (set >> k & 1) == 1).Select(device => device.Id).Append(without.Id)];
            if (!banks.Any(bank => AreJoined(wiring, bank, end, cut.Contains)))
            {
                least = Math.Min(least, devices.Where(device => cut.Contains(device.Id)).Sum(device => device.RatedA.Value));
            }
        }

        return least;
    }

    // What carries current to a lamp lies on some way from a bank to it; every such element must be told, whatever else is.
    [Theory, MemberData(nameof(Seeds))]
    public void SupplyPaths_HoldEveryElementOnAnyWayFromAnySource(int seed)
    {
        BoatModel boat = RandomWiring.Boat(seed);
        Wiring wiring = Wiring.Of(boat);
        SupplyPaths paths = SupplyPaths.Of([.. boat.All<Part>()], wiring, RandomWiring.Condition);
        Dictionary<string, string> banks = boat.All<BatteryBank>().ToDictionary(bank => bank.At(TerminalNames.Plus).ToString(), bank => bank.Id);
        foreach (ElectricLoad lamp in boat.All<ElectricLoad>())
        {
            var ways = RandomWiring.Ways(wiring, lamp.At(TerminalNames.Plus).ToString(), _ => true).Where(way => banks.ContainsKey(way.End)).ToList();
            string[] expected = [.. ways.SelectMany(way => way.Edges.Select(edge => edge.Id).Append(banks[way.End])).Distinct()];
            Assert.Subset(paths.ElementsTo(lamp.Id).ToHashSet(), expected.ToHashSet());
            Assert.Equal(ways.Count > 0, paths.ElementsTo(lamp.Id).Count > 0);
            Assert.All(expected, element => Assert.Contains(lamp.Id, paths.TakersBehind(element)));
        }
    }

    private static bool AreJoined(Wiring wiring, string from, string to, Func<string, bool> isWithout)
    {
        Queue<string> queue = new([from]);
        HashSet<string> seen = [from];
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in wiring.At(node).Where(edge => !isWithout(edge.Id) && edge.IsClosedIn(RandomWiring.Condition)))
            {
                if (seen.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return seen.Contains(to);
    }
}
