using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Floating;

public sealed class LedgerTests
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private static readonly Gear Chest = new() { Id = "chest", Name = "Chest", MassKg = new Quantity(100, Knowledge.Measured, 1), Place = new Place(5, 1, 1) };

    [Fact]
    public void Ledger_RowsAndRest_MakeTheWhole()
    {
        Tank tank = new() { Id = "tank", Name = "Water tank", From = new Place(1, -0.5, 0.2), To = new Place(2, 0.5, 0.7), LiquidKgPerM3 = 1000, FillFraction = 0.5 };
        StabilityView view = Barge.View(Barge.Boat.With(Chest, tank));
        WeightRow liquid = LedgerView.RowsOf(view, view.Conditions[0]).Single(row => row.Kind == WeightKind.Liquid);
        LedgerView ledger = LedgerView.Of(view, null, view.Conditions[0], DisplayUnits.Metric, Culture);

        // A tank of 0.5 m³, half full: its surface at half its height, its centre at half of that.
        Assert.Equal(250, liquid.MassKg, 1e-6);
        Assert.Equal(0.325, liquid.Place.ZM, 1e-6);
        Assert.Equal(["350\u00A0kg", "12000\u00A0kg", "12350\u00A0kg"], ledger.Sums.Select(sum => sum.Mass));
    }

    [Fact]
    public void Ledger_WithoutAHull_NamesTheTankThatItSidesAndWhatItRestsOn()
    {
        Tank tank = new() { Id = "tank", Name = "Water tank", From = new Place(1, -2, 0.2), To = new Place(2, 2, 0.7), LiquidKgPerM3 = 1000, FillFraction = 0.5, IsHullSided = true };
        FreeboardSurvey survey = new() { Id = "survey", Name = "Survey", IsBare = true, Marks = [new FreeboardMark("a", new Place(0, 1.5, 1.8), 1.4)] };
        StabilityView view = Barge.View(Barge.Boat.WithThings([.. Barge.Boat.Things.Where(thing => thing is not HullLines), tank, survey]));
        LedgerView ledger = LedgerView.Of(view, null, view.Conditions[0], DisplayUnits.Metric, Culture);

        Assert.Equal("bare boat as typed, and the rows; no berth test counts", ledger.WeightKnown);
        Assert.StartsWith("Water tank is sided by the hull", ledger.Trouble.Single(trouble => trouble.ThingId == "tank").Text, StringComparison.Ordinal);
        Assert.Contains(ledger.Missing, field => field is { ThingId: "hull-lines", Field: "stations", IsThere: false });
        Assert.DoesNotContain(ledger.Missing, field => field.ThingId == "tank");
    }

    [Fact]
    public void Ledger_NamesWhatIsAboardInNoCondition_AndWhatNothingIsSaidOf()
    {
        BoatModel boat = Barge.Boat.With(
            new Deadweight { Id = "crew", Name = "Crew", Use = DeadweightUse.People, MassKg = 160, Place = new Place(4, 0, 2) },
            new Gear { Id = "ballast", Name = "Ballast", MassKg = 500, Place = new Place(5, 0, 0.2) });
        StabilityView view = Barge.View(boat);
        LedgerView ledger = LedgerView.Of(view, null, view.Conditions[0], DisplayUnits.Metric, Culture);
        LedgerLine ballast = ledger.Rows.Single(row => row.ThingId == "ballast");

        Assert.Contains(ledger.Missing, field => field is { ThingId: "crew", Field: "aboard", IsThere: true } && field.Text.Contains("Crew", StringComparison.Ordinal));
        // Guessed is 30 % of 500 kg, twice.
        Assert.Equal(("300\u00A0kg", "taken as guessed: nothing says how it is known", true), (ballast.PlusMinus, ballast.How, ballast.IsGuess));
    }

    // The chest is weighed to one standard deviation of 1 kg: everything that is read has two.
    [Fact]
    public void Ledger_PlusMinus_IsTwoStandardDeviationsAsOnTheTiles()
    {
        BoatModel boat = Barge.Boat.With(Chest);
        StabilityView view = Barge.View(boat);
        LedgerView ledger = LedgerView.Of(view, null, view.Conditions[0], DisplayUnits.Metric, Culture);
        Vital displacement = FloatingView.Of(view, Barge.Facts(boat), null, DisplayUnits.Metric, Culture).Tiles[0];

        Assert.Equal("2\u00A0kg", ledger.Rows.Single(row => row.ThingId == "chest").PlusMinus);
        Assert.Equal($"±\u00A0{ledger.Sums[^1].PlusMinus}; nobody listed aboard", displacement.Of);
        Assert.StartsWith("± is two standard deviations", LedgerView.ColumnNote, StringComparison.Ordinal);
    }
}
