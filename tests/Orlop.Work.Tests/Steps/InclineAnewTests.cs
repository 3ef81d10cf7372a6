using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Stability;
using Orlop.Work.Loading;
using Orlop.Work.Steps;
using Xunit;
using static Orlop.Work.Tests.Steps.BallastWork;

namespace Orlop.Work.Tests.Steps;

/// <summary>Work that makes a boat drift from her latest test asks for an inclining test.</summary>
public sealed class InclineAnewTests
{
    // 300 kg on 7.8 t of light boat is 3.8 %, over the 2 % of SOLAS II-1/5; 20 kg amidships and low is a quarter of a percent.
    [Theory]
    [InlineData(300, true)]
    [InlineData(20, false)]
    public void WorkThatMakesADrift_AsksForAnInclining(double massKg, bool isAsked)
    {
        WorkPack pack = Boats.Plan(DemoBoat.Read(), Ballast(massKg));
        WorkStep[] asked = [.. pack.Steps.Where(step => step.Key == "incline:after")];

        Assert.Equal(isAsked, pack.Weights.Incline is not null);
        Assert.Equal(isAsked ? 1 : 0, asked.Length);
        Assert.Equal(isAsked, pack.Bring.Any(item => item.Key == "safety:pendulums"));
        if (isAsked)
        {
            string all = string.Join(" ", asked[0].Details.Select(detail => detail.ToString()));
            Assert.Equal((StepKind.Commission, BerthTestKind.Inclining), (asked[0].Kind, asked[0].WriteDown!.Into));
            Assert.Contains("the boat herself has become 300", all, StringComparison.Ordinal);
            Assert.All(BerthTestGuide.InclinationCautions, caution => Assert.Contains(caution, all, StringComparison.Ordinal));
            Assert.Contains(asked[0].Cautions, caution => caution.Kind == CautionKind.Stability);
            Assert.True(pack.Steps.IndexOf(asked[0]) == pack.Steps.ToList().FindIndex(step => step.Key == "freeboards:after") + 1, "beside the freeboards, which tell the displacement");
        }
    }

    // A slack tank falsifies the heel: both tests ask for one filling without any, and the heights expected are those of it. It was 50 and 60 % at the one and "pressed or empty" at the other.
    [Fact]
    public void FreeboardsAndInclining_AskForOneFilling_WithNoTankSlack_InOneOrder()
    {
        WorkPack pack = Boats.Plan(DemoBoat.Read(), Ballast(300));
        PressedTanks pressed = pack.Weights.Pressed!;
        string condition = pack.Weights.Condition!.Id;
        string[] texts = [.. pack.Steps.Where(step => step.Key is "freeboards:after" or "incline:after").Select(step => string.Join(" ", step.Details))];

        Assert.NotEmpty(pressed.Tanks);
        Assert.Equal(2, texts.Length);
        Assert.All(texts, text =>
        {
            Assert.Contains(pressed.Words, text, StringComparison.Ordinal);
            Assert.DoesNotContain("tanks as written there", text, StringComparison.Ordinal);
            Assert.Contains("freeboards; the inclining test; the freeboards once more", text, StringComparison.Ordinal);
        });
        Assert.All(pressed.Boat.All<Orlop.Boat.Things.Tank>(), tank => Assert.True((tank.Fills.FirstOrDefault(fill => fill.Condition == condition)?.FillFraction ?? tank.FillFraction!.Value) is 0 or 1));
        // Lighter or heavier by the liquid: her freeboards are not those of the condition.
        StabilityView Of(BoatModel boat) => new(boat, null, new Memo());
        Assert.Equal(MarkFreeboard.Of(Of(pressed.Boat), pack.Weights.Condition!)[0].HeightM, pack.Weights.Freeboards()[0].NominalM, 1e-9);
        Assert.NotEqual(MarkFreeboard.Of(Of(pack.AsAltered), pack.Weights.Condition!)[0].HeightM, pack.Weights.Freeboards()[0].NominalM, 1e-4);
        Assert.Null(Boats.Plan(DemoBoat.Read(), Ballast(20)).Weights.Pressed);
    }

    // Moment = displacement·GM·tan 3°.
    [Fact]
    public void Inclining_NamesTheMomentThatHeelsHerThreeDegrees()
    {
        WorkPack pack = Boats.Plan(DemoBoat.Read(), Ballast(300));
        StabilityView view = new(pack.Weights.Pressed!.Boat, null, new Memo());
        FloatingResult rest = view.FloatingIn(pack.Weights.Condition!)!.Rest;
        Assert.Equal(rest.MassKg * rest.Position!.MetacentricHeightM * Math.Tan(3 * Math.PI / 180), pack.Weights.Incline!.MomentKgM!.Value, 1e-6);
    }

    // The test that was made after the work takes the drift away, and not the step that asked for it.
    [Fact]
    public void Inclining_StaysWhenItIsTypedIn_AndIsThenPassed()
    {
        (BoatModel built, Alteration work) = Built(300);
        BoatModel typed = With(built, built.Find<FreeboardSurvey>("october-freeboards")! with { Id = "after", Name = "After the work", On = Worked, Aboard = Aboard(built) }, new InclinationTest { Id = "inclined", Name = "Inclined", On = Worked, Aboard = Aboard(built) });

        Assert.Null(Step(built, work, "incline:after").Kept);
        WorkStep step = Step(typed, work, "incline:after");
        Assert.Equal("inclined", step.Kept!.Id);
        Assert.True((step with { Tick = new StepTick(step.Key, Worked) }).IsDoneOn(Worked));
    }
}
