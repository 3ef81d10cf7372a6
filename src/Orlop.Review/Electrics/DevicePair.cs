using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Protection;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Two fuses or breakers one behind the other, of which the one before feeds more than the nearer.</summary>
/// <param name="Earlier">Nearer to the battery.</param>
/// <param name="Nearer">Nearer to what is fed.</param>
/// <param name="LeastA">The weakest fault behind the nearer that a battery feeds; null where it cannot be told.</param>
internal sealed record DevicePair(Protection Earlier, Protection Nearer, double? LeastA)
{
    /// <summary>All pairs on the ways from batteries in a condition.</summary>
    public static ImmutableArray<DevicePair> In(ElectricsView view, Condition condition)
    {
        SupplyPaths paths = view.PathsIn(condition);
        SolvedNetwork lowest = view.Solve(condition, ChargeCase.Lowest);
        Dictionary<(string, string), DevicePair> pairs = [];
        foreach (FarEnd end in view.FarEndsIn(condition).All)
        {
            double? least = end.Before.Length > 1 && end.Fault is { } fault && MissingInputs.OfWay(view, lowest, condition, end).IsEmpty ? Math.Abs(fault.Fault.CurrentA) : null;
            for (int nearer = 1; nearer < end.Before.Length; nearer++)
            {
                for (int earlier = 0; earlier < nearer; earlier++)
                {
                    (Protection first, Protection second) = (end.Before[earlier], end.Before[nearer]);
                    if (paths.TakersBehind(first.Id).Count > paths.TakersBehind(second.Id).Count)
                    {
                        pairs[(first.Id, second.Id)] = pairs.TryGetValue((first.Id, second.Id), out DevicePair? known)
                            ? known with { LeastA = least is null || known.LeastA is null ? null : Math.Min(least.Value, known.LeastA.Value) }
                            : new DevicePair(first, second, least);
                    }
                }
            }
        }

        return [.. pairs.Values];
    }

    /// <summary>The two as the engine takes them; null where the times of one are not known.</summary>
    public (SeriesDevice Earlier, SeriesDevice Nearer)? Devices(ElectricsView view) => Of(view, Earlier) is { } earlier && Of(view, Nearer) is { } nearer ? (earlier, nearer) : null;

    /// <summary>
    /// Both are gG fuse-links whose ratings stand as 1.6 to 1 or more: from 16 A the standard promises that the smaller opens first; one below 16 A lets through less still.
    /// </summary>
    public bool IsPromised => IsFuseLink(Earlier) && IsFuseLink(Nearer) && Earlier.RatedA.Value >= LeastLinkRatio * Math.Max(Nearer.RatedA.Value, LeastLinkA);

    /// <summary>Where that promise stands.</summary>
    public const string PromiseSource = "IEC 60269-1: gG links from 16 A discriminate at 1.6 to 1";

    private const double LeastLinkRatio = 1.6;
    private const double LeastLinkA = 16;

    private static bool IsFuseLink(Protection device) => device is { Means: ProtectionMeans.Fuse, Gates: "link-gg", OwnTimes.Count: 0 };

    private static SeriesDevice? Of(ElectricsView view, Protection device) =>
        view.GatesOnDc(device) is { } gates ? new SeriesDevice(gates, device.RatedA.Value, device.MeltingA2S?.Value, device.ClearingA2S?.Value) : null;

    /// <summary>The greatest bolted fault just behind the nearer device: full battery, every source, cold conductors. Null where there is none to reckon.</summary>
    public double? GreatestA(ElectricsView view, Condition condition)
    {
        SolvedNetwork full = view.Solve(condition, ChargeCase.Full);
        if (full.NetworkOf(Nearer.Id) is not { } network || network.Batteries.IsEmpty || full.Built.Gaps.Keys.Any(id => network.Batteries.Any(battery => battery.Id == id)))
        {
            return null;
        }

        string[] nodes = [.. Nearer.TerminalNames.Select(name => Nearer.At(name).ToString())];
        ImmutableArray<FaultCurrentResult?> faults = view.Faults.GreatestBetween(network, [.. network.Batteries.SelectMany(battery => nodes.Where(node => full.IsTogether(Nearer.Id, node)).Select(node => (node, battery.Minus)))]);
        return faults.OfType<FaultCurrentResult>().Select(fault => Math.Abs(fault.CurrentA)).DefaultIfEmpty(0).Max() is var most and > 0 ? ToFigures(most) : null;
    }

    // The last bits of a solution move with every other conductor of the network; they ask for nothing anew.
    private static double ToFigures(double currentA)
    {
        double unit = Math.Pow(10, Math.Floor(Math.Log10(currentA)) - FigureCount + 1);
        return Math.Round(currentA / unit) * unit;
    }

    private const int FigureCount = 8;
}
