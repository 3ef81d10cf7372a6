using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Heat;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Heat;

/// <summary>
/// The described spaces of a boat in a condition. Those whose temperature is reckoned are solved together, for one may stand in another; the rest one by one, with typed temperatures around them.
/// Heat comes from running powers at nominal voltage, so no circuit has to be solved first, and nothing goes round in a circle.
/// </summary>
internal sealed class SpaceWarmths
{
    // What stands in a space stores about as much as steel, common practice; walls are left out: it warms sooner than it does.
    private const double ThingsJPerKgK = 500;

    private readonly ElectricsView _view;
    private readonly Condition _condition;
    private readonly Dictionary<string, Described> _described;

    private sealed record Described(Space Space, HeatedSpace Most, HeatedSpace Mean, ImmutableArray<HeatPart> Heats, ImmutableArray<FindingInput> Missing);

    public SpaceWarmths(ElectricsView view, Condition condition)
    {
        (_view, _condition) = (view, condition);
        HeatGiven given = new(view, condition);
        _described = view.Boat.All<Space>().Where(SpaceWarmth.IsDescribed).Select(space => Describe(space, given)).ToDictionary(described => described.Space.Id, StringComparer.Ordinal);
        Spread();
        Each = [.. Solve()];
    }

    /// <summary>Each described space, in the owner's order.</summary>
    public ImmutableArray<SpaceWarmth> Each { get; }

    /// <summary>A space of them; null for one that nobody described.</summary>
    public SpaceWarmth? Of(Space space) => Each.FirstOrDefault(warmth => warmth.Space.Id == space.Id);

    private IEnumerable<SpaceWarmth> Solve()
    {
        Described[] joint = [.. _described.Values.Where(described => described.Space.IsReckoned == true && described.Missing.IsEmpty)];
        SpaceHeatResult most = SpaceHeat.Steady(new SpaceHeatInput(_condition.Id, [.. joint.Select(described => described.Most)]));
        SpaceHeatResult mean = SpaceHeat.Steady(new SpaceHeatInput(_condition.Id, [.. joint.Select(described => described.Mean)]));
        return _described.Values.Select(described => Warmth(described, most, mean));
    }

    private SpaceWarmth Warmth(Described described, SpaceHeatResult most, SpaceHeatResult mean)
    {
        SpaceWarmth warmth = new() { Space = described.Space, Condition = _condition, Heats = described.Heats, Missing = described.Missing };
        if (!described.Missing.IsEmpty)
        {
            return warmth;
        }

        if (Held(described.Most, most) is not { } held || Held(described.Mean, mean) is not { } heldMean)
        {
            return warmth with { WhyNone = most.WhyNone ?? mean.WhyNone };
        }

        SpaceHeatResult alone = Rest(held), calm = Rest(heldMean);
        return warmth with
        {
            Input = held,
            Most = alone.Spaces.FirstOrDefault(),
            Mean = calm.Spaces.FirstOrDefault(),
            WhyNone = alone.WhyNone,
            AirAroundC = held.AirC,
            WithoutFan = held.FanM3PerH > 0 ? Rest(held with { FanM3PerH = 0 }).Spaces.FirstOrDefault() : null,
        };
    }

    private static SpaceHeatResult Rest(HeatedSpace space) => SpaceHeat.Steady(new SpaceHeatInput(space.Id, [space]));

    // The space by itself, its reckoned neighbours held at what they come to; null where those have no rest.
    private static HeatedSpace? Held(HeatedSpace space, SpaceHeatResult joint)
    {
        double? At(string id) => joint.Spaces.FirstOrDefault(rest => rest.Id == id)?.InsideC;
        bool isTold = space.Sides.Select(side => side.SpaceId).Append(space.AirSpaceId).All(id => id is null || At(id) is not null);
        return !isTold ? null : space with
        {
            Sides = [.. space.Sides.Select(side => side.SpaceId is { } id ? side with { OutsideC = At(id), SpaceId = null } : side)],
            AirC = space.AirSpaceId is { } air ? At(air) : space.AirC,
            AirSpaceId = null,
        };
    }

    private Described Describe(Space space, HeatGiven given)
    {
        PlanGaps gaps = new();
        List<FindingInput> around = [];
        ImmutableArray<HeatPart> heats = [.. given.In(space)];
        ImmutableArray<SpaceSide>.Builder sides = ImmutableArray.CreateBuilder<SpaceSide>();
        foreach (SpaceWall wall in space.Walls)
        {
            (double? outsideC, string? id) = Beyond(wall.Space, around);
            double? transmittance = SpaceSides.TransmittanceWPerM2K(space, wall, gaps);
            double sun = SpaceSides.SunK(space, wall, _condition, gaps);
            sides.Add(new SpaceSide(wall.Name, (transmittance ?? 0) * wall.AreaM2, outsideC + sun, id));
        }

        bool isFanOn = space.FanM3PerH is not null && (space.Fan is null || (_view.Boat.Find<ElectricLoad>(space.Fan) is { } fan && LoadElements.IsOnIn(fan, _condition.Id)));
        bool breathes = space.Vents.Count > 0 || isFanOn;
        (double? airC, string? airId) = breathes || space.AirFrom is not null ? Beyond(space.AirFrom, around) : (_condition.OutsideC?.Value, null);
        HeatedSpace most = new()
        {
            Id = space.Id,
            HeatW = heats.Sum(heat => heat.MostW),
            Sides = sides.ToImmutable(),
            Openings = [.. space.Vents.Select(vent => new AirOpening(vent.AreaCm2 / 1e4, vent.HeightM))],
            FanM3PerH = isFanOn ? space.FanM3PerH!.Value : 0,
            AirC = airC,
            AirSpaceId = airId,
            CapacityJPerK = CapacityJPerK(space),
        };
        ImmutableArray<FindingInput> missing = [.. heats.SelectMany(heat => heat.Missing).Concat(gaps.Missing).Concat(around).Distinct()];
        return new Described(space, most, most with { HeatW = heats.Sum(heat => heat.MeanW) }, heats, missing);
    }

    // A space beyond: reckoned with the others, or as typed; nothing is the open air.
    private (double? HeldC, string? SpaceId) Beyond(string? spaceId, List<FindingInput> missing)
    {
        if (spaceId is null || _view.Boat.Find<Space>(spaceId) is not { } space)
        {
            if (_condition.OutsideC is null)
            {
                missing.Add(new FindingInput(_condition.Id, "outsideC", IsMissing: true));
            }

            return (_condition.OutsideC?.Value, null);
        }

        if (space.IsReckoned == true)
        {
            if (!SpaceWarmth.IsDescribed(space))
            {
                missing.Add(new FindingInput(space.Id, "walls", IsMissing: true));
            }

            return (null, space.Id);
        }

        Surroundings typed = CoreSurroundings.Typed(_view.Practice, space, _condition);
        missing.AddRange(typed.Missing);
        return (typed.AmbientC, null);
    }

    // What a neighbour lacks is lacking here too.
    private void Spread()
    {
        for (bool isMore = true; isMore;)
        {
            isMore = false;
            foreach (Described described in _described.Values.ToArray())
            {
                ImmutableArray<FindingInput> all =
                [
                    .. described.Missing.Concat(described.Most.Sides.Select(side => side.SpaceId).Append(described.Most.AirSpaceId).OfType<string>()
                        .SelectMany(id => _described.TryGetValue(id, out Described? other) ? other.Missing : [])).Distinct(),
                ];
                if (all.Length > described.Missing.Length)
                {
                    _described[described.Space.Id] = described with { Missing = all };
                    isMore = true;
                }
            }
        }
    }

    private double CapacityJPerK(Space space)
    {
        double volume = Math.Abs((space.To.XM - space.From.XM) * (space.To.YM - space.From.YM) * (space.To.ZM - space.From.ZM));
        double things = _view.Boat.All<Part>().Where(part => part.Space == space.Id).Sum(part => part.MassKg?.Value ?? 0)
            + _view.Boat.All<Gear>().Where(gear => gear.Space == space.Id).Sum(gear => gear.MassKg?.Value ?? 0);
        return (volume * StillAir.DensityKgPerM3(20) * StillAir.HeatJPerKgK) + (things * ThingsJPerKgK);
    }
}
