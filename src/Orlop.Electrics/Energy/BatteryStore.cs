using Orlop.Electrics.Working;

namespace Orlop.Electrics.Energy;

/// <summary>How a chemistry takes, keeps and gives charge.</summary>
/// <param name="Name">The chemistry.</param>
/// <param name="CoulombicFraction">Charge out over charge in, above 0 to 1.</param>
/// <param name="EnergyFraction">Energy out over energy in, above 0 to <paramref name="CoulombicFraction"/>.</param>
/// <param name="MostChargePerHour">Most charging power over capacity, 1/h, above 0.</param>
/// <param name="TaperFromFraction">Charge from which it takes less and less, 0 to 1; at 1 it never does.</param>
/// <param name="LeastChargeC">Colder it must not be charged.</param>
/// <param name="Source">Where the numbers are from.</param>
public sealed record BatteryKind(string Name, double CoulombicFraction, double EnergyFraction, double MostChargePerHour, double TaperFromFraction, double LeastChargeC, string Source)
{
    private static readonly (double C, double Fraction)[] LeadAtC = [(-1, 1 / 1.43), (4.4, 1 / 1.30), (10, 1 / 1.19), (15.6, 1 / 1.11), (25, 1)];
    private static readonly (double C, double Fraction)[] LithiumAtC = [(-20, 0.7), (-10, 0.8), (0, 0.9), (10, 0.95), (25, 1)];

    /// <summary>Lead-acid of any build: a fifth of the capacity to 80 %, then tailing off by e each hour.</summary>
    public static BatteryKind LeadAcid { get; } = new("lead-acid", 0.85, 0.70, 0.2, 0.8, -40, "coulombic and energy efficiency of lead-acid cells, published characteristics; charge and cold common practice, from memory");

    /// <summary>Lithium iron phosphate: half the capacity an hour, no charge below 0 °C.</summary>
    public static BatteryKind LithiumIronPhosphate { get; } = new("lithium iron phosphate", 0.99, 0.94, 0.5, 1, 0, "common practice, from memory");

    /// <summary>Share of the capacity at 25 °C that can be drawn, 0 to 1; beyond the table its nearest row.</summary>
    public double UsableFractionAt(double temperatureC)
    {
        Guard.InRange(temperatureC, -60, 60, "°C", Name);
        (double C, double Fraction)[] table = LeastChargeC < 0 ? LeadAtC : LithiumAtC;
        int above = Array.FindIndex(table, row => row.C >= temperatureC);
        return above switch
        {
            0 => table[0].Fraction,
            < 0 => table[^1].Fraction,
            _ => table[above - 1].Fraction + ((temperatureC - table[above - 1].C) / (table[above].C - table[above - 1].C) * (table[above].Fraction - table[above - 1].Fraction)),
        };
    }
}

/// <summary>A battery as a store of energy.</summary>
public sealed record BatteryStore
{
    /// <summary>What it is called, for messages.</summary>
    public required string Id { get; init; }

    /// <summary>What it is made of.</summary>
    public required BatteryKind Kind { get; init; }

    /// <summary>Capacity when new, at its nominal voltage and 25 °C, above 0 to 1e9.</summary>
    public required double NewWh { get; init; }

    /// <summary>Capacity left of the new on the first day, above 0 to 1.</summary>
    public double LeftFraction { get; init; } = 1;

    /// <summary>Share of the new capacity lost evenly over a year, 0 to 0.5.</summary>
    public double LossPerYearFraction { get; init; }

    /// <summary>Most charging power of its own, W; infinite where only its kind limits it.</summary>
    public double MostChargeW { get; init; } = double.PositiveInfinity;

    /// <summary>Peukert's exponent k: drawn at a current I it is empty after H (C/(I H))^k hours, 1 to 1.6; at 1 it gives the same at any current.</summary>
    public double PeukertRatio { get; init; } = 1;

    /// <summary>Hours H in which its nameplate capacity is drawn, 1 to 100.</summary>
    public double RatedHour { get; init; } = 20;

    /// <summary>Stored over put in, at the terminals.</summary>
    public double ChargeFraction => Kind.CoulombicFraction * DischargeFraction;

    /// <summary>Given over taken from store, at the terminals: half of the loss of voltage, there and back, is on either way.</summary>
    public double DischargeFraction => Math.Sqrt(Kind.EnergyFraction / Kind.CoulombicFraction);

    /// <summary>Power that a further load counts for, W: more than itself where it and what is on beside it are drawn quicker than in the rated hours. Of what is left on the first day.</summary>
    /// <param name="furtherW">At the terminals, 0 and more.</param>
    /// <param name="besideW">Drawn already, at the terminals, 0 and more.</param>
    public double CountsForW(double furtherW, double besideW)
    {
        Guard.InRange(furtherW, 0, 1e9, "W", Id);
        Guard.InRange(besideW, 0, 1e9, "W", Id);
        double all = besideW + furtherW, fullWh = NewWh * LeftFraction;
        return QuickRatio(all, fullWh) is > 1 and var quick ? (all * quick) - (besideW * QuickRatio(besideW, fullWh)) : furtherW;
    }

    // What goes out of store over what goes at the current of the rated hours or less: (I H/C)^(k-1). Slower than rated nothing is gained.
    internal double QuickRatio(double drawnW, double fullWh) => PeukertRatio > 1 && drawnW / DischargeFraction * RatedHour / fullWh is > 1 and var times ? Math.Pow(times, PeukertRatio - 1) : 1;

    internal void Check()
    {
        Guard.Positive(NewWh, 1e9, "Wh", Id);
        Guard.Positive(LeftFraction, 1, "", Id);
        Guard.InRange(LossPerYearFraction, 0, 0.5, "", Id);
        Guard.Positive(Kind.CoulombicFraction, 1, "", Id);
        Guard.Positive(Kind.EnergyFraction, Kind.CoulombicFraction, "", Id);
        Guard.InRange(Kind.TaperFromFraction, 0, 1, "", Id);
        Guard.Positive(LeftFraction - LossPerYearFraction, 1, "", Id, "capacity left after a year");
        Guard.InRange(PeukertRatio, 1, 1.6, "", Id);
        Guard.InRange(RatedHour, 1, 100, "h", Id);
        Guard.Positive(MostChargeW, double.PositiveInfinity, "W", Id);
        Guard.Positive(Kind.MostChargePerHour, 100, "1/h", Id);
    }

    /// <summary>Most energy that goes into store in a time, Wh: at full power to where it tails off, then toward full by e in the hours that full power would take over the rest.</summary>
    /// <param name="storedWh">In store.</param>
    /// <param name="fullWh">Store when full.</param>
    /// <param name="hours">The time.</param>
    internal double MostStored(double storedWh, double fullWh, double hours)
    {
        double room = fullWh - storedWh;
        if (room <= 0)
        {
            return 0;
        }

        double power = Math.Min(Kind.MostChargePerHour * fullWh, MostChargeW) * ChargeFraction;
        double knee = Kind.TaperFromFraction * fullWh, straight = Math.Max(0, knee - storedWh);
        if (power * hours <= straight)
        {
            return power * hours;
        }

        double tail = fullWh - Math.Max(knee, storedWh), left = hours - (straight / power);
        return tail <= 0 || knee >= fullWh ? Math.Min(room, power * hours) : straight + (tail * (1 - Math.Exp(-left * power / (fullWh - knee))));
    }
}
