using System.Globalization;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>
/// American wire gauge (ASTM B258, NBS Handbook 100): diameter = 0.005 in · 92^((36-n)/39). Gauge numbers are whole; 1/0, 2/0, 3/0
/// and 4/0 are 0, -1, -2 and -3. Valid from 4/0 (-3) to 40.
/// </summary>
public static class AmericanWireGauge
{
    public const int ThickestGauge = -3;

    public const int ThinnestGauge = 40;

    public const string Source = "ASTM B258 gauge formula (NBS Handbook 100)";

    /// <summary>Area of one circular mil (a circle of 0.001 in), exact from 1 in = 25.4 mm.</summary>
    public const double CircularMilMm2 = Math.PI / 4 * 0.0254 * 0.0254;

    /// <summary>Diameter of the solid wire.</summary>
    public static double DiameterM(int gauge) =>
        0.0254 * 0.005 * Math.Pow(92, (36 - Guard.InRange(gauge, ThickestGauge, ThinnestGauge, "AWG", "wire gauge")) / 39);

    /// <summary>Copper area of the solid wire.</summary>
    public static double AreaMm2(int gauge)
    {
        var diameterMm = DiameterM(gauge) * 1000;
        return Math.PI / 4 * diameterMm * diameterMm;
    }

    /// <summary>The thinnest gauge whose area is at least <paramref name="areaMm2"/>, or null when it is more than 4/0.</summary>
    public static int? ThinnestAtLeast(double areaMm2)
    {
        Guard.Positive(areaMm2, 1e4, "mm²", "wire gauge");
        for (var gauge = ThinnestGauge; gauge >= ThickestGauge; gauge--)
        {
            if (AreaMm2(gauge) >= areaMm2)
            {
                return gauge;
            }
        }

        return null;
    }

    /// <summary>The gauge whose area is nearest in ratio, or null when none is within half a gauge step.</summary>
    public static int? Nearest(double areaMm2)
    {
        Guard.Positive(areaMm2, 1e4, "mm²", "wire gauge");
        var diameterIn = Math.Sqrt(areaMm2 * 4 / Math.PI) / 25.4;
        var gauge = (int)Math.Round(36 - (39 * Math.Log(diameterIn / 0.005, 92)), MidpointRounding.AwayFromZero);
        return gauge is >= ThickestGauge and <= ThinnestGauge ? gauge : null;
    }

    /// <summary>The gauge as the trade writes it: 18, 4, 1/0, 4/0.</summary>
    public static string Format(int gauge) =>
        gauge > 0 ? gauge.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{1 - gauge}/0");

    /// <summary>Reads 18, 4, 1/0 … 4/0; false for anything else.</summary>
    public static bool TryParse(string text, out int gauge)
    {
        ArgumentNullException.ThrowIfNull(text);
        var isAught = text.EndsWith("/0", StringComparison.Ordinal);
        if (!int.TryParse(isAught ? text[..^2] : text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            gauge = 0;
            return false;
        }

        gauge = isAught ? 1 - number : number;
        return isAught ? number is >= 1 and <= 4 : number is >= 1 and <= ThinnestGauge;
    }
}
