using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Networks;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.Review.Readings;

/// <summary>
/// Predicts readings of a boat in one condition. The network is solved as put down, and once or twice more for each doubt: joints and contacts, lengths and
/// copper, conductors cold, charge, open-circuit voltage, internal resistance, loads, no sun. A band reaches from the nominal value by the root of the sum of the squares of
/// what the doubts do in each direction, and by the meter's error on top.
/// </summary>
public sealed class ConditionPrediction
{
    // These only set a conductor's temperature, which the doubts cover.
    private static readonly HashSet<string> HeatFields = ["insulationC", "run", "space", "ambientC"];

    private const string LengthField = "lengthM";

    // A length that nobody has given is taken as 1 m by the builder; the true one may be this many times as long.
    private static readonly double[] UnknownLengthFactors = [0.05, 40];

    // A charge that nobody has given a ± for.
    private const double ChargePlusMinus = 0.1;

    // Below this a core carries nothing, and what is not known of it spoils nothing.
    private const double IdleA = 1e-6;

    private readonly BoatModel _boat;
    private readonly Wiring _wiring;
    private readonly ImmutableArray<ImmutableArray<SolvedNetwork>> _doubts;
    private readonly ImmutableArray<SolvedNetwork> _unknownLengths;

    private ConditionPrediction(BoatModel boat, Wiring wiring, Condition condition, SolvedNetwork nominal, ImmutableArray<ImmutableArray<SolvedNetwork>> doubts, ImmutableArray<SolvedNetwork> unknownLengths)
    {
        _boat = boat;
        _wiring = wiring;
        Condition = condition;
        Nominal = nominal;
        _doubts = doubts;
        _unknownLengths = unknownLengths;
    }

    public Condition Condition { get; }

    /// <summary>The network with every value as put down.</summary>
    public SolvedNetwork Nominal { get; }

    /// <summary>A boat in a condition with all its doubts, each circuit solved when something of it is asked.</summary>
    /// <param name="memo">What was solved so far.</param>
    public static ConditionPrediction Of(BoatModel boat, Wiring wiring, Practice? practice, Condition condition, Memo memo, CancellationToken token)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(condition);
        BuiltNetwork built = Build(boat, wiring, practice, condition);
        NetworkDoubts doubts = new(boat, wiring);
        GroupSolver solver = new(memo, token);
        SolvedNetwork Solve(BuiltNetwork of, Network network) => Solved(solver, of, network);

        IEnumerable<ImmutableArray<SolvedNetwork>> charges = Charges(condition).Select(charge => Build(boat, wiring, practice, charge)).Select(of => ImmutableArray.Create(Solve(of, of.Network)));
        SolvedNetwork nominal = Solve(built, built.Network);
        HashSet<string> unknown = [.. UnknownLengths(nominal)];
        return new ConditionPrediction(boat, wiring, condition, nominal,
            [
                .. doubts.Of(built.Network).Select(pair => pair.Select(network => Solve(built, network)).ToImmutableArray()),
                [.. charges.SelectMany(charge => charge)],
            ],
            unknown.Count == 0 ? [] : [.. UnknownLengthFactors.Select(factor => Solve(built, NetworkDoubts.WithConductors(built.Network, unknown, factor)))]);
    }

    /// <summary>The network of a boat in a condition with every value as put down, without its doubts: each circuit solved when something of it is asked.</summary>
    public static SolvedNetwork NominalOf(BoatModel boat, Wiring wiring, Practice? practice, Condition condition, Memo memo, CancellationToken token)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(condition);
        BuiltNetwork built = Build(boat, wiring, practice, condition);
        return Solved(new GroupSolver(memo, token), built, built.Network);
    }

    /// <summary>Voltage between two nodes.</summary>
    public Prediction Voltage(string plus, string minus) => Of("V", MeterAccuracy.VoltageV, plus, network => network.BetweenV(plus, minus));

    /// <summary>Current through an element: a core, a protection, a switch, a load.</summary>
    public Prediction Current(string element) => Of("A", MeterAccuracy.CurrentA, element, network => Through(network, element));

    /// <summary>The lowest voltage at a load while it starts: a motor from rest, or what its starting current leaves.</summary>
    public Prediction Starting(ElectricLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return StartInTime.LowestV(Nominal, load) is null
            ? new Prediction(null, $"the start of {load.Title} is not given")
            : Of("V", MeterAccuracy.VoltageV, load.Id, network => StartInTime.LowestV(network, load));
    }

    /// <summary>
    /// The shortest way of conductors and devices from one node to another, closed in the condition: what is read between them is lost on it, and turns its
    /// sign with the current. Empty where none joins them.
    /// </summary>
    public ImmutableArray<WiringEdge> Between(string plus, string minus)
    {
        Dictionary<string, ImmutableArray<WiringEdge>> ways = new(StringComparer.Ordinal) { [plus] = [] };
        Queue<string> open = new([plus]);
        while (!ways.ContainsKey(minus) && open.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in _wiring.At(node).Where(edge => edge.IsClosedIn(Condition.Id) && ways.TryAdd(edge.Other(node), ways[node].Add(edge))))
            {
                open.Enqueue(edge.Other(node));
            }
        }

        return ways.GetValueOrDefault(minus, []);
    }

    // Lengths that are not given, of cores that carry something.
    private static IEnumerable<string> UnknownLengths(SolvedNetwork network) => network.Built.Gaps
        .Where(gap => gap.Value.Any(input => input.Field == LengthField) && network.BranchA(gap.Key) is { } current && Math.Abs(current) > IdleA)
        .Select(gap => gap.Key).Order(StringComparer.Ordinal);

    private static double? Through(SolvedNetwork network, string element) => network.BranchA(element) ?? network.LoadA(element) ?? network.SourceA(element);

    private static SolvedNetwork Solved(GroupSolver solver, BuiltNetwork of, Network network)
    {
        NetworkGrouping grouping = solver.Grouping(network);
        return new SolvedNetwork(of.Case, new GroupedNetwork(of with { Network = network }, grouping, grouping.Split(network)), solver.Solve);
    }

    private static BuiltNetwork Build(BoatModel boat, Wiring wiring, Practice? practice, Condition condition) =>
        new NetworkBuilder(boat, wiring, practice, condition).Build(new NetworkCase(condition.Id, ChargeCase.Normal));

    private static IEnumerable<Condition> Charges(Condition condition)
    {
        if (condition.ChargeFraction is not { } charge)
        {
            yield break;
        }

        double either = 2 * (charge.PlusMinus ?? (charge.Known == Knowledge.Exact ? 0 : ChargePlusMinus / 2));
        yield return condition with { ChargeFraction = Math.Max(0, charge.Value - either) };
        yield return condition with { ChargeFraction = Math.Min(1, charge.Value + either) };
    }

    private Prediction Of(string suffix, Func<double, double> meter, string nodeOrElement, Func<SolvedNetwork, double?> read)
    {
        if (read(Nominal) is not { } nominal)
        {
            return new Prediction(null, WhyUnsolved(nodeOrElement));
        }

        if (Missing(nodeOrElement) is { } missing)
        {
            return new Prediction(null, $"it rests on {InputWords.Of(missing.Field)} of {_boat.Find(missing.ThingId)?.Title ?? missing.ThingId}, which is not given", missing);
        }

        double below = 0, above = 0;
        foreach (ImmutableArray<SolvedNetwork> doubt in _doubts)
        {
            double?[] values = [.. doubt.Select(read)];
            if (values.Contains(null))
            {
                return new Prediction(null, "the circuit as put down may not carry its load, or could not be solved, at the worst of what is not known");
            }

            double[] shifts = [0, .. values.Select(value => value!.Value - nominal)];
            below += shifts.Min() * shifts.Min();
            above += shifts.Max() * shifts.Max();
        }

        double[] unknown = [.. _unknownLengths.Select(read).Select(value => (value ?? double.PositiveInfinity) - nominal)];
        if (unknown.Any(shift => Math.Abs(shift) > Math.Sqrt(below + above) + meter(nominal)))
        {
            string cable = ElementIds.ThingOf(UnknownLengths(Nominal).First());
            return new Prediction(null, $"it rests on the length of {_boat.Find(cable)?.Title}, which is not given", new FindingInput(cable, LengthField, IsMissing: true));
        }

        below += Math.Pow(unknown.Append(0).Min(), 2);
        above += Math.Pow(unknown.Append(0).Max(), 2);
        double least = nominal - Math.Sqrt(below), most = nominal + Math.Sqrt(above);
        return new Prediction(new Band(new Amount(nominal, suffix), new Amount(least - meter(least), suffix), new Amount(most + meter(most), suffix)), null);
    }

    private SolvedGroup? GroupOf(string nodeOrElement) => Nominal.GroupOf(nodeOrElement)
        ?? Nominal.Groups.FirstOrDefault(group => group.Network.Conductors.Any(item => item.A == nodeOrElement || item.B == nodeOrElement)
            || group.Network.Contacts.Any(item => item.A == nodeOrElement || item.B == nodeOrElement)
            || group.Result.Point?.NodeV.ContainsKey(nodeOrElement) == true);

    private string WhyUnsolved(string nodeOrElement) => GroupOf(nodeOrElement)?.Result switch
    {
        null => "nothing feeds it in this condition",
        { Status: SolveStatus.NoOperatingPoint, Shortfall: { } shortfall } => $"the circuit cannot carry what {_boat.Find(shortfall.LoadId)?.Title ?? shortfall.LoadId} asks",
        { Status: SolveStatus.FaultyNetwork } result => result.Faults[0].Message,
        { Status: SolveStatus.Converged } => "the two points are not of one circuit in this condition",
        _ => "the circuit could not be solved",
    };

    private bool Carries(string element) => Nominal.BranchA(element) is not { } current || Math.Abs(current) > IdleA;

    private FindingInput? Missing(string nodeOrElement)
    {
        if (GroupOf(nodeOrElement) is not { } group)
        {
            return null;
        }

        // A load whose draw is not known is left out of the network: it may belong to any group.
        return Nominal.Built.Gaps.Where(gap => Nominal.GroupOf(gap.Key) is not { } other || (other == group && Carries(gap.Key)))
            .OrderBy(gap => gap.Key, StringComparer.Ordinal)
            .SelectMany(gap => gap.Value).FirstOrDefault(gap => !HeatFields.Contains(gap.Field.Split('/')[0]) && gap.Field != LengthField);
    }
}
