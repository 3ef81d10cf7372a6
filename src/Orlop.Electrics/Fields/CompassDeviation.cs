using Orlop.Electrics.Working;

namespace Orlop.Electrics.Fields;

/// <summary>How far a horizontal field of the boat's own turns a compass that the Earth's would hold.</summary>
public static class CompassDeviation
{
    private const double DegPerRad = 180 / Math.PI;

    /// <summary>Deviation on the worst heading, in degrees from 0: arcsin of the own field over the Earth's; 180 where the own field is as large, and the needle may point anywhere.</summary>
    /// <param name="ownUT">Horizontal part of the boat's own field, in µT, at least 0.</param>
    /// <param name="earthUT">Horizontal part of the Earth's, in µT, above 0.</param>
    public static double GreatestDeg(double ownUT, double earthUT)
    {
        Guard.InRange(ownUT, 0, double.MaxValue, "µT", "Compass");
        Guard.Positive(earthUT, 100, "µT", "Compass");
        return ownUT >= earthUT ? 180 : Math.Asin(ownUT / earthUT) * DegPerRad;
    }

    /// <summary>Deviation where the own field has these parts along and across the Earth's, in degrees, positive towards the part across.</summary>
    public static double Deg(double alongUT, double acrossUT, double earthUT) => Math.Atan2(acrossUT, Guard.Positive(earthUT, 100, "µT", "Compass") + alongUT) * DegPerRad;
}
