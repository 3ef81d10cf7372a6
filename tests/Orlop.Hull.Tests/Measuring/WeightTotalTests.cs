using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Measuring;

/// <summary>Weights come and go by moments; what did not change leaves every bit alone.</summary>
public sealed class WeightTotalTests
{
    private static readonly Point3 Sure = new(0, 0, 0);
    private static readonly LedgerItem Boat = new("boat", 8000, 200, new Point3(4.8, 0.01, 0.9), new Point3(0.05, 0.01, 0.08));
    private static readonly LedgerItem Crate = new("crate", 200, 10, new Point3(5.5, 0.5, 1.8), Sure);

    [Fact]
    public void PutAboardAndTakenOff_IsTheSameCentre()
    {
        WeightTotal total = WeightTotal.Of([Boat])!;
        WeightTotal back = total.With([new WeightChange(null, Crate)]).With([new WeightChange(Crate, null)]);
        Assert.Equal(total.MassKg, back.MassKg, 1e-9);
        Assert.Equal(0, (total.Centre - back.Centre).LengthM, 1e-12);
    }

    [Fact]
    public void Unchanged_LeavesEveryBit()
    {
        WeightTotal total = WeightTotal.Of([Boat, Crate])!;
        WeightTotal same = total.With([new WeightChange(Crate, Crate)]);
        Assert.Equal((total.MassKg, total.Centre, total.KgDeviationM), (same.MassKg, same.Centre, same.KgDeviationM));
    }

    // m·d/M: the shift of G by a weight moved aboard (closed form).
    [Fact]
    public void Moved_ShiftsTheCentreByMassTimesWayOverTotal()
    {
        WeightTotal total = WeightTotal.Of([Boat, Crate])!;
        WeightTotal moved = total.With([new WeightChange(Crate, Crate with { Place = Crate.Place + new Point3(0, 0, -1.2) })]);
        Assert.Equal(-1.2 * 200 / 8200, (moved.Centre - total.Centre).ZM, 1e-12);
        Assert.Equal(total.MassKg, moved.MassKg);
    }

    // Independent items: variances add (closed form).
    [Fact]
    public void Added_VariancesAdd()
    {
        WeightTotal total = WeightTotal.Of([Boat])!.With([new WeightChange(null, Crate)]);
        Assert.Equal(Math.Sqrt((200 * 200) + (10 * 10)), total.MassDeviationKg, 1e-9);
    }

    // Two more of one kind: each is wrong by the same ± 10 kg, so what came is ± 20 kg, and of what was there before and stays nothing is added (closed form).
    [Fact]
    public void MoreOfTheSamePieces_AreWrongTogether()
    {
        LedgerItem four = Crate with { MassKg = 800, MassDeviationKg = 40, PieceCount = 4 };
        WeightTotal total = WeightTotal.Of([Boat])!.With([new WeightChange(four with { MassKg = 400, MassDeviationKg = 20, PieceCount = 2 }, four)]);
        Assert.Equal(8400, total.MassKg, 1e-9);
        Assert.Equal(Math.Sqrt((200 * 200) + (20 * 20)), total.MassDeviationKg, 1e-9);
    }

    // The estimate of a list alone is the list.
    [Fact]
    public void OfEstimate_OfAListAlone_IsTheListsOwn()
    {
        WeightTotal direct = WeightTotal.Of([Boat, Crate])!;
        WeightTotal estimated = WeightTotal.Of(WeightEstimate.Combine("boat", [Boat, Crate], []).Estimate!);
        Assert.Equal(direct.MassKg, estimated.MassKg, 1e-6);
        Assert.Equal(direct.KgDeviationM, estimated.KgDeviationM, 1e-9);
        Assert.Equal(direct.MassDeviationKg, estimated.MassDeviationKg, 1e-6);
    }
}
