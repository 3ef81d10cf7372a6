using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Views;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class FieldPathTests
{
    private static readonly Cable Cable = new()
    {
        Id = "feed",
        AreaMm2 = 4,
        Cores =
        [
            new Core { Id = "minus", From = new Terminal("bar", "bar"), To = new Terminal("lamp", "-") },
            new Core { Id = "plus", From = new Terminal("fuse", "out"), To = new Terminal("lamp", "+"), FromEnd = new Termination(TerminationMeans.Ring) },
        ],
        Run = [new RunLeg { Space = "locker", LengthM = 2 }],
    };

    [Theory]
    [InlineData("run", "run", "run")]
    [InlineData("run/1", "run/1", "run-0")]
    [InlineData("run/2", "run", "run")]
    [InlineData("cores/plus/toEnd", "cores/plus/toEnd", "cores-1-toEnd")]
    [InlineData("cores/plus/fromEnd/lugMm2", "cores/plus/fromEnd/lugMm2", "cores-1-fromEnd-lugMm2")]
    [InlineData("cores/minus/fromEnd/lugMm2", "cores/minus/fromEnd", "cores-0-fromEnd")]
    [InlineData("cores/earth/fromEnd", "cores", "cores")]
    [InlineData("/lengthM", "lengthM", "lengthM")]
    [InlineData("nothing", "", "")]
    public void In_GoesAsFarAsTheThingHasIt(string path, string reached, string box) => Assert.Equal(new FieldPath(reached, box), FieldPath.In(Cable, path));

    // A charge outside the curve is no number of a point.
    [Fact]
    public void In_ChargeOutsideTheCurve_EndsAtTheCurve() => Assert.Equal(
        "openCircuit", FieldPath.In(new BatteryBank { Id = "bank", Chemistry = BatteryChemistry.Gel, NominalV = 12, OpenCircuit = [new(0.5, 12), new(0.9, 12.6)] }, "openCircuit/1").Path);

    [Theory]
    [InlineData("gates/60/50/63", "operating time at 60 A (its kind has one only at 50 A and 63 A) of Winch fuse")]
    [InlineData("gates/500//400", "operating time at 500 A (its kind has one only up to 400 A) of Winch fuse")]
    [InlineData("gates", "kind of operating times of Winch fuse")]
    public void Missing_RatingThatItsKindDoesNotHave_NamesTheNearest(string path, string words)
    {
        Protection fuse = new() { Id = "fuse", Name = "Winch fuse", Means = ProtectionMeans.Fuse, RatedA = 60 };
        Assert.Equal(words, MissingWords.Of(new FindingInput("fuse", path, IsMissing: true), new BoatModel { Things = [fuse] }));
        Assert.Equal("gates", FieldPath.In(fuse, path).Path);
    }

    [Theory]
    [InlineData("fromEnd", "Kind of end of core plus, first end")]
    [InlineData("toEnd", "Kind of end of core plus, other end")]
    public void Label_OfAnEndThatNobodyTold_NamesTheCore(string end, string label)
    {
        FieldSchema cores = ThingSchema.Of(typeof(Cable)).Field("cores")!;
        Assert.Equal(label, MissingWords.LabelOf(Cable, cores, $"cores/plus/{end}"));
        Assert.Equal($"Give the k{label[1..]}", FieldAsk.Of(label, cores));
    }

    [Fact]
    public void Labels_OfTheParticulars_AreEachTheirOwn() => Assert.Distinct(ThingSchema.Of(typeof(Particulars)).Fields.Select(FieldLabels.Of));
}
