using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Conductors;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>A current and a time.</summary>
/// <param name="CurrentA">Above 0.</param>
/// <param name="TimeS">Above 0; NaN where a curve breaks off.</param>
public readonly record struct CurvePoint(double CurrentA, double TimeS);

/// <summary>A curve of the chart of protection.</summary>
/// <param name="Title">What it belongs to.</param>
/// <param name="Points">By rising current.</param>
public sealed record NamedCurve(string Title, ImmutableArray<CurvePoint> Points);

/// <summary>A device between its earliest and its latest opening.</summary>
/// <param name="Title">Its name.</param>
/// <param name="Earliest">The soonest that it may open.</param>
/// <param name="Latest">The longest that it may take.</param>
/// <param name="IsFromMemory">Some of its times are from memory.</param>
public sealed record DeviceCurves(string Title, ImmutableArray<CurvePoint> Earliest, ImmutableArray<CurvePoint> Latest, bool IsFromMemory);

/// <summary>What protects a circuit, over current and time: its devices, what its thinnest conductor bears, its start, the overload that its inverter bears, its weakest and greatest fault.</summary>
public sealed record ProtectionCurves
{
    private const double LeastS = 0.01;
    private const double MostS = 10_000;
    private const double GridRatio = 1.06;
    private const double EdgeRatio = 1e-6;
    private const double BeyondRatio = 1.3;

    /// <summary>From the battery on.</summary>
    public required ImmutableArray<DeviceCurves> Devices { get; init; }

    /// <summary>Devices whose times are not known.</summary>
    public required ImmutableArray<string> WithoutTimes { get; init; }

    /// <summary>How long the thinnest conductor on the way bears a current, losing heat; null where it cannot be told.</summary>
    public NamedCurve? Conductor { get; init; }

    /// <summary>What the load draws while it starts, and how long; null without a start.</summary>
    public NamedCurve? Start { get; init; }

    /// <summary>The overloads that an inverter bears, at its input; null for another load.</summary>
    public NamedCurve? Overload { get; init; }

    /// <summary>Current while running, normal charge, A; null where it cannot be told.</summary>
    public double? RunningA { get; init; }

    /// <summary>The weakest fault at the far end, A; null where it cannot be told.</summary>
    public double? WeakestFaultA { get; init; }

    /// <summary>The greatest fault just behind the last device, A; null where it cannot be told.</summary>
    public double? GreatestFaultA { get; init; }

    /// <summary>The curves of the way from a battery to something that takes power; null where no battery feeds it, or nothing protects it.</summary>
    public static ProtectionCurves? Of(ElectricsView view, Part taker, Condition condition)
    {
        ArgumentNullException.ThrowIfNull(view);
        ShortestWay way = view.WayTo(taker, condition);
        FarEnd[] ends = [.. view.FarEndsIn(condition).All.Where(end => way.Out.Contains(end.Edge.Id))];
        if (ends.MaxBy(end => end.Before.Length) is not { Before.IsEmpty: false } last)
        {
            return null;
        }

        double? weakest = ends.All(end => end.Fault is not null && MissingInputs.OfWay(view, view.Solve(condition, ChargeCase.Lowest), condition, end).IsEmpty)
            ? ends.Min(end => Math.Abs(end.Fault!.Fault.CurrentA)) : null;
        double? greatest = new DevicePair(last.Before[^1], last.Before[^1], null).GreatestA(view, condition);
        double mostA = BeyondRatio * Math.Max(greatest ?? 0, last.Before.Max(device => device.RatedA.Value) * 10);
        double? running = MissingInputs.OfCurrent(view, condition, taker.Id).IsEmpty ? view.Solve(condition, ChargeCase.Normal).LoadA(taker.Id) : null;
        return new ProtectionCurves
        {
            Devices = [.. last.Before.Select(device => Drawn(view, device, mostA)).OfType<DeviceCurves>()],
            WithoutTimes = [.. last.Before.Where(device => view.GatesOnDc(device) is null).Select(device => device.Title)],
            Conductor = Thinnest(view, ends, condition, mostA),
            Start = StartOf(view, taker, condition, running),
            Overload = OverloadOf(view, taker, condition),
            RunningA = running,
            WeakestFaultA = weakest,
            GreatestFaultA = greatest,
        };
    }

    private static DeviceCurves? Drawn(ElectricsView view, Protection device, double mostA)
    {
        if (view.GatesOnDc(device) is not { } gates)
        {
            return null;
        }

        double[] currents = [.. Grid(device.RatedA.Value, mostA).Concat(gates.BreakRatios.Select(ratio => ratio * device.RatedA.Value)
            .SelectMany(gateA => new[] { gateA * (1 - EdgeRatio), gateA, gateA * (1 + EdgeRatio) })).Where(currentA => currentA <= mostA).Distinct().Order()];
        return new DeviceCurves(
            device.Title,
            Points(currents, currentA => gates.EarliestOpening(currentA / device.RatedA.Value).TimeS),
            Points(currents, currentA => gates.LatestOpening(currentA / device.RatedA.Value).TimeS),
            gates.IsFromMemory);
    }

    // The one that bears the greatest current for the shortest time.
    private static NamedCurve? Thinnest(ElectricsView view, IEnumerable<FarEnd> ends, Condition condition, double mostA)
    {
        Cable? thinnest = ends.Select(end => end.Cable).MinBy(cable => FaultedConductor.Of(view, cable, condition, mostA) is { } each ? HeatedWithstand.LongestTime(each.Conductor).LongestS : double.PositiveInfinity);
        return thinnest is not null && FaultedConductor.Of(view, thinnest, condition, mostA) is { } found
            ? new NamedCurve(thinnest.Title, Points([.. Grid(found.AmpacityA, mostA)], currentA => HeatedWithstand.LongestTime(found.Conductor with { CurrentA = currentA }).LongestS))
            : null;
    }

    private static NamedCurve? StartOf(ElectricsView view, Part taker, Condition condition, double? runningA) =>
        taker is ElectricLoad { StartRatio.Value: > 1, StartS: { } duration } load && LoadElements.IsOnIn(load, condition.Id) && runningA is { } running
        && view.Solve(new NetworkCase(condition.Id, ChargeCase.Normal, taker.Id)).LoadA(taker.Id) is { } starting
            ? new NamedCurve($"{taker.Title} starting", [new(running, MostS), new(running, duration.Value), new(starting, duration.Value), new(starting, LeastS)])
            : null;

    private static NamedCurve? OverloadOf(ElectricsView view, Part taker, Condition condition)
    {
        if (taker is not Inverter { Overloads.Count: > 0 } inverter
            || Poles.Taking(taker) is not { } poles || view.Solve(condition, ChargeCase.Lowest).BetweenV(poles.Plus, poles.Minus) is not { } volts || !(volts > 0))
        {
            return null;
        }

        ImmutableArray<CurvePoint>.Builder points = ImmutableArray.CreateBuilder<CurvePoint>();
        double before = inverter.RatedW.Value / volts;
        points.Add(new(before, MostS));
        foreach (Overload overload in inverter.Overloads.OrderBy(each => each.RatingRatio))
        {
            double current = overload.RatingRatio * inverter.RatedW.Value / volts;
            points.Add(new(before, overload.DurationS));
            points.Add(new(current, overload.DurationS));
            before = current;
        }

        points.Add(new(before, LeastS));
        return new NamedCurve($"{taker.Title}: the overload it bears, without its losses", points.ToImmutable());
    }

    private static IEnumerable<double> Grid(double leastA, double mostA)
    {
        for (double currentA = leastA; currentA < mostA; currentA *= GridRatio)
        {
            yield return currentA;
        }

        yield return mostA;
    }

    private static ImmutableArray<CurvePoint> Points(double[] currents, Func<double, double?> timeS) =>
        [.. currents.Select(currentA => new CurvePoint(currentA, timeS(currentA) is { } time && time <= MostS && time >= LeastS ? time : double.NaN))];
}
