using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>How a copper conductor is stranded (IEC 60228): class 2 stranded, class 5 flexible.</summary>
public enum StrandClass { Class2, Class5 }

/// <summary>Where a resistance came from.</summary>
public enum ResistanceBasis
{
    /// <summary>The IEC 60228 table has this size.</summary>
    Table,

    /// <summary>The table has not; ideal copper with a strand margin read from the neighbouring sizes.</summary>
    IdealWithStrandMargin,
}

/// <summary>A length of one copper conductor.</summary>
public sealed record ConductorResistanceInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Nominal copper area, 0.05 to 1000.</summary>
    public required double AreaMm2 { get; init; }

    /// <summary>Length of this one conductor, 0 to 1000.</summary>
    public required double LengthM { get; init; }

    public required StrandClass Strand { get; init; }

    public required bool IsTinned { get; init; }

    /// <summary>Temperature of the copper, -40 to 250.</summary>
    public required double ConductorC { get; init; }
}

/// <summary>Resistance of a length of conductor.</summary>
/// <param name="ResistanceOhm">The most it should have, for voltage drop and for the weakest fault.</param>
/// <param name="LeastOhm">Ideal copper of the nominal area: the least it can have, for the worst fault.</param>
/// <param name="PerMetreAt20OhmPerM">The value read or computed before length and temperature.</param>
/// <param name="StrandMarginFraction">Margin over ideal copper that was used; 0 when the table had the size.</param>
public sealed record ConductorResistanceResult(
    double ResistanceOhm, double LeastOhm, double PerMetreAt20OhmPerM, ResistanceBasis Basis, double StrandMarginFraction,
    ImmutableArray<WorkingStep> Working);

/// <summary>
/// R = r20 · L · (234.5 + T)/254.5. r20 is the IEC 60228 table's for that very size; for any other size it is 0.017241/S with the larger
/// of the two neighbouring sizes' excess over ideal copper as strand margin.
/// </summary>
public static class ConductorResistance
{
    /// <summary>Resistance of a metre of conductor at 20 °C, in ohm: the most it should have, and the least it can have.</summary>
    /// <param name="areaMm2">Nominal copper area, 0.05 to 1000.</param>
    /// <param name="strand">How it is stranded.</param>
    /// <param name="isTinned">Its strands are tinned.</param>
    public static (double MostOhm, double LeastOhm) OfMetreAt20(double areaMm2, StrandClass strand, bool isTinned)
    {
        Guard.InRange(areaMm2, 0.05, 1000, "mm²", "a metre of conductor");
        var (most, least, _, _) = PerMetre(areaMm2, strand, isTinned);
        return (most, least);
    }

    public static ConductorResistanceResult Calculate(ConductorResistanceInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.InRange(input.AreaMm2, 0.05, 1000, "mm²", input.Subject);
        Guard.InRange(input.LengthM, 0, 1000, "m", input.Subject);
        Guard.InRange(input.ConductorC, -40, 250, "°C", input.Subject);

        var (perMetre, ideal, tabled, margin) = PerMetre(input.AreaMm2, input.Strand, input.IsTinned);
        var factor = AnnealedCopper.ResistanceFactor(input.ConductorC);
        var resistance = perMetre * input.LengthM * factor;
        var least = ideal * input.LengthM * factor;
        var first = tabled is null
            ? new WorkingStep("r20", FormattableString.Invariant($"0.017241/{input.AreaMm2:0.####} × (1 + {margin:0.000}), strand margin of the neighbouring sizes"), perMetre, "ohm/m", AnnealedCopper.Source)
            : new WorkingStep("r20", FormattableString.Invariant($"{input.AreaMm2:0.##} mm², {input.Strand}, {(input.IsTinned ? "tinned" : "plain")}"), perMetre, "ohm/m", "IEC 60228 tables 2 and 3");
        return new ConductorResistanceResult(resistance, least, perMetre, tabled is null ? ResistanceBasis.IdealWithStrandMargin : ResistanceBasis.Table, margin,
        [
            first,
            new WorkingStep("k_T", FormattableString.Invariant($"(234.5 + {input.ConductorC:0.#})/254.5"), factor, "", AnnealedCopper.Source),
            new WorkingStep("R", FormattableString.Invariant($"{perMetre:0.######} × {input.LengthM:0.##} × {factor:0.####}"), resistance, "ohm", "R = r20 · L · k_T"),
        ]);
    }

    private static (double PerMetre, double Ideal, double? Tabled, double Margin) PerMetre(double areaMm2, StrandClass strand, bool isTinned)
    {
        var ideal = AnnealedCopper.ResistivityAt20OhmMm2PerM / areaMm2;
        var tabled = Iec60228.OhmPerMAt20(areaMm2, strand, isTinned);
        var margin = tabled is null ? Iec60228.StrandMarginFraction(areaMm2, strand, isTinned) : 0;
        return (tabled ?? ideal * (1 + margin), ideal, tabled, margin);
    }
}
