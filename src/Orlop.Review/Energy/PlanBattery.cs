using Orlop.Boat.Things;
using Orlop.Electrics.Energy;

namespace Orlop.Review.Energy;

/// <summary>A bank as a store of energy.</summary>
internal static class PlanBattery
{
    private const double UsualRatedHours = 20;

    /// <summary>The store, or null with what is missing told.</summary>
    public static BatteryStore? Of(BatteryBank bank, PlanGaps gaps)
    {
        gaps.Need(bank.CapacityAh, bank.Id, "capacityAh");
        if (bank.CapacityAh is null)
        {
            return null;
        }

        if (bank.LeftFraction is null)
        {
            gaps.Assume($"{bank.Title}: all of its nameplate capacity is left");
        }

        if (bank.LossPerYearFraction is null)
        {
            gaps.Assume($"{bank.Title}: a year takes nothing of its capacity");
        }

        if (bank.MostChargeA is null)
        {
            gaps.Assume($"{bank.Title}: takes the charge that is usual for its kind");
        }

        bool isLead = bank.Chemistry != BatteryChemistry.LithiumIronPhosphate;
        if (isLead && bank.PeukertRatio is null)
        {
            gaps.Assume($"{bank.Title}: gives the same at any current; lead-acid gives less at a great one");
        }

        if (bank.LossPerYearFraction?.Value >= (bank.LeftFraction?.Value ?? 1))
        {
            gaps.InTheWay(bank.Id, "lossPerYearFraction");
        }

        double left = bank.LeftFraction?.Value ?? 1;
        return new BatteryStore
        {
            Id = bank.Id,
            Kind = isLead ? BatteryKind.LeadAcid : BatteryKind.LithiumIronPhosphate,
            NewWh = bank.CapacityAh.Value * bank.NominalV.Value,
            LeftFraction = left,
            LossPerYearFraction = bank.LossPerYearFraction?.Value ?? 0,
            PeukertRatio = bank.PeukertRatio?.Value ?? 1,
            RatedHour = bank.RatedHour?.Value ?? UsualRatedHours,
            MostChargeW = bank.MostChargeA is { } most ? most.Value * bank.NominalV.Value : double.PositiveInfinity,
        };
    }
}
