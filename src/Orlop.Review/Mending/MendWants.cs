using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Strings;
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
    private readonly SortedSet<string> _otherMeans = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _lugs = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _studs = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _starts = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _fuses = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _splits = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _airs = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _leads = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _stringFuses = new(StringComparer.Ordinal);

    /// <summary>The slots of all that is wanted so far, in the order of their ids.</summary>
    public ImmutableArray<MendSlot> Slots()
    {
        IEnumerable<MendSlot?> cables = WithMoves().Select(want => bench.Draft.Find<Cable>(want.Key) is { } cable ? CableChoices.Slot(bench, cable, want.Value) : null);
        return
        [
            .. cables
                .Concat(Each<Part>(_parts, part => PartChoices.Slot(bench, part, _otherMeans.Contains(part.Id))))
                .Concat(Each<ElectricLoad>(_starts, load => StartChoices.Slot(bench, load)))
                .Concat(Each<Cable>(_fuses, cable => FuseChoices.Slot(bench, cable)))
                .Concat(Each<ElectricLoad>(_splits, load => SplitChoices.Slot(bench, load)))
                .Concat(_airs.Select(bench.Draft.Find<Space>).OfType<Space>().SelectMany(space => AirChoices.Slots(bench, space)))
                .Concat(GroupsOf(_leads).Select(group => LeadChoices.Slot(bench, group)))
                .Concat(GroupsOf(_stringFuses).Select(group => StringFuseChoices.Slot(bench, group)))
                .Concat(Each<Cable>(_lugs, cable => EndChoices.Lugs(bench, cable)))
                .Concat(_studs.Select(stud => EndChoices.Rings(bench, Terminal.Parse(stud))))
                .OfType<MendSlot>().OrderBy(slot => slot.Id, StringComparer.Ordinal),
        ];
    }

    // A device that may be moved makes two cables other, each with its part of the move; one device at most for each cable.
    private SortedDictionary<string, CableWant> WithMoves()
    {
        SortedDictionary<string, CableWant> wants = new(_cables, StringComparer.Ordinal);
        CableWant Of(string id) => wants.GetValueOrDefault(id, new CableWant());
        foreach ((string id, CableWant want) in _cables)
        {
            if (want.ShortM is { } shortM && bench.Draft.Find<Cable>(id) is { } tail && MovedDevice.Of(bench.Draft, tail, shortM) is { } moved && Of(id).LedOn is null
                && (moved.OnId is null || Of(moved.OnId) is { LedOn: null, TailOf: null }))
            {
                wants[id] = Of(id) with { TailOf = moved };
                if (moved.OnId is { } on)
                {
                    wants[on] = Of(on) with { LedOn = moved };
                }
            }
        }

        return wants;
    }

    private IEnumerable<StringGroup> GroupsOf(IEnumerable<string> batteryIds) => batteryIds.Select(bench.Strings.Of).OfType<StringGroup>().DistinctBy(group => group.Strings[0].Members[0].Id);

    private IEnumerable<MendSlot?> Each<T>(IEnumerable<string> ids, Func<T, MendSlot?> slot)
        where T : Thing => ids.Select(bench.Draft.Find<T>).OfType<T>().Select(slot);

    /// <summary>Wants what has a say in a finding; false where nothing has that could be changed.</summary>
    public bool Add(Finding finding)
    {
        string[] ids = [ElementIds.ThingOf(finding.SubjectId), .. finding.OtherSubjectId is { } other ? new[] { ElementIds.ThingOf(other) } : []];
        switch (finding.CheckId)
        {
            case "device-carries-load" or "part-carries-current" or "plugs-that-mate":
                _parts.UnionWith(ids);
                WantAir(ids.Select(SpaceOf));
                break;
            case "breaking-capacity" or "device-voltage" or "selectivity":
                WantEither(ids);
                break;
            case "can-be-made-dead" when finding.Verdict == Verdict.Tight:
                WantEither(finding.Inputs.Select(input => input.ThingId).Where(id => bench.Draft.Find(id) is Protection { Means: ProtectionMeans.Fuse }));
                break;
            case "lug-fits-cable":
                _lugs.Add(ids[0]);
                break;
            case "ring-fits-stud" or "stud-stack":
                _studs.Add(finding.SubjectId);
                break;
            case "start-opens-device":
                WantEither(ids);
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
                WantAir(SpacesAlong(ids[0]));
                break;
            case Objection.BundleCheck:
                foreach (string id in new Objection(finding).ThingIds.Where(id => bench.Draft.Find(id) is Cable))
                {
                    Want(id, new CableWant { IsOtherRun = true });
                    WantAir(SpacesAlong(id));
                }

                break;
            case "conductor-protection":
                Want(ids[0], new CableWant { ShortM = ShortM(finding, ids[0]), IsOtherRun = true });
                _fuses.Add(ids[0]);
                _parts.UnionWith(DevicesWith(ids[0]));
                break;
            case "fault-clears":
                WantWay(ids[0]);
                WantEither(DevicesWith(ids[0]));
                break;
            case "let-through":
                WantEither(ids);
                WantBehind(ids[0]);
                break;
            case "converter-carries-load":
                _starts.UnionWith(Loads(finding));
                WantAir(ids.Select(SpaceOf));
                break;
            case "space-temperature":
                return WantAir([ids[0]], isTypedToo: true);
            case "charger-output" or "charge-temperature":
                return WantAir(ids.Select(SpaceOf));
            case "strings-share":
                return WantStrings(_leads, ids[0]);
            case "strings-protected":
                return WantStrings(_stringFuses, ids[0]);
            default:
                return false;
        }

        return true;
    }

    private string? SpaceOf(string partId) => bench.Draft.Find<Part>(partId)?.Space;

    private IEnumerable<string?> SpacesAlong(string cableId) => bench.Draft.Find<Cable>(cableId)?.Run.Select(leg => leg.Space ?? (leg.Way is { } way ? bench.Draft.Find<Way>(way)?.Space : null)) ?? [];

    // Of what stands or runs in it only where its temperature is reckoned: a typed one stays what it is.
    private bool WantAir(IEnumerable<string?> spaceIds, bool isTypedToo = false)
    {
        string[] aired = [.. spaceIds.OfType<string>().Where(id => bench.Draft.Find<Space>(id) is { } space && (isTypedToo || space.IsReckoned == true) && AirChoices.CanHave(space))];
        _airs.UnionWith(aired);
        return aired.Length > 0;
    }

    private bool WantStrings(SortedSet<string> wanted, string batteryId)
    {
        bool isSideBySide = bench.Strings.Of(batteryId) is not null;
        wanted.UnionWith(isSideBySide ? [batteryId] : []);
        return isSideBySide;
    }

    // A fuse may become a breaker there, and a breaker a fuse.
    private void WantEither(IEnumerable<string> ids)
    {
        string[] all = [.. ids];
        _parts.UnionWith(all);
        _otherMeans.UnionWith(all);
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

    private IEnumerable<string> DevicesWith(string id) => bench.ChainsOf(id).SelectMany(chain => ProtectedStretch.Beside(chain, id)).OfType<Protection>().Select(device => device.Id);

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
        foreach (Cable cable in bench.ChainsOf(deviceId).SelectMany(chain => ProtectedStretch.Beside(chain, deviceId)).OfType<Cable>().Distinct())
        {
            Want(cable.Id, new CableWant());
        }
    }

    // Only where it is the length that is beyond its limit.
    private double? ShortM(Finding finding, string cableId) =>
        finding.Inputs.Any(input => input.ThingId == cableId && input.Field == "lengthM") && finding.UseFraction is > 1 and var use && double.IsFinite(use) && bench.Draft.Find<Cable>(cableId) is { LengthM: { } length } cable && cable.Cores.All(core => core.LengthM is null)
        && Math.Floor((ShortFraction * length.Value / use / ShortStepM) + 1e-9) * ShortStepM is > 0 and var shortM
            ? Math.Round(shortM, 3)
            : null;
}
