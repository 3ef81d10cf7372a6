using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Hydrostatics;

/// <summary>Hydrostatic curves: one row a draught at which the hull is cut by the water. Draughts at which it is dry or wholly under have no row and are named apart.</summary>
/// <param name="Rows">In the order of draught.</param>
/// <param name="LeftOutM">Draughts at which the water plane does not cut the hull.</param>
public sealed record HydrostaticTable(ImmutableArray<HydrostaticRow> Rows, ImmutableArray<double> LeftOutM)
{
    private const double CmPerM = 100;

    public static HydrostaticTable Calculate(HydrostaticInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        input.Hull.Closed(input.Subject);
        Guard.Water(input.WaterKgPerM3, input.Subject);
        Guard.Positive(input.TrimLengthM, 1000, "m", input.Subject);
        Guard.InRange(input.TrimDeg, -10, 10, "°", input.Subject);
        var rows = ImmutableArray.CreateBuilder<HydrostaticRow>();
        var leftOut = ImmutableArray.CreateBuilder<double>();
        foreach (var draughtM in input.DraughtsM.Order())
        {
            if (Row(input, Guard.InRange(draughtM, -1000, 1000, "m", input.Subject)) is { } row)
            {
                rows.Add(row);
            }
            else
            {
                leftOut.Add(draughtM);
            }
        }

        return new HydrostaticTable(rows.ToImmutable(), leftOut.ToImmutable());
    }

    private static HydrostaticRow? Row(HydrostaticInput input, double draughtM)
    {
        var attitude = new Attitude(draughtM, input.TrimDeg, 0);
        var plane = WaterPlane.Of(attitude);
        var part = Submersion.Calculate(input.Hull, attitude);
        if (part.CentreOfBuoyancy is not { } buoyancy || part.CentreOfFlotation is not { } flotation)
        {
            return null;
        }

        var displacement = input.WaterKgPerM3 * part.VolumeM3;
        var (transverse, longitudinal) = (part.TransverseSecondMomentM4 / part.VolumeM3, part.LongitudinalSecondMomentM4 / part.VolumeM3);
        var depth = -input.Hull.Corners.Min(corner => plane.HeightM(corner));
        return new HydrostaticRow
        {
            DraughtM = draughtM,
            VolumeM3 = part.VolumeM3,
            DisplacementKg = displacement,
            LcbM = buoyancy.XM,
            KbM = buoyancy.ZM,
            LcfM = flotation.XM,
            WaterplaneAreaM2 = part.WaterplaneAreaM2,
            ImmersionKgPerCm = input.WaterKgPerM3 * part.WaterplaneAreaM2 / CmPerM,
            TrimmingKgMPerCm = displacement * longitudinal / (CmPerM * input.TrimLengthM),
            BmM = transverse,
            LongitudinalBmM = longitudinal,
            KmM = buoyancy.ZM + (transverse * plane.Up.ZM),
            LongitudinalKmM = buoyancy.ZM + (longitudinal * plane.Up.ZM),
            WaterlineLengthM = part.WaterlineLengthM,
            WaterlineBreadthM = part.WaterlineBreadthM,
            BlockCoefficient = part.VolumeM3 / (part.WaterlineLengthM * part.WaterlineBreadthM * depth),
            WaterplaneCoefficient = part.WaterplaneAreaM2 / (part.WaterlineLengthM * part.WaterlineBreadthM),
            WettedAreaM2 = part.WettedAreaM2,
        };
    }
}
