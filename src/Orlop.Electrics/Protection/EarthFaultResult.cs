using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>How a fault to earth ends.</summary>
public enum EarthFaultStatus
{
    /// <summary>Nothing is known to open: the fault may stand for ever.</summary>
    MayNeverEnd,

    /// <summary>It ends in the time allowed.</summary>
    EndsInTime,

    /// <summary>It ends, but may take longer than allowed.</summary>
    MayEndLate,

    /// <summary>With an earth of its own, the metal may come to more than 50 V before the residual-current device opens: R_A · I∆n.</summary>
    TouchTooHigh,

    /// <summary>The source floats: a first fault drives no current, nothing opens, and nobody is told.</summary>
    DrivesNothing,
}

/// <summary>How late one device may open on the fault.</summary>
/// <param name="Subject">The device.</param>
/// <param name="OvercurrentS">By its overcurrent release; null where it may never, or is not known.</param>
/// <param name="ResidualS">By its residual release; null where it has none or need not open.</param>
public sealed record EarthFaultOpening(string Subject, double? OvercurrentS, double? ResidualS)
{
    /// <summary>The sooner of the two; null where neither is sure to open.</summary>
    public double? LatestS => OvercurrentS is { } over && ResidualS is { } residual ? Math.Min(over, residual) : OvercurrentS ?? ResidualS;
}

/// <summary>A fault to earth, and how it ends.</summary>
/// <param name="LoopOhm">Source, live and protective conductor.</param>
/// <param name="FaultA">What flows; 0 where the source floats.</param>
/// <param name="IsLimited">The source gives no more, whatever the loop.</param>
/// <param name="TouchV">Between the faulted metal and the earth at the neutral's bond, while the fault stands; with an earth of its own, up to the voltage of the source.</param>
/// <param name="PermittedS">The longest allowed; null where the source floats.</param>
/// <param name="Openings">Each device, from the source on.</param>
/// <param name="EndsS">The longest the fault lasts; null where it may never end.</param>
/// <param name="EndedByIndex">Place among the devices of the one that ends it first; null where the source takes its own voltage away, or nothing ends it.</param>
public sealed record EarthFaultResult(
    EarthFaultStatus Status, double LoopOhm, double FaultA, bool IsLimited, double TouchV, double? PermittedS,
    ImmutableArray<EarthFaultOpening> Openings, double? EndsS, int? EndedByIndex, ImmutableArray<WorkingStep> Working);
