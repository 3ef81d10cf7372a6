using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Energy;
using Orlop.Review.Electrics;
using Orlop.Review.Heat;

namespace Orlop.Review.Energy;

/// <summary>The panels that reach a plan's battery.</summary>
internal static class PlanSolar
{
    /// <summary>Each charger's panels, the charger with the least that it gives in the warmth of its space in any of the plan's conditions.</summary>
    public static ImmutableArray<SolarArray> Of(ElectricsView view, DayPlan plan, BatteryBank bank, IEnumerable<Condition> conditions, PlanGaps gaps)
    {
        ImmutableArray<SolarArray>.Builder arrays = ImmutableArray.CreateBuilder<SolarArray>();
        foreach (Charger charger in PlanPower.ChargersReaching(view, bank, ChargerDrive.Sun))
        {
            gaps.Need(charger.EfficiencyFraction, charger.Id, "efficiencyFraction");
            gaps.Need(charger.Panels.Count == 0 ? null : charger, charger.Id, "panels");
            if (charger.Panels.Count > 0 && charger.EfficiencyFraction is { } efficiency)
            {
                double mostW = ChargerOutput.ShareFraction(view, charger, conditions, gaps) * charger.LimitA.Value * bank.NominalV.Value;
                if (mostW > 0)
                {
                    arrays.Add(new SolarArray(charger.Id, [.. charger.Panels.Select(panel => Plane(charger, plan, panel))], efficiency.Value, mostW));
                }
            }
        }

        return arrays.ToImmutable();
    }

    private static PanelPlane Plane(Charger charger, DayPlan plan, SolarPanel panel) => new()
    {
        Id = charger.Id,
        PeakW = panel.PeakW,
        TiltDeg = panel.TiltDeg,
        AzimuthDeg = plan.HeadingDeg is { } heading ? (heading.Value + panel.FromBowDeg) % 360 : null,
        LostFraction = panel.LostFraction,
    };
}
