using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class FieldTextTests
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData("10 AWG", 5.26)]
    [InlineData("16 mm²", 16)]
    public void Read_AnyUnit_IsKeptAsTyped(string typed, double areaMm2)
    {
        FieldReading read = Read("cable", "areaMm2", typed);
        Quantity area = Assert.IsType<Quantity>(read.Value);

        Assert.Equal(areaMm2, area.Value, 2);
        Assert.Equal(typed, FieldText.Edit(Field("cable", "areaMm2"), area, DisplayUnits.Metric, Culture));
    }

    /// <summary>A field shows the digits that were given, and not those of a result.</summary>
    [Theory]
    [InlineData(12.85, "12.85 V")]
    [InlineData(12.8, "12.8 V")]
    [InlineData(12.3456, "12.3456 V")]
    [InlineData(12.345678912, "12.3 V")]
    public void Edit_Number_HasTheDigitsThatWereGiven(double volts, string text)
    {
        FieldSchema point = Field("battery", "openCircuit").Record!.Field("openCircuitV")!;
        Assert.Equal(text, FieldText.Edit(point, volts, DisplayUnits.Metric, Culture));
        Assert.Equal(text, FieldText.Edit(Field("battery", "nominalV"), new Quantity(volts), DisplayUnits.Metric, Culture));
        Assert.Equal(text.Replace(' ', '\u00A0'), FieldText.Show(point, volts, DisplayUnits.Metric, Culture));
    }

    [Theory]
    [InlineData("cable", "areaMm2", "lots", "lots")]
    [InlineData("cable", "areaMm2", "900 mm2", "Area: '900 mm2' is out of range. Allowed: 0.2\u00A0mm² to 500\u00A0mm².")]
    [InlineData("protection", "ratedA", "9999", "Rated current: '9999' is out of range (taken as 9999 A). Allowed: 0.05\u00A0A to 5000\u00A0A.")]
    [InlineData("particulars", "builtYear", "1492", "Built year: '1492' is out of range. Allowed: 1800 to 2100.")]
    [InlineData("battery", "nominalV", "lots", "Nominal voltage: 'lots' is not understood; this is a voltage: write for example 24 V.")]
    [InlineData("protection", "residualA", "lots", "write for example 300 mA.")]
    [InlineData("protection", "name", " ", "Name: it cannot be left empty. Give a name")]
    [InlineData("alteration", "name", "", "cannot be left empty")]
    [InlineData("particulars", "name", "", "cannot be left empty")]
    [InlineData("reading", "voltageV", "1,234", "may mean 1234 or 1.234")]
    [InlineData("cable", "areaMm2", "", "cannot be left empty")]
    [InlineData("cable", "strands", "woven", "flexible (class 5)")]
    [InlineData("reading", "on", "yesterday", "2026-04-30")]
    [InlineData("particulars", "builtYear", "19x", "whole number")]
    [InlineData("link", "from", "bank", "part.terminal")]
    public void Read_BadText_SaysWhatIsAllowed(string kind, string field, string typed, string said)
    {
        FieldReading read = Read(kind, field, typed);

        Assert.False(read.IsGood);
        Assert.Contains(said, read.Refusal, StringComparison.Ordinal);
    }

    /// <summary>A mark of two meanings is read where the field's range leaves one of them, and how is told.</summary>
    [Theory]
    [InlineData("en", "1,234", 1.234, "Taken as 1.234 m: 1234 m is out of range.")]
    [InlineData("en", "1,234 m", 1.234, "Taken as 1.234 m: 1234 m is out of range.")]
    [InlineData("de-DE", "1.234", 1.234, "Taken as 1,234 m: 1234 m is out of range.")]
    [InlineData("en", "1.234", 1.234, "Taken as 1.234 m.")]
    public void Read_MarkOfTwoMeanings_IsTakenAsTheOneInRange(string culture, string typed, double lengthM, string remark)
    {
        FieldReading read = FieldText.Read(Field("cable", "lengthM"), typed, DisplayUnits.Metric, CultureInfo.GetCultureInfo(culture));

        Assert.Equal((lengthM, remark), (((Quantity)read.Value!).Value, read.Remark));
        Assert.Equal(lengthM, QuantityText.Parse(((Quantity)read.Value).Typed!, "M", DisplayUnits.Metric, CultureInfo.GetCultureInfo(culture)).Quantity!.Value);
    }

    [Fact]
    public void Read_EmptyText_EmptiesAFieldThatMayBe()
    {
        FieldReading read = Read("cable", "lengthM", " ");

        Assert.True(read.IsGood);
        Assert.Null(read.Value);
    }

    [Fact]
    public void Edit_Guess_ReadsBackAsAGuess()
    {
        FieldSchema field = Field("cable", "lengthM");
        string text = FieldText.Edit(field, new Quantity(5.2, Knowledge.Guessed), DisplayUnits.Metric, Culture);

        Assert.Equal(Knowledge.Guessed, Assert.IsType<Quantity>(FieldText.Read(field, text, DisplayUnits.Metric, Culture).Value).Known);
    }

    [Theory]
    [InlineData("protection", "ratedA", "Rated current")]
    [InlineData("battery", "nominalV", "Nominal voltage")]
    [InlineData("reading", "voltageV", "Voltage")]
    [InlineData("cable", "lengthM", "Length")]
    [InlineData("protection", "means", "Fuse or breaker")]
    [InlineData("bare-boat", "lcgM", "Centre of gravity, forward (LCG)")]
    [InlineData("bare-boat", "tcgM", "Centre of gravity, to port (TCG)")]
    [InlineData("bare-boat", "kgM", "Centre of gravity, up (KG)")]
    [InlineData("tank", "liquidKgPerM3", "Liquid's density")]
    public void Label_UnitStandsForANoun_SaysTheNoun(string kind, string field, string label) => Assert.Equal(label, FieldLabels.Of(Field(kind, field)));

    [Fact]
    public void Known_Gates_AreThoseOfTheTableEachInPlainWords()
    {
        FieldSchema gates = Field("protection", "gates");

        Assert.NotEmpty(FieldWords.Known(gates));
        Assert.All(FieldWords.Known(gates), id => Assert.NotEqual(id, FieldWords.OfKnown(gates, id)));
        Assert.Equal("Strip fuse SF51 (ISO 8820-5)", FieldText.Show(gates, "strip-sf51", DisplayUnits.Metric, Culture));
        Assert.Equal("of-my-own", FieldText.Show(gates, "of-my-own", DisplayUnits.Metric, Culture));
        Assert.Empty(FieldWords.Known(Field("protection", "note")));
    }

    [Fact]
    public void Show_PlacesAndReferences_AreInWordsAndNames()
    {
        Space deck = new() { Id = "after-deck", Name = "After deck", Use = SpaceUse.OpenDeck, From = new Place(0, -1, 0), To = new Place(2, 1, 2) };
        BoatModel boat = new() { Things = new Thing[] { deck, new Busbar { Id = "plus-bar", Name = "Plus bar" }, new Protection { Id = "fuse", Name = "Fuse", Means = ProtectionMeans.Fuse, RatedA = 10 } }.ToValueList() };
        string Show(FieldSchema field, object value) => FieldText.Show(field, value, DisplayUnits.Metric, Culture, boat).Replace('\u00A0', ' ');

        Assert.Equal("2.9 m forward of the after perpendicular, 0.95 m to starboard, 1.95 m above the base line", Show(Field("gear", "place"), new Place(2.9, -0.95, 1.95)));
        Assert.Equal("After deck", Show(Field("gear", "space"), "after-deck"));
        Assert.Equal("Fuse, out", Show(Field("link", "from"), new Terminal("fuse", "out")));
        Assert.Equal("Plus bar", Show(Field("link", "from"), new Terminal("plus-bar", "bar")));
        Assert.Equal("gone.bar", Show(Field("link", "from"), new Terminal("gone", "bar")));
    }

    [Fact]
    public void Draft_MissingAndBadFields_RefusesEachAndMakesNothing()
    {
        RecordDraft draft = new(ThingSchema.Of("space"));
        draft[Of(draft, "id")] = "locker";

        Assert.Null(draft.Make(DisplayUnits.Metric, Culture));
        Assert.NotNull(draft.Refusal(Of(draft, "from")));
        Assert.Null(draft.Refusal(Of(draft, "id")));
    }

    [Fact]
    public void Draft_AllGiven_MakesTheThing()
    {
        RecordDraft draft = new(ThingSchema.Of("protection"));
        draft[Of(draft, "id")] = "fuse";
        draft[Of(draft, "means")] = "fuse";
        draft[Of(draft, "ratedA")] = "10 A";

        Protection fuse = Assert.IsType<Protection>(draft.Make(DisplayUnits.Metric, Culture));
        Assert.Equal((ProtectionMeans.Fuse, 10), (fuse.Means, fuse.RatedA.Value));
    }

    private static FieldSchema Of(RecordDraft draft, string name) => draft.Fields.Single(field => field.Name == name);

    private static FieldSchema Field(string kind, string name) => ThingSchema.Of(kind).Field(name)!;

    private static FieldReading Read(string kind, string field, string typed) => FieldText.Read(Field(kind, field), typed, DisplayUnits.Metric, Culture);

    [Fact]
    public void Read_Empty_GivesAnExampleAndTheRange() => Assert.Equal(
        "Nominal voltage: it cannot be left empty. Give e.g. 24\u00A0V; from 1\u00A0V to 1000\u00A0V.",
        FieldText.Read(ThingSchema.Of("battery").Field("nominalV")!, "", DisplayUnits.Metric, CultureInfo.GetCultureInfo("en")).Refusal!.Replace("24 V", "24\u00A0V", StringComparison.Ordinal));

    [Fact]
    public void Estimated_TypedWithAnotherMark_SaysAboutOnce()
    {
        FieldSchema field = ThingSchema.Of("battery").Field("capacityAh")!;
        object value = FieldText.Read(field, "about 12,8 Ah", DisplayUnits.Metric, CultureInfo.GetCultureInfo("en")).Value!;
        Assert.Equal("about 12.8 Ah", FieldText.Edit(field, value, DisplayUnits.Metric, CultureInfo.GetCultureInfo("en")));
    }

    /// <summary>The classes of IEC 60228, tables 2 and 3: 2 stranded, 5 flexible.</summary>
    [Fact]
    public void Strand_IsDescribedBesideItsClass() =>
        Assert.Equal(["stranded (class 2)", "flexible (class 5)", "stranded, tinned (class 2)", "flexible, tinned (class 5)"], ThingSchema.Of("cable").Field("strands")!.Choices.Select(FieldWords.OfChoice));
}
