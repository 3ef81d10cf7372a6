using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>The list of circuits with what stands beside it.</summary>
public sealed class CircuitsViewTests
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");
    private static readonly BoatModel Demo = DemoBoat.Read();
    private static readonly ReviewResult Result = new ReviewEngine([new ElectricsDiscipline()]).Review(Demo);

    [Fact]
    public void EveryFailureOfTheElectrics_StandsInACircuitsRowOrAmongWhatIsShared()
    {
        CircuitsView view = Of(Demo);
        string[] failing = [.. Result.Findings.Where(pair => pair.Shown.Verdict == Verdict.Fails).Select(pair => Orlop.Boat.Topology.ElementIds.ThingOf(pair.SubjectId)).Distinct().Where(id => Demo.Find(id) is Part or Cable or Link)];
        string[] shared = [.. view.Shared.Where(row => row.Verdict == Verdict.Fails).Select(row => row.ThingId)];

        Assert.NotEmpty(shared);
        Assert.All(failing.Except(shared), id => Assert.Contains(
            view.Rows.Where(row => row.Verdict == Verdict.Fails),
            row => view.ChainOf(row.TakerId) is { } chain && (chain.Taker.Id == id || chain.Out.Concat(chain.Back).Any(item => item.Thing.Id == id))));
        Assert.DoesNotContain(view.Shared, row => row.Verdict == Verdict.Holds);
        Assert.Equal(view.Shared.Select(row => row.Verdict).OrderByDescending(Verdicts.Weight), view.Shared.Select(row => row.Verdict));
    }

    [Fact]
    public void CircuitThatTheReviewDoesNotKnowYet_HasNoVerdict()
    {
        ElectricLoad horn = Demo.Find<ElectricLoad>("horn")!;
        ReviewResult before = Result with { AsAltered = new BoatModel { Things = [.. Demo.Things.Where(thing => thing.Id != horn.Id)] } };

        Assert.Null(CircuitsView.Of(Demo, Demo, before, DisplayUnits.Metric, Culture).Rows.Single(row => row.TakerId == "horn").Verdict);
        Assert.NotNull(Of(Demo).Rows.Single(row => row.TakerId == "horn").Verdict);
    }

    [Fact]
    public void BreakersAndFuses_AreCalledByTheirTrade()
    {
        Orlop.Boat.Format.RecordSchema schema = Orlop.Boat.Format.ThingSchema.Of("protection");

        Assert.Equal(("Melting I²t", "Operating I²t"), (FieldLabels.Of(schema.Field("meltingA2S")!), FieldLabels.Of(schema.Field("clearingA2S")!)));
    }

    private static CircuitsView Of(BoatModel boat) => CircuitsView.Of(boat, boat, Result, DisplayUnits.Metric, Culture);
}
