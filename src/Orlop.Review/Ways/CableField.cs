using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Fields;

namespace Orlop.Review.Ways;

/// <summary>The field of one ampere in each core of a cable, or in a link, at a compass.</summary>
/// <param name="OwnerId">The cable or link.</param>
/// <param name="Cores">Its cores.</param>
/// <param name="IsPair">It has several cores beside each other, and nobody knows which lies towards the compass.</param>
internal sealed record CableField(string OwnerId, ImmutableArray<CoreField> Cores, bool IsPair)
{
    private const double MmPerM = 1000;

    /// <summary>The fields of a cable; null where a place is not given, with the parts that lack one.</summary>
    public static CableField? Of(WaysView view, Cable cable, Place compass)
    {
        IReadOnlyList<Place>[] lines = [.. cable.Cores.Select(core => RunLine.Of(cable, core, view.Boat))];
        string key = string.Join('|', lines.Select(line => string.Join(' ', line.Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.XM:R},{place.YM:R},{place.ZM:R}")))));
        return view.Memo.Get((compass, cable.Id, cable.Cores, OffM(cable), cable.TwistPitchMm?.Value, key), () => Made(cable, lines, Point(compass)));
    }

    /// <summary>The field of a link, straight from part to part.</summary>
    public static CableField Of(Link link, Place from, Place to, Place compass)
    {
        FieldVector field = LineField.OfLineUT([Point(from), Point(to)], Point(compass));
        return new CableField(link.Id, [new CoreField(link.Id, field, field, field)], IsPair: false);
    }

    /// <summary>Distance of a core from the middle of its cable, in metres: half the spacing of two; null where nothing tells.</summary>
    public static double? OffM(Cable cable) => cable.Cores.Count < 2 ? 0 : (cable.CoreSpacingMm?.Value ?? (cable.OuterDiameterMm?.Value / 2)) / 2 / MmPerM;

    private static CableField Made(Cable cable, IReadOnlyList<Place>[] lines, FieldPoint compass)
    {
        double offM = OffM(cable) ?? 0;
        return new CableField(cable.Id, [.. cable.Cores.Select((core, index) =>
        {
            IReadOnlyList<FieldPoint> middle = [.. lines[index].Select(Point)];
            double turned = 2 * Math.PI * index / Math.Max(1, cable.Cores.Count);
            FieldVector straight = LineField.OfLineUT(middle, compass);
            return offM == 0
                ? new CoreField(ElementIds.Core(cable, core), straight, straight, straight)
                : new CoreField(ElementIds.Core(cable, core), straight, Turned(cable, middle, offM, turned, compass), Turned(cable, middle, offM, turned + (Math.PI / 2), compass));
        })], offM > 0);
    }

    private static FieldVector Turned(Cable cable, IReadOnlyList<FieldPoint> middle, double offM, double turnedRad, FieldPoint compass) => LineField.OfLineUT(
        cable.TwistPitchMm is { } pitch ? CoreLines.Twisted(middle, offM, pitch.Value / MmPerM, turnedRad, compass) : CoreLines.Beside(middle, offM, turnedRad, compass),
        compass);

    private static FieldPoint Point(Place place) => new(place.XM, place.YM, place.ZM);
}

/// <summary>The field of one ampere in a core.</summary>
/// <param name="ElementId">Its element in the network.</param>
/// <param name="Middle">Were it in the middle of its cable.</param>
/// <param name="Towards">With the cable's first core towards the compass.</param>
/// <param name="Across">With it a quarter turn from there.</param>
internal sealed record CoreField(string ElementId, FieldVector Middle, FieldVector Towards, FieldVector Across);
