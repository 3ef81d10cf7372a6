using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Diagnosis;

/// <summary>A candidate at the extra resistance that fits best, with the whole operating point there.</summary>
internal sealed record FittedCandidate(string Id, double ExtraOhm, double? UncertaintyOhm, double ChiSquare, OperatingPoint Point)
{
    /// <summary>Heat in the extra resistance, I²R.</summary>
    public double ExtraHeatW => Math.Pow(Point.BranchA.GetValueOrDefault(Id), 2) * ExtraOhm;
}

/// <summary>Solves the network with extra resistance in one element and holds it against the readings.</summary>
internal sealed class CandidateFit(DiagnosisInput input, Func<Network, NetworkResult> solve)
{
    private const int ScanCount = 18;

    /// <summary>The search runs over s in δ = unit · (e^s - 1), so that micro-ohms and ohms are equally well resolved.</summary>
    private const double UnitOhm = 1e-6;

    /// <summary>Beyond a hundred times the resistance that would take the whole voltage an element is as good as broken.</summary>
    private const double BrokenFactor = 100;

    private const int MostStepCount = 8;
    private const double FirstStepOhm = 1e-5;

    /// <summary>Settled when the next step is this small a share of the resistance's own uncertainty.</summary>
    private const double SettledFraction = 1e-3;

    private static readonly double[] FartherFractions = [1e-4, 1e-2, 1];

    public int SolveCount { get; private set; }

    public int ReadingCount => input.Voltages.Length + input.Currents.Length;

    /// <summary>The operating point with extra resistance in one element; null when there is none.</summary>
    public OperatingPoint? Predict(string candidateId, double extraOhm)
    {
        SolveCount++;
        return solve(WithExtra(candidateId, extraOhm)).Point;
    }

    public double ChiSquare(OperatingPoint? point) =>
        point is null ? double.PositiveInfinity : Misfits(point).Sum(misfit => misfit * misfit);

    /// <summary>How far apart two operating points are in the readings, in χ².</summary>
    public double Distance(OperatingPoint one, OperatingPoint other) =>
        Misfits(one).Zip(Misfits(other), (a, b) => (a - b) * (a - b)).Sum();

    /// <summary>
    /// The extra resistance that fits best: Gauss-Newton steps from nothing (some five solutions), and the search of the whole range only where those
    /// do not settle, or where they settle at nothing while some larger resistance would fit better.
    /// </summary>
    public FittedCandidate Best(string id, OperatingPoint asDrawn) =>
        Step(id, asDrawn) is { } settled && (settled.ExtraOhm > 0 || !IsBetterFarther(id, asDrawn, settled)) ? settled : Search(id, asDrawn);

    /// <summary>Misfit of each reading, voltages first, in its standard uncertainties: predicted less read.</summary>
    public IEnumerable<double> Misfits(OperatingPoint point) =>
        input.Voltages.Select(reading => (point.NodeV[reading.PlusNode] - point.NodeV[reading.MinusNode] - reading.VoltageV) / reading.StandardUncertaintyV)
            .Concat(input.Currents.Select(reading => (Current(point, reading.ElementId)!.Value - reading.CurrentA) / reading.StandardUncertaintyA));

    private FittedCandidate? Step(string id, OperatingPoint asDrawn)
    {
        double extra = 0, stepOhm = FirstStepOhm;
        var point = asDrawn;
        for (var i = 0; i < MostStepCount; i++)
        {
            if (Predict(id, extra + stepOhm) is not { } beside)
            {
                return null;
            }

            double[] here = [.. Misfits(point)];
            double[] slopes = [.. Misfits(beside).Zip(here, (there, now) => (there - now) / stepOhm)];
            var curvature = slopes.Sum(slope => slope * slope);
            double? uncertainty = Math.Sqrt(curvature) * stepOhm > 1e-9 ? 1 / Math.Sqrt(curvature) : null;
            if (uncertainty is null)
            {
                return extra == 0 ? new FittedCandidate(id, 0, null, ChiSquare(point), point) : null;
            }

            var next = Math.Max(0, extra - (slopes.Zip(here, (slope, misfit) => slope * misfit).Sum() / curvature));
            if (Math.Abs(next - extra) < SettledFraction * uncertainty)
            {
                return new FittedCandidate(id, extra, uncertainty, ChiSquare(point), point);
            }

            if (Predict(id, next) is not { } moved || ChiSquare(moved) >= ChiSquare(point))
            {
                return null;
            }

            (extra, point, stepOhm) = (next, moved, Math.Max(1e-3 * next, FirstStepOhm));
        }

        return null;
    }

    private bool IsBetterFarther(string id, OperatingPoint asDrawn, FittedCandidate settled) => settled.UncertaintyOhm is not null
        && FartherFractions.Any(share => ChiSquare(Predict(id, share * BrokenOhm(id, asDrawn))) < settled.ChiSquare);

    private FittedCandidate Search(string id, OperatingPoint asDrawn)
    {
        var most = BrokenOhm(id, asDrawn);
        var s = ScalarMinimum.Find(s => ChiSquare(Predict(id, Extra(s))), 0, Math.Log(1 + (most / UnitOhm)), ScanCount, 1e-5);
        var extra = Extra(s);
        var point = extra > 0 ? Predict(id, extra) : asDrawn;
        return ChiSquare(point) < ChiSquare(asDrawn)
            ? new FittedCandidate(id, extra, Uncertainty(id, extra, point!), ChiSquare(point), point!)
            : new FittedCandidate(id, 0, Uncertainty(id, 0, asDrawn), ChiSquare(asDrawn), asDrawn);
    }

    /// <summary>Refuses readings on nodes or elements that the network does not have.</summary>
    public void RefuseUnread(OperatingPoint point)
    {
        foreach (var node in input.Voltages.SelectMany(reading => new[] { reading.PlusNode, reading.MinusNode }).Where(node => !point.NodeV.ContainsKey(node)))
        {
            throw new ArgumentException($"diagnosis: a voltage was read at '{node}'; the network has no such node.");
        }

        foreach (var reading in input.Currents.Where(reading => Current(point, reading.ElementId) is null))
        {
            throw new ArgumentException($"diagnosis: a current was read in '{reading.ElementId}'; the network has no such element, or it has no current of its own.");
        }
    }

    private static double Extra(double s) => UnitOhm * (Math.Exp(s) - 1);

    private static double? Current(OperatingPoint point, string id) =>
        point.BranchA.TryGetValue(id, out var branch) ? branch
        : point.LoadA.TryGetValue(id, out var load) ? load
        : point.SourceA.TryGetValue(id, out var source) ? source
        : null;

    private static double BrokenOhm(string id, OperatingPoint asDrawn)
    {
        var voltage = asDrawn.NodeV.Values.Max() - asDrawn.NodeV.Values.Min();
        var current = Math.Abs(asDrawn.BranchA.GetValueOrDefault(id));
        return Math.Clamp(BrokenFactor * voltage / Math.Max(current, 1e-3), 1, 1e5);
    }

    /// <summary>u² = 1/Σ (dp/dδ / u_i)², by a small step to the larger side.</summary>
    private double? Uncertainty(string id, double extraOhm, OperatingPoint point)
    {
        var stepOhm = Math.Max(1e-3 * extraOhm, 1e-5);
        if (Predict(id, extraOhm + stepOhm) is not { } stepped)
        {
            return null;
        }

        var slope = Math.Sqrt(Distance(point, stepped)) / stepOhm;
        return slope * stepOhm > 1e-9 ? 1 / slope : null;
    }

    private Network WithExtra(string candidateId, double extraOhm)
    {
        var candidates = input.CandidateIds;
        var network = input.Network;
        var contacts = network.Contacts.Select(contact => contact with
        {
            ResistanceOhm = (candidates.Contains(contact.Id) ? Math.Max(contact.ResistanceOhm, JointDiagnosis.LeastContactOhm) : contact.ResistanceOhm)
                + (contact.Id == candidateId ? extraOhm : 0),
        });
        if (extraOhm == 0 || network.Conductors.FirstOrDefault(conductor => conductor.Id == candidateId) is not { } bad)
        {
            return network with { Contacts = [.. contacts] };
        }

        // In series with a conductor, not in it: a bad joint does not warm with the copper.
        var between = $"{bad.Id} ▸ bad joint";
        return network with
        {
            Conductors = network.Conductors.Replace(bad, bad with { B = between }),
            Contacts = [.. contacts, new Contact(between, between, bad.B, extraOhm)],
        };
    }
}
