using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Electrics;

/// <summary>How far apart the boxes around two parts are: a terminal may sit anywhere on its part. A part without a size counts as its centre.</summary>
internal static class PartGap
{
    // Boxes that touch as typed are a hair apart in binary.
    private const double TouchM = 1e-9;

    private static BoxSize Point { get; } = new(0, 0, 0);

    /// <summary>Along x, y and z, in metres; 0 where they overlap along it. Both have a place.</summary>
    public static double[] AlongM(Part one, Part other)
    {
        Place a = one.Place!, b = other.Place!;
        BoxSize sizeA = one.Size ?? Point, sizeB = other.Size ?? Point;
        return
        [
            Gap(a.XM - b.XM, sizeA.LengthM + sizeB.LengthM),
            Gap(a.YM - b.YM, sizeA.BreadthM + sizeB.BreadthM),
            Gap(a.ZM - b.ZM, sizeA.HeightM + sizeB.HeightM),
        ];
    }

    /// <summary>Straight from box to box, in metres. Both have a place.</summary>
    public static double StraightM(Part one, Part other) => Math.Sqrt(AlongM(one, other).Sum(gap => gap * gap));

    /// <summary>Where a part with a place is, and its box, in words.</summary>
    public static string Where(Part part)
    {
        string box = part.Size is { } size ? string.Create(CultureInfo.InvariantCulture, $"box {size.LengthM:0.###} m by {size.BreadthM:0.###} m by {size.HeightM:0.###} m") : "size not given";
        return string.Create(CultureInfo.InvariantCulture, $"{part.Place!.XM:0.###} m forward, {part.Place.YM:0.###} m to port, {part.Place.ZM:0.###} m up; {box}");
    }

    private static double Gap(double centresM, double sizesM) => Math.Abs(centresM) - (sizesM / 2) is > TouchM and var gap ? gap : 0;
}
