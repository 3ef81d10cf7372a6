using System.Collections.Immutable;

namespace Orlop.Electrics.Energy;

/// <summary>Energy over a time, at the battery's terminals, Wh. What came in is what went out and what stayed.</summary>
public sealed record EnergyTotals
{
    /// <summary>Used of the sun.</summary>
    public double SunWh { get; init; }

    /// <summary>Used of the engine's chargers.</summary>
    public double EngineWh { get; init; }

    /// <summary>Used of shore chargers.</summary>
    public double ShoreWh { get; init; }

    /// <summary>Given to loads.</summary>
    public double ServedWh { get; init; }

    /// <summary>Asked by loads and not given: the battery was empty.</summary>
    public double UnmetWh { get; init; }

    /// <summary>Lost in the battery, in and out.</summary>
    public double LostWh { get; init; }

    /// <summary>Gone because it was drawn quicker than in the rated hours (Peukert): not given, and not found again after a rest.</summary>
    public double QuickWh { get; init; }

    /// <summary>Was in store and has gone with capacity that aged away.</summary>
    public double AgedWh { get; init; }

    /// <summary>Gain of the store from first to last.</summary>
    public double StoredWh { get; init; }

    /// <summary>The sun could have given and nothing took it.</summary>
    public double UnusedSunWh { get; init; }

    /// <summary>What is left over of in − out − stayed: rounding alone.</summary>
    public double ResidualWh => SunWh + EngineWh + ShoreWh - ServedWh - LostWh - QuickWh - AgedWh - StoredWh;

    /// <summary>What sums up to it, for holding the residual against.</summary>
    public double ScaleWh => SunWh + EngineWh + ShoreWh + ServedWh + LostWh + QuickWh + AgedWh + Math.Abs(StoredWh);
}

/// <summary>A month of a year.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="LeastFraction">Least charge in it, of what can be drawn.</param>
/// <param name="BelowFraction">Share of its time below the reserve.</param>
/// <param name="UnmetWh">Asked and not given.</param>
public sealed record EnergyMonth(int Month, double LeastFraction, double BelowFraction, double UnmetWh);

/// <summary>A moment of a record.</summary>
/// <param name="Hour">Hours since it began; the end of the step.</param>
/// <param name="ChargeFraction">Of what can be drawn.</param>
/// <param name="SunW">The sun's, used.</param>
/// <param name="EngineW">The engine's, used.</param>
/// <param name="ShoreW">Shore's, used.</param>
/// <param name="LoadW">Asked.</param>
public readonly record struct EnergyMoment(double Hour, double ChargeFraction, double SunW, double EngineW, double ShoreW, double LoadW);

/// <summary>A battery over a day, a span or a year.</summary>
public sealed record EnergyResult
{
    public required EnergyTotals Totals { get; init; }

    /// <summary>Least charge, of what can be drawn.</summary>
    public required double LeastFraction { get; init; }

    /// <summary>Hours from the start to the first time below the reserve; null where it never is.</summary>
    public required double? BelowAtHour { get; init; }

    /// <summary>Share of each month's time in it that it is below the reserve; twelve, no number in a month that it does not reach.</summary>
    public required ImmutableArray<EnergyMonth> Months { get; init; }

    /// <summary>Mean charge by month and hour of the day: twelve times twenty-four, no number where there was none.</summary>
    public required ImmutableArray<double> MeanFraction { get; init; }

    /// <summary>Share of time below the reserve by month and hour of the day.</summary>
    public required ImmutableArray<double> BelowFraction { get; init; }

    /// <summary>Each step, where it was asked for.</summary>
    public ImmutableArray<EnergyMoment> Moments { get; init; } = [];
}
