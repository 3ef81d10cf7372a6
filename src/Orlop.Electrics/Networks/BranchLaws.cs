using Orlop.Electrics.Conductors;

namespace Orlop.Electrics.Networks;

/// <summary>
/// What each branch does with a voltage, as plain arrays. Equation numbers are those of the engine's page.
/// </summary>
internal sealed class BranchLaws
{
    /// <summary>Temperature coefficient of annealed copper at 20 °C, 1/K. [NBS-HB100] part 1.</summary>
    public const double CopperPerK = 1 / (AnnealedCopper.ZeroResistanceOffsetK + 20);

    /// <summary>Freezing point of copper, a fixed point of the International Temperature Scale of 1990.</summary>
    public const double CopperMeltsC = 1084.62;

    public BranchLaws(Wiring wiring)
    {
        var conductors = wiring.Conductors;
        ConductorOhm = new double[conductors.Length];
        RunawayPerA2 = new double[conductors.Length];
        RisePerA2 = new double[conductors.Length];
        for (var k = 0; k < conductors.Length; k++)
        {
            ConductorOhm[k] = conductors[k].ResistanceAt20Ohm;
            if (conductors[k].Heating is { } heating)
            {
                var rated = ResistanceFactor(heating.RatedC);
                RisePerA2[k] = (heating.RatedC - heating.TableAmbientC) / (heating.RatedCurrentA * heating.RatedCurrentA * rated);
                RunawayPerA2[k] = CopperPerK * RisePerA2[k];
                ConductorOhm[k] *= ResistanceFactor(heating.AmbientC);
            }
        }

        MeltingA = new double[conductors.Length];
        for (var k = 0; k < conductors.Length; k++)
        {
            if (conductors[k].Heating is { } heating)
            {
                var riseK = CopperMeltsC - heating.AmbientC;
                MeltingA[k] = Math.Sqrt(riseK / ((RisePerA2[k] * ResistanceFactor(heating.AmbientC)) + (RunawayPerA2[k] * riseK)));
            }
        }

        ConductorS = [.. ConductorOhm.Select(ohm => 1 / ohm)];

        // A contact of zero resistance lies inside a junction and carries nothing here.
        ContactS = [.. wiring.Contacts.Select(c => c.ResistanceOhm > 0 ? 1 / c.ResistanceOhm : 0)];
        SourceV = [.. wiring.Batteries.Select(b => b.OpenCircuitV), .. wiring.LimitedSources.Select(s => s.SetpointV), .. wiring.Converters.Select(c => c.OutputV)];
        SourceS = [.. wiring.Batteries.Select(b => 1 / b.InternalOhm), .. wiring.LimitedSources.Select(s => 1 / s.SourceOhm), .. wiring.Converters.Select(c => 1 / c.OutputOhm)];
        LeastSourceA = [.. wiring.Batteries.Select(_ => double.NegativeInfinity), .. wiring.LimitedSources.Select(_ => 0.0), .. wiring.Converters.Select(_ => 0.0)];
        MostSourceA = [.. wiring.Batteries.Select(_ => double.PositiveInfinity), .. wiring.LimitedSources.Select(s => s.LimitA), .. wiring.Converters.Select(_ => double.PositiveInfinity)];
    }

    /// <summary>Resistance at the ambient temperature (at 20 °C without heating).</summary>
    public double[] ConductorOhm { get; }

    /// <summary>1 over <see cref="ConductorOhm"/>.</summary>
    public double[] ConductorS { get; }

    /// <summary>1 over the square of the current at which the temperature has no end; 0 without heating.</summary>
    public double[] RunawayPerA2 { get; }

    /// <summary>Temperature rise for each A² and each unit of the resistance factor, K/A².</summary>
    public double[] RisePerA2 { get; }

    /// <summary>Current at which a conductor with heating reaches the melting point of copper (eq. 4).</summary>
    public double[] MeltingA { get; }

    public double[] ContactS { get; }

    /// <summary>Voltage behind the resistance of batteries, limited sources and converter outputs, in that order.</summary>
    public double[] SourceV { get; }

    public double[] SourceS { get; }

    public double[] LeastSourceA { get; }

    public double[] MostSourceA { get; }

    /// <summary>Resistance at a temperature over the resistance at 20 °C.</summary>
    public static double ResistanceFactor(double temperatureC) => 1 + (CopperPerK * (temperatureC - 20));

    /// <summary>
    /// Current and slope dI/dV of a conductor that warms with its own current (eq. 5). Past melting the curve goes on straight: no point
    /// there is ever an answer, and the slope must not vanish on the way to finding that out.
    /// </summary>
    public (double CurrentA, double SlopeS) Heated(int conductor, double voltageV)
    {
        var (ambientOhm, runaway, meltingA) = (ConductorOhm[conductor], RunawayPerA2[conductor], MeltingA[conductor]);
        var currentA = 2 * voltageV / (ambientOhm + Math.Sqrt((ambientOhm * ambientOhm) + (4 * runaway * voltageV * voltageV)));
        if (Math.Abs(currentA) <= meltingA)
        {
            return (currentA, SlopeS(currentA));
        }

        var meltingSlopeS = SlopeS(meltingA);
        var meltingV = meltingA * ambientOhm / (1 - (runaway * meltingA * meltingA));
        return (Math.CopySign(meltingA + (meltingSlopeS * (Math.Abs(voltageV) - meltingV)), voltageV), meltingSlopeS);

        double SlopeS(double at)
        {
            var closeness = runaway * at * at;
            return (1 - closeness) * (1 - closeness) / (ambientOhm * (1 + closeness));
        }
    }

    /// <summary>Input power of a converter for the power at its output (eq. 8).</summary>
    public static double ConverterInputW(Converter converter, double outputW) =>
        outputW + converter.IdleW + (converter.ProportionalLossFraction * outputW) + (converter.OhmicLossPerW * outputW * outputW);
}
