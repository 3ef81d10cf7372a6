using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Shapes;
using Xunit;

namespace Orlop.Hull.Tests.Hydrostatics;

public sealed class MeshCutTests
{
    private static readonly TriangleMesh Box = Solids.Box(new Point3(0, -2, 0), new Point3(10, 2, 2));

    [Fact]
    public void Cut_Box_HasTheOutlinesOfItsFaces()
    {
        Assert.Equal(12, Length(MeshCut.AcrossAt(Box, 3)), 1e-12);
        Assert.Equal(24, Length(MeshCut.AlongAt(Box, 0)), 1e-12);
        Assert.Equal(28, Length(MeshCut.Waterline(Box, Attitude.Upright(0.8))), 1e-12);
        Assert.Empty(MeshCut.AcrossAt(Box, 11));
    }

    [Fact]
    public void Waterline_RandomBodies_ClosesAndLiesInTheWater()
    {
        var random = new Random(2);
        for (var i = 0; i < 50; i++)
        {
            var attitude = new Attitude(random.NextDouble(), 20 * (random.NextDouble() - 0.5), 360 * (random.NextDouble() - 0.5));
            var pieces = MeshCut.Waterline(RandomBody.Create(random), attitude);
            Assert.All(pieces, piece => Assert.Equal(0, attitude.HeightAboveWaterM(piece.From), 1e-12));
            var starts = pieces.Select(piece => piece.From).ToHashSet();
            Assert.All(pieces, piece => Assert.Contains(piece.To, starts));
        }
    }

    [Fact]
    public void WaterHeight_HeeledAndTrimmed_IsOnTheWater()
    {
        var attitude = new Attitude(0.8, 3, 20);
        var height = attitude.WaterHeightM(4, -1.5)!.Value;
        Assert.Equal(0, attitude.HeightAboveWaterM(new Point3(4, -1.5, height)), 1e-12);
        Assert.True(height > 0.8);
        Assert.Null(new Attitude(0.8, 0, 90).WaterHeightM(4, -1.5));
    }

    private static double Length(IEnumerable<CutPiece> pieces) => pieces.Sum(piece => (piece.To - piece.From).LengthM);
}
