using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Xunit;

namespace Orlop.Work.Tests.Bring;

/// <summary>What is too short is not counted; what states no length is to be looked at. The longest run of the pump work is 5 m.</summary>
public sealed class StatedLengthTests
{
    // 33 ft × 0.3048 m (NIST SP 811).
    [Theory]
    [InlineData("Draw wire 10 m", 10.0)]
    [InlineData("Draw wire, 4,5m", 4.5)]
    [InlineData("Draw wire, 33 ft", 10.0584)]
    [InlineData("Draw wire", null)]
    [InlineData("Clips 12 mm", null)]
    [InlineData("Bolts M6 × 30", null)]
    [InlineData("Mat 2 m²", null)]
    [InlineData("Two of 3 m and 4 m", null)]
    public void In_AName_IsItsLength(string title, double? lengthM)
    {
        if (lengthM is { } asked)
        {
            Assert.Equal(asked, StatedLength.In(title)!.Value, 1e-9);
        }
        else
        {
            Assert.Null(StatedLength.In(title));
        }
    }

    [Theory]
    [InlineData("Draw wire 10 m", StockState.InStock, "")]
    [InlineData("Draw wire 4 m", StockState.ToBuy, "Not counted: Draw wire 4 m; it is 4 M long and 5 M are needed.")]
    [InlineData("Draw wire", StockState.Look, "Check its length before it is packed.")]
    public void DrawWire_IsHeldAgainstTheLongestRun(string title, StockState state, string remark)
    {
        BringItem line = Line("tool:pulling", new Tool { Id = "wire", Name = title, Use = ToolUse.Pulling });
        Assert.Equal(state, line.State);
        Assert.Equal(state != StockState.ToBuy, line.Takes.Any(take => take.StockId == "wire"));
        Assert.Equal(remark.Length > 0, line.Remarks.Any(one => one.ToString() == remark));
    }

    // Eight crimps of 0.06 m each, rounded up to 0.1 m: 0.5 m.
    [Theory]
    [InlineData("Heat-shrink 1 m", null, StockState.InStock)]
    [InlineData("Heat-shrink 0.2 m", 1, StockState.Partly)]
    [InlineData("Heat-shrink 0.2 m", 3, StockState.InStock)]
    [InlineData("Heat-shrink, lengths", 3, StockState.Look)]
    public void HeatShrink_IsHeldAgainstAllCrimps(string title, int? pieces, StockState state)
    {
        BringItem line = Line("heat-shrink", new StockItem { Id = "shrink", Name = title, Use = StockUse.Consumable, PieceCount = pieces });
        Assert.Equal((0.5, state), (line.Needed!.Value, line.State));
    }

    private static BringItem Line(string key, Thing more) => Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, more]), Boats.Pump).Bring.Single(item => item.Key == key);
}
