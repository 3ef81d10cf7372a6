using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>Which loads have a start to judge. A ratio that is left out means a soft start, except where the load itself says that it has another.</summary>
public static class Starts
{
    /// <summary>Its start is judged: it draws more then than when it runs, or how much more is not given.</summary>
    public static bool HasOne(ElectricLoad load) => LoadElements.HasStart(load) || IsRatioMissing(load);

    /// <summary>It has a start, for it cranks an engine or says how long the start lasts, but not how much it draws then.</summary>
    public static bool IsRatioMissing(ElectricLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return load.StartRatio is null && (load.IsCrankingMotor || load.StartS is { Value: > 0 });
    }

    /// <summary>The verdict on a start whose ratio is not given.</summary>
    internal static Finding RatioUnknown(CheckDescription check, string subjectId, string conditionId, ElectricLoad load) => FindingLines.Unknown(
        check, subjectId, conditionId, Sentence.Of($"{load.Title}: what it draws while it starts is not known"), [new FindingInput(load.Id, "startRatio", IsMissing: true)]);
}
