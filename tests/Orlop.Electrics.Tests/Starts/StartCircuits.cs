using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;

namespace Orlop.Electrics.Tests.Starts;

/// <summary>A battery behind its resistance and two leads, and what starts at their end.</summary>
internal static class StartCircuits
{
    public const double OpenV = 25.2;
    public const double SourceOhm = 0.05;

    /// <summary>25.2 V behind 0.05 ohm in all: battery 0.02, plus lead 0.018, minus lead 0.012.</summary>
    public static Network Source(params Load[] loads) => new()
    {
        Batteries = [new Battery("bank", "bank.+", "bank.-", OpenV, 0.02)],
        Conductors = [new Conductor("plus", "bank.+", "bar.+", 0.018), new Conductor("minus", "bank.-", "bar.-", 0.012)],
        Loads = [.. loads],
        BondedNodes = ["bank.-"],
    };

    public static StartingStore Motor(double startRatio = 4, double runningA = 20, double startS = 0.8) =>
        StartingStore.Motor("motor", "bar.+", "bar.-", 24, runningA, startRatio, startS);

    /// <summary>Current of a motor behind a source resistance: i = I + (V/(R_s + R) − I) e^(−t/((R_s + R) C)).</summary>
    public static double MotorA(StartingStore motor, double timeS)
    {
        double ohm = SourceOhm + motor.SeriesOhm;
        return motor.SinkA + (((OpenV / ohm) - motor.SinkA) * Math.Exp(-timeS / (ohm * motor.CapacitanceF)));
    }
}
