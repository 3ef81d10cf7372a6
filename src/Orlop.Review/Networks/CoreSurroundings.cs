using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Heat;
using Orlop.Review.Practices;

namespace Orlop.Review.Networks;

/// <summary>The temperature around a cable where it is hottest, in one condition.</summary>
/// <param name="AmbientC">Null when a stretch or its temperature is not given.</param>
/// <param name="SpaceId">The space that sets it.</param>
/// <param name="IsEngineSpace">That space is an engine space with the engine running.</param>
/// <param name="Missing">What is not given.</param>
internal sealed record Surroundings(double? AmbientC, string? SpaceId, bool IsEngineSpace, ImmutableArray<FindingInput> Missing);

/// <summary>Finds what is around a cable along its run. The hottest stretch counts for its whole length.</summary>
internal static class CoreSurroundings
{
    // Ampacity is reckoned up to here.
    private const double HottestC = 300;

    /// <summary>The hottest stretch of a cable in a condition.</summary>
    public static Surroundings Of(BoatModel boat, SpaceAir air, Cable cable, Condition condition)
    {
        if (cable.Run.Count == 0)
        {
            return new Surroundings(null, null, false, [new FindingInput(cable.Id, "run", IsMissing: true)]);
        }

        Surroundings hottest = new(null, null, false, []);
        ImmutableArray<FindingInput>.Builder missing = ImmutableArray.CreateBuilder<FindingInput>();
        foreach ((int index, RunLeg leg) in cable.Run.Index())
        {
            string? spaceId = leg.Space ?? (leg.Way is null ? null : boat.Find<Way>(leg.Way)?.Space);
            if (spaceId is null || boat.Find<Space>(spaceId) is not { } space)
            {
                missing.Add(leg.Way is null ? PlaceOfStretch(cable, index) : new FindingInput(leg.Way, "space", IsMissing: true));
                continue;
            }

            Surroundings here = air.Of(space, condition);
            missing.AddRange(here.Missing);
            if (here.AmbientC is { } ambient && (hottest.AmbientC is null || ambient > hottest.AmbientC))
            {
                hottest = here;
            }
        }

        return missing.Count == 0 ? hottest : hottest with { AmbientC = null, Missing = missing.ToImmutable() };
    }

    /// <summary>Way or space of a stretch of a cable's run, as a missing input.</summary>
    /// <param name="index">The stretch, from 0.</param>
    public static FindingInput PlaceOfStretch(Cable cable, int index)
    {
        ArgumentNullException.ThrowIfNull(cable);
        return new FindingInput(cable.Id, FormattableString.Invariant($"run/{index + 1}"), IsMissing: true);
    }

    /// <summary>A space in a condition as its owner typed it; an engine space with the engine running is at least as hot as the practice says.</summary>
    public static Surroundings Typed(Practice? practice, Space space, Condition condition) =>
        AtLeastEngine(practice, space, condition, condition.EngineRuns && space.EngineRunningC is { } running ? running.Value : space.AmbientC?.Value);

    /// <summary>A space at a temperature, and no less than the practice reckons with in an engine space while the engine runs.</summary>
    public static Surroundings AtLeastEngine(Practice? practice, Space space, Condition condition, double? ambient)
    {
        bool isHotEngine = space.Use == SpaceUse.Engine && condition.EngineRuns;
        double? floor = isHotEngine ? practice?.Find(LimitIds.EngineSpaceC)?.Value : null;
        if (isHotEngine && practice is not null && floor is null)
        {
            return new Surroundings(null, space.Id, true, [new FindingInput("practice", LimitIds.EngineSpaceC, IsMissing: true)]);
        }

        if (floor > HottestC)
        {
            return new Surroundings(null, space.Id, true, [new FindingInput("practice", LimitIds.EngineSpaceC)]);
        }

        double? reckoned = floor is { } least ? Math.Max(least, ambient ?? least) : ambient;
        return reckoned is null
            ? new Surroundings(null, space.Id, isHotEngine, [new FindingInput(space.Id, "ambientC", IsMissing: true)])
            : new Surroundings(reckoned, space.Id, isHotEngine, []);
    }
}
