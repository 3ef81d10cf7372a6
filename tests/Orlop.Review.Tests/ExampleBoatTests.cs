using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests;

public sealed class ExampleBoatTests
{
    public static TheoryData<string> Names { get; } = ["sandgrouse", "open-workboat", "box-barge", "one-circuit"];

    [Theory, MemberData(nameof(Names))]
    public void Example_ReadAndWritten_IsTheSameText(string name) =>
        Assert.Equal(ExampleBoats.Text(name), BoatJson.Write(ExampleBoats.Read(name)));

    [Theory, MemberData(nameof(Names))]
    public void Example_EveryCable_IsAsLongAsItsRun(string name) =>
        Assert.All(ExampleBoats.Read(name).All<Cable>().Where(cable => cable.LengthM is not null), cable =>
            Assert.Equal(cable.Run.Sum(leg => leg.LengthM), cable.LengthM!.Value, 1e-3));

    [Theory, MemberData(nameof(Names))]
    public void Example_EveryOpenAlteration_FitsTheBoatAsBuilt(string name)
    {
        BoatModel boat = ExampleBoats.Read(name);
        Assert.All(boat.All<Alteration>(), alteration => Assert.Empty(AlteredBoat.Of(boat, alteration).Clashes));
    }

    [Theory, MemberData(nameof(Names))]
    public void Example_EveryBuiltEdit_StandsInTheBoat(string name)
    {
        BoatModel boat = ExampleBoats.Read(name);
        Assert.All(
            boat.All<Alteration>().SelectMany(alteration => alteration.Edits).Where(edit => edit.BuiltOn is not null),
            edit => Assert.Equal(edit.Becomes, boat.Find(edit.Id)));
    }

    [Theory]
    [InlineData("open-workboat")]
    [InlineData("one-circuit")]
    public void SmallExample_Electrics_HasNothingThatFailsOrIsUnknown(string name)
    {
        ReviewResult review = new ReviewEngine([new ElectricsDiscipline()]).Review(ExampleBoats.Read(name), TestContext.Current.CancellationToken);
        Assert.NotEmpty(review.Findings);
        Assert.Equal((0, 0), (review.Count(Verdict.Fails), review.Count(Verdict.Unknown)));
    }

    [Fact]
    public void OpenWorkboat_Stability_IsUnknownAndSaysWhatWouldTell()
    {
        ReviewResult review = new ReviewEngine([new StabilityDiscipline()]).Review(ExampleBoats.Read("open-workboat"), TestContext.Current.CancellationToken);
        Assert.Equal(0, review.Count(Verdict.Fails));
        Finding floats = Assert.Single(review.Findings, finding => finding.CheckId == "floats-at-rest").Shown;
        Assert.Equal(Verdict.Unknown, floats.Verdict);
        Assert.Contains(floats.Inputs, input => input is { ThingId: "hull-lines", Field: "stations", IsMissing: true });
    }
}
