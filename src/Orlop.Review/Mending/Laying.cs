using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>How a cable is laid: as it is, or shorter, or by another run; as it is or to a device that is moved. Its one length is what is priced, cut, weighed, said and drafted.</summary>
/// <param name="LengthM">In metres; null where it is not known.</param>
/// <param name="Run">Another run; null for its own.</param>
/// <param name="Words">What is said of it; null where it is laid as it is.</param>
internal sealed record Laying(double? LengthM, OtherRun? Run, Sentence? Words)
{
    // What a cable laid short is at least, over the straight distance between the places of its ends. Common practice, no source.
    private const double RoundaboutFactor = 1.2;

    /// <summary>The device at its beginning or end that is moved with it; null where none is.</summary>
    public MovedDevice? Moved { get; init; }

    /// <summary>Every way in which it may be laid, first as it is.</summary>
    public static IEnumerable<Laying> All(MendBench bench, Cable cable, CableWant want)
    {
        Laying[] still = [.. Still(bench, cable, want)];
        Sentence Longer(MovedDevice moved, double lengthM) => Sentence.Of($"laid in {new Amount(lengthM, "M")}, of which {new Amount(moved.MoreM, "M")} for {moved.DeviceTitle} moved nearer");
        return
        [
            .. still,
            .. want.TailOf is { } tail ? [new Laying(tail.TailM, null, tail.Words(cable)) { Moved = tail }] : Array.Empty<Laying>(),
            .. want.LedOn is not { } on ? [] : still.Where(laying => laying.LengthM is not null).Select(laying => laying with
            {
                LengthM = LengthWith(laying, on),
                Words = laying.Words is { } words ? Sentence.Of($"{words}, {Longer(on, LengthWith(laying, on))}") : Longer(on, LengthWith(laying, on)),
                Moved = on,
            }),
        ];
    }

    private static double LengthWith(Laying laying, MovedDevice on) => Math.Round(laying.LengthM!.Value + on.MoreM, 3);

    private static IEnumerable<Laying> Still(MendBench bench, Cable cable, CableWant want)
    {
        yield return new Laying(cable.LengthM?.Value, null, null);
        if (want.ShortM is { } shortM && cable.LengthM is not null && Shorter(bench.Draft, cable, shortM) is { } shorter)
        {
            yield return shorter;
        }

        if (want.IsOtherRun && OtherRuns.Of(bench.Draft, cable) is { } other && other.Legs != cable.Run)
        {
            yield return new Laying(other.LengthM, other, Sentence.Of($"by {other.Words}"));
        }
    }

    // Never shorter than her drawing says that it must be: what it becomes hangs on a length that nobody has measured.
    private static Laying? Shorter(BoatModel boat, Cable cable, double shortM)
    {
        if (cable.Cores.Count == 0 || boat.Find<Part>(cable.Cores[0].From.Part)?.Place is null || boat.Find<Part>(cable.Cores[0].To.Part)?.Place is null)
        {
            return new Laying(shortM, null, Sentence.Of($"laid in {new Amount(shortM, "M")}, if that reaches: measure on board before it is relied on, for the drawing has not the places of both ends"));
        }

        double straightM = cable.Cores.Max(core => StraightM(boat, core));
        return shortM < RoundaboutFactor * straightM ? null
            : new Laying(shortM, null, Sentence.Of($"laid in {new Amount(shortM, "M")}, if that reaches: measure on board before it is relied on, for the drawing has {new Amount(straightM, "M")} straight through the air"));
    }

    // Between the places of its ends; nothing where one has none.
    private static double StraightM(BoatModel boat, Core core) =>
        boat.Find<Part>(core.From.Part)?.Place is { } from && boat.Find<Part>(core.To.Part)?.Place is { } to ? from.DistanceM(to) : 0;

    /// <summary>What the rules of direction compare of the cable laid so.</summary>
    public MendTraits Traits(Cable cable) => new()
    {
        AreaMm2 = cable.AreaMm2.Value,
        InsulationC = cable.InsulationC?.Value,
        LengthM = LengthM,
        Route = Run is null ? 0 : 1,
        IsMoved = Moved is not null,
    };

    /// <summary>The boat with the cable changed and laid so.</summary>
    public BoatModel Apply(BoatModel boat, string cableId, Func<Cable, Cable> change)
    {
        BoatModel laid = MendBench.Change<Cable>(boat, cableId, was => Laid(change(was)));
        return Moved?.TailId == cableId ? Moved.Placed(laid) : laid;
    }

    private Cable Laid(Cable cable)
    {
        if (Words is null || LengthM is not { } lengthM)
        {
            return cable;
        }

        Cable run = Run is null ? cable : InLength(cable, Run.LengthM) with { Run = Run.Legs, Cores = cable.Cores.Select(core => core with { LengthM = null }).ToValueList() };
        return Moved?.OnId == cable.Id ? LongerAt(run, lengthM, Moved.DeviceId) : Run is null ? InLength(run, lengthM) : run;
    }

    /// <summary>The cable in another length, in metres; the longest stretch of its run gives way.</summary>
    public static Cable InLength(Cable cable, double lengthM) => InLength(cable, lengthM, cable.Run.MaxBy(leg => leg.LengthM));

    // The stretch at the device is what becomes longer.
    private static Cable LongerAt(Cable cable, double lengthM, string deviceId) =>
        InLength(cable, lengthM, cable.Run.Count == 0 ? null : cable.Cores.Any(core => core.From.Part == deviceId) ? cable.Run[0] : cable.Run[^1]);

    private static Cable InLength(Cable cable, double lengthM, RunLeg? giving)
    {
        double lessM = (cable.LengthM?.Value ?? lengthM) - lengthM;
        return cable with
        {
            LengthM = new Quantity(lengthM, Knowledge.Estimated, cable.LengthM?.PlusMinus, Method: "to be laid so; measure before cutting"),
            Run = cable.Run.Select(leg => ReferenceEquals(leg, giving) ? leg with { LengthM = Math.Round(Math.Max(0, leg.LengthM - lessM), 3) } : leg).ToValueList(),
        };
    }
}
