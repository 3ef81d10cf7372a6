using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.Review.Heat;

/// <summary>The temperature of the air in each space in a condition: as typed, or reckoned where the owner chose that.</summary>
internal sealed class SpaceAir(BoatModel boat, Practice? practice, Func<Condition, SpaceWarmths> warmthsIn)
{
    // Reckoned temperatures count to the next tenth upwards, so that a watt more somewhere solves no circuit again.
    private const double StepsPerK = 10;

    private readonly Space[] _reckoned = [.. boat.All<Space>().Where(space => space.IsReckoned == true)];

    /// <summary>Of a boat by herself, outside a review.</summary>
    public static SpaceAir Of(BoatModel boat, Practice? practice)
    {
        Lazy<ElectricsView> view = new(() => new ElectricsView(boat, practice, new Memo(), CancellationToken.None));
        return new SpaceAir(boat, practice, condition => view.Value.WarmthsIn(condition));
    }

    /// <summary>A space in a condition; an engine space with the engine running is at least as hot as the practice says.</summary>
    public Surroundings Of(Space space, Condition condition)
    {
        Surroundings typed = CoreSurroundings.Typed(practice, space, condition);
        if (space.IsReckoned != true)
        {
            return typed;
        }

        if (ReckonedC(space, condition) is { } reckoned)
        {
            return CoreSurroundings.AtLeastEngine(practice, space, condition, reckoned);
        }

        SpaceWarmth? warmth = warmthsIn(condition).Of(space);
        return typed with { AmbientC = null, Missing = warmth is null ? [new FindingInput(space.Id, "walls", IsMissing: true)] : warmth.Missing.IsEmpty ? [new FindingInput(space.Id, "walls")] : warmth.Missing };
    }

    /// <summary>Equal where all reckoned temperatures of a condition are.</summary>
    public string KeyIn(Condition condition) => _reckoned.Length == 0 ? ""
        : string.Join(';', _reckoned.Select(space => string.Create(CultureInfo.InvariantCulture, $"{space.Id}={ReckonedC(space, condition)}")));

    private double? ReckonedC(Space space, Condition condition) =>
        warmthsIn(condition).Of(space)?.Most is { } rest ? Math.Ceiling(rest.InsideC * StepsPerK) / StepsPerK : null;
}
