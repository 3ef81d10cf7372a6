using System.Collections.Immutable;

namespace Orlop.Electrics.Diagnosis;

/// <summary>What the readings say.</summary>
public enum DiagnosisStatus
{
    /// <summary>The network as it should be cannot be solved, so nothing can be compared.</summary>
    NotSolvable,

    /// <summary>The readings agree with the network as it should be.</summary>
    NothingWrongSeen,

    /// <summary>One element explains the readings and no other does.</summary>
    Found,

    /// <summary>More than one element would explain the readings: see the groups and the next reading.</summary>
    NotToldApart,

    /// <summary>No single element's resistance explains the readings: more than one thing is wrong, or the network or a reading is.</summary>
    NotExplained,
}

/// <summary>Which joint or conductor is bad, how sure that is, and what to read next.</summary>
public sealed record DiagnosisResult
{
    public required DiagnosisStatus Status { get; init; }

    /// <summary>Chi-square of "nothing is wrong"; null when the network could not be solved.</summary>
    public double? NothingWrongChiSquareRatio { get; init; }

    /// <summary>Weight of "nothing is wrong" among all hypotheses, 0 to 1.</summary>
    public double? NothingWrongFraction { get; init; }

    /// <summary>Candidates, the best first.</summary>
    public ImmutableArray<Suspect> Suspects { get; init; } = [];

    /// <summary>Candidates that the readings cannot tell apart, the likeliest group first; ids in the order of <see cref="Suspects"/>.</summary>
    public ImmutableArray<SuspectGroup> Groups { get; init; } = [];

    /// <summary>Predicted less read at the best fit, in the reading's standard uncertainties: voltages in the order given, then currents.</summary>
    public ImmutableArray<double> ResidualRatios { get; init; } = [];

    /// <summary>What to read next to tell the likely candidates apart; null when there is nothing to tell apart or no reading would.</summary>
    public NextReading? Next { get; init; }

    public ImmutableArray<string> Assumptions { get; init; } = [];

    /// <summary>How often the network was solved.</summary>
    public int SolveCount { get; init; }
}

/// <summary>One candidate with the extra resistance that fits the readings best.</summary>
/// <param name="ExtraOhm">At least 0.</param>
/// <param name="StandardUncertaintyOhm">From the curvature of chi-square; null when the readings do not feel this element.</param>
/// <param name="ChiSquareRatio">Sum of squared misfits over squared uncertainties.</param>
/// <param name="WeightFraction">exp(-χ²/2) over the sum of all hypotheses, "nothing is wrong" among them.</param>
/// <param name="ExtraHeatW">Heat in the extra resistance at that fit, I²R.</param>
public sealed record Suspect(string ElementId, double ExtraOhm, double? StandardUncertaintyOhm, double ChiSquareRatio, double WeightFraction, double ExtraHeatW);

/// <summary>Candidates whose best fits predict the same readings within what the meter can tell.</summary>
public sealed record SuspectGroup(ImmutableArray<string> ElementIds, double WeightFraction);

/// <summary>The two ends of one element to put the meter on, and what each likely candidate predicts there.</summary>
/// <param name="ElementId">The conductor or contact that is read across.</param>
/// <param name="SpreadV">Largest less smallest prediction.</param>
public sealed record NextReading(string ElementId, string PlusNode, string MinusNode, double SpreadV, ImmutableDictionary<string, double> PredictedV);
