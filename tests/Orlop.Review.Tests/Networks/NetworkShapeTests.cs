using Orlop.Electrics.Networks;
using Orlop.Review.Networks;
using Xunit;

namespace Orlop.Review.Tests.Networks;

/// <summary>Values do not count in a shape; elements and what they join do.</summary>
public sealed class NetworkShapeTests
{
    private static readonly Network One = new()
    {
        Conductors = [new Conductor("cable", "a", "b", 0.01)],
        Contacts = [new Contact("joint", "b", "c", 0.001)],
        Batteries = [new Battery("bank", "a", "zero", 12.6, 0.01)],
        Loads = [new Load("lamp", "c", "zero", LoadKind.Power, 10)],
    };

    [Fact]
    public void Shape_OtherValues_IsEqual() => Assert.Equal(new NetworkShape(One), new NetworkShape(One with
    {
        Conductors = [One.Conductors[0] with { ResistanceAt20Ohm = 0.02 }],
        Contacts = [One.Contacts[0] with { ResistanceOhm = 0.002 }],
        Batteries = [One.Batteries[0] with { OpenCircuitV = 12 }],
        Loads = [One.Loads[0] with { Amount = 20 }],
    }));

    [Fact]
    public void Shape_OtherElementsOrNodes_IsAnother()
    {
        foreach (Network other in new[]
        {
            One with { Conductors = [One.Conductors[0] with { Id = "other" }] },
            One with { Conductors = [One.Conductors[0] with { B = "c" }] },
            One with { Contacts = [One.Contacts[0] with { ResistanceOhm = 0 }] },
            One with { Batteries = [One.Batteries[0] with { Minus = "c" }] },
            One with { Loads = [One.Loads[0] with { Kind = LoadKind.Current }] },
            One with { Loads = [] },
            One with { BondedNodes = ["c"] },
            One with { Loads = [One.Loads[0] with { Plus = "zero", Minus = "c" }] },
        })
        {
            Assert.NotEqual(new NetworkShape(One), new NetworkShape(other));
        }
    }
}
