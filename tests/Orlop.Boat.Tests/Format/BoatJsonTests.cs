using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Format;

public sealed class BoatJsonTests
{
    private const string Canonical = """
        {
          "formatVersion": 1,
          "things": [
            {
              "kind": "battery",
              "id": "bank",
              "name": "House bank",
              "chemistry": "lithium-iron-phosphate",
              "nominalV": 12.8,
              "capacityAh": {"value":280,"known":"measured","plusMinus":4,"on":"2026-03-01","method":"capacity test"},
              "openCircuit": [
                {"chargeFraction":0,"openCircuitV":10},
                {"chargeFraction":1,"openCircuitV":13.6}
              ],
              "place": {"xM":2.5,"yM":-0.4,"zM":0.6}
            },
            {
              "kind": "protection",
              "id": "main-fuse",
              "means": "fuse",
              "ratedA": 200,
              "isTwoPole": false
            },
            {
              "kind": "cable",
              "id": "feed",
              "areaMm2": {"value":33.6,"known":"exact","typed":"2 AWG"},
              "strands": "flexible-tinned5",
              "isSheathed": false,
              "cores": [
                {"id":"plus","from":"bank.+","to":"main-fuse.in","fromEnd":{"means":"ring","studMm":8}}
              ]
            }
          ]
        }

        """;

    [Fact]
    public void Read_CanonicalText_WritesBackTheSameText()
    {
        BoatReadResult result = BoatJson.Read(Canonical);

        Assert.Empty(result.Problems);
        Assert.Equal(Canonical, BoatJson.Write(result.Boat!));
    }

    [Fact]
    public void Read_KindNotFirst_IsRead()
    {
        BoatReadResult result = BoatJson.Read("""{"things":[{"id":"deck","name":"Deck gear","kind":"gear","massKg":{"unit":"kg","value":12}}],"formatVersion":1}""");

        Assert.Equal([new Gear { Id = "deck", Name = "Deck gear", MassKg = 12 }], result.Boat!.Things);
    }

    [Fact]
    public void Write_EditOfAnAlteration_ReadsBackAsTheSameBoat()
    {
        Gear was = new() { Id = "box", MassKg = new Quantity(3, Knowledge.Guessed, 1) };
        BoatModel boat = new() { Things = [was, new Alteration { Id = "lighter", Edits = [new Edit { Id = "box", Was = was, Becomes = was with { MassKg = 2 } }] }] };

        Assert.Equal(boat, BoatJson.Read(BoatJson.Write(boat)).Boat);
    }
}
