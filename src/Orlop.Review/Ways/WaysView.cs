using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Ways;

/// <summary>What is asked of a boat's ways: what runs in them, what they are like, which a cable may take. Safe from several threads.</summary>
public sealed class WaysView
{
    // A place this near to the box of a space is in it: what is screwed to its side.
    private const double BesideM = 0.06;

    private static readonly string[] AcNames = [TerminalNames.Live, TerminalNames.Neutral, TerminalNames.Earth];
    private static readonly string[] DcNames = [TerminalNames.Plus, TerminalNames.Minus, TerminalNames.InPlus, TerminalNames.InMinus, TerminalNames.OutPlus, TerminalNames.OutMinus];

    private readonly ConcurrentDictionary<string, Current> _kinds = new(StringComparer.Ordinal);
    private readonly ILookup<string, Cable> _byWay;

    public WaysView(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
        : this(boat, practice, memo, new ElectricsView(boat, practice, memo, token), token)
    {
    }

    internal WaysView(BoatModel boat, Practice? practice, Memo memo, ElectricsView electrics, CancellationToken token)
    {
        ArgumentNullException.ThrowIfNull(boat);
        Boat = boat;
        Practice = practice;
        Memo = memo;
        Token = token;
        Electrics = electrics;
        Rules = RouteRules.Of(boat);
        Ways = [.. boat.All<Way>()];
        Spaces = [.. boat.All<Space>()];
        _byWay = boat.All<Cable>().SelectMany(cable => cable.Run.Select(leg => leg.Way).OfType<string>().Distinct().Select(way => (Way: way, Cable: cable))).ToLookup(pair => pair.Way, pair => pair.Cable, StringComparer.Ordinal);
    }

    private sealed record Current(bool? IsAc);

    public BoatModel Boat { get; }

    public Practice? Practice { get; }

    /// <summary>What the owner prefers.</summary>
    public RouteRules Rules { get; }

    /// <summary>All ways, in the owner's order.</summary>
    public ImmutableArray<Way> Ways { get; }

    internal Memo Memo { get; }

    internal CancellationToken Token { get; }

    internal ElectricsView Electrics { get; }

    internal ImmutableArray<Space> Spaces { get; }

    /// <summary>The same of the boat with these cables in place of her own.</summary>
    internal WaysView With(IEnumerable<Cable> cables)
    {
        Dictionary<string, Cable> becomes = cables.ToDictionary(cable => cable.Id, StringComparer.Ordinal);
        return new WaysView(Boat.WithThings(Boat.Things.Select(thing => becomes.GetValueOrDefault(thing.Id) ?? thing)), Practice, Memo, Token);
    }

    /// <summary>The cables that run in a way.</summary>
    internal IEnumerable<Cable> CablesIn(Way way) => _byWay[way.Id];

    /// <summary>It carries alternating current; null where neither its sources nor its ends tell.</summary>
    internal bool? IsAc(Cable cable) => _kinds.GetOrAdd(cable.Id, _ => new Current(KindOf(cable))).IsAc;

    /// <summary>What it is like along a way; null where nobody said.</summary>
    internal SpaceUse? UseOf(Way way) => way.Means == WayKind.Bilge ? SpaceUse.Bilge : way.Space is { } id ? Boat.Find<Space>(id)?.Use : null;

    /// <summary>Spaces that a place lies in: those whose box holds it, or, where none does, those beside it.</summary>
    internal IEnumerable<Space> SpacesAt(Place place)
    {
        Space[] holding = [.. Spaces.Where(space => space.Contains(place))];
        return holding.Length > 0 ? holding : Spaces.Where(space => IsBeside(space, place));
    }

    /// <summary>Spaces that a way is open to at one of its points: the one that it names, where it is still in it; a conduit or gland has its ends in different ones.</summary>
    internal IEnumerable<Space> SpacesAt(Way way, Place place) =>
        way.Means is not (WayKind.Conduit or WayKind.Gland) && way.Space is { } id && Boat.Find<Space>(id) is { } named && IsBeside(named, place) ? [named] : SpacesAt(place);

    /// <summary>Spaces that a part stands in: the one it names, or those whose box holds its place.</summary>
    internal IEnumerable<Space> SpacesOf(Part part) => part.Space is { } id && Boat.Find<Space>(id) is { } named ? [named] : part.Place is { } place ? SpacesAt(place) : [];

    /// <summary>A conduit with the cables in it, and one more.</summary>
    internal ConduitContents Contents(Way way, Cable? more = null) => ConduitContents.Of(Practice, way, more is null ? CablesIn(way) : CablesIn(way).Where(cable => cable.Id != more.Id).Append(more));

    /// <summary>Least radius of a bend of a cable, and how it is known; null where that cannot be told.</summary>
    internal double? LeastBendMm(Cable cable) =>
        cable.LeastBendMm?.Value ?? (cable.OuterDiameterMm is { } outer && Practice?.Find(LimitIds.BendOverDiameterRatio) is { } ratio ? ratio.Value * outer.Value : null);

    /// <summary>What is missing for the least radius of a bend.</summary>
    internal static IEnumerable<FindingInput> MissingForBend(Cable cable) => cable.LeastBendMm is null && cable.OuterDiameterMm is null ? [new FindingInput(cable.Id, "outerDiameterMm", IsMissing: true)] : [];

    /// <summary>Another cable in a way carries current of the other kind, with no divider between.</summary>
    internal bool IsBesideOtherKind(Way way, Cable cable) => way.Share != WayShare.Divided && IsAc(cable) is { } isAc && CablesIn(way).Any(other => other.Id != cable.Id && IsAc(other) == !isAc);

    /// <summary>Why a cable may not take a way; null where nothing known is against it.</summary>
    internal string? WhyNot(Way way, Cable cable)
    {
        if (way.Share is WayShare.DcOnly && IsAc(cable) == true)
        {
            return "for direct current only";
        }

        if (way.Share is WayShare.AcOnly && IsAc(cable) == false)
        {
            return "for alternating current only";
        }

        if (GlandFit.TooNarrow(way, cable) is { } gland)
        {
            return FormattableString.Invariant($"its gland takes {gland.BoreMm!.Value:0.#} mm at most, the cable is {cable.OuterDiameterMm!.Value:0.#} mm thick");
        }

        if (!ConduitContents.IsConduit(way))
        {
            return null;
        }

        ConduitContents contents = Contents(way, cable);
        return contents is { FillFraction: { } fill, Limit: { } limit } && fill > limit.Value ? $"with it {fill * 100:0} % full, {limit.Value * 100:0} % is allowed" : null;
    }

    private static bool IsBeside(Space space, Place place) =>
        place.XM >= space.From.XM - BesideM && place.XM <= space.To.XM + BesideM && place.YM >= space.From.YM - BesideM && place.YM <= space.To.YM + BesideM
        && place.ZM >= space.From.ZM - BesideM && place.ZM <= space.To.ZM + BesideM;

    // What reaches its live cores tells; behind a bonded bar its terminals do.
    private bool? KindOf(Cable cable)
    {
        string[] nodes = [.. cable.Cores.SelectMany(core => new[] { core.From, core.To }).Select(terminal => terminal.ToString())];
        bool[] sources = [.. Electrics.SourcesReaching(nodes).Select(part => Poles.Giving(part)!.IsAc).Distinct()];
        if (sources.Length > 0)
        {
            return sources.Contains(true);
        }

        string[] names = [.. cable.Cores.SelectMany(core => new[] { core.From.Name, core.To.Name })];
        return names.Intersect(AcNames, StringComparer.Ordinal).Any() ? true : names.Intersect(DcNames, StringComparer.Ordinal).Any() ? false : null;
    }
}
