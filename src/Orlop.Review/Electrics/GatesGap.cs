using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>Why the operating times of a device are not known: its kind is not given, or is, and has none at its rating, or is that of a fuse and the device is a breaker, or the other way round.</summary>
public static class GatesGap
{
    private const string Field = "gates";
    private const string FuseField = "gates/fuse";
    private const string BreakerField = "gates/breaker";

    /// <summary>The missing field: the kind of times, or <c>gates/60/50/63</c> where the kind has none at 60 A and the nearest ratings that have are 50 A and 63 A, <c>gates/500//400</c> where the greatest that has is 400 A; <c>gates/fuse</c> where those of a fuse are named and it is a breaker.</summary>
    internal static FindingInput Input(Protection device) => new(device.Id, FieldOf(device), IsMissing: true);

    /// <summary>The same in a sentence: "Winch fuse: its kind has no operating times at 60 A, only at 50 A and 63 A".</summary>
    internal static string Words(Protection device) =>
        OtherKind(FieldOf(device)) is { } other ? $"{device.Title}: the operating times given are those of {other}, and it is {Named(isFuse: device.Means == ProtectionMeans.Fuse)}"
        : Of(FieldOf(device)) is { } gap ? $"{device.Title}: its kind has no operating times {gap.At}, {gap.Only}" : $"no operating times are known of {device.Title}";

    /// <summary>Why they are not known is told in <see cref="Words"/>; false where nothing but that none are given.</summary>
    internal static bool IsTold(Protection device) => FieldOf(device) != Field;

    /// <summary>Of such a field, what the times named are those of, where the device is the other: "a fuse"; null for any other field.</summary>
    public static string? OtherKind(string field) => field switch
    {
        FuseField => Named(isFuse: true),
        BreakerField => Named(isFuse: false),
        _ => null,
    };

    private static string Named(bool isFuse) => isFuse ? "a fuse" : "a breaker";

    /// <summary>Of such a field, where the kind has no times and where it has: ("at 60 A", "only at 50 A and 63 A"); null for any other field.</summary>
    public static (string At, string Only)? Of(string field) => field?.Split('/') switch
    {
        [Field, var rating, { Length: > 0 } below, { Length: > 0 } above] => ($"at {rating} A", $"only at {below} A and {above} A"),
        [Field, var rating, "", var most] => ($"at {rating} A", $"only up to {most} A"),
        [Field, var rating, var least, ""] => ($"at {rating} A", $"only from {least} A"),
        _ => null,
    };

    private static string FieldOf(Protection device) => device.OwnTimes.Count > 0 ? Field : DeviceGates.OtherKindOf(device) switch
    {
        GatedDevice.Fuse => FuseField,
        GatedDevice.Breaker => BreakerField,
        _ => FieldByRating(device),
    };

    private static string FieldByRating(Protection device) =>
        device is not { Gates: { } kind, RatedA.Value: > 0 and <= 10_000 and var ratedA } ? Field : OperatingGateTable.RatingsBeside(kind, ratedA) switch
        {
            ({ } below, { } above) => string.Create(CultureInfo.InvariantCulture, $"{Field}/{ratedA:0.###}/{below:0.###}/{above:0.###}"),
            ({ } below, null) => string.Create(CultureInfo.InvariantCulture, $"{Field}/{ratedA:0.###}//{below:0.###}"),
            (null, { } above) => string.Create(CultureInfo.InvariantCulture, $"{Field}/{ratedA:0.###}/{above:0.###}/"),
            _ => Field,
        };
}
