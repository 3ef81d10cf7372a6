using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class ParticularsPossibleCheckTests
{
    // 6 × 2 × 0.5 m of sea water at 1025 kg/m³ is 6.15 t, 6 × 2 × 1.2 m 14.76 t.
    [Theory]
    [InlineData("beamM", 6.0, 12.0, 1.2, 0.5, null)]
    [InlineData("beamM", 6.0, 0.5, 1.2, 0.5, null)]
    [InlineData("depthM", 6.0, 2.0, 7.0, 0.5, null)]
    [InlineData("draughtM", 6.0, 2.0, 1.2, 1.2, null)]
    [InlineData("draughtM", null, null, 1.2, 1.4, null)]
    [InlineData("displacementKg", 6.0, 2.0, 1.2, 0.5, 6151.0)]
    [InlineData("displacementKg", 6.0, 2.0, 1.2, null, 14_761.0)]
    [InlineData(null, 6.0, 2.0, 1.2, 0.5, 6149.0)]
    [InlineData(null, 6.0, 4.1, 1.2, 0.5, null)]
    [InlineData(null, null, null, null, 0.5, 9000.0)]
    public void Particulars_ThatNoBoatHasTogether_AreDoubted(string? field, double? length, double? beam, double? depth, double? draught, double? mass)
    {
        Finding[] found = Of(new Particulars { Id = "particulars", LengthOverAllM = Typed(length), BeamM = Typed(beam), DepthM = Typed(depth), DraughtM = Typed(draught), DisplacementKg = Typed(mass) });

        Assert.Equal(field is null ? [] : [$"particulars.{field}"], found.Select(finding => finding.SubjectId));
        Assert.All(found, finding => Assert.Equal(Verdict.Unknown, finding.Verdict));
        Assert.All(found, finding => Assert.Contains(finding.Inputs, input => input.ThingId == "particulars" && input.Field == field));
        Assert.All(found, finding => Assert.Contains("mistyped", finding.Headline.ToString(), StringComparison.Ordinal));
    }

    // Told also where the boat has neither lines nor a weight.
    [Fact]
    public void Particulars_BesideAHull_AreDoubtedToo() =>
        Assert.Equal("particulars.beamM", Assert.Single(JudgedBox.Of(new Particulars { Id = "particulars", LengthOverAllM = 10, BeamM = 40 }).Found("particulars-possible")).SubjectId);

    private static Quantity? Typed(double? value) => value is { } typed ? new Quantity(typed) : null;

    private static Finding[] Of(Particulars particulars) => new BoatModel { Things = [particulars] }.Found("particulars-possible");
}
