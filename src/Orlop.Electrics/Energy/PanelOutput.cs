using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>Power of panels in light and warmth.</summary>
public static class PanelOutput
{
    /// <summary>Loss of power for each kelvin of the cells above 25 °C, usual for silicon; common practice, from memory.</summary>
    public const double UsualLossPerK = 0.004;

    /// <summary>Cells at 800 W/m² in air of 20 °C with an open back, usual; common practice, from memory.</summary>
    public const double UsualNominalCellC = 45;

    /// <summary>Cells' temperature, °C: air + (nominal − 20)/800 × light (IEC 61215, NOCT).</summary>
    /// <param name="airC">−60 to 60.</param>
    /// <param name="lightWPerM2">On the plane, 0 to 2000.</param>
    /// <param name="nominalCellC">20 to 90.</param>
    public static double CellC(double airC, double lightWPerM2, double nominalCellC = UsualNominalCellC)
    {
        Guard.InRange(airC, -60, 60, "°C", "panel");
        Guard.InRange(lightWPerM2, 0, 2000, "W/m²", "panel");
        Guard.InRange(nominalCellC, 20, 90, "°C", "panel");
        return airC + ((nominalCellC - 20) / 800 * lightWPerM2);
    }

    /// <summary>Power, W: peak × light/1000 × (1 − loss × (cell − 25)), not below 0.</summary>
    /// <param name="peakW">At 1000 W/m² and 25 °C, 0 to 100 000.</param>
    /// <param name="lightWPerM2">On the plane, 0 to 2000.</param>
    /// <param name="cellC">−60 to 150.</param>
    /// <param name="lossPerK">0 to 0.02.</param>
    public static double PowerW(double peakW, double lightWPerM2, double cellC, double lossPerK = UsualLossPerK)
    {
        Guard.InRange(peakW, 0, 100_000, "W", "panel");
        Guard.InRange(lightWPerM2, 0, 2000, "W/m²", "panel");
        Guard.InRange(cellC, -60, 150, "°C", "panel");
        Guard.InRange(lossPerK, 0, 0.02, "1/K", "panel");
        return Math.Max(0, peakW * lightWPerM2 / 1000 * (1 - (lossPerK * (cellC - 25))));
    }
}
