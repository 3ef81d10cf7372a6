using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class ReviewViewTests
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");
    private static readonly BoatModel Fused = new() { Things = [new Protection { Id = "fuse", Name = "Winch fuse", Means = ProtectionMeans.Fuse, RatedA = 100 }, new Gear { Id = "chest", MassKg = 40 }] };

    [Fact]
    public void Vitals_EmptyBoat_AreUnknownNotZero()
    {
        IReadOnlyList<Vital> vitals = VitalsView.Of(Review(new BoatModel()), DisplayUnits.Metric, Culture);

        Assert.Equal(QuantityText.Unknown, vitals[0].Value);
        Assert.Equal(Verdict.Unknown, vitals[0].Verdict);
        Assert.Null(vitals[0].ThingId);
    }

    [Fact]
    public void Vitals_WithAlteration_ShowWhatWas()
    {
        ReviewResult review = Review(Fused, Finding(0.5), Finding(1.04)) with { AlterationId = "draft", AsAltered = new BoatModel { Things = [.. Fused.Things, new Gear { Id = "winch", MassKg = 25 }, new Gear { Id = "bag" }] } };
        IReadOnlyList<Vital> vitals = VitalsView.Of(review, DisplayUnits.Metric, Culture);

        Assert.Equal(("104 %", "50 %", "Winch fuse", Verdict.Fails), (vitals[0].Value, vitals[0].Was, vitals[0].Of, vitals[0].Verdict));
        Vital mass = vitals[^1];
        Assert.Equal(("+25 kg", "1 thing without a mass"), (mass.Value, mass.Of));
    }

    [Fact]
    public void Findings_NewTrouble_SaysWhatWas()
    {
        FindingsView view = View(Review(Fused, Finding(0.5), Finding(1.04)) with { AlterationId = "draft" });
        FindingRow row = Assert.Single(Assert.Single(view.Groups).Rows);

        Assert.Equal(("New trouble", "104 %", "was 50 %", "Winch fuse"), (view.Groups[0].Title, row.Use, row.Was, row.SubjectTitle));
    }

    [Fact]
    public void Findings_WithoutAlteration_SayNothingOfWas()
    {
        FindingsView view = View(Review(Fused, Finding(1.04), Finding(1.04)));

        Assert.Equal("Fails, unknown or tight", view.Groups[0].Title);
        Assert.Null(view.Groups[0].Rows[0].Was);
    }

    [Theory]
    [InlineData(null, "")]
    [InlineData(double.NaN, "")]
    [InlineData(0.904, "90 %")]
    [InlineData(12.0, "over 10 ×")]
    public void Share_AnyUse_IsAPercentageOrNothing(double? use, string text) => Assert.Equal(text, FindingRow.Share(use, Culture));

    [Fact]
    public void Working_InputOfAThing_LinksToItsFieldWithItsValue()
    {
        FindingsView view = View(Review(Fused, Finding(1.04), Finding(1.04)));
        FindingWorking working = FindingWorking.Of(view.Groups[0].Rows[0], view);

        Assert.Equal(("fuse", "ratedA", "Rated current", "100 A"), working.Inputs.Select(input => (input.ThingId, input.Field, input.Label, input.Text)).Single());
        Assert.Equal(("Asked", "104 A"), working.Lines.Select(line => (line.What, line.Value)).Single());
    }

    [Fact]
    public void EditView_ChangedThing_ListsOnlyTheFieldsThatDiffer()
    {
        Gear was = new() { Id = "chest", Name = "Chest", MassKg = 40 };
        EditView view = EditView.Of(BoatEdits.Replace(was, was with { MassKg = 55 }), DisplayUnits.Metric, Culture);

        Assert.Equal("changed", view.What);
        Assert.Equal(new FieldDifference("Mass", "40 kg", "55 kg"), Assert.Single(view.Fields));
    }

    [Fact]
    public void NextStep_NewBoat_AsksForOneThingAtATime()
    {
        BoatModel boat = new NewBoat("Wren").Make();

        Assert.Equal("lengthOverAllM", NextStep.For(boat)!.Field);
        Assert.Equal("beamM", NextStep.For(new NewBoat("Wren", 5.5).Make())!.Field);
        Assert.Contains("battery", NextStep.For(new NewBoat("Wren", 5.5, 2.1, DraughtM: 0.4).Make())!.Text, StringComparison.Ordinal);
    }

    private static FindingsView View(ReviewResult review) => new(review, [], DisplayUnits.Metric, Culture);

    private static ReviewResult Review(BoatModel boat, Finding? before = null, Finding? after = null) => new()
    {
        AsBuilt = boat,
        AsAltered = boat,
        Findings = FindingPairs.Of(before is null ? [] : [before], after is null ? [] : [after]),
    };

    private static Finding Finding(double use) => new()
    {
        CheckId = "conductor-ampacity",
        SubjectId = "fuse",
        Verdict = Verdicts.OfUse(use),
        UseFraction = use,
        Headline = Sentence.Of($"It carries {new Amount(use * 100, "A")}"),
        Working = [new WorkingLine("Asked", "", new Amount(use * 100, "A"), "")],
        Inputs = [new FindingInput("fuse", "ratedA")],
    };
}
