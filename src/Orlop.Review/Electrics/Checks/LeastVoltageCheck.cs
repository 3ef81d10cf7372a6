using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Each load, converter and inverter gets its least voltage when the battery is at its lowest.</summary>
public sealed class LeastVoltageCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "least-voltage",
        "Enough voltage at the lowest charge",
        "Voltage at a load, or at the input of a converter or inverter, with the battery at the condition's lowest charge and no charger helping, against the least it works at: its own figure, or the practice's share of nominal.",
        [LimitIds.LeastVoltageFraction]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from part in view.Boat.All<Part>()
        where part is ElectricLoad or DcConverter or Inverter
        from condition in view.Conditions
        where part is not ElectricLoad load || LoadElements.IsOnIn(load, condition.Id)
        let finding = Judge(view, part, condition)
        where finding is not null
        select finding;

    // What has no nominal voltage above its least one is reckoned as if that were nine tenths of nominal.
    private const double StandInLeastFraction = 0.9;

    /// <summary>The least voltage of a part: its own figure or the practice's, with where it is from; null when there is none.</summary>
    internal static (double LeastV, double NominalV, WorkingLine Line)? LeastOf(ElectricsView view, Part part)
    {
        (Quantity? own, double? nominal, string field) = part switch
        {
            ElectricLoad load => (load.LeastV, load.NominalV.Value, "its own least voltage"),
            DcConverter converter => (converter.LeastInputV, (double?)null, "its least input voltage"),
            Inverter inverter => (inverter.CutOffV, null, "its cut-off"),
            _ => (null, null, ""),
        };
        if (own is not null)
        {
            return (own.Value, nominal > own.Value ? nominal.Value : own.Value / StandInLeastFraction, new WorkingLine("Works down to", field, V(own.Value), own.Method ?? "as typed"));
        }

        return nominal is { } volts && view.Practice?.Find(LimitIds.LeastVoltageFraction) is { } limit
            ? (limit.Value * volts, volts, new WorkingLine("Works down to", Formula.Of("{0} × {1}", v => v[0] * v[1], limit.Value, volts), V(limit.Value * volts), limit.Source, limit.IsFromMemory))
            : null;
    }

    /// <summary>The field that holds a part's own least voltage.</summary>
    internal static string FieldOf(Part part) => part is Inverter ? "cutOffV" : part is DcConverter ? "leastInputV" : "leastV";

    private Finding? Judge(ElectricsView view, Part part, Condition condition)
    {
        SolvedNetwork solved = view.Solve(condition, ChargeCase.Lowest);
        if (solved.Built.Unfed.Contains(part.Id))
        {
            return null;
        }

        if (LeastOf(view, part) is not { } least)
        {
            return Unknown(Description, part.Id, condition.Id, Sentence.Of($"{part.Title}: the least voltage it works at is not known"), [new FindingInput(part.Id, FieldOf(part), IsMissing: true)]);
        }

        ImmutableArray<FindingInput> missing = MissingInputs.OfVoltage(view, solved, condition, part.Id);
        if (missing.Length > 0)
        {
            return Unknown(Description, part.Id, condition.Id, Sentence.Of($"{part.Title}: its voltage {In(condition)} at the lowest charge cannot be told"), missing);
        }

        if (solved.LoadV(part.Id) is not { } volts)
        {
            return solved.GroupOf(part.Id) is null ? null : NotSolved(Description, part.Id, condition, part.Title);
        }

        (double asked, double allowed) = BelowNominal(volts, least.LeastV, least.NominalV);
        double? use = Verdicts.UseOf(asked, allowed);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = part.Id,
            ConditionId = condition.Id,
            Verdict = Verdicts.Of(asked, allowed),
            UseFraction = use,
            Headline = Sentence.Of($"{part.Title} gets {V(volts)} {In(condition)} at the lowest charge; it works down to {V(least.LeastV)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Voltage at the lowest charge", "between its terminals, everything on, no charger helping", V(volts), Solved(solved, part.Id)),
                least.Line,
                new WorkingLine("Use", UseText(least.NominalV, volts, least.LeastV), use is { } share ? Fraction(share) : null, "how far below nominal, over how far it may be"),
            ],
            Inputs = [new FindingInput(condition.Id, "lowestChargeFraction"), .. MissingInputs.AssumedOnWay(view, solved, condition, part.Id)],
        };
    }

    /// <summary>That ratio with its numbers, where there is one.</summary>
    internal static string UseText(double nominalV, double volts, double leastV) =>
        leastV >= nominalV ? $"it needs {N(leastV)} V, which is all of its nominal {N(nominalV)} V"
        : volts >= nominalV ? "at or above nominal"
        : Formula.Share("({0} − {1}) ÷ ({0} − {2})", v => (v[0] - v[1]) / (v[0] - v[2]), nominalV, volts, leastV);

    /// <summary>How far a voltage is below nominal, and how far it may be; a least voltage at or above nominal leaves no room.</summary>
    internal static (double AskedV, double AllowedV) BelowNominal(double volts, double leastV, double nominalV) => leastV < nominalV
        ? (Math.Max(0, nominalV - volts), nominalV - leastV)
        : (Math.Max(0, leastV - volts), 0);
}
