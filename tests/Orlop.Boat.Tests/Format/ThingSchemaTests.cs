using Orlop.Boat.Format;
using Orlop.Boat.Tests.Boats;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Format;

public sealed class ThingSchemaTests
{
    [Fact]
    public void Of_Cable_DescribesItsFields()
    {
        RecordSchema cable = ThingSchema.Of("cable");
        FieldSchema area = cable.Field("areaMm2")!, strands = cable.Field("strands")!, cores = cable.Field("cores")!;

        Assert.Equal(["id", "name", "areaMm2"], cable.Fields.Take(3).Select(field => field.Name));
        Assert.Equal("note", cable.Fields[^1].Name);
        Assert.Equal(("Area", "mm2", FieldType.Quantity, true), (area.Label, area.Unit!.Text, area.Type, area.IsRequired));
        Assert.Equal("0.2 to 500 mm2", area.AllowedText);
        Assert.Equal(["stranded2", "flexible5", "stranded-tinned2", "flexible-tinned5"], strands.Choices);
        Assert.False(strands.IsRequired);
        Assert.Equal((FieldType.List, FieldType.Record), (cores.Type, cores.ItemType));
        Assert.Equal(["id", "from", "to", "lengthM", "fromEnd", "toEnd"], cores.Record!.Fields.Select(field => field.Name));
    }

    [Theory]
    [InlineData("battery", "internalResistanceOhm", "Internal resistance")]
    [InlineData("load", "isAc", "AC")]
    [InlineData("load", "powerFactor", "Power factor")]
    [InlineData("particulars", "builtYear", "Built year")]
    [InlineData("particulars", "waterDensityKgPerM3", "Water density")]
    [InlineData("condition", "engineRuns", "Engine runs")]
    public void Label_IsPlainWordsWithoutUnit(string kind, string field, string label) => Assert.Equal(label, ThingSchema.Of(kind).Field(field)!.Label);

    [Fact]
    public void With_EveryFieldOfEveryKind_ChangesThatFieldOnly()
    {
        BoatModel boat = RandomBoat.Of(1), other = RandomBoat.Of(2);
        foreach (string kind in ThingKinds.ByName.Keys)
        {
            RecordSchema schema = ThingSchema.Of(kind);
            Thing thing = boat.Things.First(candidate => candidate.GetType() == schema.Type);
            Thing source = other.Things.First(candidate => candidate.GetType() == schema.Type);
            foreach (FieldSchema field in schema.Fields)
            {
                Thing changed = ThingSchema.With(thing, field, field.Get(source));
                Assert.Equal(field.Get(source), field.Get(changed));
                Assert.All(schema.Fields.Where(same => same != field), same => Assert.Equal(same.Get(thing), same.Get(changed)));
            }
        }
    }

    [Fact]
    public void With_Null_EmptiesAnOptionalField()
    {
        Gear box = new() { Id = "box", MassKg = 3 };

        Assert.Equal(new Gear { Id = "box" }, ThingSchema.With(box, ThingSchema.Of(typeof(Gear)).Field("massKg")!, null));
    }

    [Fact]
    public void Fields_EveryNumberOfEveryKind_HasAUnitOfTheClosedList()
    {
        IEnumerable<FieldSchema> fields = ThingKinds.ByName.Values.SelectMany(type => RecordSchema.Of(type).Fields).SelectMany(field => field.Record?.Type == typeof(Quantity) ? [field] : field.Record?.Fields ?? [field]);

        // The owner's own limit is in the unit of the limit that it replaces.
        Assert.Equal(["value"], fields.Where(field => (field.ItemType ?? field.Type) is FieldType.Quantity or FieldType.Number or FieldType.Count && field.Unit is null).Select(field => field.Name).Distinct());
    }
}
