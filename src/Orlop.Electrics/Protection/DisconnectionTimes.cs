using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>How a fault to earth gets back to its source.</summary>
public enum EarthReturn
{
    /// <summary>By the protective conductor to the neutral's bond (TN).</summary>
    Neutral,

    /// <summary>Through the ground, from an electrode of its own to that of the supply (TT).</summary>
    Ground,

    /// <summary>Not at all: the source floats (IT).</summary>
    None,
}

/// <summary>The longest that a fault to earth may last (IEC 60364-4-41, table 41.1 and 411.3.2.3 to 411.3.2.4).</summary>
public static class DisconnectionTimes
{
    /// <summary>Rating up to which a final circuit comes under the table.</summary>
    public const double FinalCircuitA = 32;

    private const double OtherNeutralS = 5;
    private const double OtherGroundS = 1;

    private sealed record Row(double FromV, double ToV, double NeutralS, double GroundS);

    private static readonly EmbeddedCsv Csv = EmbeddedCsv.Read("disconnection-times.csv");

    private static readonly ImmutableArray<Row> Rows =
        [.. Csv.Rows.Select(row => new Row(Csv.Number(row, "from_v_exclusive"), Csv.Number(row, "to_v"), Csv.Number(row, "neutral_s"), Csv.Number(row, "ground_s")))];

    /// <summary>Where the times come from.</summary>
    public static string Source => Csv.Source;

    /// <summary>Where the times of circuits above 32 A come from; from memory.</summary>
    public const string OtherSource = "IEC 60364-4-41, 411.3.2.3 and 411.3.2.4, circuits above 32 A";

    /// <summary>The longest time allowed; null outside 50 to 400 V to earth, and where nothing returns.</summary>
    /// <param name="nominalV">Live to earth, above 0 to 1000.</param>
    /// <param name="earthReturn">How a fault returns.</param>
    /// <param name="ratingA">Rating of the circuit's own device, above 0 to 10 000.</param>
    public static double? Permitted(double nominalV, EarthReturn earthReturn, double ratingA)
    {
        Guard.Positive(nominalV, 1000, "V", "disconnection time");
        Guard.Positive(ratingA, 10_000, "A", "disconnection time");
        return earthReturn == EarthReturn.None || Rows.FirstOrDefault(row => nominalV > row.FromV && nominalV <= row.ToV) is not { } row
            ? null
            : (earthReturn, ratingA > FinalCircuitA) switch
            {
                (EarthReturn.Neutral, false) => row.NeutralS,
                (EarthReturn.Neutral, true) => OtherNeutralS,
                (_, false) => row.GroundS,
                _ => OtherGroundS,
            };
    }
}
