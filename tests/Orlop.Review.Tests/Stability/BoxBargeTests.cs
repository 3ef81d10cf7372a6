using Orlop.Boat;
using Orlop.Hull.Floating;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability;

/// <summary>
/// The barge of examples/box-barge.json, through the boat file, against the closed forms of a box of 4 × 2 m (exact polygon, ten digits; worked in our stability reference).
/// Levers of a box do not depend on its length.
/// </summary>
public sealed class BoxBargeTests
{
    private static readonly BoatModel Boat = ExampleBoats.Read("box-barge");

    [Theory]
    [InlineData("light", 45_920, 0.8, 0.4, 1.6666666667, 0.8666666667)]
    [InlineData("laden", 74_620, 1.3, 0.65, 1.0256410256, 0.4756410256)]
    public void Rest_IsTheClosedForm(string condition, double massKg, double draughtM, double kbM, double bmM, double gmM)
    {
        FloatingBoat floating = Boat.Floating(condition);
        FloatingPosition at = floating.Rest.Position!;

        Assert.Equal(massKg, floating.Rest.MassKg, 1e-6);
        Assert.Equal(draughtM, at.DraughtM(7), 1e-9);
        Assert.Equal(0, at.Attitude.TrimDeg, 1e-9);
        Assert.Equal(0, at.Attitude.HeelDeg, 1e-9);
        Assert.Equal(kbM, at.CentreOfBuoyancy.ZM, 1e-9);
        Assert.Equal(bmM, at.MetacentricRadiusM, 1e-9);
        Assert.Equal(gmM, at.MetacentricHeightM, 1e-9);
    }

    [Theory]
    [InlineData("light", 10, 0.1549941964)]
    [InlineData("light", 20, 0.3341748657)]
    [InlineData("light", 30, 0.4913010971)]
    [InlineData("light", 40, 0.5177704033)]
    [InlineData("light", 60, 0.3052671415)]
    [InlineData("light", 80, -0.0253228297)]
    [InlineData("laden", 10, 0.0853628799)]
    [InlineData("laden", 20, 0.1854730100)]
    [InlineData("laden", 30, 0.2406761808)]
    [InlineData("laden", 40, 0.2397194919)]
    [InlineData("laden", 60, 0.1020085945)]
    [InlineData("laden", 80, -0.0980164984)]
    public void Lever_IsTheClosedForm_ToEitherSide(string condition, double heelDeg, double gzM)
    {
        FloatingBoat floating = Boat.Floating(condition);

        Assert.Equal(gzM, floating.Starboard.At(heelDeg)!.GzM, 1e-9);
        Assert.Equal(-gzM, floating.Port.At(-heelDeg)!.GzM, 1e-9);
    }

    [Theory]
    [InlineData("light", 0.52526506, 36.5277, 78.549453, 0.2196515429)]
    [InlineData("laden", 0.24682038, 35.7362, 70.466225, 0.1116817678)]
    public void Curve_GreatestLeverRangeAndArea_AreTheClosedForm(string condition, double greatestM, double atDeg, double vanishingDeg, double areaTo40MRad)
    {
        RightingCurve curve = Boat.Floating(condition).Weaker;
        RightingFeatures read = curve.Features;

        Assert.Equal(greatestM, read.GreatestGzM!.Value, 1e-8);
        Assert.Equal(atDeg, read.GreatestGzDeg!.Value, 1e-4);
        Assert.Equal(vanishingDeg, read.VanishingDeg!.Value, 2e-6);
        Assert.Equal(areaTo40MRad, curve.AreaMRad(0, 40)!.Value, 2e-6);
    }
}
