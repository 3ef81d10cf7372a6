using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.Boat.Tests.Alterations;

public sealed class ClashChoicesTests
{
    private static readonly Gear Chest = new() { Id = "chest", Name = "Chest", MassKg = 40 };
    private static readonly BoatModel AsBuilt = new() { Things = [Chest] };
    private static readonly Alteration Draft = AlteredBoat.WithEdit(AsBuilt, new Alteration { Id = "draft" }, "chest", Chest with { MassKg = 55 });

    [Fact]
    public void KeepEdit_FitsTheBoatAgain_WithWhatWasDrafted()
    {
        BoatModel moved = MovedOn(Chest with { MassKg = 47 });
        EditOutcome outcome = AlteredBoat.Of(moved, ClashChoices.KeepEdit(Draft, ClashIn(moved)));

        Assert.Empty(outcome.Clashes);
        Assert.Equal(55, outcome.Boat.Find<Gear>("chest")!.MassKg!.Value);
    }

    [Fact]
    public void DropEdit_FitsTheBoatAgain_WithWhatIsThere()
    {
        BoatModel moved = MovedOn(Chest with { MassKg = 47 });
        EditOutcome outcome = AlteredBoat.Of(moved, ClashChoices.DropEdit(Draft, ClashIn(moved)));

        Assert.Empty(outcome.Clashes);
        Assert.Equal(47, outcome.Boat.Find<Gear>("chest")!.MassKg!.Value);
    }

    [Fact]
    public void KeepBoth_DifferentFields_KeepsBoth()
    {
        BoatModel moved = MovedOn(Chest with { Name = "Tool chest" });
        EditOutcome outcome = AlteredBoat.Of(moved, ClashChoices.KeepBoth(Draft, ClashIn(moved))!);

        Assert.Empty(outcome.Clashes);
        Assert.Equal(("Tool chest", 55), (outcome.Boat.Find<Gear>("chest")!.Name, outcome.Boat.Find<Gear>("chest")!.MassKg!.Value));
    }

    [Fact]
    public void KeepBoth_SameField_IsNoChoice()
    {
        BoatModel moved = MovedOn(Chest with { MassKg = 47 });

        Assert.Null(ClashChoices.KeepBoth(Draft, ClashIn(moved)));
    }

    [Fact]
    public void KeepEdit_ThingIsGone_AddsItAgain()
    {
        BoatModel moved = new();
        EditOutcome outcome = AlteredBoat.Of(moved, ClashChoices.KeepEdit(Draft, ClashIn(moved)));

        Assert.Empty(outcome.Clashes);
        Assert.NotNull(outcome.Boat.Find("chest"));
        Assert.Null(ClashChoices.KeepBoth(Draft, ClashIn(moved)));
    }

    private static BoatModel MovedOn(Gear chest) => new() { Things = [chest] };

    private static Clash ClashIn(BoatModel asBuilt) => Assert.Single(AlteredBoat.Of(asBuilt, Draft).Clashes);
}
