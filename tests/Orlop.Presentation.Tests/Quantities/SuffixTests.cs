using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Presentation.Tests.Quantities;

/// <summary>Every number of the model is read and shown in the unit of its name: an I²t is no time.</summary>
public sealed class SuffixTests
{
    // The height that the trade calls KG, in metres: not a moment of a mass.
    private const string HeightOfGravity = "kgM";

    public static TheoryData<string> Names => [.. ThingKinds.ByName.Values.SelectMany(kind => ThingSchema.Of(kind).Fields).SelectMany(Numbers).Distinct()];

    [Theory]
    [MemberData(nameof(Names))]
    public void NumberOfTheModel_HasTheLongestUnitThatItsNameEndsIn(string name)
    {
        string property = char.ToUpperInvariant(name[0]) + name[1..];
        string? longest = Units.BySuffix.Keys.Append("Year").Where(suffix => property.Length > suffix.Length && property.EndsWith(suffix, StringComparison.Ordinal)).MaxBy(suffix => suffix.Length);
        Assert.Equal(longest, UnitSuffix.Of(property)?.Suffix);
    }

    [Fact]
    public void EveryQuantityOfTheModel_HasAUnit() =>
        Assert.Empty(typeof(Thing).Assembly.GetExportedTypes().SelectMany(type => type.GetProperties()).Where(property => property.PropertyType == typeof(Quantity) && UnitSuffix.Of(property.Name) is null).Select(property => property.Name));

    [Fact]
    public void LetThrough_IsTypedInItsOwnUnit()
    {
        Assert.Equal(76_000, QuantityText.Parse("76000 A²s", "A2S", DisplayUnits.Metric, System.Globalization.CultureInfo.InvariantCulture).Quantity!.Value);
        Assert.Null(QuantityText.Parse("21 h", "A2S", DisplayUnits.Metric, System.Globalization.CultureInfo.InvariantCulture).Quantity);
        Assert.Equal("A2S", UnitSuffix.Of("MeltingA2S")!.Suffix);
    }

    private static IEnumerable<string> Numbers(FieldSchema field) =>
        field.Unit is not null ? field.Name == HeightOfGravity ? [] : [field.Name] : field.Record is { } record ? record.Fields.SelectMany(Numbers) : [];
}
