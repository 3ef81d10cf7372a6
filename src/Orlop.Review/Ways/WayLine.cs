using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Ways;

/// <summary>The line of a way, measured along.</summary>
internal sealed class WayLine
{
    private readonly double[] _alongM;

    public WayLine(Way way)
    {
        Way = way;
        _alongM = new double[way.Points.Count];
        for (int k = 1; k < _alongM.Length; k++)
        {
            _alongM[k] = _alongM[k - 1] + way.Points[k - 1].DistanceM(way.Points[k]);
        }
    }

    public Way Way { get; }

    public double LengthM => _alongM.Length == 0 ? 0 : _alongM[^1];

    /// <summary>It is entered and left at its ends only.</summary>
    public bool IsClosed => Way.Means is WayKind.Conduit or WayKind.Gland;

    /// <summary>Where a cable may join it or leave it as far as its drawn points go.</summary>
    public IEnumerable<(double AlongM, Place Place)> Points => Enumerable.Range(0, _alongM.Length)
        .Where(k => !IsClosed || k == 0 || k == _alongM.Length - 1)
        .Select(k => (_alongM[k], Way.Points[k]));

    /// <summary>Where a cable from a place may join it: the nearest point of each of its pieces, the ends of a closed one.</summary>
    public IEnumerable<(double AlongM, Place Place)> NearestTo(Place place) => IsClosed ? Points : Enumerable.Range(1, _alongM.Length - 1).Select(k =>
    {
        (double at, Place nearest) = Boat.Topology.RunLine.Nearest([Way.Points[k - 1], Way.Points[k]], place);
        return (_alongM[k - 1] + (at * (_alongM[k] - _alongM[k - 1])), nearest);
    });

    /// <summary>The points from one length along to another, both ends among them.</summary>
    public ImmutableArray<Place> Between(double fromM, double toM)
    {
        (double least, double most) = (Math.Min(fromM, toM), Math.Max(fromM, toM));
        Place[] inside = [.. Enumerable.Range(0, _alongM.Length).Where(k => _alongM[k] > least && _alongM[k] < most).Select(k => Way.Points[k])];
        return [At(fromM), .. fromM <= toM ? inside : inside.Reverse(), At(toM)];
    }

    private Place At(double alongM)
    {
        int k = Math.Max(1, Array.FindIndex(_alongM, along => along >= alongM - 1e-9));
        (Place from, Place to) = (Way.Points[k - 1], Way.Points[k]);
        double pieceM = _alongM[k] - _alongM[k - 1], share = pieceM > 0 ? Math.Clamp((alongM - _alongM[k - 1]) / pieceM, 0, 1) : 0;
        return new Place(from.XM + (share * (to.XM - from.XM)), from.YM + (share * (to.YM - from.YM)), from.ZM + (share * (to.ZM - from.ZM)));
    }
}
