using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>How what was opened is closed again: devices in reverse, then the sources that were stopped, so that nothing charges while hands are still at the wiring (common practice, no source).</summary>
public static class ClosingOrder
{
    /// <summary>The devices, the last opened first.</summary>
    public static IEnumerable<Opening> Devices(IsolationResult plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Openings.Reverse().Where(opening => opening.Means is not null);
    }

    /// <summary>The sources that were stopped, the last stopped first.</summary>
    public static IEnumerable<Opening> Sources(IsolationResult plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Openings.Reverse().Where(opening => opening.Means is null);
    }

    /// <summary>Devices, then sources.</summary>
    public static IEnumerable<Opening> Of(IsolationResult plan) => Devices(plan).Concat(Sources(plan));
}
