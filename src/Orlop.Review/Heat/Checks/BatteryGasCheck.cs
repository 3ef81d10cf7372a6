using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Electrics.Heat;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Heat.Checks;

/// <summary>The space of a lead-acid battery has openings that take its hydrogen away.</summary>
public sealed class BatteryGasCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "battery-gas",
        "Gas of a lead-acid battery gets out",
        "For each lead-acid battery that a charger reaches: the air that its space needs while all the lead-acid batteries in it are charged at boost voltage, as free openings low and high, against those it has. A fan counts for nothing here: it may stop.",
        []);

    private const string Caution = "Hydrogen burns from a spark, and gathers under the deck. Openings low and high, free, and none of them closed while a battery is charged.";

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from bank in view.Boat.All<BatteryBank>()
        where IsLeadAcid(bank) && Chargers(view, bank).Length > 0
        select Judge(view, bank) with { Caution = Caution };

    private static bool IsLeadAcid(BatteryBank bank) => bank.Chemistry != BatteryChemistry.LithiumIronPhosphate;

    private static Charger[] Chargers(ElectricsView view, BatteryBank bank) => [.. Enum.GetValues<ChargerDrive>().SelectMany(drive => PlanPower.ChargersReaching(view, bank, drive))];

    private Finding Judge(ElectricsView view, BatteryBank bank)
    {
        if (bank.Space is null || view.Boat.Find<Space>(bank.Space) is not { } space)
        {
            return Unknown(Description, bank.Id, null, Sentence.Of($"{bank.Title}: the space it stands in is not given, so its openings are not known"), [new FindingInput(bank.Id, "space", IsMissing: true)]);
        }

        if (space.Use == SpaceUse.OpenDeck)
        {
            return Said(bank, Verdict.Holds, 0, Sentence.Of($"{bank.Title} stands in the open, on {space.Title}"), [new WorkingLine("Open air", space.Title, null, "")], space);
        }

        BatteryBank[] together = [.. view.Boat.All<BatteryBank>().Where(other => IsLeadAcid(other) && other.Space == space.Id && (other == bank || Chargers(view, other).Length > 0))];
        FindingInput[] missing =
        [
            .. together.Where(other => other.CapacityAh is null).Select(other => new FindingInput(other.Id, "capacityAh", IsMissing: true)),
            .. space.Vents.Count == 0 ? [new FindingInput(space.Id, "vents", IsMissing: true)] : Array.Empty<FindingInput>(),
        ];
        if (missing.Length > 0)
        {
            return Unknown(Description, bank.Id, null, Sentence.Of($"{bank.Title}: whether its gas gets out of {space.Title} cannot be told"), [.. missing]);
        }

        double flow = together.Sum(other => BatteryGas.FlowM3PerH(Cells(other), GasMaPerAh(other), other.CapacityAh!.Value)), needed = BatteryGas.OpeningCm2(flow);
        double middle = (space.Vents.Min(vent => vent.HeightM) + space.Vents.Max(vent => vent.HeightM)) / 2;
        double low = space.Vents.Where(vent => vent.HeightM < middle).Sum(vent => vent.AreaCm2), high = space.Vents.Where(vent => vent.HeightM > middle).Sum(vent => vent.AreaCm2), open = Math.Min(low, high);
        Sentence headline = open > 0
            ? Sentence.Of($"{space.Title} has openings of {new Amount(low, "Cm2")} low and {new Amount(high, "Cm2")} high; the gas of {bank.Title} under charge needs {new Amount(needed, "Cm2")} each")
            : Sentence.Of($"{space.Title} has no openings at two heights; the gas of {bank.Title} under charge needs {new Amount(needed, "Cm2")} low and as much high");
        return Said(bank, Verdicts.Of(needed, open), Verdicts.UseOf(needed, open), headline,
        [
            .. together.Select(other => new WorkingLine("Air wanted", $"{other.Title}: {Formula.Of("0.05 × {0} cells × {1} mA/Ah × {2} Ah ÷ 1000", v => 0.05 * v[0] * v[1] * v[2] / 1000, Cells(other), GasMaPerAh(other), other.CapacityAh!.Value)}", new Amount(BatteryGas.FlowM3PerH(Cells(other), GasMaPerAh(other), other.CapacityAh!.Value), "M3PerH"), BatteryGas.Source)),
            new WorkingLine("Each opening", Formula.Of("28 × {0}", v => 28 * v[0], flow), new Amount(needed, "Cm2"), BatteryGas.Source),
            new WorkingLine("Low openings", "below the middle between lowest and highest", new Amount(low, "Cm2"), "as typed"),
            new WorkingLine("High openings", "above it", new Amount(high, "Cm2"), "as typed"),
            .. Inland(view, bank),
            .. open > 0 ? [Use(needed, open)] : Array.Empty<WorkingLine>(),
        ],
        space);
    }

    // A stricter rule beside it, for her owner to know.
    private static IEnumerable<WorkingLine> Inland(ElectricsView view, BatteryBank bank)
    {
        double most = Chargers(view, bank).Max(charger => charger.LimitA.Value), flow = BatteryGas.InlandFlowM3PerH(Cells(bank), most);
        yield return new WorkingLine("On inland waters of the European Union", string.Create(CultureInfo.InvariantCulture, $"0.11 × {N(most)} A ÷ 4 × {N(Cells(bank))} cells = {N(flow)} m³/h at 0.5 m/s; not held against her here"), new Amount(BatteryGas.InlandDuctCm2(flow), "Cm2"), "Directive for inland vessels, 9.11");
    }

    private static double Cells(BatteryBank bank) => Math.Max(1, Math.Round(bank.NominalV.Value / BatteryGas.LeadCellV));

    private static double GasMaPerAh(BatteryBank bank) => bank.Chemistry == BatteryChemistry.FloodedLeadAcid ? BatteryGas.VentedBoostMaPerAh : BatteryGas.ValveBoostMaPerAh;

    private Finding Said(BatteryBank bank, Verdict verdict, double? use, Sentence headline, System.Collections.Immutable.ImmutableArray<WorkingLine> working, Space space) => new()
    {
        CheckId = Description.Id,
        SubjectId = bank.Id,
        Verdict = verdict,
        UseFraction = use,
        Headline = headline,
        Working = working,
        Inputs = [new FindingInput(bank.Id, "capacityAh"), new FindingInput(space.Id, "vents")],
    };
}
