using Orlop.Electrics.Working;

namespace Orlop.Electrics.Starts;

/// <summary>
/// What starts, as the circuit sees it: a voltage that rises as charge flows in, behind a resistance. A DC motor is one (its back-EMF behind its armature), a capacitor another.
/// C dE/dt = i − sink; terminal voltage = E + R i. Equations: docs/engines/starts.md.
/// </summary>
public sealed record StartingStore
{
    private const double MostOhm = 1e9;
    private const double MostF = 1e12;

    // The current above running that is left when the declared time is over, as a share of what it was at first.
    private const double LeftFraction = 0.05;

    private StartingStore(string id, string plus, string minus, double seriesOhm, double capacitanceF, double sinkA, double initialV)
    {
        (Id, Plus, Minus) = (id, plus, minus);
        SeriesOhm = Guard.Positive(seriesOhm, MostOhm, "ohm", id);
        CapacitanceF = Guard.Positive(capacitanceF, MostF, "F", id);
        SinkA = Guard.InRange(sinkA, 0, 1e6, "A", id);
        InitialV = Guard.InRange(initialV, 0, 1e6, "V", id);
    }

    public string Id { get; }

    public string Plus { get; }

    public string Minus { get; }

    /// <summary>Resistance in series, above 0: the armature's, or a capacitor's own with what limits its inrush.</summary>
    public double SeriesOhm { get; }

    /// <summary>Above 0. Of a motor: what stands for its inertia.</summary>
    public double CapacitanceF { get; }

    /// <summary>Current that does not charge: what a motor draws against its load once it turns; 0 of a capacitor.</summary>
    public double SinkA { get; }

    /// <summary>Voltage held at the beginning: 0 of a motor at rest, the precharge of a capacitor.</summary>
    public double InitialV { get; }

    /// <summary>
    /// A DC motor from rest. Held at its nominal voltage it draws <paramref name="startRatio"/> times its running current at first, and what is above running falls to 5 % of that excess in <paramref name="startS"/>.
    /// </summary>
    /// <param name="nominalV">Nominal voltage, above 0.</param>
    /// <param name="runningA">Current when running, above 0; constant, as against a constant torque.</param>
    /// <param name="startRatio">Current at rest over running current, above 1, to 100.</param>
    /// <param name="startS">How long the start lasts, above 0, to 3600.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or none.</exception>
    public static StartingStore Motor(string id, string plus, string minus, double nominalV, double runningA, double startRatio, double startS)
    {
        Guard.Positive(startRatio - 1, 99, "above 1", id, nameof(startRatio));
        var armatureOhm = ArmatureOhm(Guard.Positive(nominalV, 1e6, "V", id), Guard.Positive(runningA, 1e6, "A", id), startRatio);
        return new StartingStore(id, plus, minus, armatureOhm, TimeConstantS(Guard.Positive(startS, 3600, "s", id)) / armatureOhm, runningA, 0);
    }

    /// <summary>A capacitor that is connected.</summary>
    /// <param name="capacitanceF">Above 0.</param>
    /// <param name="seriesOhm">Its own resistance with what limits its inrush, above 0.</param>
    /// <param name="prechargeV">Voltage across it before, 0 or above.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or none.</exception>
    public static StartingStore Capacitor(string id, string plus, string minus, double capacitanceF, double seriesOhm, double prechargeV = 0) =>
        new(id, plus, minus, seriesOhm, capacitanceF, 0, prechargeV);

    /// <summary>Resistance of a motor at rest: nominal voltage over its starting current.</summary>
    public static double ArmatureOhm(double nominalV, double runningA, double startRatio) => nominalV / (startRatio * runningA);

    /// <summary>Time constant of a motor held at its nominal voltage, whose excess of current falls to 5 % in the declared time: t ÷ ln 20.</summary>
    public static double TimeConstantS(double startS) => startS / -Math.Log(LeftFraction);
}

/// <summary>What starts with a current that stays the same for a time: a motor of alternating current, whose current falls only near its speed.</summary>
/// <param name="CurrentA">Current besides that of running, 0 or above.</param>
/// <param name="LastsS">For so long from the beginning, above 0.</param>
public sealed record StartingCurrent(string Id, string Plus, string Minus, double CurrentA, double LastsS);
