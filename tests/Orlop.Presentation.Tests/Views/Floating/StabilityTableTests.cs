using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Floating;

public sealed class StabilityTableTests
{
    private static readonly StabilityView View = Barge.View(Barge.Boat);

    // Box of breadth B at draught T: KM = T/2 + B²/(12 T), displacement = ρ·L·B·T (closed form).
    [Fact]
    public void Hydrostatics_OfABox_AreItsClosedForms()
    {
        StabilityTable table = StabilityTable.Of("hydrostatics", View, View.Conditions, new Memo());
        int draught = Column(table, "draught_m"), mass = Column(table, "displacement_kg"), km = Column(table, "km_m");

        Assert.NotEmpty(table.Rows);
        Assert.All(table.Rows, row =>
        {
            double depth = (double)row[draught]!;
            Assert.Equal(1000 * 10 * 3 * depth, (double)row[mass]!, 1e-3);
            Assert.Equal((depth / 2) + (9 / (12 * depth)), (double)row[km]!, 1e-6);
        });
    }

    // Wall-sided: KN = (KM + BM·tan²φ/2)·sin φ while deck and bottom stay on their sides of the water.
    [Fact]
    public void CrossCurves_OfABox_AreWallSidedAtSmallHeels()
    {
        StabilityTable table = StabilityTable.Of("kn", View, View.Conditions, new Memo());

        Assert.Equal(["displacement_kg", "heel_deg", "kn_m"], table.Columns);
        IReadOnlyList<object?>[] wallSided = [.. table.Rows.Where(row => Draught(row) is > 0.45 and < 1.3 && (double)row[1]! <= 10)];
        Assert.NotEmpty(wallSided);
        Assert.All(wallSided, row =>
        {
            double depth = Draught(row), heel = (double)row[1]! * Math.PI / 180, bm = 9 / (12 * depth);
            Assert.Equal(((depth / 2) + bm + (bm * Math.Pow(Math.Tan(heel), 2) / 2)) * Math.Sin(heel), (double)row[2]!, 1e-6);
        });

        static double Draught(IReadOnlyList<object?> row) => (double)row[0]! / 30_000;
    }

    [Fact]
    public void Levers_InCsv_AreThoseOfTheCurve()
    {
        FloatingFacts facts = FloatingFacts.Of(View, View.Conditions[0], new Memo());
        string[] lines = StabilityTable.Of("gz", View, View.Conditions, new Memo()).Csv().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string thirty = lines.Single(line => line.StartsWith("light,30,", StringComparison.Ordinal));

        Assert.Equal("condition,heel_deg,gz_m,draught_m,trim_deg,flooded", lines[0]);
        Assert.Equal(facts.Floating!.Starboard.At(30)!.GzM, double.Parse(thirty.Split(',')[2], CultureInfo.InvariantCulture), 1e-12);
    }

    // A box 3 m broad and 0.4 m deep with its deck at 1.8 m: the edge of an open one goes under at atan(1.4/1.5) = 43.03° (wall-sided; the bilge is out by then, so a little later or sooner).
    [Fact]
    public void Levers_OfAnOpenBoat_AreToldApartFromWhereSheFloods()
    {
        BoatModel open = Barge.Boat.With(new Particulars { Id = "particulars", Name = "Barge", BeamM = 3, Deck = DeckKind.Open, WaterDensityKgPerM3 = 1000 });
        double flooding = Barge.Facts(open).Starboard!.DownfloodingDeg!.Value;
        StabilityTable table = StabilityTable.Of("gz", Barge.View(open), Barge.View(open).Conditions, new Memo());

        Assert.InRange(flooding, 30, 60);
        Assert.All(table.Rows, row => Assert.Equal(Math.Abs((double)row[1]!) >= flooding ? "yes" : "no", row[^1]));
        Assert.Equal(2, table.Rows.Select(row => row[^1]).Distinct().Count());
    }

    // Nobody said whether she is decked: no lever is called dry.
    [Fact]
    public void Levers_OfABoatOfUnknownDeck_AreNotCalledDry()
    {
        StabilityView view = Barge.View(Barge.Boat.With(new Particulars { Id = "particulars", Name = "Barge", BeamM = 3, WaterDensityKgPerM3 = 1000 }));
        StabilityTable table = StabilityTable.Of("gz", view, view.Conditions, new Memo());

        Assert.NotEmpty(table.Rows);
        Assert.All(table.Rows, row => Assert.Null(row[^1]));
    }

    // What the mark means stands beside the levers, with where she floods; a scuttle 1 m up at the side goes under before the deck edge, and the greatest lever is that at its heel.
    [Fact]
    public void FloodedLevers_SayWhereSheFloodsAndThatTheyAreNotHers()
    {
        BoatModel boat = Barge.Boat.With(new HullOpening { Id = "scuttle", Name = "Scuttle", Use = OpeningUse.Window, Place = new Place(5, 1.5, 0.7) });
        FloatingFacts facts = Barge.Facts(boat);
        string? said = FloodedLevers.Text(boat, facts, DisplayUnits.Metric, CultureInfo.InvariantCulture);

        Assert.Equal(Math.Atan(0.3 / 1.5) * 180 / Math.PI, Math.Abs(facts.Port!.DownfloodingDeg!.Value), 1e-3);
        Assert.StartsWith("* Flooded: to port from 11.3°, where Scuttle goes under.", said!.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains("are not hers", said, StringComparison.Ordinal);
        Assert.Equal((Math.Abs(facts.Floating!.Port.At(facts.Port.DownfloodingDeg.Value)!.GzM), facts.Port.DownfloodingDeg.Value), facts.Greatest);
        Assert.Null(FloodedLevers.Text(Barge.Boat.With(new HullOpening { Id = "vent", Use = OpeningUse.Vent, Place = new Place(5, 0, 90) }), Barge.Facts(Barge.Boat), DisplayUnits.Metric, CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("hydrostatics")]
    [InlineData("gz")]
    [InlineData("kn")]
    public void Tables_OfABoatWithoutLines_HaveNoRows(string kind)
    {
        StabilityView view = Barge.View(Barge.Boat.WithThings(Barge.Boat.Things.Where(thing => thing is not HullLines)));
        Assert.Empty(StabilityTable.Of(kind, view, view.Conditions, new Memo()).Rows);
    }

    // 1.8 m of side and 0.4 m of draught leave 1.4 m all round; 300 kg more sink 30 t per metre by 10 mm.
    [Fact]
    public void MarkFreeboards_OfTheBarge_StandWhereArchimedesHasThem()
    {
        BoatModel boat = Barge.Boat.With(new FreeboardSurvey { Id = "survey", Name = "Survey", Marks = [new FreeboardMark("aft", new Place(0, 1.5, 1.8), 1.4), new FreeboardMark("bow", new Place(10, -1.5, 1.8), 1.4)] });
        StabilityView view = Barge.View(boat);
        IReadOnlyList<MarkFreeboard> marks = MarkFreeboard.Of(view, view.Conditions[0]);

        Assert.Equal(["aft", "bow"], marks.Select(mark => mark.Name));
        Assert.All(marks, mark => Assert.Equal(1.4, mark.HeightM, 1e-6));
        Assert.All(marks, mark => Assert.True(mark.DeviationM > 0.009, $"{mark.DeviationM}: at least what the mass alone gives"));
    }

    // GM depends on KG as -1 and her other errors move it little: the draws must have the mean and the spread of the linear band, and the share of a normal distribution.
    [Fact]
    public void Draws_OfTheBarge_AgreeWithTheLinearBand()
    {
        FloatingFacts facts = FloatingFacts.Of(View, View.Conditions[0], new Memo());
        var drawn = View.DrawnIn(View.Conditions[0], null, TestContext.Current.CancellationToken)!;
        var gm = drawn.Shares.Single(share => share.Id == "initial-gm");
        double linear = ResultDeviation.Of(facts.Loaded, boat => Equilibrium.Solve(boat).Position?.MetacentricHeightM);

        Assert.Equal(facts.Position!.MetacentricHeightM, gm.Mean!.Value, 0.01);
        Assert.Equal(linear, gm.Deviation!.Value, 0.03 * linear);
        DrawsView words = DrawsView.Of(facts, drawn, DisplayUnits.Metric, CultureInfo.InvariantCulture);
        Assert.Equal(drawn.Shares.Length, words.Lines.Count);
        Assert.Contains("% of the draws", words.Lines[0].Holds, StringComparison.Ordinal);
    }

    [Fact]
    public void Draws_WhereSomethingIsNotGiven_SayNothing()
    {
        StabilityView view = Barge.View(Barge.Boat.With(new Gear { Id = "chest", Name = "Chest", Place = new Place(5, 0, 1) }));

        Assert.Null(view.DrawnIn(view.Conditions[0], null, TestContext.Current.CancellationToken));
        Assert.Empty(DrawsView.Of(FloatingFacts.Of(view, view.Conditions[0], new Memo()), null, DisplayUnits.Metric, CultureInfo.InvariantCulture).Lines);
    }

    [Fact]
    public void Draws_Stopped_EndAtOnce()
    {
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.ThrowsAny<Exception>(() => View.DrawnIn(View.Conditions[0], null, stopped.Token));
    }

    private static int Column(StabilityTable table, string name) => table.Columns.ToList().IndexOf(name);
}
