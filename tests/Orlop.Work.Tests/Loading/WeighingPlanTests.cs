using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Stability;
using Orlop.Work.Loading;
using Orlop.Work.Paper;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Loading;

public sealed class WeighingPlanTests
{
    private static readonly WorkPack Winch = DemoBoat.Pack("sampling-winch");

    [Fact]
    public void Weigh_IsWhatTheAlterationPutsAboardAndNobodyHasWeighed()
    {
        Assert.NotEmpty(Winch.Weights.Weigh);
        Assert.Contains(Winch.Weights.Weigh, line => line.ThingId == "gallows");
        WorkStep step = Winch.Steps[0];
        Assert.Equal(("weigh:all", StepKind.Weigh), (step.Key, step.Kind));
        Assert.Contains(step.Cautions, caution => caution.Kind == CautionKind.Lifting && caution.Text.Contains("hook", StringComparison.Ordinal));
    }

    /// <summary>A mass typed into a draft without a word on how it is known is no weighing.</summary>
    [Fact]
    public void Weigh_DraftThatOnlyTypesMasses_ListsEachThatNobodyHasWeighed()
    {
        Gear chest = Boats.Small.Find<Gear>("chest")!;
        Protection fuse = Boats.Small.Find<Protection>("main-fuse")!;
        Alteration typed = new() { Id = "typed", Edits = [BoatEdits.Replace(chest, chest with { MassKg = 55 }), BoatEdits.Replace(fuse, fuse with { MassKg = 1.4 })] };
        Alteration weighed = typed with { Edits = [BoatEdits.Replace(chest, chest with { MassKg = new Quantity(55, Knowledge.Measured) })] };

        WorkStep step = Boats.Plan(Boats.Small, typed).Steps.Single(step => step.Key == "weigh:all");
        Assert.Equal(["chest", "main-fuse"], step.About);
        Assert.Contains(step.Details, detail => detail.ToString().Contains("nobody has said how that is known", StringComparison.Ordinal));
        Assert.DoesNotContain(Boats.Plan(Boats.Small, weighed).Steps, step => step.Key == "weigh:all");
    }

    /// <summary>A tick weighs nothing: the step stays open until the masses are in the boat's file, and is gone then.</summary>
    [Fact]
    public void Weigh_TickedWithNothingTyped_StaysOpenAndSaysSo()
    {
        Gear chest = Boats.Small.Find<Gear>("chest")!;
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Replace(chest, chest with { MassKg = 55 })] };
        WorkStep open = Boats.Plan(Boats.Small, work).Steps.Single(step => step.Key == "weigh:all");
        WorkStep ticked = open with { Tick = new StepTick(open.Key, Boats.Day) };

        Assert.Null(open.TestOn(Boats.Day));
        Assert.Null(open.Failed);
        Assert.Equal(TestStanding.NotTyped, open.TestWhenTickedOn(Boats.Day)!.Standing);
        Assert.False(ticked.IsDoneOn(Boats.Day));
        Assert.StartsWith("One thing has no mass in the boat's file that was weighed", ticked.Failed!.Words, StringComparison.Ordinal);
    }

    /// <summary>Less than a kilogram need not be weighed (common practice, no source); what nobody gave a mass for stays.</summary>
    [Theory]
    [InlineData(0.4, false)]
    [InlineData(1.0, true)]
    [InlineData(null, true)]
    public void Weigh_UnderAKilogram_IsNotListed(double? massKg, bool isListed)
    {
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Add(new Gear { Id = "cleat", Name = "Cleat", Space = "locker", MassKg = massKg is { } kg ? new Quantity(kg, Knowledge.Estimated) : null })] };
        Assert.Equal(isListed, Boats.Plan(Boats.Small, work).Steps.Any(step => step.Key == "weigh:all"));
    }

    [Fact]
    public void Json_HasTheFreeboardsThatThePackAsksFor()
    {
        System.Text.Json.Nodes.JsonArray marks = System.Text.Json.Nodes.JsonNode.Parse(PackJson.Write(Winch, new(Boats.Day, "1")))!["freeboards"]!.AsArray();
        IReadOnlyList<PredictedFreeboard> expected = Winch.Weights.Freeboards();

        Assert.NotEmpty(expected);
        Assert.Equal(expected.Select(mark => (mark.Name, mark.NominalM, mark.LeastM, mark.MostM)), marks.Select(mark => ((string)mark!["mark"]!, (double)mark["nominalM"]!, (double)mark["leastM"]!, (double)mark["mostM"]!)));
    }

    [Fact]
    public void Weigh_OfWhatNobodyHoldsOnScales_SaysHow()
    {
        WorkStep step = Winch.Steps[0];
        WeighLine heavy = Winch.Weights.Weigh.First(line => line.MassKg > 60);
        string how = step.Details.Select(detail => detail.ToString()).Single(detail => detail.StartsWith("Over about 60", StringComparison.Ordinal));

        Assert.Contains(heavy.Title, how, StringComparison.Ordinal);
        Assert.Contains("nobody under it", how, StringComparison.Ordinal);
        Assert.DoesNotContain(Winch.Weights.Weigh.Where(line => line.MassKg <= 60), line => how.Contains(line.Title, StringComparison.Ordinal));
        Assert.Contains(step.Cautions, caution => caution.Kind == CautionKind.Lifting && caution.Text.Contains("as two", StringComparison.Ordinal));
    }

    /// <summary>What has no mass is not taken for heavy: the step says what is done if it is.</summary>
    [Fact]
    public void Weigh_MassNotGiven_IsAskedForByOne()
    {
        Alteration work = new() { Id = "work", Edits = [BoatEdits.Add(new Gear { Id = "tool-box", Name = "Tool box", Space = "locker" })] };
        WorkPack pack = Boats.Plan(Boats.Small, work);
        WorkStep step = pack.Steps.Single(step => step.Key == "weigh:all");
        string[] details = [.. step.Details.Select(detail => detail.ToString())];

        Assert.Equal(1, step.PeopleCount);
        Assert.Equal(1, pack.People.MostCount);
        Assert.Contains(details, detail => detail.StartsWith("Mass not given: Tool box.", StringComparison.Ordinal) && detail.Contains("If it is over 25 Kg", StringComparison.Ordinal));
        Assert.DoesNotContain(details, detail => detail.StartsWith("Over about 60", StringComparison.Ordinal));
        Assert.DoesNotContain(pack.Bring, item => item.Key == "backing-plates");
        Assert.Contains(pack.Bring.Single(item => item.Key == "screws").Remarks, remark => remark.ToString().Contains("Tool box, mass not given: weigh it; from 2 Kg on bolts", StringComparison.Ordinal));
    }

    [Fact]
    public void Freeboards_AreThoseOfTheBoatAsAltered()
    {
        IReadOnlyList<PredictedFreeboard> expected = Winch.Weights.Freeboards();
        StabilityView altered = new(Winch.Weights.Pressed?.Boat ?? Winch.AsAltered, null, new Memo());
        IReadOnlyList<MarkFreeboard> marks = MarkFreeboard.Of(altered, Winch.Weights.Condition!);

        Assert.Equal(marks.Select(mark => mark.Name), expected.Select(mark => mark.Name));
        Assert.All(marks.Zip(expected), pair => Assert.Equal(pair.First.HeightM, pair.Second.NominalM, 1e-9));
        // Two standard deviations of a 5 mm tape alone are 10 mm.
        Assert.All(expected, mark => Assert.True(mark.MostM - mark.NominalM >= 0.01 && mark.NominalM - mark.LeastM >= 0.01));
    }

    [Fact]
    public void Freeboards_StandInTheStepsWithWhereEverybodyIsAndTheCaution()
    {
        WorkStep step = Winch.Steps.Single(step => step.Key == "freeboards:after");

        Assert.Equal(StepKind.Commission, step.Kind);
        Assert.Contains(step.Details, detail => detail.ToString().Contains("Nobody is aboard but these", StringComparison.Ordinal) && detail.ToString().Contains("the two who measure are in a dinghy", StringComparison.Ordinal));
        Assert.DoesNotContain(step.Details, detail => detail.ToString().Contains("whoever is aboard stands on the centre line", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(step.Cautions, caution => caution.Kind == CautionKind.Stability);
        Assert.True(Winch.Steps.IndexOf(step) < Winch.Steps.Length - 1, "hand over comes last");
    }

    [Fact]
    public void SmallChange_AsksForNoFreeboards()
    {
        WorkPack pump = DemoBoat.Pack("second-bilge-pump");

        Assert.InRange(pump.Weights.MovedKg, 0, 10);
        Assert.False(pump.Weights.IsFelt);
        Assert.Empty(pump.Weights.Freeboards());
        Assert.DoesNotContain(pump.Steps, step => step.Key == "freeboards:after");
    }

    [Fact]
    public void Freeboards_WhereSomethingIsNotGiven_AreNotPredicted()
    {
        BoatModel boat = DemoBoat.Read();
        Gear placeless = boat.All<Gear>().First(gear => gear.MassKg is not null) with { MassKg = null };
        WorkPack pack = WorkPacks.Plan(boat.WithThings([.. boat.Things.Where(thing => thing.Id != placeless.Id), placeless]), boat.Find<Alteration>("sampling-winch")!, TestContext.Current.CancellationToken);

        Assert.True(pack.Weights.IsFelt);
        Assert.Empty(pack.Weights.Freeboards());
        Assert.Contains("cannot be predicted", WorkPackHtml.Render(pack, new PaperOptions(Boats.Day)), StringComparison.Ordinal);
    }

    // The height that the floating position gives, as close about it as the tape and her weight allow: two deviations of the tape alone are 10 mm.
    [Fact]
    public void Freeboards_OfEveryOtherLoading_StandBesideThem()
    {
        StabilityView view = new(Winch.AsAltered, null, new Memo());
        Condition[] others = [.. Winch.AsAltered.All<Condition>().Where(condition => condition.Id != Winch.Weights.Condition!.Id)];
        IReadOnlyList<(Condition Condition, IReadOnlyList<PredictedFreeboard> Marks)> found = Winch.Weights.FreeboardsElsewhere(new Memo());
        string html = System.Net.WebUtility.HtmlDecode(WorkPackHtml.Render(Winch, new PaperOptions(Boats.Day)));
        string table = html[html.IndexOf("The same marks loaded otherwise", StringComparison.Ordinal)..];
        table = table[..table.IndexOf("</table>", StringComparison.Ordinal)];

        Assert.NotEmpty(others);
        Assert.Equal(others.Select(condition => condition.Id), found.Select(other => other.Condition.Id));
        Assert.All(others, condition => Assert.Contains($">{condition.Title}</th>", table, StringComparison.Ordinal));
        Assert.Equal(others.Length * Winch.Weights.Freeboards().Count, table.Split("class=\"accept\"").Length - 1);
        Assert.All(found, other => Assert.All(other.Marks.Zip(MarkFreeboard.Of(view, other.Condition)), pair => Assert.InRange(pair.Second.HeightM, pair.First.LeastM + 0.01, pair.First.MostM - 0.01)));
    }

    [Fact]
    public void Pack_HasTheFreeboardsAndHowSheFloatsBeforeAndAfter()
    {
        string html = WorkPackHtml.Render(Winch, new PaperOptions(Boats.Day));

        Assert.Contains("Freeboards to read after the work", html, StringComparison.Ordinal);
        Assert.Contains("How she floats, before and after", html, StringComparison.Ordinal);
        Assert.Contains("what changes for the worse", html, StringComparison.Ordinal);
    }
}
