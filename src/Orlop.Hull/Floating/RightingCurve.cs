using System.Collections.Immutable;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Measuring;
using Orlop.Hull.Working;

namespace Orlop.Hull.Floating;

/// <summary>
/// Righting levers GZ over heel, trim free or held, tank liquids running, from 0 to 180° to one side. Every point is a solved position; anything between two points is solved
/// again, not read off a line. Immutable and fit for several threads.
/// </summary>
public sealed class RightingCurve
{
    private const double RadPerDeg = Math.PI / 180;

    private readonly FloatingEnergy _energy;
    private readonly EquilibriumSearch _search;
    private readonly Freedom _freedom;
    private readonly SearchEnd _start;
    private readonly Lazy<RightingFeatures> _features;

    private RightingCurve(RightingInput input, FloatingEnergy energy)
    {
        Input = input;
        _energy = energy;
        _search = new EquilibriumSearch(energy);
        _features = new Lazy<RightingFeatures>(() => RightingReading.Read(this));
        _freedom = input.IsTrimFree ? Freedom.DraughtAndTrim : Freedom.DraughtOnly;
        var start = _search.From(FloatingStart.Afloat(energy, input.Boat, 0, 0).Draught, 0, 0, _freedom);
        if (!start.IsFound)
        {
            Status = FloatingStatus.NotConverged;
            Message = FormattableString.Invariant($"{input.Boat.Subject}: she finds no balance upright, so there are no levers");
            return;
        }

        _start = start;
        Points = March(start);
        var isWhole = Math.Abs(Points[^1].HeelDeg - input.ToDeg) < 1e-9;
        Status = isWhole ? FloatingStatus.Floats : FloatingStatus.NotConverged;
        Message = FormattableString.Invariant($"{input.Boat.Subject}: {(isWhole ? "levers" : "no balance beyond")} to {Points[^1].HeelDeg:0.#}°");
    }

    private RightingCurve(RightingInput input, FloatingEnergy energy, FloatingResult failure)
    {
        Input = input;
        _energy = energy;
        _search = new EquilibriumSearch(energy);
        _features = new Lazy<RightingFeatures>(() => RightingReading.Read(this));
        Status = failure.Status;
        Message = failure.Message;
    }

    public RightingInput Input { get; }

    /// <summary><see cref="FloatingStatus.Floats"/> when the whole curve was found.</summary>
    public FloatingStatus Status { get; }

    /// <summary>The status in a sentence.</summary>
    public string Message { get; }

    /// <summary>Points from heel 0 on; empty when she does not float, short when the search gave up.</summary>
    public ImmutableArray<RightingPoint> Points { get; } = [];

    /// <summary>All masses, liquids in tanks among them.</summary>
    public double MassKg => _energy.MassKg;

    /// <summary>Greatest lever, loll, vanishing and downflooding, each solved at its own heel.</summary>
    public RightingFeatures Features => _features.Value;

    /// <summary>Initial GM with free surfaces taken off; null without a curve.</summary>
    public double? InitialGmM => Points.IsEmpty ? null : Points[0].GmM;

    /// <summary>Heel at which the first of some places goes under, with the sign of the side; 0 for one under water upright, null where all stay dry to the last point.</summary>
    public double? FirstUnderDeg(IEnumerable<Opening> places) => RightingReading.FirstUnder(this, places).Deg;

    public static RightingCurve Calculate(RightingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.InRange(input.ToDeg, -180, 180, "°", input.Boat.Subject);
        Guard.InRange(input.StepDeg, 0.1, 10, "°", input.Boat.Subject);
        foreach (var opening in input.Openings)
        {
            Guard.Place(opening.Place, opening.Id);
        }

        var energy = new FloatingEnergy(input.Boat with { Pulls = [] });
        return Equilibrium.Overweight(energy, input.Boat.Subject) is { } under
            ? new RightingCurve(input, energy, under)
            : new RightingCurve(input, energy);
    }

    /// <summary>The solved point at any heel of the curve; null beyond it, or where the search gave up.</summary>
    public RightingPoint? At(double heelDeg)
    {
        if (Points.IsEmpty || !(Math.Abs(heelDeg) <= Math.Abs(Points[^1].HeelDeg)) || heelDeg * Points[^1].HeelDeg < 0)
        {
            return null;
        }

        var near = Points[Math.Clamp((int)Math.Round(Math.Abs(heelDeg) / Input.StepDeg, MidpointRounding.AwayFromZero), 0, Points.Length - 1)];
        if (near.HeelDeg == heelDeg)
        {
            return near;
        }

        var end = _search.From(near.Attitude.DraughtM, near.Attitude.TrimDeg * RadPerDeg, heelDeg * RadPerDeg, _freedom);
        return end.IsFound ? PointOf(end, heelDeg) : null;
    }

    /// <summary>
    /// Area under the levers between two heels of this side, ∫GZ dφ: the rise of G over B, exact, and for free trim the share that goes into trimming, ∫(1 - cos t)·GZ dφ, summed
    /// over the points with an error of the second order in their step, which is a millionth of the area for a trim of some degrees. Null where the curve does not reach.
    /// </summary>
    public double? AreaMRad(double fromDeg, double toDeg)
    {
        if (At(fromDeg) is not { } from || At(toDeg) is not { } to)
        {
            return null;
        }

        var (low, high) = (Math.Min(Math.Abs(fromDeg), Math.Abs(toDeg)), Math.Max(Math.Abs(fromDeg), Math.Abs(toDeg)));
        ImmutableArray<RightingPoint> between =
        [
            from, .. Points.Where(point => Math.Abs(point.HeelDeg) > low && Math.Abs(point.HeelDeg) < high).OrderBy(point => Math.Abs(point.HeelDeg - fromDeg)), to,
        ];
        var trimming = 0.0;
        for (var i = 1; i < between.Length; i++)
        {
            trimming += 0.5 * (Lost(between[i - 1]) + Lost(between[i])) * (between[i].HeelDeg - between[i - 1].HeelDeg) * RadPerDeg;
        }

        return to.RiseM - from.RiseM + trimming;

        static double Lost(RightingPoint point) => (1 - Math.Cos(point.Attitude.TrimDeg * RadPerDeg)) * point.GzM;
    }

    /// <summary>
    /// How that area changes with the weight: by the slopes of the rise. What a changed trim does to the share that goes into trimming is left out, a few ten-thousandths for a trim of
    /// some degrees. Null where the curve does not reach.
    /// </summary>
    public WeightSlopes? AreaSlopes(double fromDeg, double toDeg) => At(fromDeg) is { } from && At(toDeg) is { } to ? to.RiseSlopes - from.RiseSlopes : null;

    private ImmutableArray<RightingPoint> March(SearchEnd start)
    {
        var points = ImmutableArray.CreateBuilder<RightingPoint>();
        points.Add(PointOf(start, 0));
        var side = Math.Sign(Input.ToDeg);
        var steps = (int)Math.Ceiling((Math.Abs(Input.ToDeg) / Input.StepDeg) - 1e-9);
        var last = start;
        for (var i = 1; i <= steps; i++)
        {
            var heelDeg = side * Math.Min(i * Input.StepDeg, Math.Abs(Input.ToDeg));
            var (draught, trim) = Foreseen(last, heelDeg * RadPerDeg);
            last = _search.From(draught, trim, heelDeg * RadPerDeg, _freedom);
            if (!last.IsFound)
            {
                break;
            }

            points.Add(PointOf(last, heelDeg));
        }

        return points.ToImmutable();
    }

    // Draught and trim along the tangent of the curve of balance: [dd dt; dt tt]·(change) = -(dh, th)·(heel step).
    private (double Draught, double Trim) Foreseen(SearchEnd last, double heel)
    {
        var state = last.State;
        var step = heel - last.Heel;
        var isTrimFree = _freedom == Freedom.DraughtAndTrim;
        var determinant = (state.DraughtDraught * state.TrimTrim) - (state.DraughtTrim * state.DraughtTrim);
        if (!(state.DraughtDraught > 0) || (isTrimFree && !(determinant > 0)))
        {
            return (last.Draught, last.Trim);
        }

        return isTrimFree
            ? (last.Draught - (step * ((state.TrimTrim * state.DraughtHeel) - (state.DraughtTrim * state.TrimHeel)) / determinant),
                last.Trim - (step * ((state.DraughtDraught * state.TrimHeel) - (state.DraughtTrim * state.DraughtHeel)) / determinant))
            : (last.Draught - (step * state.DraughtHeel / state.DraughtDraught), last.Trim);
    }

    private RightingPoint PointOf(SearchEnd end, double heelDeg)
    {
        var cosTrim = Math.Cos(end.Trim);
        var (mass, dry, centre) = (_energy.MassKg, Input.Boat.MassKg, Input.Boat.CentreOfGravity);
        var rise = (end.State.Energy - _start.State.Energy) / mass;
        var isTrimFree = _freedom == Freedom.DraughtAndTrim;
        var slopes = new RightingSlopes(end, mass, isTrimFree);
        return new RightingPoint(heelDeg, end.State.OfHeel / (cosTrim * mass), new Attitude(end.Draught, end.Trim / RadPerDeg, heelDeg),
            rise, end.State.HeelStiffness / (cosTrim * cosTrim * mass))
        {
            GzSlopes = slopes.Lever(dry, centre),
            RiseSlopes = (1 / mass * (slopes.Energy(dry, centre) - new RightingSlopes(_start, mass, isTrimFree).Energy(dry, centre))) - new WeightSlopes(rise / mass, 0, 0, 0),
        };
    }
}
