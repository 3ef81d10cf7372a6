using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Floating;

public sealed class RollingRoomTests
{
    // The barge 1.6 m deep of 1.8 m, wall-sided: the deck edge, 1.5 m off the centre line, goes under at tan φ = 0.2/1.5, 7.6°. Twice the roll of 5° would be 10°.
    [Fact]
    public void DeckEdgeNearerThanTwiceTheRoll_IsTold_WithHalfOfItAsTheMost()
    {
        (string words, bool isTight) = Room(Barge.Boat.Change<BareBoat>("bare-boat", bare => bare with { MassKg = new Quantity(48_000, Knowledge.Measured, 10) }));
        Assert.True(isTight);
        Assert.Contains("the deck edge goes under at a heel of 7.6°", words, StringComparison.Ordinal);
        Assert.Contains("the roll asked for is 5°: too near. Roll her no further than 3.8°", words, StringComparison.Ordinal);
    }

    // 0.4 m deep the edge is far; a vent 0.3 m over the water at the side, to port, is under before twice the roll: tan φ = 0.2/1.5.
    [Fact]
    public void OpeningThatIsNotShut_CountsToo_AndTheFirstIsNamed()
    {
        Assert.False(Room(Barge.Boat).IsTight);
        (string words, bool isTight) = Room(Barge.Boat.With(new HullOpening { Id = "vent", Name = "Vent", Use = OpeningUse.Vent, Place = new Place(5, 1.5, 0.6) }));
        Assert.True(isTight);
        Assert.Contains("Vent goes under at a heel of 7.6° to port", words, StringComparison.Ordinal);
    }

    [Fact]
    public void WeightNotGiven_CannotBeTold_AndThatIsNoRoom()
    {
        (string words, bool isTight) = Room(Barge.Boat.Change<BareBoat>("bare-boat", bare => bare with { KgM = null }));
        Assert.True(isTight);
        Assert.Contains("cannot be told", words, StringComparison.Ordinal);
    }

    // What the inclining test asks for is asked for here too, and what one roll is.
    [Fact]
    public void Cautions_AskForLifejacketsAndCompany_AndSayWhatARollIs()
    {
        string all = string.Join(" ", BerthTestGuide.RollingCautions);
        Assert.Contains("Lifejackets on, and nobody works alone", all, StringComparison.Ordinal);
        Assert.Contains("Never bring an opening or the deck edge near the water", all, StringComparison.Ordinal);
        Assert.Contains("to that same side again", all, StringComparison.Ordinal);
        // GM goes with 1/T² (Res. A.749(18) annex 3, 3.4): half the period, four times the GM.
        Assert.Contains("four times too great", all, StringComparison.Ordinal);
    }

    private static (string Words, bool IsTight) Room(BoatModel boat) => RollingRoom.Of(Barge.View(boat), Barge.Facts(boat), DisplayUnits.Metric, CultureInfo.InvariantCulture);
}
