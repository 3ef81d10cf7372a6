using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>
/// The earth-fault loop: I = U/(R_source + R_live + R_earth), no more than the source gives; each device by its latest time at that current; the time allowed by
/// IEC 60364-4-41. Reactance is left out: below about 35 mm² copper it is small beside resistance (common practice, no source).
/// </summary>
public static class EarthFaultLoop
{
    /// <summary>Touch voltage that may stand for ever (IEC 60364-4-41, 411.5.3).</summary>
    public const double LastingTouchV = 50;

    /// <summary>Source of R_A · I∆n ≤ 50 V.</summary>
    public const string GroundSource = "IEC 60364-4-41, 411.5.3: R_A · I∆n ≤ 50 V";

    /// <summary>The fault and how it ends.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static EarthFaultResult Calculate(EarthFaultInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Check(input);
        var loop = input.SourceOhm + input.LiveOhm + input.EarthOhm;
        if (input.Return == EarthReturn.None)
        {
            return new EarthFaultResult(EarthFaultStatus.DrivesNothing, loop, 0, false, 0, null, [], null, null, []);
        }

        var free = loop > 0 ? input.NominalV / loop : double.PositiveInfinity;
        var isLimited = input.LimitA < free;
        var fault = isLimited ? input.LimitA!.Value : free;
        if (!(fault <= 1e6))
        {
            throw new ArgumentOutOfRangeException(nameof(input), fault, FormattableString.Invariant($"{input.Subject}: a loop of {loop} ohm drives {fault} A; allowed to 1e6 A."));
        }

        ImmutableArray<EarthFaultOpening> openings = [.. input.Devices.Select(device => Opening(device, fault))];
        var first = openings.Where(opening => opening.LatestS is not null).MinBy(opening => opening.LatestS);
        var shutsDown = isLimited ? input.ShutsDownS : null;
        var ends = first?.LatestS is { } opens && !(shutsDown < opens) ? opens : shutsDown;
        int? endedBy = first is not null && ends == first.LatestS ? openings.IndexOf(first) : null;
        var permitted = DisconnectionTimes.Permitted(input.NominalV, input.Return, CircuitRatingA(input));
        var touch = input.Return == EarthReturn.Ground ? Math.Min(input.NominalV, fault * (input.SourceOhm + input.EarthOhm)) : fault * input.EarthOhm;
        return new EarthFaultResult(Judge(input, ends, permitted), loop, fault, isLimited, touch, permitted, openings, ends, endedBy,
            [.. Working(input, loop, free, fault, isLimited, touch), .. openings.SelectMany((opening, i) => Working(input.Devices[i], opening, fault))]);
    }

    /// <summary>
    /// The greatest loop with which a device still ends the fault in time: by its overcurrent release U/I_a, I_a at the least gate that opens in time; by its residual release 50 V/I∆n. The greater of
    /// the two; null where neither opens in time at any current.
    /// </summary>
    public static double? GreatestLoopOhm(EarthFaultDevice device, double nominalV, double permittedS)
    {
        ArgumentNullException.ThrowIfNull(device);
        Guard.Positive(nominalV, 400, "V", device.Subject);
        Guard.Positive(permittedS, 600, "s", device.Subject);
        double? byOvercurrent = device.Curve?.BreakRatios.Where(ratio => device.Curve.LatestOpening(ratio).TimeS <= permittedS)
            .Select(ratio => (double?)(nominalV / (ratio * device.RatingA))).FirstOrDefault();
        double? byResidual = device.ResidualA is { } residual && ResidualOpening.LatestS(residual * nominalV / LastingTouchV, residual, device.ResidualOpensS) <= permittedS ? LastingTouchV / residual : null;
        return byOvercurrent is { } over && byResidual is { } seen ? Math.Max(over, seen) : byOvercurrent ?? byResidual;
    }

    private static void Check(EarthFaultInput input)
    {
        if (!(input.NominalV > 50))
        {
            throw new ArgumentOutOfRangeException(nameof(input), input.NominalV, FormattableString.Invariant($"{input.Subject}: NominalV = {input.NominalV} V; allowed above 50, to 400 V."));
        }

        Guard.Positive(input.NominalV, 400, "V", input.Subject);
        Guard.InRange(input.SourceOhm, 0, 1e5, "ohm", input.Subject);
        Guard.Positive(input.LimitA ?? 1, 1e6, "A", input.Subject);
        Guard.Positive(input.ShutsDownS ?? 1, 600, "s", input.Subject);
        Guard.InRange(input.LiveOhm, 0, 1e4, "ohm", input.Subject);
        Guard.InRange(input.EarthOhm, 0, 1e4, "ohm", input.Subject);
    }

    // The smallest device is the circuit's own; a circuit without one is held to the shorter time.
    private static double CircuitRatingA(EarthFaultInput input) => input.Devices.IsEmpty ? DisconnectionTimes.FinalCircuitA : input.Devices.Min(device => device.RatingA);

    private static EarthFaultOpening Opening(EarthFaultDevice device, double faultA) => new(
        device.Subject,
        device.Curve?.LatestOpening(Math.Min(faultA / Guard.Positive(device.RatingA, 10_000, "A", device.Subject), 10_000)).TimeS,
        device.ResidualA is { } residual ? ResidualOpening.LatestS(faultA, residual, device.ResidualOpensS) : null);

    private static EarthFaultStatus Judge(EarthFaultInput input, double? endsS, double? permittedS) => endsS switch
    {
        null => EarthFaultStatus.MayNeverEnd,
        _ when !(endsS <= permittedS) => EarthFaultStatus.MayEndLate,
        _ when input.Return == EarthReturn.Ground && !(GroundTouchV(input) <= LastingTouchV) => EarthFaultStatus.TouchTooHigh,
        _ => EarthFaultStatus.EndsInTime,
    };

    /// <summary>R_A · I∆n with the most sensitive residual-current device, the electrode counted with the whole of the source's loop; infinite where there is none.</summary>
    public static double GroundTouchV(EarthFaultInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return input.Devices.Min(device => device.ResidualA) is { } least ? (input.SourceOhm + input.EarthOhm) * least : double.PositiveInfinity;
    }

    private static IEnumerable<WorkingStep> Working(EarthFaultInput input, double loop, double free, double fault, bool isLimited, double touch)
    {
        yield return new WorkingStep("R_loop", FormattableString.Invariant($"{input.SourceOhm:0.#######} + {input.LiveOhm:0.#######} + {input.EarthOhm:0.#######}"), loop, "ohm", "source, live, protective conductor");
        yield return isLimited
            ? new WorkingStep("I_fault", FormattableString.Invariant($"the source gives no more; the loop alone would let {free:0.#} A flow"), fault, "A", "the source's own limit")
            : new WorkingStep("I_fault", FormattableString.Invariant($"{input.NominalV:0.###} / {loop:0.#######}"), fault, "A", "I = U/R");
        yield return input.Return == EarthReturn.Ground
            ? new WorkingStep("U_touch", "over both electrodes and the protective conductor, no more than the source's", touch, "V", "both electrodes counted to the boat's side")
            : new WorkingStep("U_touch", FormattableString.Invariant($"{fault:0.#######} × {input.EarthOhm:0.#######}"), touch, "V", "over the protective conductor");
        if (input.Return == EarthReturn.Ground && GroundTouchV(input) is var ground && double.IsFinite(ground))
        {
            yield return new WorkingStep("R_A·I∆n", FormattableString.Invariant($"{input.SourceOhm + input.EarthOhm:0.#######} × {input.Devices.Min(device => device.ResidualA):0.#######}"), ground, "V", GroundSource);
        }
    }

    private static IEnumerable<WorkingStep> Working(EarthFaultDevice device, EarthFaultOpening opening, double fault)
    {
        if (device.Curve is { } curve)
        {
            yield return new WorkingStep("t_over", FormattableString.Invariant($"{device.Subject}: {curve.LatestOpening(Math.Min(fault / device.RatingA, 10_000)).Explanation}"), opening.OvercurrentS, "s", curve.Source);
        }

        if (device.ResidualA is { } residual)
        {
            yield return new WorkingStep("t_residual", FormattableString.Invariant($"{device.Subject}: {fault / residual:0.#} × its residual current"), opening.ResidualS, "s", device.ResidualOpensS is null ? ResidualOpening.Source : "its own sheet");
        }
    }
}
