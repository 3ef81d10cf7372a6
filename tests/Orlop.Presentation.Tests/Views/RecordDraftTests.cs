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

    [Fact]
    public void Rules_AreTickedInTheWordsOfTheTrade_AndKeptInOrder()
    {
        RecordDraft draft = new(ThingSchema.Of("stability-basis"));
        FieldSchema rules = Field(draft, "rules");
        draft[Field(draft, "id")] = "rules";
        draft.Choose(rules, ["open-boat", "general-intact"]);
        StabilityBasis made = Assert.IsType<StabilityBasis>(draft.Make(DisplayUnits.Metric, Culture));

        Assert.Equal([StabilityRule.GeneralIntact, StabilityRule.OpenBoat], made.Rules);
        Assert.Equal(["general-intact", "open-boat"], ChoiceLists.Ids(rules, made));
        Assert.All(rules.Choices, choice => Assert.Contains("(", FieldWords.OfChoice(choice), StringComparison.Ordinal));
        Assert.DoesNotContain("GeneralIntact", FieldText.Show(rules, made.Rules, DisplayUnits.Metric, Culture), StringComparison.Ordinal);
        Assert.All(ThingSchema.Of("stability-basis").Fields.Where(field => field.Name is not ("id" or "name" or "note" or "rules")), field => Assert.False(string.IsNullOrEmpty(FieldGuide.How(field)), field.Name));
    }

    [Fact]
    public void Choice_StartsUntold_AndIsRefusedUntilItIsMade()
    {
        RecordDraft draft = Battery();
        draft[Field(draft, "chemistry")] = new RecordDraft(ThingSchema.Of("battery"))[Field(draft, "chemistry")];
        Assert.Null(draft.Make(DisplayUnits.Metric, Culture));
        Assert.Contains("cannot be left empty", draft.Refusal(Field(draft, "chemistry")), StringComparison.Ordinal);

        draft[Field(draft, "chemistry")] = "absorbed-glass-mat";
        Assert.Equal(BatteryChemistry.AbsorbedGlassMat, Assert.IsType<BatteryBank>(draft.Make(DisplayUnits.Metric, Culture)).Chemistry);
    }

    [Fact]
    public void Space_IsAskedForItsUseAndTemperature_AndTheTemperatureMayStayUntold()
    {
        RecordDraft draft = new(ThingSchema.Of("space"));
        draft[Field(draft, "id")] = "locker";
        foreach ((string corner, string place) in new[] { ("from", "0 m"), ("to", "1 m") })
        {
            RecordDraft inner = draft.Inner[Field(draft, corner)];
            foreach (FieldSchema axis in inner.Fields)
            {
                inner[axis] = place;
            }
        }

        Assert.Null(draft.Make(DisplayUnits.Metric, Culture));
        draft[Field(draft, "use")] = "dry";
        Assert.Null(Assert.IsType<Space>(draft.Make(DisplayUnits.Metric, Culture)).AmbientC);

        draft[Field(draft, "ambientC")] = "45 °C";
        Assert.Equal(45, Assert.IsType<Space>(draft.Make(DisplayUnits.Metric, Culture)).AmbientC!.Value);
    }

    [Fact]
    public void Particulars_HullMaterial_MayStayUntold()
    {
        RecordDraft draft = new(ThingSchema.Of("particulars"));
        draft[Field(draft, "id")] = "particulars";
        Assert.Null(Assert.IsType<Particulars>(draft.Make(DisplayUnits.Metric, Culture)).Material);
        draft[Field(draft, "material")] = "wood";
        Assert.Equal(HullMaterial.Wood, Assert.IsType<Particulars>(draft.Make(DisplayUnits.Metric, Culture)).Material);
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
        draft[Field(draft, "chemistry")] = "gel";
        return draft;
    }

    private static FieldSchema Field(RecordDraft draft, string name) => draft.Fields.Single(field => field.Name == name);
}
