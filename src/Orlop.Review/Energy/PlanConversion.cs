using Orlop.Boat.Things;

namespace Orlop.Review.Energy;

/// <summary>What a converter or an inverter takes for what it gives.</summary>
internal static class PlanConversion
{
    /// <summary>Power into it for power out of it, without what it takes idle; null where something is missing.</summary>
    public static double? Upstream(Part part, double? outW, PlanGaps gaps)
    {
        switch (part)
        {
            case DcConverter converter:
                gaps.Need(converter.EfficiencyFraction, converter.Id, "efficiencyFraction");
                return outW / converter.EfficiencyFraction?.Value;
            case Inverter inverter:
                gaps.Need(inverter.ProportionalLossFraction, inverter.Id, "proportionalLossFraction");
                gaps.Need(inverter.OhmicLossPerW, inverter.Id, "ohmicLossPerW");
                return (outW * (1 + inverter.ProportionalLossFraction?.Value)) + (inverter.OhmicLossPerW?.Value * outW * outW);
            default:
                return outW;
        }
    }

    /// <summary>What it takes to stand ready, all the time that a load of its is in use; null where nobody said, or it takes nothing.</summary>
    public static double? IdleW(Part part, PlanGaps gaps)
    {
        Boat.Values.Quantity? idle = part switch
        {
            DcConverter converter => converter.IdleW,
            Inverter inverter => inverter.IdleW,
            _ => null,
        };
        if (part is DcConverter or Inverter)
        {
            gaps.Need(idle, part.Id, "idleW");
        }

        return idle?.Value;
    }
}
