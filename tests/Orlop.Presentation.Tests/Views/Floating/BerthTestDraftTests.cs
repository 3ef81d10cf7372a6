using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Floating;

public sealed class BerthTestDraftTests
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private static readonly DateOnly Day = new(2026, 5, 2);

    // A box of 1.8 m at 0.4 m has 1.4 m of freeboard all round; Archimedes gives the 12 t back.
    [Fact]
    public void Freeboards_OfTheBarge_GiveHerWeightBack()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        double[] corners = [0, 0, 10, 10];
        for (int i = 0; i < corners.Length; i++)
        {
            (draft.Marks[i].Forward, draft.Marks[i].ToPort, draft.Marks[i].Up, draft.Marks[i].Freeboard) = ($"{corners[i]}", i % 2 == 0 ? "1.5" : "-1.5", "1.8 m", "1.4 m");
        }

        FreeboardSurvey survey = draft.Make()!;
        FreeboardReport report = FreeboardReport.Of(Barge.View(Barge.Boat), survey, DisplayUnits.Metric, Culture);

        Assert.Null(report.Refusal);
        Assert.StartsWith("12000\u00A0kg", report.Facts[0].Value, StringComparison.Ordinal);
        Assert.All(report.Marks, mark => Assert.Equal("fits", mark.Off));
        Assert.Equal(Day, survey.On);
    }

    [Fact]
    public void Freeboards_Three_AreTooFew()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        foreach (MarkDraft mark in draft.Marks.Take(3))
        {
            (mark.Forward, mark.ToPort, mark.Up, mark.Freeboard) = ("0", "1.5", "1.8", "1.4");
        }

        Assert.Null(draft.Make());
        Assert.Contains("at least 4", draft.Refusal!, StringComparison.Ordinal);
    }

    [Fact]
    public void Freeboards_AMarkThatIsNoLength_IsRefusedAtTheMark()
    {
        FreeboardDraft draft = Freeboards(Barge.Boat);
        draft.Marks[0].Freeboard = "high";

        Assert.Null(draft.Make());
        Assert.Contains("high", draft.Marks[0].Refusal!, StringComparison.Ordinal);
    }

    [Fact]
    public void Aboard_IsTheLedgerWithLiquids()
    {
        BoatModel boat = Barge.Boat.With(
            new Gear { Id = "chest", Name = "Chest", MassKg = 100, Place = new(5, 0, 1) },
            new Tank { Id = "tank", From = new(1, -0.5, 0.2), To = new(2, 0.5, 0.7), LiquidKgPerM3 = 1000, FillFraction = 1 });
        RollingDraft draft = new(Barge.View(boat), Barge.View(boat).Conditions[0], Day, DisplayUnits.Metric, Culture);
        draft.Runs[0].Time = "29.1 s";

        RollingTest test = draft.Make()!;
        Assert.Equal(["chest", "tank"], test.Aboard.Select(item => item.Id).Order(StringComparer.Ordinal));
        Assert.Equal(600, test.Aboard.Sum(item => item.MassKg), 1e-6);
        Assert.Equal(new TimedRolls(10, 29.1), Assert.Single(test.Runs));
    }

    // GM = (f B / T)², Res. A.749(18) annex 3, 3.4, with f = 0.80: (0.8 · 3 / 2.4)² = 1.
    [Fact]
    public void Rolling_TenRollsIn24Seconds_GiveAGmOfOneMetre()
    {
        RollingReport report = RollingReport.Of(Barge.View(Barge.Boat), new RollingTest { Id = "rolling", Runs = [new TimedRolls(10, 24)] }, DisplayUnits.Metric, Culture);

        Assert.StartsWith("1\u00A0m ", report.Facts.Single(fact => fact.Name == "GM").Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Rolling_WithoutABeam_TellsNothing()
    {
        BoatModel boat = Barge.Boat.Change<Particulars>("particulars", particulars => particulars with { BeamM = null });
        RollingReport report = RollingReport.Of(Barge.View(boat), new RollingTest { Id = "rolling", Runs = [new TimedRolls(10, 24)] }, DisplayUnits.Metric, Culture);

        Assert.Contains("beam", report.Refusal!, StringComparison.Ordinal);
        Assert.Empty(report.Facts);
    }

    private static FreeboardDraft Freeboards(BoatModel boat)
    {
        StabilityView view = Barge.View(boat);
        return new FreeboardDraft(view, view.Conditions[0], Day, DisplayUnits.Metric, Culture);
    }
}
