using Orlop.Boat.Things;
using Orlop.Electrics.Energy;

namespace Orlop.Review.Energy;

/// <summary>A bank as a store of energy.</summary>
internal static class PlanBattery
{
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

        if (bank.LossPerYearFraction?.Value >= (bank.LeftFraction?.Value ?? 1))
        {
            gaps.InTheWay(bank.Id, "lossPerYearFraction");
        }

        double left = bank.LeftFraction?.Value ?? 1;
        return new BatteryStore
        {
            Id = bank.Id,
            Kind = bank.Chemistry == BatteryChemistry.LithiumIronPhosphate ? BatteryKind.LithiumIronPhosphate : BatteryKind.LeadAcid,
            NewWh = bank.CapacityAh.Value * bank.NominalV.Value,
            LeftFraction = left,
            LossPerYearFraction = bank.LossPerYearFraction?.Value ?? 0,
            MostChargeW = bank.MostChargeA is { } most ? most.Value * bank.NominalV.Value : double.PositiveInfinity,
        };
    }
}
