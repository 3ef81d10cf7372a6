using System.Collections.Immutable;

namespace Orlop.Electrics.Heat;

/// <summary>A cable among others.</summary>
/// <param name="Id">What it is called.</param>
/// <param name="OuterDiameterMm">Of the whole cable, above the diameter of its copper, to 150.</param>
/// <param name="CopperMm2">Copper of all its cores together, above 0 to 2000.</param>
/// <param name="LossAt20WPerM">Heat of a metre of it, all cores together, at 20 °C: Σ I² R.</param>
public sealed record BundledCable(string Id, double OuterDiameterMm, double CopperMm2, double LossAt20WPerM);

/// <summary>Cables that lie together along one way.</summary>
public sealed record BundleInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>The cables, one at least, in any order.</summary>
    public required ImmutableArray<BundledCable> Cables { get; init; }

    /// <summary>Air around them, or around their conduit; -60 to 150.</summary>
    public required double AmbientC { get; init; }

    /// <summary>Share of the outside that air reaches, above 0 to 1: less where the bundle lies against something.</summary>
    public double OpenFraction { get; init; } = 1;

    /// <summary>Inner diameter of the conduit they lie in, above that of the bundle, to 300; null for none.</summary>
    public double? ConduitInnerMm { get; init; }

    /// <summary>Diameter of a round bundle with the cables' area and no air between them: √ΣD². No bundle of them has less outside.</summary>
    public double BundleMm => Math.Sqrt(Cables.Sum(cable => cable.OuterDiameterMm * cable.OuterDiameterMm));

    /// <summary>The same content, whatever objects hold it.</summary>
    public bool Equals(BundleInput? other) => other is not null && Subject == other.Subject && AmbientC.Equals(other.AmbientC) && OpenFraction.Equals(other.OpenFraction)
        && Nullable.Equals(ConduitInnerMm, other.ConduitInnerMm) && Cables.AsSpan().SequenceEqual(other.Cables.AsSpan());

    public override int GetHashCode()
    {
        HashCode code = default;
        code.Add(Subject, StringComparer.Ordinal);
        code.Add(AmbientC);
        code.Add(OpenFraction);
        code.Add(ConduitInnerMm);
        foreach (BundledCable cable in Cables)
        {
            code.Add(cable);
        }

        return code.ToHashCode();
    }
}

/// <summary>A cable's copper at rest.</summary>
/// <param name="Id">The cable.</param>
/// <param name="ConductorC">With the cable in the middle of the bundle, its worst place.</param>
public sealed record CableTemperature(string Id, double ConductorC);

/// <summary>How warm cables get together.</summary>
/// <param name="Cables">Each, in the order of the input; none where <paramref name="WhyNone"/> says why.</param>
/// <param name="WhyNone">Why there is no answer; null where there is.</param>
/// <param name="ImbalanceFraction">What the balance of heat lacks at most, over all heat that flows, a milliwatt at least.</param>
public sealed record BundleResult(ImmutableArray<CableTemperature> Cables, string? WhyNone, double ImbalanceFraction);
