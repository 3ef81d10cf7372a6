using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Floating;

public sealed class FreeSurfaceTests
{
    // l·b³/12 at every fill between (Derrett, p. 193).
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Box_HasTheRectanglesSecondMoment(double fill) =>
        Assert.Equal(1.5 * Math.Pow(1.6, 3) / 12, FreeSurface.TransverseM4(Solids.Box(new Point3(2, -0.3, 0.1), new Point3(3.5, 1.3, 0.9)), fill), 1e-9);

    // A wedge, apex down, 1.2 m wide at the top: at fill f its surface is √f of that wide, so l·(1.2·√f)³/12.
    [Fact]
    public void Wedge_IsNarrowerTheLessIsInIt()
    {
        TriangleMesh wedge = Solids.Box(new Point3(0, -0.6, 0), new Point3(2, 0.6, 1)).Moved(corner => corner.ZM > 0.5 ? corner : new Point3(corner.XM, corner.YM * 1e-9, corner.ZM));

        Assert.Equal(2 * Math.Pow(1.2 * Math.Sqrt(0.25), 3) / 12, FreeSurface.TransverseM4(wedge, 0.25), 1e-6);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void EmptyOrFull_HasNone(double fill) => Assert.Equal(0, FreeSurface.TransverseM4(Solids.Box(new Point3(0, 0, 0), new Point3(1, 1, 1)), fill));

    [Fact]
    public void FillBeyondItsRange_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FreeSurface.TransverseM4(Solids.Box(new Point3(0, 0, 0), new Point3(1, 1, 1)), double.NaN));
}
