using Orlop.Electrics.Working;

namespace Orlop.Electrics.Heat;

/// <summary>Air that takes a lead-acid battery's hydrogen away while it is charged: Q = 0.05 n Igas C 10⁻³ m³/h (IEC 62485-2), and openings of 28 Q cm² low and high.</summary>
public static class BatteryGas
{
    /// <summary>Where the formula and the gas currents come from.</summary>
    public const string Source = "IEC 62485-2 (EN 50272-2), Q = 0.05 n Igas C; openings 28 Q";

    /// <summary>Gas current of a vented lead-acid battery at boost charge, 2.40 V a cell, mA for each Ah; safety factor 5 in it.</summary>
    public const double VentedBoostMaPerAh = 20;

    /// <summary>The same of a valve-regulated one (glass mat, gel).</summary>
    public const double ValveBoostMaPerAh = 8;

    /// <summary>Nominal voltage of a lead-acid cell.</summary>
    public const double LeadCellV = 2;

    // 24 (dilution to 4 %) × 0.42e-3 m³/Ah × 5, rounded as the standard does.
    private const double AirM3PerAh = 0.05;
    private const double OpeningCm2PerM3PerH = 28;

    // Inland rule of the European Union, 9.11: 0.11 I n, I a quarter of the charger's most; duct at 0.5 m/s, 80 cm² at least.
    private const double InlandM3PerAh = 0.11;
    private const double InlandShare = 0.25;
    private const double InlandMPerS = 0.5;
    private const double InlandLeastCm2 = 80;

    /// <summary>Air wanted, m³/h.</summary>
    /// <param name="cellCount">Cells in series, 1 to 1000.</param>
    /// <param name="gasMaPerAh">Gas current, mA for each Ah.</param>
    /// <param name="capacityAh">Nameplate capacity, above 0 to 1e6.</param>
    public static double FlowM3PerH(double cellCount, double gasMaPerAh, double capacityAh) =>
        AirM3PerAh * Guard.InRange(cellCount, 1, 1000, "cells", "battery") * Guard.Positive(gasMaPerAh, 1000, "mA/Ah", "battery") * Guard.Positive(capacityAh, 1e6, "Ah", "battery") * 1e-3;

    /// <summary>Free area of each of the two openings, low and high, cm².</summary>
    public static double OpeningCm2(double flowM3PerH) => OpeningCm2PerM3PerH * Guard.InRange(flowM3PerH, 0, 1e6, "m³/h", "battery");

    /// <summary>Air that the inland rule asks for, m³/h.</summary>
    /// <param name="chargerA">Most current of the charger, above 0.</param>
    public static double InlandFlowM3PerH(double cellCount, double chargerA) =>
        InlandM3PerAh * InlandShare * Guard.Positive(chargerA, 1e5, "A", "battery") * Guard.InRange(cellCount, 1, 1000, "cells", "battery");

    /// <summary>Duct that the inland rule asks for, cm².</summary>
    public static double InlandDuctCm2(double flowM3PerH) => Math.Max(InlandLeastCm2, flowM3PerH / 3600 / InlandMPerS * 1e4);
}
