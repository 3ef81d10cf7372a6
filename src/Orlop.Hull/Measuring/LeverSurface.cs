using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>
/// Levers of one side over mass, LCG and heel for a centre of gravity at the base on the centre line, from curves solved with free trim at nodes of mass and LCG; between the nodes the
/// polynomial through all of them, at whole degrees of heel. KG and TCG enter as mechanics has it; what they change in the trim, t, is what an LCG moved by -tan t·(dTCG·sin φ + dKG·cos φ) would, and
/// is taken along the slope of the surface.
/// </summary>
internal sealed class LeverSurface
{
    /// <summary>How far the nodes reach in standard deviations; one draw in a hundred thousand lies beyond.</summary>
    private const double ReachDeviations = 4.5;

    /// <summary>Least deviation of LCG that the nodes are laid for, as a share of the length.</summary>
    private const double LeastLcgShare = 0.002;

    private const int MassNodeCount = 5;
    private const int LcgNodeCount = 5;
    private const double RadPerDeg = Math.PI / 180;

    private readonly double[] _masses;
    private readonly double[] _lcgs;
    private readonly double[][] _rows;
    private readonly double[] _km;
    private readonly Point3 _middle;
    private readonly double _liquid;
    private readonly (double Sin, double Cos)[] _heels;

    private LeverSurface(StabilitySamplingInput input, int side)
    {
        (Side, HeelCount, OpeningCount) = (side, input.ToDeg + 1, input.Openings.Length);
        _liquid = input.Boat.Tanks.Sum(tank => tank.LiquidKgPerM3 * tank.FillFraction * tank.Shape.SignedVolumeM3);
        _masses = Nodes(input.Weight.MassKg, Math.Sqrt(input.Weight.Covariance[0]), MassNodeCount);
        var length = input.Boat.Buoyancy.Max(body => body.Highest.XM) - input.Boat.Buoyancy.Min(body => body.Lowest.XM);
        _lcgs = Nodes(input.Weight.Centre.XM, Math.Max(Math.Sqrt(input.Weight.Covariance[5]), LeastLcgShare * length), LcgNodeCount);
        _middle = input.Weight.Centre;
        _rows = new double[_masses.Length * _lcgs.Length][];
        _km = new double[_rows.Length];
        _heels = [.. Enumerable.Range(0, HeelCount).Select(heel => Math.SinCos(heel * RadPerDeg))];
    }

    /// <summary>1 to starboard, -1 to port.</summary>
    public int Side { get; }

    public int HeelCount { get; }

    public int OpeningCount { get; }

    /// <summary>Levers, areas, tangents of the trim, and the height of each opening over the water, one after the other, each at every degree.</summary>
    public int RowLength => (3 + OpeningCount) * HeelCount;

    /// <summary>The surface, or why there is none.</summary>
    public static (LeverSurface? Surface, string? Failure) Lay(StabilitySamplingInput input, int side, Action<int>? nodeDone = null)
    {
        var surface = new LeverSurface(input, side);
        if (surface._masses[0] <= 0 || surface._masses[^1] <= 0)
        {
            return (null, FormattableString.Invariant($"{input.Boat.Subject}: the spread of the mass, {input.Weight.MassKg:0} kg with a standard deviation of {Math.Sqrt(input.Weight.Covariance[0]):0} kg, reaches down to nothing"));
        }

        var failures = new string?[surface._rows.Length];
        Parallel.For(0, surface._rows.Length, node =>
        {
            nodeDone?.Invoke(surface._rows.Length);
            var (mass, lcg) = (surface._masses[node / LcgNodeCount], surface._lcgs[node % LcgNodeCount]);
            var draw = new WeightDraw(mass, lcg, input.Weight.Centre.YM, input.Weight.Centre.ZM);
            var curve = Solve(input, side, draw);
            failures[node] = curve.Status == FloatingStatus.Floats ? null : FormattableString.Invariant($"at {mass:0} kg and LCG {lcg:0.###} m {curve.Message}");
            if (failures[node] is null)
            {
                surface._rows[node] = surface.RowOf(curve, input.Openings, draw);
                surface._km[node] = curve.InitialGmM!.Value + (surface.Share(draw) * draw.Kg / Math.Cos(curve.Points[0].Attitude.TrimDeg * RadPerDeg));
            }
        });
        return Array.Find(failures, failure => failure is not null) is { } failure ? (null, failure) : (surface, null);
    }

    /// <summary>The boat solved with the weight of one draw.</summary>
    public static RightingCurve Solve(StabilitySamplingInput input, int side, WeightDraw draw) => RightingCurve.Calculate(new RightingInput
    {
        Boat = input.Boat with { MassKg = draw.Mass, CentreOfGravity = new Point3(draw.Lcg, draw.Tcg, draw.Kg) },
        Openings = input.Openings,
        ToDeg = side * input.ToDeg,
    });

    /// <summary>Fills a row for one draw, positive where she is righted; returns GM, or null beyond the nodes.</summary>
    public double? Read(WeightDraw draw, Span<double> row, Span<double> slopes)
    {
        if (!IsWithin(_masses, draw.Mass) || !IsWithin(_lcgs, draw.Lcg))
        {
            return null;
        }

        Span<double> byMass = stackalloc double[MassNodeCount];
        Span<double> byLcg = stackalloc double[LcgNodeCount];
        Span<double> byLcgSlope = stackalloc double[LcgNodeCount];
        Weigh(_masses, draw.Mass, byMass, default);
        Weigh(_lcgs, draw.Lcg, byLcg, byLcgSlope);
        row.Clear();
        slopes.Clear();
        double km = 0, kmSlope = 0;
        for (var node = 0; node < _rows.Length; node++)
        {
            var (weight, slope) = (byMass[node / LcgNodeCount] * byLcg[node % LcgNodeCount], byMass[node / LcgNodeCount] * byLcgSlope[node % LcgNodeCount]);
            (km, kmSlope) = (km + (weight * _km[node]), kmSlope + (slope * _km[node]));
            var values = _rows[node].AsSpan();
            for (var i = 0; i < row.Length; i++)
            {
                row[i] += weight * values[i];
                slopes[i] += slope * values[i];
            }
        }

        var tangent = row[2 * HeelCount];
        km += kmSlope * AsLcg(draw, 0, tangent);
        AddTrim(draw, row, slopes);
        AddWeight(draw, row, 1);
        return km - (Share(draw) * draw.Kg * Math.Sqrt(1 + (tangent * tangent)));
    }

    private double AsLcg(WeightDraw draw, int heel, double tangent) =>
        -tangent * ((Side * (draw.Tcg - _middle.YM) * _heels[heel].Sin) + ((draw.Kg - _middle.ZM) * _heels[heel].Cos));

    private void AddTrim(WeightDraw draw, Span<double> row, ReadOnlySpan<double> slopes)
    {
        double area = 0, before = 0;
        for (var heel = 0; heel < HeelCount; heel++)
        {
            var shift = AsLcg(draw, heel, row[(2 * HeelCount) + heel]);
            var lever = slopes[heel] * shift;
            area += heel == 0 ? 0 : 0.5 * RadPerDeg * (before + lever);
            before = lever;
            row[heel] += lever;
            row[HeelCount + heel] += area;
            for (var at = (3 * HeelCount) + heel; at < row.Length; at += HeelCount)
            {
                row[at] += slopes[at] * shift;
            }
        }
    }

    private double[] RowOf(RightingCurve curve, IReadOnlyList<Opening> openings, WeightDraw draw)
    {
        var row = new double[RowLength];
        for (var heel = 0; heel < HeelCount; heel++)
        {
            row[heel] = Side * curve.Points[heel].GzM;
            row[HeelCount + heel] = heel == 0 ? 0 : row[HeelCount + heel - 1] + curve.AreaMRad(curve.Points[heel - 1].HeelDeg, curve.Points[heel].HeelDeg)!.Value;
            row[(2 * HeelCount) + heel] = Math.Tan(curve.Points[heel].Attitude.TrimDeg * RadPerDeg);
            for (var i = 0; i < OpeningCount; i++)
            {
                row[((3 + i) * HeelCount) + heel] = curve.Points[heel].Attitude.HeightAboveWaterM(openings[i].Place);
            }
        }

        AddWeight(draw, row, -1);
        return row;
    }

    // The lever of G over base and centre line, and its area from upright on.
    private void AddWeight(WeightDraw draw, Span<double> row, int sign)
    {
        var (up, across) = (sign * Share(draw) * draw.Kg, sign * Share(draw) * Side * draw.Tcg);
        for (var heel = 0; heel < HeelCount; heel++)
        {
            var (sin, cos) = _heels[heel];
            row[heel] += (across * cos) - (up * sin);
            row[HeelCount + heel] += (across * sin) - (up * (1 - cos));
        }
    }

    private double Share(WeightDraw draw) => draw.Mass / (draw.Mass + _liquid);

    private static double[] Nodes(double middle, double deviation, int count) =>
        deviation > 0 ? [.. Enumerable.Range(0, count).Select(i => middle + (ReachDeviations * deviation * Math.Cos(Math.PI * i / (count - 1))))] : [middle];

    private static bool IsWithin(double[] nodes, double value) => nodes.Length == 1 || (value <= nodes[0] && value >= nodes[^1]);

    // Lagrange's polynomials, and their slopes where there is room for them.
    private static void Weigh(double[] nodes, double value, Span<double> weights, Span<double> slopes)
    {
        for (var i = 0; i < nodes.Length; i++)
        {
            double weight = 1, slope = 0;
            for (var j = 0; j < nodes.Length; j++)
            {
                if (j != i)
                {
                    var reach = nodes[i] - nodes[j];
                    slope = ((slope * (value - nodes[j])) + weight) / reach;
                    weight *= (value - nodes[j]) / reach;
                }
            }

            weights[i] = weight;
            if (!slopes.IsEmpty)
            {
                slopes[i] = slope;
            }
        }
    }
}
