using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Isolation;
using Xunit;

namespace Orlop.Review.Tests.Isolation;

/// <summary>Capacitors keep their charge on whatever they stay joined to (a capacitor does; common practice, no source, for which things have large ones).</summary>
public sealed class StoredChargeTests
{
    private static readonly BoatModel Boat = SmallBoat.OneLamp().With(
        new Busbar { Id = "plus" },
        new Inverter { Id = "inverter", RatedW = 1000, OutputV = 230 },
        new Protection { Id = "inverter-fuse", Means = ProtectionMeans.Fuse, RatedA = 150 },
        Strap("a", "fuse.out", "plus.bar"), Strap("b", "plus.bar", "inverter-fuse.in"), Strap("c", "inverter-fuse.out", "inverter.in+"), Strap("d", "inverter.in-", "minus.bar"));

    [Fact]
    public void InverterThroughAClosedFuse_ChargesTheBar() => Assert.Equal(["inverter"], At("plus.bar"));

    [Fact]
    public void FuseOut_LeavesTheBarWithout() => Assert.Empty(At("plus.bar", "inverter-fuse"));

    [Fact]
    public void FuseOut_TheInverterItselfStillHoldsIt() => Assert.Equal(["inverter"], At("inverter.in+", "inverter-fuse"));

    [Fact]
    public void MinusBar_JoinsNothing() => Assert.Empty(At("minus.bar"));

    private static IEnumerable<string> At(string node, params string[] opened) =>
        StoredCharge.At(Boat, Wiring.Of(Boat), [node], opened.ToHashSet()).Select(part => part.Id);

    private static Link Strap(string id, string from, string to) => new() { Id = id, From = Terminal.Parse(from), To = Terminal.Parse(to) };
}
