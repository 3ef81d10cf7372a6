using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Diagnosis;
using Orlop.Review.Networks;

namespace Orlop.Work.Readings;

/// <summary>The readings of one condition that can be held against one circuit, each with how far it is believed.</summary>
internal sealed class Evidence
{
    private const double BandDeviationsRatio = 4;

    public Evidence(ConditionPrediction prediction, ImmutableArray<Reading> readings)
    {
        ImmutableArray<VoltageReading>.Builder voltages = ImmutableArray.CreateBuilder<VoltageReading>();
        ImmutableArray<CurrentReading>.Builder currents = ImmutableArray.CreateBuilder<CurrentReading>();
        ImmutableArray<LeftOut>.Builder left = ImmutableArray.CreateBuilder<LeftOut>();
        foreach (Reading reading in readings)
        {
            string? why = reading switch
            {
                { Plus: { } plus, Minus: { } minus, VoltageV.Value: var voltage } => Add(prediction.Voltage(plus.ToString(), minus.ToString()), GroupAt(prediction, plus.ToString()),
                    deviation => voltages.Add(new VoltageReading(plus.ToString(), minus.ToString(), voltage, deviation))),
                { Through: { } through, CurrentA.Value: var current } => Add(prediction.Current(through), prediction.Nominal.GroupOf(through),
                    deviation => currents.Add(new CurrentReading(through, Forward(prediction, through, current), deviation))),
                _ => "it needs a voltage with both probes, or a current with what it flows through",
            };
            if (why is not null)
            {
                left.Add(new LeftOut(reading.Id, why));
            }
        }

        Voltages = voltages.ToImmutable();
        Currents = currents.ToImmutable();
        LeftOut = left.ToImmutable();
    }

    /// <summary>The circuit of the first reading that can be used; null when none can.</summary>
    public SolvedGroup? Group { get; private set; }

    public ImmutableArray<VoltageReading> Voltages { get; }

    public ImmutableArray<CurrentReading> Currents { get; }

    public ImmutableArray<LeftOut> LeftOut { get; }

    /// <summary>The nodes that were probed.</summary>
    public IEnumerable<string> Nodes => Voltages.SelectMany(voltage => new[] { voltage.PlusNode, voltage.MinusNode }).Distinct(StringComparer.Ordinal);

    private string? Add(Prediction prediction, SolvedGroup? group, Action<double> add)
    {
        if (prediction.Band is not { } band)
        {
            return prediction.WhyNot;
        }

        Group ??= group;
        if (group is null || group != Group)
        {
            return "it is of another circuit than the first reading";
        }

        add((band.Most.Value - band.Least.Value) / BandDeviationsRatio);
        return null;
    }

    // A clamp can be put on either way round.
    private static double Forward(ConditionPrediction prediction, string through, double currentA) =>
        prediction.Nominal.BranchA(through) * currentA < 0 ? -currentA : currentA;

    private static SolvedGroup? GroupAt(ConditionPrediction prediction, string node) =>
        prediction.Nominal.Groups.FirstOrDefault(group => group.Result.Point?.NodeV.ContainsKey(node) == true);
}
