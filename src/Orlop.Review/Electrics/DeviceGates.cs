using Orlop.Boat.Things;
using Orlop.Electrics.Protection;

namespace Orlop.Review.Electrics;

/// <summary>The operating times of a fuse or breaker: its own sheet's, or the listed gates it names.</summary>
public static class DeviceGates
{
    /// <summary>Null when the device has neither, names gates that do not cover its rating, or its own points are out of order.</summary>
    public static OperatingGates? Of(Protection device)
    {
        if (device.OwnTimes.Count == 0)
        {
            return device.Gates is { } id ? OperatingGateTable.Find(id, device.RatedA.Value) : null;
        }

        return AreInOrder(device)
            ? new OperatingGates(device.Id, [.. device.OwnTimes.Select(time => new OperatingGate(time.RatingRatio, time.EarliestS, time.LatestS, false, false))], "the device's own sheet, as typed")
            : null;
    }

    private static bool AreInOrder(Protection device)
    {
        double ratio = 0;
        foreach (OperatingTime time in device.OwnTimes)
        {
            if (time.RatingRatio <= ratio || (time.EarliestS ?? time.LatestS) is null || time.EarliestS > time.LatestS)
            {
                return false;
            }

            ratio = time.RatingRatio;
        }

        return true;
    }
}
