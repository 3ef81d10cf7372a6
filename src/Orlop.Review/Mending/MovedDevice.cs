using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>
/// The fuse or breaker at the end of a cable that is too long before it, moved along the straight line towards the other end until the length fits along the sides of the space. What leads on from
/// it becomes longer by as much. Only where both have a place, nothing is bolted to the device, and one cable at most leads on.
/// </summary>
/// <param name="DeviceId">The device.</param>
/// <param name="TailId">The cable before it.</param>
/// <param name="OnId">The cable that leads on; null where none does.</param>
/// <param name="Near">Where the device stands then.</param>
/// <param name="TailM">Length of the cable before it then, in metres.</param>
/// <param name="MoreM">What the cable that leads on becomes longer by, in metres.</param>
/// <param name="DeviceTitle">Title of the device.</param>
internal sealed record MovedDevice(string DeviceId, string TailId, string? OnId, Place Near, double TailM, double MoreM, string DeviceTitle)
{
    private const int Decimals = 2;

    /// <summary>The move; null where there is none.</summary>
    /// <param name="boat">The draft.</param>
    /// <param name="tail">The cable before the device, with one core.</param>
    /// <param name="shortM">Length that it becomes, in metres.</param>
    public static MovedDevice? Of(BoatModel boat, Cable tail, double shortM)
    {
        if (tail.Cores.Count != 1 || tail.LengthM is null || Ends(boat, tail.Cores[0]) is not ({ Place: { } at } device, { Place: { } source }) || SquareM(at, source) <= shortM)
        {
            return null;
        }

        double share = shortM / SquareM(at, source);
        double Toward(double from, double to) => Math.Round(from + (share * (to - from)), Decimals);
        Place near = new(Toward(source.XM, at.XM), Toward(source.YM, at.YM), Toward(source.ZM, at.ZM));
        Cable[] on = [.. boat.All<Cable>().Where(other => other.Id != tail.Id && other.Cores.Any(core => core.From.Part == device.Id || core.To.Part == device.Id))];
        bool isBolted = boat.All<Link>().Any(link => link.From.Part == device.Id || link.To.Part == device.Id);
        bool isOut = device.Space is { } space && boat.Find<Space>(space)?.Contains(near) == false;
        bool isUnknown = on.Length == 1 && (on[0].LengthM is null || on[0].Cores.Any(core => core.LengthM is not null));
        return isBolted || isOut || isUnknown || on.Length > 1 ? null : new MovedDevice(device.Id, tail.Id, on.Length == 1 ? on[0].Id : null, near, shortM, Math.Round(SquareM(at, near), 3), device.Title);
    }

    /// <summary>What is said of it, with the cable before it in its new length.</summary>
    public Sentence Words(Cable tail) => Sentence.Of($"{DeviceTitle}: moved nearer, to {FormattableString.Invariant($"{Near.XM:0.##} m forward, {Near.YM:0.##} m to port, {Near.ZM:0.##} m up")}, so that {tail.Title} is laid in {new Amount(TailM, "M")} in place of {new Amount(tail.LengthM!.Value, "M")}; measure on board before it is relied on");

    /// <summary>The boat with the device at its new place.</summary>
    public BoatModel Placed(BoatModel boat) => MendBench.Change<Protection>(boat, DeviceId, was => was with { Place = Near });

    private static (Protection Device, Part Source)? Ends(BoatModel boat, Core core) => (boat.Find<Part>(core.From.Part), boat.Find<Part>(core.To.Part)) switch
    {
        (Part and not Protection and { } source, Protection device) => (device, source),
        (Protection device, Part and not Protection and { } source) => (device, source),
        _ => null,
    };

    private static double SquareM(Place a, Place b) => Math.Abs(a.XM - b.XM) + Math.Abs(a.YM - b.YM) + Math.Abs(a.ZM - b.ZM);
}
