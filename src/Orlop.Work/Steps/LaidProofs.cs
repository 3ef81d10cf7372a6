using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// Where the cables are proved dead that lie where the work opens, drills, screws or pulls, each at the voltage that stood on it: at the nearest bar, change-over, touched terminal, device that is
/// opened or source on every way by which it could be fed (common practice, no source). What lies beyond such a point could feed the cable only through it. What stays live is not among them.
/// </summary>
internal sealed class LaidProofs
{
    private readonly PackScope _scope;
    private readonly Wiring _wiring;
    private readonly HashSet<string> _reference;
    private readonly HashSet<string> _live;
    private readonly HashSet<string> _opened;
    private readonly HashSet<string> _stops;
    private readonly HashSet<string> _touched;
    private readonly Dictionary<string, ImmutableArray<string>?> _points = new(StringComparer.Ordinal);

    private LaidProofs(PackScope scope, IsolationResult plan, IEnumerable<string> touched)
    {
        (_scope, _wiring) = (scope, scope.WiringBefore);
        _reference = ReferenceNodes.Of(scope.Before, _wiring);
        _live = [.. plan.StaysLive.SelectMany(live => live.Nodes)];
        _opened = [.. plan.Openings.SelectMany(opening => opening.EdgeIds)];
        _touched = [.. touched.Where(node => IsMeasured(node) && !_reference.Contains(node) && plan.CannotBeMadeDead.All(point => point.Node != node))];
        _stops =
        [
            .. _touched,
            .. _opened.Select(_wiring.Find).OfType<WiringEdge>().SelectMany(edge => new[] { edge.A, edge.B }),
            .. scope.Before.All<Part>().Select(Poles.Giving).OfType<PolePair>().SelectMany(poles => new[] { poles.Plus, poles.Minus }),
            .. scope.Before.All<Part>().Where(part => part is Busbar).SelectMany(part => IsolationPlans.NodesOf(part)),
            .. scope.Before.All<Changeover>().SelectMany(device => new[] { TerminalNames.Out, TerminalNames.Out2 }.Select(name => device.At(name).ToString())),
        ];
        foreach (Cable cable in LaidCables.In(scope.Before, LaidCables.Entered(scope)))
        {
            _points[cable.Id] = PointsFor(cable);
        }
    }

    /// <summary>Of a plan as it stands once it is carried out.</summary>
    /// <param name="touched">The terminals of the work, which are proved dead anyhow.</param>
    public static LaidProofs Of(PackScope scope, IsolationResult plan, IEnumerable<string> touched) => new(scope, plan, touched);

    /// <summary>The points that prove a cable dead; empty where it carries no voltage against the hull, null where none can be reached: some way to it has no terminal that a probe could touch.</summary>
    public ImmutableArray<string>? Of(Cable cable) => _points.TryGetValue(cable.Id, out ImmutableArray<string>? points) ? points : [];

    /// <summary>The same for all cables, those together that prove one: between two poles is measured only what is proved in one step. What the work proves anyhow is left out.</summary>
    public ImmutableArray<ImmutableArray<string>> Together()
    {
        List<HashSet<string>> groups = [];
        foreach (ImmutableArray<string> points in _points.Values.Where(points => points is { IsEmpty: false }).Select(points => points!.Value))
        {
            HashSet<string>[] met = [.. groups.Where(group => group.Overlaps(points) || group.Any(node => points.Any(other => ElementIds.ThingOf(other) == ElementIds.ThingOf(node))))];
            groups.RemoveAll(met.Contains);
            groups.Add([.. met.SelectMany(group => group), .. points]);
        }

        return [.. groups.Where(group => !group.IsSubsetOf(_touched)).Select(group => group.OrderByDescending(_touched.Contains).ToImmutableArray())];
    }

    private ImmutableArray<string>? PointsFor(Cable cable)
    {
        string[] ends = [.. LaidCables.NodesOf(cable).Where(node => !_reference.Contains(node))];
        if (ends.Any(_live.Contains))
        {
            return [];
        }

        ImmutableArray<string>.Builder points = ImmutableArray.CreateBuilder<string>();
        HashSet<string> seen = [];
        Queue<string> open = new(ends);
        while (open.TryDequeue(out string? node))
        {
            if (seen.Contains(node))
            {
                continue;
            }

            HashSet<string> metal = [.. PartProofs.JoinedByMetal(_wiring, node, _opened)];
            seen.UnionWith(metal);
            if (metal.Overlaps(_stops))
            {
                if (Measured(metal) is not { } point)
                {
                    return null;
                }

                points.Add(point);
                continue;
            }

            foreach (string next in metal.SelectMany(at => _wiring.At(at).Where(edge => !_opened.Contains(edge.Id)).Select(edge => edge.Other(at))).Where(next => !seen.Contains(next) && !_reference.Contains(next)))
            {
                open.Enqueue(next);
            }
        }

        return points.Count == 0 && ends.Length > 0 ? null : [.. points.Distinct()];
    }

    // What is measured anyhow, else a bar, else where a device can be got at, else any terminal but a battery's post.
    private string? Measured(HashSet<string> metal) => metal.Where(IsMeasured)
        .OrderByDescending(_touched.Contains).ThenBy(node => _scope.Before.Find(ElementIds.ThingOf(node)) switch { Busbar => 0, Changeover or IsolatorSwitch or Protection => 1, _ => 2 })
        .ThenBy(node => node, StringComparer.Ordinal).FirstOrDefault();

    private bool IsMeasured(string node) => _scope.Before.Find(ElementIds.ThingOf(node)) is Part and not BatteryBank;
}
