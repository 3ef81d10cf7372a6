using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
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

        Assert.Equal(["Findings", "Greatest use of a limit", "Most voltage lost"], vitals.Select(vital => vital.Name));
        Assert.Equal(vitals.Select(vital => vital.Name), VitalsView.Pending(isAltered: false).Select(vital => vital.Name));
        Assert.All(vitals, vital => Assert.Equal((QuantityText.Unknown, Verdict.Unknown, null), (vital.Value, vital.Verdict, vital.ThingId)));
    }

    [Fact]
    public void Vitals_WithAlteration_ShowWhatWas()
    {
        ReviewResult review = Review(Fused, Finding(0.5), Finding(1.04)) with { AlterationId = "draft", AsAltered = new BoatModel { Things = [.. Fused.Things, new Gear { Id = "winch", MassKg = 25 }, new Gear { Id = "bag" }] } };
        IReadOnlyList<Vital> vitals = VitalsView.Of(review, DisplayUnits.Metric, Culture);

        Assert.Equal(("104\u00A0%", "50\u00A0%", "Winch fuse", Verdict.Fails), (vitals[1].Value, vitals[1].Was, vitals[1].Of, vitals[1].Verdict));
        Assert.Equal(("1 fails", "", "0 and 0"), (vitals[0].Value, vitals[0].Of, vitals[0].Was));
        Vital mass = vitals[^1];
        Assert.Equal(("+25\u00A0kg", "and 1 new thing of unknown mass"), (mass.Value, mass.Of));
    }

    [Fact]
    public void Findings_NewTrouble_SaysWhatWas()
    {
        FindingsView view = View(Review(Fused, Finding(0.5), Finding(1.04)) with { AlterationId = "draft" });
        FindingRow row = Assert.Single(Assert.Single(view.Groups).Rows);

        Assert.Equal(("New trouble", "104\u00A0%", "was 50\u00A0%", "Winch fuse"), (view.Groups[0].Title, row.Use, row.Was, row.SubjectTitle));
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
    [InlineData(0.904, "90\u00A0%")]
    [InlineData(1.0033333, "100.3\u00A0%")]
    [InlineData(1.00004, "100.004\u00A0%")]
    [InlineData(1.0, "100\u00A0%")]
    [InlineData(1.0000000000002, "100\u00A0%")]
    [InlineData(0.9964, "99.6\u00A0%")]
    [InlineData(12.0, "over 10\u00A0×")]
    public void Share_AnyUse_IsAPercentageOrNothing(double? use, string text) => Assert.Equal(text, FindingRow.Share(use, Culture));

    [Fact]
    public void Working_InputOfAThing_LinksToItsFieldWithItsValue()
    {
        FindingsView view = View(Review(Fused, Finding(1.04), Finding(1.04)));
        FindingWorking working = FindingWorking.Of(view.Groups[0].Rows[0], view);

        Assert.Equal(("fuse", "ratedA", "Rated current", "100\u00A0A"), working.Inputs.Select(input => (input.ThingId, input.Field, input.Label, input.Text)).Single());
        Assert.Equal(("Asked", "104\u00A0A"), working.Lines.Select(line => (line.What, line.Value)).Single());
    }

    [Fact]
    public void Vitals_VoltageLost_IsAShareBesideItsLimit()
    {
        Finding lost = Finding(1.08) with { CheckId = "voltage-drop", Headline = Sentence.Of($"{new Amount(0.777, "V")} lost, {new Amount(0.0324, "Fraction")} of {new Amount(24, "V")}") };
        Vital vital = VitalsView.Of(Review(Fused, lost, lost), DisplayUnits.Metric, Culture)[2];

        Assert.Equal(("3.24\u00A0%", "limit 3\u00A0%", Verdict.Fails), (vital.Value, vital.Limit, vital.Verdict));
    }

    [Theory]
    [InlineData(Verdict.Fails, "1 more fails, without a use")]
    [InlineData(Verdict.Unknown, "1 cannot be told")]
    public void Vitals_GreatestUseHoldsBesideTrouble_BearsNoMarkAndSaysSo(Verdict trouble, string said)
    {
        Finding other = Finding(0) with { CheckId = "conductor-protection", Verdict = trouble, UseFraction = null };
        ReviewResult review = new() { AsBuilt = Fused, AsAltered = Fused, Findings = FindingPairs.Of([], [Finding(0.25) with { Verdict = Verdict.Holds }, other]) };
        Vital use = VitalsView.Of(review, DisplayUnits.Metric, Culture)[1];

        Assert.Equal(("25\u00A0%", null, said), (use.Value, use.Verdict, use.Limit));
    }

    [Fact]
    public void Vitals_AnyCheckWithAUse_CanBeTheGreatest()
    {
        Finding breaking = Finding(5.63) with { CheckId = "breaking-capacity" }, carried = Finding(0.9) with { SubjectId = "chest" };
        Finding nothing = Finding(0) with { CheckId = "conductor-protection", Verdict = Verdict.Fails, UseFraction = null };
        ReviewResult review = new() { AsBuilt = Fused, AsAltered = Fused, Findings = FindingPairs.Of([], [breaking, carried, nothing]) };
        IReadOnlyList<Vital> vitals = VitalsView.Of(review, DisplayUnits.Metric, Culture);

        Assert.Equal(("Greatest use of a limit", "563\u00A0%", Verdict.Fails, "1 more fails, without a use"), (vitals[1].Name, vitals[1].Value, vitals[1].Verdict, vitals[1].Limit));
        Assert.Equal(("Findings", "2 fail", Verdict.Fails), (vitals[0].Name, vitals[0].Value, vitals[0].Verdict));
    }

    [Fact]
    public void Vitals_ConverterAtItsLimit_IsTheGreatestUse()
    {
        Finding converter = Finding(0.99) with { CheckId = "converter-carries-load" };
        ReviewResult review = new() { AsBuilt = Fused, AsAltered = Fused, Findings = FindingPairs.Of([converter, Finding(0.9) with { SubjectId = "chest" }], [converter, Finding(0.9) with { SubjectId = "chest" }]) };

        Assert.Equal(("99\u00A0%", "fuse"), (VitalsView.Of(review, DisplayUnits.Metric, Culture)[1].Value, VitalsView.Of(review, DisplayUnits.Metric, Culture)[1].ThingId));
    }

    // A rated voltage may stand at its limit and holds; its use would read as nearly full.
    [Theory]
    [InlineData(0.96, Verdict.Holds, "")]
    [InlineData(0.54, Verdict.Holds, "54\u00A0%")]
    [InlineData(0.96, Verdict.Tight, "96\u00A0%")]
    [InlineData(0.96, Verdict.Unknown, "96\u00A0%")]
    public void Row_UseThatDoesNotGiveTheVerdict_IsNotShown(double use, Verdict verdict, string shown) =>
        Assert.Equal(shown, View(Review(Fused, Finding(use) with { Verdict = verdict }, Finding(use) with { Verdict = verdict })).Groups[0].Rows[0].Use);

    [Fact]
    public void Entries_UnknownForTheSameInput_StandTogether()
    {
        FindingInput length = new("fuse", "ratedA", IsMissing: true), mass = new("chest", "massKg", IsMissing: true);
        Finding Waits(string subject, params FindingInput[] missing) => Finding(0) with { SubjectId = subject, Verdict = Verdict.Unknown, UseFraction = null, Inputs = [.. missing] };
        Finding[] findings = [Finding(1.2), Waits("a", length), Waits("b", mass, length), Waits("c", mass)];
        FindingsView view = View(new ReviewResult { AsBuilt = Fused, AsAltered = Fused, Findings = FindingPairs.Of(findings, findings) });
        IReadOnlyList<FindingsEntry> entries = view.Groups.Single().Entries;

        Assert.Equal(["", "Rated current of “Winch fuse” is missing: 2 checks wait for it", ""], entries.Select(entry => entry.Title));
        Assert.Equal([["fuse"], ["a", "b"], ["c"]], entries.Select(entry => entry.Rows.Select(row => row.ThingId).ToArray()));
    }

    [Fact]
    public void Untold_NamesEachInputOnce_WhatSettlesMostByItselfFirst()
    {
        FindingInput rated = new("fuse", "ratedA", IsMissing: true), mass = new("chest", "massKg", IsMissing: true), practice = new("practice", "least-gm", IsMissing: true);
        Finding Waits(string subject, string? condition, params FindingInput[] missing) =>
            Finding(0) with { SubjectId = subject, ConditionId = condition, Verdict = Verdict.Unknown, UseFraction = null, Inputs = [.. missing, new FindingInput("fuse", "name")] };
        Finding[] findings = [Waits("a", "one", mass, rated), Waits("a", "two", rated), Waits("b", null, mass, rated), Waits("c", null, rated), Waits("d", null, practice), Waits("e", null, practice), Finding(1.2) with { Inputs = [mass] }];
        IReadOnlyList<UntoldInput> untold = View(new ReviewResult { AsBuilt = Fused, AsAltered = Fused, Findings = FindingPairs.Of(findings, findings) }).Untold;

        Assert.Equal(
            [("Practice: type in the least-gm", false, "2 checks wait for it alone"), ("Winch fuse: type in the rated current", true, "1 check waits for it alone, 3 in all"), ("chest: type in the mass", true, "2 checks wait for it and for more")],
            untold.Select(one => (one.Text, one.IsThere, one.Waiting)));
    }

    [Fact]
    public void Untold_OfWhatIsGone_IsNotAskedFor()
    {
        Finding waits = Finding(0) with { Verdict = Verdict.Unknown, UseFraction = null, Inputs = [new FindingInput("fuse", "ratedA", IsMissing: true)] };

        Assert.Empty(View(Review(Fused, waits)).Untold);
        Assert.Single(View(Review(Fused, waits, waits)).Untold);
    }

    [Theory]
    [InlineData("battery", "isMinusBonded", "Say whether its minus post is bonded to the hull, the engine block or an earth plate")]
    [InlineData("protection", "ratedA", "Type in the rated current")]
    [InlineData("battery", "chemistry", "Choose the chemistry")]
    [InlineData("battery", "openCircuit", "Give the open-circuit curve")]
    public void Ask_IsASentence(string kind, string field, string ask)
    {
        FieldSchema schema = ThingSchema.Of(kind).Field(field)!;
        Assert.Equal(ask, FieldAsk.Of(FieldLabels.Of(schema), schema));
    }

    [Fact]
    public void Ask_EveryYesOrNo_SaysWhat()
    {
        FieldSchema[] flags = [.. ThingKinds.ByName.Keys.SelectMany(kind => ThingSchema.Of(kind).Fields).SelectMany(field => field.Record is { } record ? record.Fields.Prepend(field) : [field]).Where(field => field.Type == FieldType.Flag)];

        Assert.NotEmpty(flags);
        Assert.All(flags, flag => Assert.StartsWith("Say whether ", FieldAsk.Of(FieldLabels.Of(flag), flag), StringComparison.Ordinal));
    }

    [Fact]
    public void Caution_WithFindingsOnStability_NamesTheSurveyAndTheNavalArchitect()
    {
        FindingsView electric = View(Review(Fused, null, Finding(1.2))), both = View(Review(Fused, null, Finding(1.2) with { CheckId = "list" }));

        Assert.Contains("licensed electrician", electric.Caution, StringComparison.Ordinal);
        Assert.DoesNotContain("naval architect", electric.Caution, StringComparison.Ordinal);
        Assert.Contains("licensed electrician", both.Caution, StringComparison.Ordinal);
        Assert.Contains("licensed naval architect", both.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void About_PairOfThings_IsListedUnderBoth()
    {
        FindingsView view = View(Review(Fused, null, Finding(1.2) with { OtherSubjectId = "chest" }));

        Assert.Single(view.About("fuse"));
        Assert.Single(view.About("chest"));
        Assert.Empty(view.About("winch"));
    }

    [Fact]
    public void Working_ConditionsWithoutCurrent_AreNamedWithoutAUse()
    {
        Finding[] findings = [Finding(0.5) with { ConditionId = "lifting" }, Finding(0.2) with { ConditionId = "at-berth" }, Finding(0) with { ConditionId = "at-anchor" }];
        FindingsView view = View(new ReviewResult { AsBuilt = Fused, AsAltered = Fused, Findings = FindingPairs.Of(findings, findings) });
        FindingWorking working = FindingWorking.Of(view.Groups[0].Rows[0], view);

        Assert.Equal(["at-berth"], working.OtherConditions.Select(other => other.Condition));
        Assert.Equal(["at-anchor"], working.IdleConditions);
    }

    [Fact]
    public void EditView_ChangedThing_ListsOnlyTheFieldsThatDiffer()
    {
        Gear was = new() { Id = "chest", Name = "Chest", MassKg = 40 };
        EditView view = EditView.Of(BoatEdits.Replace(was, was with { MassKg = 55 }), DisplayUnits.Metric, Culture);

        Assert.Equal("changed", view.What);
        Assert.Equal(new FieldDifference("Mass", "40\u00A0kg", "55\u00A0kg"), Assert.Single(view.Fields));
    }

    [Fact]
    public void NextStep_NewBoat_AsksForOneThingAtATime()
    {
        BoatModel boat = new NewBoat("Wren").Make();

        Assert.Equal("lengthOverAllM", NextStep.For(boat)!.Field);
        Assert.Equal("beamM", NextStep.For(new NewBoat("Wren", 5.5).Make())!.Field);
        Assert.StartsWith("Make her hull lines", NextStep.For(new NewBoat("Wren", 5.5, 2.1, DraughtM: 0.4).Make())!.Text, StringComparison.Ordinal);
        Assert.Contains("battery", NextStep.ForElectrics(new NewBoat("Wren", 5.5, 2.1, DraughtM: 0.4).Make())!.Text, StringComparison.Ordinal);
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
