using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Ways;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Ways;

/// <summary>A conduit and what is in it.</summary>
/// <param name="Way">The conduit.</param>
/// <param name="Cables">The cables in it.</param>
/// <param name="FillFraction">Share of its inside that they take; null where something is missing.</param>
/// <param name="Limit">What the practice allows; null where it says nothing.</param>
/// <param name="MayJam">Three cables that may wedge in it.</param>
/// <param name="Missing">Diameters that are not given.</param>
internal sealed record ConduitContents(Way Way, ImmutableArray<Cable> Cables, double? FillFraction, Limit? Limit, bool MayJam, ImmutableArray<FindingInput> Missing)
{
    // A nipple of up to 24 in may be fuller: NFPA 70, chapter 9, notes to the tables.
    private const double ShortM = 0.61;

    /// <summary>It has an inside that can be full.</summary>
    public static bool IsConduit(Way way) => way.Means == WayKind.Conduit || way.InnerDiameterMm is not null || way.InsideMm2 is not null;

    /// <summary>A conduit with the cables in it.</summary>
    public static ConduitContents Of(Practice? practice, Way way, IEnumerable<Cable> cables)
    {
        ImmutableArray<Cable> all = [.. cables];
        double? insideMm2 = way.InsideMm2?.Value ?? (way.InnerDiameterMm is { } inner ? ConduitFill.RoundMm2(inner.Value) : null);
        ImmutableArray<FindingInput> missing =
        [
            .. insideMm2 is null ? new[] { new FindingInput(way.Id, "innerDiameterMm", IsMissing: true) } : [],
            .. all.Where(cable => cable.OuterDiameterMm is null).Select(cable => new FindingInput(cable.Id, "outerDiameterMm", IsMissing: true)),
        ];
        double[] outerMm = [.. all.Select(cable => cable.OuterDiameterMm).OfType<Boat.Values.Quantity>().Select(outer => outer.Value)];
        return new ConduitContents(
            way,
            all,
            missing.IsEmpty ? ConduitFill.Fraction(insideMm2!.Value, outerMm.Select(ConduitFill.RoundMm2)) : null,
            practice?.Find(LimitOf(way, all.Length)),
            missing.IsEmpty && way.InnerDiameterMm is { } round && ConduitFill.MayJam(round.Value, outerMm),
            missing);
    }

    /// <summary>The limit that holds for so many cables in it.</summary>
    public static string LimitOf(Way way, int count) => new WayLine(way).LengthM is > 0 and <= ShortM ? LimitIds.ConduitFillShortFraction : count switch
    {
        1 => LimitIds.ConduitFillOneFraction,
        2 => LimitIds.ConduitFillTwoFraction,
        _ => LimitIds.ConduitFillMoreFraction,
    };
}
