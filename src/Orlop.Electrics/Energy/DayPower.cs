namespace Orlop.Electrics.Energy;

/// <summary>All loads and chargers of a kind of day, hour by hour, W.</summary>
internal sealed class DayPower
{
    private DayPower(EnergyInput input, Func<HourlyPower, int, double> power)
    {
        for (int hour = 0; hour < 24; hour++)
        {
            foreach (HourlyPower load in input.Loads)
            {
                (load.OnlyInDark ? DarkW : AlwaysW)[hour] += power(load, hour);
            }

            EngineW[hour] = input.Engine.Sum(charger => power(charger, hour));
            ShoreW[hour] = input.Shore.Sum(charger => power(charger, hour));
        }
    }

    public double[] AlwaysW { get; } = new double[24];

    /// <summary>On only with the sun down.</summary>
    public double[] DarkW { get; } = new double[24];

    public double[] EngineW { get; } = new double[24];

    public double[] ShoreW { get; } = new double[24];

    public static DayPower InUse(EnergyInput input) => new(input, (power, hour) => power.InUseW[hour]);

    public static DayPower Lying(EnergyInput input) => new(input, (power, hour) => power.LyingW[hour]);
}
