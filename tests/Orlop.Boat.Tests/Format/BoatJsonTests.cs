using System.Text;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Tests.Boats;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Format;

public sealed class BoatJsonTests
{
    [Fact]
    public void Read_CanonicalText_WritesBackTheSameText() => Assert.Equal(SmallBoat.Text, BoatJson.Write(SmallBoat.Model));

    [Fact]
    public void Read_KindNotFirst_IsRead()
    {
        BoatReadResult result = BoatJson.Read("""{"things":[{"id":"deck","name":"Deck gear","kind":"gear","massKg":{"unit":"kg","value":12}}],"formatVersion":1}""");

        Assert.Equal([new Gear { Id = "deck", Name = "Deck gear", MassKg = 12 }], result.Boat!.Things);
    }

    [Fact]
    public void Read_FieldsLeftOut_KeepTheirDefaults()
    {
        BoatReadResult result = BoatJson.Read("""{"formatVersion":1,"things":[{"kind":"switch","id":"main"}]}""");

        Assert.Equal(new IsolatorSwitch { Id = "main" }, Assert.Single(result.Boat!.Things));
        Assert.True(result.Boat.Find<IsolatorSwitch>("main")!.IsIsolator);
    }

    [Fact]
    public void Read_StreamWithByteOrderMark_IsRead()
    {
        using MemoryStream stream = new([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(SmallBoat.Text)]);

        Assert.Equal(SmallBoat.Model, BoatJson.Read(stream).Boat);
    }

    [Fact]
    public void Write_Stream_IsTheSameAsText()
    {
        using MemoryStream stream = new();
        BoatJson.Write(SmallBoat.Model, stream);

        Assert.Equal(SmallBoat.Text, Encoding.UTF8.GetString(stream.ToArray()));
    }

    [Fact]
    public void Write_ExactQuantity_IsAPlainNumber()
    {
        string text = BoatJson.Write(new BoatModel { Things = [new Gear { Id = "box", MassKg = 0.1 + 0.2 }] });

        Assert.Contains("\"massKg\": 0.30000000000000004\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(64, true)]
    [InlineData(65, false)]
    public void Read_LongId_IsAllowedUpToItsLimit(int letters, bool isGood)
    {
        Gear box = new() { Id = new string('b', letters) };
        Gear lid = new() { Id = new string('b', letters - 1) + "-" };
        Alteration lighter = new() { Id = "lighter", Edits = [BoatEdits.Replace(box, box with { MassKg = 1 })] };

        Assert.Equal(isGood, BoatJson.Read(BoatJson.Write(new BoatModel { Things = [box, lid, lighter] })).IsGood);
    }

    [Fact]
    public void Write_EmptyBoat_IsShort() => Assert.Equal("{\n  \"formatVersion\": 1,\n  \"things\": []\n}\n", BoatJson.Write(new BoatModel()));

    [Theory]
    [InlineData(0.2)]
    [InlineData(500)]
    public void Read_EndOfRange_IsAllowed(double areaMm2) =>
        Assert.True(BoatJson.Read(SmallBoat.With("\"areaMm2\": 4,", FormattableString.Invariant($"\"areaMm2\": {areaMm2},"))).IsGood);

    [Theory]
    [InlineData("", Knowledge.Exact)]
    [InlineData(",\"known\":\"guessed\"", Knowledge.Guessed)]
    public void Read_QuantityAsAnObject_IsExactUnlessItSaysOtherwise(string known, Knowledge expected)
    {
        BoatReadResult result = BoatJson.Read(SmallBoat.With("\"massKg\": 31", $$"""  "massKg": {"value":31{{known}}}"""));

        Assert.Equal(new Quantity(31, expected), result.Boat!.Find<BatteryBank>("bank")!.MassKg);
    }
}
