using System.ComponentModel;
using System.Text.Json.Serialization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>An electrical part with terminals. Pole 1 is positive or live, pole 2 negative or neutral.</summary>
public abstract record Part : Thing
{
    [JsonPropertyOrder(90)]
    [Description("Its centre.")]
    public Place? Place { get; init; }

    [JsonPropertyOrder(91)]
    [Description("Box around it, for the drawing.")]
    public BoxSize? Size { get; init; }

    [JsonPropertyOrder(92)]
    [Description("The space it is in."), RefersTo(typeof(Space))]
    public string? Space { get; init; }

    [JsonPropertyOrder(93)]
    [Description("Mass."), Allowed(0, 10_000)]
    public Quantity? MassKg { get; init; }

    [JsonPropertyOrder(94)]
    [Description("Temperature of the air around it up to which it carries its full rating."), Allowed(-40, 200)]
    public Quantity? FullRatingC { get; init; }

    [JsonPropertyOrder(95)]
    [Description("Share of its rating that it loses for each kelvin over that."), Allowed(0, 1)]
    public Quantity? LostPerKFraction { get; init; }

    [JsonPropertyOrder(96)]
    [Description("Greatest temperature of the air around it that it may stand in; it carries nothing beyond."), Allowed(-40, 250)]
    public Quantity? MostAmbientC { get; init; }

    [JsonPropertyOrder(97)]
    [Description("The studs of its terminals, where rings are bolted on.")]
    public ValueList<Stud> Studs { get; init; } = [];

    [JsonPropertyOrder(98)]
    [Description("Largest conductor that its terminals or holder take, as its sheet says. Left out, mending proposes no cable thicker than is common at its rating."), Allowed(0.2, 500)]
    public Quantity? TerminalMm2 { get; init; }

    /// <summary>The stud of one of its terminals; null where nobody has told it.</summary>
    public Stud? StudOf(string terminal) => Studs.FirstOrDefault(stud => stud.Terminal == terminal);

    /// <summary>Names of its terminals.</summary>
    [JsonIgnore]
    public abstract IReadOnlyList<string> TerminalNames { get; }

    /// <summary>One of its terminals.</summary>
    public Terminal At(string terminal) => new(Id, terminal);
}

/// <summary>Names of terminals, the same for every part.</summary>
public static class TerminalNames
{
    public const string Plus = "+";
    public const string Minus = "-";
    public const string In = "in";
    public const string Out = "out";
    public const string In2 = "in2";
    public const string Out2 = "out2";
    public const string InPlus = "in+";
    public const string InMinus = "in-";
    public const string OutPlus = "out+";
    public const string OutMinus = "out-";
    public const string Live = "l";
    public const string Neutral = "n";
    public const string Earth = "pe";
    public const string Bar = "bar";
    public const string A = "a";
    public const string A2 = "a2";
    public const string B = "b";
    public const string B2 = "b2";

    internal static readonly string[] PlusMinus = [Plus, Minus];
    internal static readonly string[] OnePole = [In, Out];
    internal static readonly string[] TwoPole = [In, Out, In2, Out2];
}
