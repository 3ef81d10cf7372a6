using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>A conductor that carries more than it may, and loses heat meanwhile.</summary>
public sealed record HeatedWithstandInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Above 0 to 1000.</summary>
    public required double AreaMm2 { get; init; }

    /// <summary>Temperature around it, -40 to 300.</summary>
    public required double AmbientC { get; init; }

    /// <summary>Its temperature before, at least <see cref="AmbientC"/>.</summary>
    public required double InitialC { get; init; }

    /// <summary>The highest its insulation bears at the end, above <see cref="InitialC"/>, to 1000.</summary>
    public required double FinalC { get; init; }

    /// <summary>Above 0 to 1e6.</summary>
    public required double CurrentA { get; init; }

    /// <summary>The current that keeps it at <see cref="RatedC"/> for ever at <see cref="TableAmbientC"/>, above 0 to 1e5.</summary>
    public required double RatedCurrentA { get; init; }

    /// <summary>Temperature at that current, above <see cref="TableAmbientC"/>, to 300.</summary>
    public required double RatedC { get; init; }

    /// <summary>Ambient of the table, -40 to 300.</summary>
    public required double TableAmbientC { get; init; }
}

/// <summary>How long a conductor bears a current.</summary>
/// <param name="LongestS">Until it is as hot as its insulation bears; infinite where it never gets so hot.</param>
/// <param name="AdiabaticS">The same with all heat kept in the copper; never longer.</param>
public sealed record HeatedWithstandResult(double LongestS, double AdiabaticS, WorkingStep Working);

/// <summary>
/// How long copper bears a current while it loses heat: C dθ/dt = I² R(θ) - (θ - θ_ambient)/R_th, with R_th from the table's current, R(θ) straight in θ and
/// the heat capacity of the copper alone. Insulation takes up heat as well and slows it further, so the time is on the cautious side. As the current rises it
/// meets the adiabatic formula of IEC 60364-4-43.
/// </summary>
public static class HeatedWithstand
{
    /// <summary>Where the method comes from.</summary>
    public const string Source = "heat balance of the copper alone, lost through the resistance that the table's current shows";

    /// <summary>The time from <see cref="HeatedWithstandInput.InitialC"/> to <see cref="HeatedWithstandInput.FinalC"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range that its property names.</exception>
    public static HeatedWithstandResult LongestTime(HeatedWithstandInput input)
    {
        Check(input);
        var area = input.AreaMm2;
        var capacity = AdiabaticWithstand.CopperHeatJPerKMm3 * 1000 * area;
        var ohmPerM = AnnealedCopper.ResistivityAt20OhmMm2PerM / area;
        var perK = 1 / (AnnealedCopper.ZeroResistanceOffsetK + 20);
        double FactorAt(double temperatureC) => (AnnealedCopper.ZeroResistanceOffsetK + temperatureC) * perK;
        var lossWPerMK = input.RatedCurrentA * input.RatedCurrentA * ohmPerM * FactorAt(input.RatedC) / (input.RatedC - input.TableAmbientC);
        var heatWPerM = input.CurrentA * input.CurrentA * ohmPerM;

        // dx/dt = push - pull x, x above the ambient.
        var push = heatWPerM * FactorAt(input.AmbientC) / capacity;
        var pull = (lossWPerMK - (heatWPerM * perK)) / capacity;
        var longest = TimeTo(push, pull, input.InitialC - input.AmbientC, input.FinalC - input.AmbientC);
        var k = AdiabaticWithstand.KFactor(input.InitialC, input.FinalC);
        var adiabatic = AdiabaticWithstand.LongestTime(area, k, input.CurrentA).LongestS;
        return new HeatedWithstandResult(longest, adiabatic, new WorkingStep("t_bears",
            FormattableString.Invariant($"{area:0.##} mm² from {input.InitialC:0.#} to {input.FinalC:0.#} °C at {input.CurrentA:0.#} A, losing {lossWPerMK:0.####} W/(m K)"),
            double.IsFinite(longest) ? longest : null, "s", Source));
    }

    private static double TimeTo(double push, double pull, double fromK, double toK)
    {
        var (first, last) = (push - (pull * fromK), push - (pull * toK));
        if (!(first > 0) || !(last > 0))
        {
            return double.PositiveInfinity;
        }

        // ln(first/last)/pull, kept exact where heating and loss nearly cancel.
        var change = pull * (toK - fromK) / first;
        return Math.Abs(change) < 1e-6 ? (toK - fromK) / first * (1 + (change / 2)) : -Log1Plus(-change) / pull;
    }

    private static double Log1Plus(double x)
    {
        var one = 1 + x;
        return one == 1 ? x : Math.Log(one) * x / (one - 1);
    }

    private static void Check(HeatedWithstandInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.AreaMm2, 1000, "mm²", input.Subject);
        Guard.InRange(input.AmbientC, -40, 300, "°C", input.Subject);
        Guard.InRange(input.InitialC, input.AmbientC, 300, "°C", input.Subject);
        Guard.InRange(input.FinalC, Math.BitIncrement(input.InitialC), 1000, "°C", input.Subject);
        Guard.Positive(input.CurrentA, 1e6, "A", input.Subject);
        Guard.Positive(input.RatedCurrentA, 1e5, "A", input.Subject);
        Guard.InRange(input.TableAmbientC, -40, 300, "°C", input.Subject);
        Guard.InRange(input.RatedC, Math.BitIncrement(input.TableAmbientC), 300, "°C", input.Subject);
    }
}
