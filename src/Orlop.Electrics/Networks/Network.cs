using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>
/// A two-wire network as the engine sees it: named nodes joined by elements. Both conductors of every circuit are elements of
/// their own. Nodes exist by being named; the order of elements never changes an answer.
/// Current is positive from <c>A</c> to <c>B</c> in a conductor or contact, positive into a load, positive out of a source.
/// AC parts are solved as root-mean-square magnitudes with the conductor's resistance; reactance is left out (stated in the docs).
/// </summary>
public sealed record Network
{
    /// <summary>Lengths of metal that carry current: a core of a cable, a bar.</summary>
    public ImmutableArray<Conductor> Conductors { get; init; } = [];

    /// <summary>Joints, closed devices and mated contacts, with a fixed resistance.</summary>
    public ImmutableArray<Contact> Contacts { get; init; } = [];

    public ImmutableArray<Battery> Batteries { get; init; } = [];

    /// <summary>Sources that hold a voltage up to a current limit: chargers, solar controllers, an engine-driven generator, a shore inlet.</summary>
    public ImmutableArray<LimitedSource> LimitedSources { get; init; } = [];

    /// <summary>DC converters and inverters.</summary>
    public ImmutableArray<Converter> Converters { get; init; } = [];

    public ImmutableArray<Load> Loads { get; init; } = [];

    /// <summary>Nodes bonded to the hull; the first of each connected part is its zero of potential.</summary>
    public ImmutableArray<string> BondedNodes { get; init; } = [];
}

/// <summary>A conductor with a resistance that depends on its own temperature, or stays fixed when <see cref="Heating"/> is null.</summary>
/// <param name="ResistanceAt20Ohm">Resistance at 20 °C, above 0.</param>
public sealed record Conductor(string Id, string A, string B, double ResistanceAt20Ohm, ConductorHeating? Heating = null);

/// <summary>How a conductor warms: its ambient, and the current that brings it from the table's ambient to its rated temperature.</summary>
/// <param name="AmbientC">Temperature around it, -40 to 125.</param>
/// <param name="RatedC">Insulation temperature rating, above the table's ambient.</param>
/// <param name="TableAmbientC">Ambient of the ampacity table.</param>
/// <param name="RatedCurrentA">Ampacity of the table, with grouping, at that ambient; above 0.</param>
public sealed record ConductorHeating(double AmbientC, double RatedC, double TableAmbientC, double RatedCurrentA);

/// <summary>A joint or a closed device. A resistance of exactly 0 makes its two nodes one.</summary>
public sealed record Contact(string Id, string A, string B, double ResistanceOhm);

/// <summary>A battery: open-circuit voltage behind an internal resistance, in either direction of current.</summary>
/// <param name="OpenCircuitV">Above 0.</param>
/// <param name="InternalOhm">Above 0.</param>
public sealed record Battery(string Id, string Plus, string Minus, double OpenCircuitV, double InternalOhm);

/// <summary>
/// A source that holds <see cref="SetpointV"/> behind <see cref="SourceOhm"/> until it reaches <see cref="LimitA"/>, gives
/// <see cref="LimitA"/> when pulled lower, and gives nothing when pushed higher. It never takes current in.
/// </summary>
/// <param name="SourceOhm">Above 0.</param>
public sealed record LimitedSource(string Id, string Plus, string Minus, double SetpointV, double LimitA, double SourceOhm);

/// <summary>
/// A converter from one side to the other. Output: <see cref="OutputV"/> behind <see cref="OutputOhm"/>. Input: the power that the
/// output takes plus losses, <c>P_in = P_out + IdleW + ProportionalLossFraction · P_out + OhmicLossPerW · P_out²</c>.
/// </summary>
/// <param name="OhmicLossPerW">Loss per watt squared, 1/W.</param>
/// <param name="RatedW">Continuous rating of the output.</param>
/// <param name="LeastInputV">Input voltage below which it stops.</param>
/// <param name="IsSharedMinus">The two minus terminals are one node inside.</param>
public sealed record Converter(
    string Id, string InPlus, string InMinus, string OutPlus, string OutMinus,
    double OutputV, double OutputOhm, double IdleW, double ProportionalLossFraction, double OhmicLossPerW,
    double RatedW, double LeastInputV, bool IsSharedMinus);

/// <summary>What a load holds constant.</summary>
public enum LoadKind { Power, Current, Resistance }

/// <summary>A load between two nodes. <see cref="Amount"/> is W, A or ohm by <see cref="Kind"/>: at least 0, a resistance above 0.</summary>
/// <param name="LeastV">Voltage below which it no longer works; reported, never used to switch it off.</param>
public sealed record Load(string Id, string Plus, string Minus, LoadKind Kind, [property: UnitByKind] double Amount, double LeastV = 0);

/// <summary>Marks a number whose unit another property names.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class UnitByKindAttribute : Attribute;
