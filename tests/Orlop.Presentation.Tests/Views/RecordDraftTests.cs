using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class RecordDraftTests
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");

    [Fact]
    public void Battery_IsAskedForItsCapacityAndResistance_WhichMayStayEmpty()
    {
        RecordDraft draft = Battery();
        Assert.Equal(["id", "chemistry", "nominalV", "capacityAh", "internalResistanceOhm", "isMinusBonded"], draft.Fields.Select(field => field.Name));
        BatteryBank bank = Assert.IsType<BatteryBank>(draft.Make(DisplayUnits.Metric, Culture));
        Assert.Null(bank.CapacityAh);
        Assert.Null(bank.InternalResistanceOhm);
        Assert.Null(bank.IsMinusBonded);

        draft[Field(draft, "internalResistanceOhm")] = "4 mΩ";
        Assert.Equal(0.004, Assert.IsType<BatteryBank>(draft.Make(DisplayUnits.Metric, Culture)).InternalResistanceOhm!.Value, 1e-12);
    }

    /// <summary>Ohm's law by hand: 0.12 V over 30 A.</summary>
    [Fact]
    public void Guide_ToTheResistance_ReckonsRight_AndComesWithItsCaution()
    {
        FieldSchema field = Field(Battery(), "internalResistanceOhm");
        Assert.Contains("0.12 V lost at 30 A is 4 mΩ", FieldGuide.How(field), StringComparison.Ordinal);
        Assert.Equal(4, 1000 * 0.12 / 30, 1e-12);
        Assert.Contains("goggles", FieldGuide.Caution(field), StringComparison.Ordinal);
        Assert.DoesNotContain("safe", FieldGuide.Caution(field)!, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("", "", false)]
    [InlineData("conduit", "cabin", false)]
    [InlineData("", "cabin", true)]
    [InlineData("conduit", "", true)]
    public void StretchOfARun_NeedsItsWayOrItsSpace(string way, string space, bool isMade)
    {
        RecordDraft draft = new(RecordSchema.Of(typeof(RunLeg)));
        Assert.Equal(["way", "space", "lengthM"], draft.Fields.Select(field => field.Name));
        draft[Field(draft, "lengthM")] = "2 m";
        draft[Field(draft, "way")] = way;
        draft[Field(draft, "space")] = space;
        Assert.Equal(isMade, draft.Make(DisplayUnits.Metric, Culture) is RunLeg);
        Assert.Equal(isMade, draft.Refusal(Field(draft, "space")) is null);
    }

    private static RecordDraft Battery()
    {
        RecordDraft draft = new(ThingSchema.Of("battery"));
        draft[Field(draft, "id")] = "bank";
        draft[Field(draft, "nominalV")] = "12 V";
        return draft;
    }

    private static FieldSchema Field(RecordDraft draft, string name) => draft.Fields.Single(field => field.Name == name);
}
