namespace Orlop.Electrics.Conductors;

/// <summary>Annealed copper of 100 % IACS conductivity (NBS Handbook 100, part I).</summary>
public static class AnnealedCopper
{
    /// <summary>Resistivity at 20 °C, ohm mm² per metre.</summary>
    public const double ResistivityAt20OhmMm2PerM = 0.017241;

    /// <summary>The temperature, in °C below zero, at which the resistance line would reach zero; 1/0.00393 - 20.</summary>
    public const double ZeroResistanceOffsetK = 234.5;

    public const string Source = "NBS Handbook 100 (IACS annealed copper)";

    /// <summary>Resistance at a conductor temperature over that at 20 °C: (234.5 + T)/254.5, for -40 to 250 °C.</summary>
    public static double ResistanceFactor(double conductorC) =>
        (ZeroResistanceOffsetK + Working.Guard.InRange(conductorC, -40, 250, "°C", "copper resistance")) / (ZeroResistanceOffsetK + 20);
}
