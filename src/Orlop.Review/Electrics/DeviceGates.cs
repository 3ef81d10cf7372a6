using Orlop.Boat.Things;
using Orlop.Electrics.Protection;

namespace Orlop.Review.Electrics;

/// <summary>The operating times of a fuse or breaker: its own sheet's, or the listed gates it names.</summary>
public static class DeviceGates
{
    private const double DcTripFactor = 1.4;

    /// <summary>Null when the device has neither, has no rating above 0, names gates that do not cover its rating or are those of the other kind (a breaker those of a fuse), or its own points are out of order.</summary>
    public static OperatingGates? Of(Protection device)
    {
        if (!(device.RatedA.Value > 0))
        {
            return null;
        }

        if (device.OwnTimes.Count == 0)
        {
            return ListedOf(device) is { } id ? OperatingGateTable.Find(id, device.RatedA.Value) : null;
        }

        return AreInOrder(device)
            ? new OperatingGates(device.Id, [.. device.OwnTimes.Select(time => new OperatingGate(time.RatingRatio, time.EarliestS, time.LatestS, false, false))], "the device's own sheet, as typed")
            : null;
    }

    /// <summary>The id of the gates that a device names; null where it names none, or those of the other kind: a fuse's tell nothing of a breaker, nor a breaker's of a fuse.</summary>
    public static string? ListedOf(Protection device) => OtherKindOf(device) is null ? device.Gates : null;

    /// <summary>What the gates that a device names are those of, where it is not what it is itself; null where they fit it, are not listed, or none are named.</summary>
    public static GatedDevice? OtherKindOf(Protection device)
    {
        ArgumentNullException.ThrowIfNull(device);
        GatedDevice own = device.Means == ProtectionMeans.Fuse ? GatedDevice.Fuse : GatedDevice.Breaker;
        return device.Gates is { } id && OperatingGateTable.DeviceOf(id) is { } named && named != own ? named : null;
    }

    /// <summary>
    /// The same on direct current: a listed breaker is gated on alternating current, and on direct current its magnet pulls at about 1.4 times that (from memory, no source). Its own sheet is taken as it stands.
    /// </summary>
    public static OperatingGates? OnDc(Protection device)
    {
        OperatingGates? gates = Of(device);
        return device is { Means: ProtectionMeans.Breaker, OwnTimes.Count: 0 } ? gates?.WithInstantaneousTripAt(DcTripFactor, "1.4 × on direct current, from memory") : gates;
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
