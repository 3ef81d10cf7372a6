using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Which loads have a start to judge. A ratio that is left out is not known, but for a load of resistance, which draws no more while it starts than when it runs.</summary>
public static class Starts
{
    /// <summary>Its start is judged: it draws more then than when it runs, or how much more is not given.</summary>
    public static bool HasOne(ElectricLoad load) => LoadElements.HasStart(load) || IsRatioMissing(load);

    /// <summary>How much it draws while it starts is not given, and is more than its running current for all that is known.</summary>
    public static bool IsRatioMissing(ElectricLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return load.StartRatio is null && (load.Behaviour != LoadBehaviour.Resistance || load.IsCrankingMotor || load.StartS is { Value: > 0 });
    }

    /// <summary>The verdict on a start whose ratio is not given.</summary>
    internal static Finding RatioUnknown(CheckDescription check, string subjectId, string conditionId, ElectricLoad load) => FindingLines.Unknown(
        check, subjectId, conditionId, Sentence.Of($"{load.Title}: what it draws while it starts is not known"), [new FindingInput(load.Id, "startRatio", IsMissing: true)]);
}
