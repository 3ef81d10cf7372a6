using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Ways;

/// <summary>What a route costs for, in the order it is told.</summary>
public enum CostKind { Length, Bilge, Wet, Engine, Outside, NotKnown, BesideAc, Loose, Low, NewHoles, MadeHoles, Opening }

/// <summary>A share of what a route costs.</summary>
/// <param name="Kind">For what.</param>
/// <param name="WorthM">In dry metres along a way.</param>
public sealed record RouteCost(CostKind Kind, double WorthM);

/// <summary>A stretch of a route: along a way, or loose in a space.</summary>
/// <param name="Way">The way; null where it is loose.</param>
/// <param name="Space">The space it is loose in; null along a way.</param>
/// <param name="Use">What it is like there; null where nobody said.</param>
/// <param name="LengthM">Length with its slack, in metres.</param>
/// <param name="Line">Its points.</param>
public sealed record RouteStretch(Way? Way, Space? Space, SpaceUse? Use, double LengthM, ImmutableArray<Place> Line)
{
    /// <summary>What people call where it is.</summary>
    public string Title => Way?.Title ?? Space?.Title ?? "";

    /// <summary>As a stretch of a cable's run.</summary>
    public RunLeg Leg => new() { Way = Way?.Id, Space = Space?.Id, LengthM = LengthM };
}

/// <summary>How full a conduit is with the cable in it.</summary>
/// <param name="Way">The conduit.</param>
/// <param name="FillFraction">Share of its inside that is taken; null where a diameter is not given.</param>
/// <param name="MostFraction">What the practice allows; null where it says nothing.</param>
public sealed record RouteFill(Way Way, double? FillFraction, double? MostFraction);

/// <summary>One way that a cable may take.</summary>
public sealed record CableRoute
{
    /// <summary>How a length that was found along ways says it is known; a length so known was never measured.</summary>
    public const string Method = "along the ways as drawn";

    /// <summary>Its stretches from the first end to the other.</summary>
    public required ImmutableArray<RouteStretch> Stretches { get; init; }

    /// <summary>What it costs by the owner's preferences, kind by kind.</summary>
    public required ImmutableArray<RouteCost> Costs { get; init; }

    /// <summary>The holes it goes through.</summary>
    public required ImmutableArray<PassedHole> Holes { get; init; }

    /// <summary>The conduits it goes through, and how full they get.</summary>
    public required ImmutableArray<RouteFill> Fills { get; init; }

    /// <summary>Two tails and a loop.</summary>
    public required double AllowanceM { get; init; }

    /// <summary>Least radius of a bend of this cable; null where its diameter is not given or the practice says nothing.</summary>
    public required double? LeastBendMm { get; init; }

    /// <summary>Corners to be laid round.</summary>
    public required int BendCount { get; init; }

    /// <summary>Supports outside of conduits; null where the practice says nothing.</summary>
    public required int? SupportCount { get; init; }

    /// <summary>Length beside current of the other kind, undivided.</summary>
    public required double BesideAcM { get; init; }

    /// <summary>What nobody gave and what might change it.</summary>
    public required ImmutableArray<FindingInput> Missing { get; init; }

    /// <summary>From terminal to terminal.</summary>
    public double LengthM => Stretches.Sum(stretch => stretch.LengthM);

    /// <summary>Length to cut.</summary>
    public double CutM => LengthM + AllowanceM;

    /// <summary>Of its conductors there and back.</summary>
    public double OutAndBackM => 2 * CutM;

    /// <summary>All its costs, in dry metres along a way.</summary>
    public double CostM => Costs.Sum(cost => cost.WorthM);

    /// <summary>How far it runs where it is like this; null for where nobody said.</summary>
    public double InM(SpaceUse? use) => Stretches.Where(stretch => stretch.Use == use).Sum(stretch => stretch.LengthM);

    /// <summary>Wet metres: wet spaces, the bilge, the open deck.</summary>
    public double WetM => InM(SpaceUse.Wet) + InM(SpaceUse.Bilge) + InM(SpaceUse.OpenDeck);

    /// <summary>What must be opened to get at it.</summary>
    public ImmutableArray<Way> ToOpen => [.. Stretches.Select(stretch => stretch.Way).OfType<Way>().Where(way => way.Opened is not null).DistinctBy(way => way.Id)];

    /// <summary>Where an edge may chafe it: a bare hole, or one that nobody looked at.</summary>
    public ImmutableArray<PassedHole> Chafes => [.. Holes.Where(hole => hole.Hole.Guard is null or EdgeGuard.Bare)];

    /// <summary>Holes still to be made.</summary>
    public int NewHoleCount => Holes.Count(hole => !hole.Hole.IsMade);

    /// <summary>The ways and spaces it takes, in words.</summary>
    public string Words => string.Join(" → ", Stretches.Select(stretch => stretch.Title));

    /// <summary>Where the cable then runs.</summary>
    public ValueList<RunLeg> Run => Stretches.Select(stretch => stretch.Leg).ToValueList();

    /// <summary>Its points from end to end.</summary>
    public ImmutableArray<Place> Line => [.. Stretches.SelectMany(stretch => stretch.Line)];

    /// <summary>The cable as it takes this way.</summary>
    public Cable Taken(Cable cable)
    {
        ArgumentNullException.ThrowIfNull(cable);
        return cable with { Run = Run, LengthM = new Quantity(Math.Round(LengthM, 3), Knowledge.Estimated, Method: Method) };
    }
}

/// <summary>The ways found for a cable.</summary>
/// <param name="Cable">The cable.</param>
/// <param name="Routes">The best and the next best; none where there is no way or something is missing.</param>
/// <param name="Missing">What must be given before a way can be found.</param>
/// <param name="LeftOut">Ways that were not looked at, and why.</param>
public sealed record CableRoutes(Cable Cable, ImmutableArray<CableRoute> Routes, ImmutableArray<FindingInput> Missing, ImmutableArray<WayLeftOut> LeftOut);

/// <summary>A way that this cable may not take.</summary>
/// <param name="Way">The way.</param>
/// <param name="Why">Why, in words: "too full with it".</param>
public sealed record WayLeftOut(Way Way, string Why);
