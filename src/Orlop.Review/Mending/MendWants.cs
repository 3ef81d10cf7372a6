using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>Which things may be changed for the sake of findings: by check, what has a say in it.</summary>
internal sealed class MendWants(MendBench bench)
{
    // A stretch before its fuse is made a little shorter than the most that is allowed, to the next 5 cm.
    private const double ShortFraction = 0.88;
    private const double ShortStepM = 0.05;

    private readonly SortedDictionary<string, CableWant> _cables = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _parts = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _starts = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _fuses = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _splits = new(StringComparer.Ordinal);

    /// <summary>The slots of all that is wanted so far, in the order of their ids.</summary>
    public ImmutableArray<MendSlot> Slots()
    {
        IEnumerable<MendSlot?> cables = _cables.Select(want => bench.Draft.Find<Cable>(want.Key) is { } cable ? CableChoices.Slot(bench, cable, want.Value) : null);
        return
        [
            .. cables
                .Concat(Each<Part>(_parts, part => PartChoices.Slot(bench, part)))
                .Concat(Each<ElectricLoad>(_starts, load => StartChoices.Slot(bench, load)))
                .Concat(Each<Cable>(_fuses, cable => FuseChoices.Slot(bench, cable)))
                .Concat(Each<ElectricLoad>(_splits, load => SplitChoices.Slot(bench, load)))
                .OfType<MendSlot>().OrderBy(slot => slot.Id, StringComparer.Ordinal),
        ];
    }

    private IEnumerable<MendSlot?> Each<T>(IEnumerable<string> ids, Func<T, MendSlot?> slot)
        where T : Thing => ids.Select(bench.Draft.Find<T>).OfType<T>().Select(slot);

    /// <summary>Wants what has a say in a finding.</summary>
    public void Add(Finding finding)
    {
        string[] ids = [ElementIds.ThingOf(finding.SubjectId), .. finding.OtherSubjectId is { } other ? new[] { ElementIds.ThingOf(other) } : []];
        switch (finding.CheckId)
        {
            case "breaking-capacity" or "device-voltage" or "device-carries-load" or "part-carries-current" or "selectivity" or "plugs-that-mate":
                _parts.UnionWith(ids);
                break;
            case "start-opens-device":
                _parts.UnionWith(ids);
                _starts.UnionWith(Loads(finding));
                break;
            case "voltage-drop" or "least-voltage" or "voltage-while-starting" or "load-can-be-served":
                WantWay(ids[0]);
                _splits.Add(ids[0]);
                _starts.UnionWith(finding.CheckId == "voltage-drop" ? [] : Loads(finding));
                break;
            case "smallest-conductor":
                Want(ids[0], new CableWant());
                break;
            case "run-clear-of-bilge":
                Want(ids[0], new CableWant { IsOtherRun = true });
                break;
            case "conductor-ampacity":
                Want(ids[0], new CableWant { IsOtherRun = true });
                _splits.UnionWith(TakersOf(ids[0]));
                break;
            case Objection.BundleCheck:
                foreach (string id in new Objection(finding).ThingIds.Where(id => bench.Draft.Find(id) is Cable))
                {
                    Want(id, new CableWant { IsOtherRun = true });
                }

                break;
            case "conductor-protection":
                Want(ids[0], new CableWant { ShortM = ShortM(finding, ids[0]), IsOtherRun = true });
                _fuses.Add(ids[0]);
                _parts.UnionWith(DevicesWith(ids[0]));
                break;
            case "fault-clears":
                WantWay(ids[0]);
                _parts.UnionWith(DevicesWith(ids[0]));
                break;
            case "let-through":
                _parts.UnionWith(ids);
                WantBehind(ids[0]);
                break;
            case "converter-carries-load":
                _starts.UnionWith(Loads(finding));
                break;
        }
    }

    /// <summary>Wants what a change of what is wanted may ask for in turn: a bigger fuse the cables around it, a thicker cable nothing.</summary>
    public void Follow()
    {
        foreach (string id in _parts.Where(id => bench.Draft.Find(id) is Protection).ToArray())
        {
            WantBehind(id);
        }
    }

    private static IEnumerable<string> Loads(Finding finding) => finding.Inputs.Select(input => input.ThingId).Append(ElementIds.ThingOf(finding.SubjectId));

    private IEnumerable<string> TakersOf(string id) => bench.ChainsOf(id).Select(chain => chain.Taker.Id);

    private IEnumerable<string> DevicesWith(string id) => bench.ChainsOf(id).SelectMany(chain => Beside(chain, id)).OfType<Protection>().Select(device => device.Id);

    private void Want(string cableId, CableWant want) => _cables[cableId] = _cables.TryGetValue(cableId, out CableWant? was)
        ? new CableWant { ShortM = want.ShortM ?? was.ShortM, IsOtherRun = want.IsOtherRun || was.IsOtherRun }
        : want;

    private void WantWay(string id)
    {
        foreach (Cable cable in bench.ChainsOf(id).SelectMany(chain => chain.Out.Concat(chain.Back)).Select(item => item.Thing).OfType<Cable>().Distinct())
        {
            Want(cable.Id, new CableWant());
        }
    }

    private void WantBehind(string deviceId)
    {
        foreach (Cable cable in bench.ChainsOf(deviceId).SelectMany(chain => Beside(chain, deviceId)).OfType<Cable>().Distinct())
        {
            Want(cable.Id, new CableWant());
        }
    }

    // Along the way out, as far as the next fuse or breaker to either side.
    private static IEnumerable<Thing> Beside(Chain chain, string id)
    {
        Thing[] all = [.. chain.Out.Select(item => item.Thing)];
        int at = Array.FindIndex(all, thing => thing.Id == id);
        if (at < 0)
        {
            return [];
        }

        int from = at - 1, to = at + 1;
        while (from >= 0 && all[from] is not Protection)
        {
            from--;
        }

        while (to < all.Length && all[to] is not Protection)
        {
            to++;
        }

        return all[Math.Max(from, 0)..Math.Min(to + 1, all.Length)];
    }

    // Only where it is the length that is beyond its limit.
    private double? ShortM(Finding finding, string cableId) =>
        finding.Inputs.Any(input => input.ThingId == cableId && input.Field == "lengthM") && finding.UseFraction is > 1 and var use && double.IsFinite(use) && bench.Draft.Find<Cable>(cableId) is { LengthM: { } length } cable && cable.Cores.All(core => core.LengthM is null)
        && Math.Floor((ShortFraction * length.Value / use / ShortStepM) + 1e-9) * ShortStepM is > 0 and var shortM
            ? Math.Round(shortM, 3)
            : null;
}
