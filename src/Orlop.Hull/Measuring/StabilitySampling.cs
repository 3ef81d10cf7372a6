using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>
/// What the spread of a boat's weight does to her criteria: many draws of displacement, LCG, TCG and KG, normal and correlated as the covariance says, each held against every limit to both sides. Levers come from a
/// surface over mass and LCG, so the result states how far that is from the boat solved anew. Errors of the form, of openings and of the water are not in it.
/// </summary>
public static class StabilitySampling
{
    /// <summary>Share of the work that lays the surfaces, about.</summary>
    private const double LayingFraction = 0.8;

    /// <param name="progress">Told how much is done, 0 to 1.</param>
    /// <param name="token">Stops it.</param>
    public static StabilitySamplingResult Calculate(StabilitySamplingInput input, IProgress<double>? progress = null, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(input);
        Check(input);
        var draws = WeightDraw.Many(input.Weight, input.DrawCount, input.Seed);
        var done = 0;
        void NodeDone(int nodeCount)
        {
            token.ThrowIfCancellationRequested();
            progress?.Report(LayingFraction * Interlocked.Increment(ref done) / (2 * nodeCount));
        }

        var (starboard, failure) = LeverSurface.Lay(input, 1, NodeDone);
        var (port, portFailure) = starboard is null ? (null, failure) : LeverSurface.Lay(input, -1, NodeDone);
        if (starboard is null || port is null)
        {
            return new StabilitySamplingResult(portFailure!, [], null, null);
        }

        var values = new double[input.Criteria.Length][];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = new double[draws.Length];
        }

        Parallel.For(0, Environment.ProcessorCount, new ParallelOptions { CancellationToken = token }, part =>
        {
            var room = (new double[starboard.RowLength], new double[starboard.RowLength]);
            for (var i = part * draws.Length / Environment.ProcessorCount; i < (part + 1) * draws.Length / Environment.ProcessorCount; i++)
            {
                Read(input.Criteria, starboard, draws[i], room, values, i, isFirst: true);
                Read(input.Criteria, port, draws[i], room, values, i, isFirst: false);
            }
        });
        token.ThrowIfCancellationRequested();
        var meetsAll = Enumerable.Range(0, draws.Length).Count(i => input.Criteria.Select((criterion, k) => values[k][i] >= criterion.Least).All(meets => meets));
        return new StabilitySamplingResult(FormattableString.Invariant($"{input.Boat.Subject}: {draws.Length} draws, seed {input.Seed}"),
            [.. input.Criteria.Select((criterion, k) => Share(criterion, values[k]))], LargestError(input, starboard, port, draws), (double)meetsAll / draws.Length);
    }

    // A side that fails settles it; otherwise a side that cannot be told leaves it unknown.
    private static void Read(ImmutableArray<SampledCriterion> criteria, LeverSurface surface, WeightDraw draw, (double[] Row, double[] Slopes) room, double[][] values, int at, bool isFirst)
    {
        var gm = surface.Read(draw, room.Row, room.Slopes);
        var levers = gm is null ? default : new LeverRow(room.Row, surface.HeelCount, gm.Value);
        for (var k = 0; k < criteria.Length; k++)
        {
            var value = gm is null ? double.NaN : levers.Of(criteria[k].Quantity);
            var before = values[k][at];
            values[k][at] = isFirst ? value
                : before < criteria[k].Least || value < criteria[k].Least ? (double.IsNaN(value) ? before : double.IsNaN(before) ? value : Math.Min(before, value))
                : Math.Min(before, value);
        }
    }

    private static SampledShare Share(SampledCriterion criterion, double[] values)
    {
        var meets = (double)values.Count(value => value >= criterion.Least) / values.Length;
        double[] known = [.. values.Where(double.IsFinite).Order()];
        double? mean = known.Length > 0 ? known.Average() : null;
        return new SampledShare(criterion.Id, criterion.Least, Unit(criterion.Quantity), meets, (double)values.Count(double.IsNaN) / values.Length, Math.Sqrt(meets * (1 - meets) / values.Length),
            mean, known.Length > 1 ? Math.Sqrt(known.Sum(value => (value - mean!.Value) * (value - mean.Value)) / (known.Length - 1)) : null,
            known.Length > 0 ? known[known.Length / 20] : null);
    }

    private static string Unit(SampledQuantity quantity) => quantity switch
    {
        SampledQuantity.AreaTo30 or SampledQuantity.AreaTo40 or SampledQuantity.Area30To40 => "m rad",
        SampledQuantity.HeelOfGreatestLever or SampledQuantity.Vanishing => "°",
        _ => "m",
    };

    private static double LargestError(StabilitySamplingInput input, LeverSurface starboard, LeverSurface port, WeightDraw[] draws)
    {
        (WeightDraw Draw, LeverSurface Surface)[] probes =
        [
            .. from draw in new[] { draws.MaxBy(draw => draw.Mass), draws.MinBy(draw => draw.Mass), draws.MaxBy(draw => draw.Lcg), draws.MinBy(draw => draw.Lcg) }.Distinct()
               from surface in new[] { starboard, port }
               select (draw, surface),
        ];
        var errors = new double[probes.Length];
        Parallel.For(0, probes.Length, i =>
        {
            var (draw, surface) = probes[i];
            var row = new double[surface.RowLength];
            if (surface.Read(draw, row, new double[surface.RowLength]) is not null)
            {
                errors[i] = LeverSurface.Solve(input, surface.Side, draw).Points.Select((point, heel) => Math.Abs((surface.Side * point.GzM) - row[heel])).Max();
            }
        });
        return errors.Max();
    }

    private static void Check(StabilitySamplingInput input)
    {
        var subject = input.Boat.Subject;
        Guard.Positive(input.Weight.MassKg, 1e7, "kg", subject);
        Guard.Place(input.Weight.Centre, subject);
        Guard.InRange(input.DrawCount, 100, 1_000_000, "draws", subject);
        Guard.InRange(input.ToDeg, 41, 120, "°", subject);
        if (input.Criteria.IsDefaultOrEmpty)
        {
            throw new ArgumentException($"{subject}: there is no criterion to hold the draws against.", nameof(input));
        }

        foreach (var criterion in input.Criteria)
        {
            Guard.InRange(criterion.Least, -1000, 1000, "", criterion.Id);
        }
    }
}
