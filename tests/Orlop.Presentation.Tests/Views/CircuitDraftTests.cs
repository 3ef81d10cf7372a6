using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class CircuitDraftTests
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");

    private static readonly BoatModel Boat = new()
    {
        Things =
        [
            new BatteryBank { Id = "bank", Name = "House bank", Chemistry = BatteryChemistry.Gel, NominalV = 12 },
            new Busbar { Id = "main" }, new Busbar { Id = "panel" }, new Busbar { Id = "minus" },
            new Link { Id = "strap", From = new Terminal("bank", "+"), To = new Terminal("main", "bar") },
            new Protection { Id = "fuse", Means = ProtectionMeans.Fuse, RatedA = 30 },
            new Link { Id = "to-fuse", From = new Terminal("main", "bar"), To = new Terminal("fuse", "in") },
            new Link { Id = "to-panel", From = new Terminal("fuse", "out"), To = new Terminal("panel", "bar") },
            new Link { Id = "minus-strap", From = new Terminal("bank", "-"), To = new Terminal("minus", "bar") },
        ],
    };

    [Theory]
    [InlineData("panel.bar", "minus.bar", null, null)]
    [InlineData("panel.bar", "main.bar", null, "joined to the plus of House bank")]
    [InlineData("minus.bar", "main.bar", "joined to the minus of House bank", "joined to the plus of House bank")]
    [InlineData("minus.bar", "bank.-", "joined to the minus of House bank", null)]
    public void Plan_BarsOfTheWrongPole_AreRefusedByNameOfTheBattery(string from, string back, string? whyFrom, string? whyBack)
    {
        CircuitDraft draft = Draft(from, back);
        Assert.Equal(whyFrom is null && whyBack is null, draft.Plan(Boat, DisplayUnits.Metric, Culture) is not null);
        Assert.Contains(whyFrom ?? "", draft.Refusal(nameof(CircuitDraft.From)) ?? "", StringComparison.Ordinal);
        Assert.Contains(whyBack ?? "", draft.Refusal(nameof(CircuitDraft.Return)) ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void Refusal_OnceSomethingElseIsChosen_IsGone()
    {
        CircuitDraft draft = Draft("", "minus.bar");
        Assert.Null(draft.Plan(Boat, DisplayUnits.Metric, Culture));
        Assert.Equal("Choose where.", draft.Refusal(nameof(CircuitDraft.From)));
        draft.From = "panel.bar";
        Assert.Null(draft.Refusal(nameof(CircuitDraft.From)));
        draft.From = "";
        Assert.Equal("Choose where.", draft.Refusal(nameof(CircuitDraft.From)));
    }

    [Fact]
    public void Plan_FromPlusBackToMinus_IsMade()
    {
        CircuitDraft draft = Draft("bank.+", "bank.-");

        Assert.NotNull(draft.Plan(Boat, DisplayUnits.Metric, Culture));
        Assert.Equal(0, draft.RefusalCount);
    }

    [Theory]
    [InlineData("bank.+", "", true, null)]
    [InlineData("bank.+", "0", false, null)]
    [InlineData("bank.+", "1.2 m", true, 1.2)]
    [InlineData("panel.bar", "", false, null)]
    [InlineData("panel.bar", "40 cm", true, 0.4)]
    public void Plan_WireToTheDevice_IsUnknownFromAPost_AndNoneOnABar_UnlessTyped(string from, string typed, bool hasWire, double? lengthM)
    {
        CircuitDraft draft = Draft(from, "minus.bar");
        draft.Feed = typed;
        var plan = draft.Plan(Boat, DisplayUnits.Metric, Culture)!;

        Assert.Equal(hasWire, plan.HasFeedWire);
        Assert.Equal(lengthM, plan.FeedM?.Value);
    }

    [Fact]
    public void Plan_FromMinusBackToPlus_IsRefusedAtBothEnds()
    {
        CircuitDraft draft = Draft("bank.-", "bank.+");

        Assert.Null(draft.Plan(Boat, DisplayUnits.Metric, Culture));
        Assert.Contains("wrong way round", draft.Refusal(nameof(CircuitDraft.From)), StringComparison.Ordinal);
        Assert.Contains("joined to the plus of House bank", draft.Refusal(nameof(CircuitDraft.Return)), StringComparison.Ordinal);
        Assert.Equal(2, draft.RefusalCount);
    }

    [Theory]
    [InlineData("bank.-", null, "no", false)]
    [InlineData("bank.-", null, "yes", true)]
    [InlineData("bank.-", null, "", null)]
    [InlineData("bank.-", true, "no", null)]
    [InlineData("bank.+", null, "no", null)]
    public void AnsweredBattery_OnlyWhereItsPostIsAskedAboutAndAnswered(string back, bool? told, string answer, bool? becomes)
    {
        BoatModel boat = new() { Things = [new BatteryBank { Id = "bank", Chemistry = BatteryChemistry.Gel, NominalV = 12, IsMinusBonded = told }] };
        CircuitDraft draft = Draft("bank.+", back);
        draft.MinusBonded = answer;
        Assert.Equal(becomes, draft.AnsweredBattery(boat)?.IsMinusBonded);
        Assert.Equal(told is null && back == "bank.-", draft.AskedBattery(boat) is not null);
    }

    [Theory]
    [InlineData(false, false, false)]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    [InlineData(true, true, false)]
    public void Plan_WhereThereAreConditions_AsksForThoseItIsOnIn(bool isOnInOne, bool isOnInNone, bool isMade)
    {
        CircuitDraft draft = Draft("bank.+", "bank.-");
        draft.AsksForConditions = true;
        draft.IsOnInNone = isOnInNone;
        if (isOnInOne)
        {
            draft.OnIn.Add("at-anchor");
        }

        Assert.Equal(isMade, draft.Plan(Boat, DisplayUnits.Metric, Culture) is not null);
        Assert.Equal(isMade, draft.Refusal(nameof(CircuitDraft.OnIn)) is null);
    }

    [Theory]
    [InlineData("", 1.0)]
    [InlineData("20 %", 0.2)]
    [InlineData("120 %", null)]
    [InlineData("-3 %", null)]
    public void Plan_ShareOfTheTime_IsAllUnlessTyped(string duty, double? fraction)
    {
        CircuitDraft draft = Draft("bank.+", "bank.-");
        draft.Duty = duty;
        Assert.Equal(fraction, draft.Plan(Boat, DisplayUnits.Metric, Culture)?.DutyFraction);
        Assert.Equal(fraction is null, draft.Refusal(nameof(CircuitDraft.Duty)) is not null);
    }

    private static CircuitDraft Draft(string from, string back) => new()
    {
        Name = "Lamp",
        Voltage = "12 V",
        Draws = "10 W",
        Rating = "3 A",
        Area = "1.5 mm²",
        From = from,
        Return = back,
    };
}
