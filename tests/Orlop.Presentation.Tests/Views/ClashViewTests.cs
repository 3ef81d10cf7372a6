using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>What a clash shows: what the draft saw, what is there now and what the draft wants.</summary>
public sealed class ClashViewTests
{
    private static readonly Gear Chest = new() { Id = "chest", Name = "Chest", MassKg = 40 };

    [Fact]
    public void Fields_BoatHasMovedOn_ShowAllThreeForEachFieldThatDiffers()
    {
        ClashField field = Assert.Single(Fields(new Clash("chest", Chest, Chest with { MassKg = 50 }, Chest with { MassKg = 45 })));

        Assert.Contains("40", field.Drafted, StringComparison.Ordinal);
        Assert.Contains("50", field.Now, StringComparison.Ordinal);
        Assert.Contains("45", field.Wanted, StringComparison.Ordinal);
    }

    [Fact]
    public void Fields_OnlyTheDraftChangesOne_ShowItToo() =>
        Assert.Equal(2, Fields(new Clash("chest", Chest, Chest with { MassKg = 50 }, Chest with { Note = "below" })).Count);

    [Fact]
    public void Fields_DraftAddsWhatIsThereByNow_SayThatItWasNotThere()
    {
        Clash clash = new("chest", null, Chest, Chest with { MassKg = 45 });

        Assert.All(Fields(clash), field => Assert.Equal("not there", field.Drafted));
        Assert.Contains(Fields(clash), field => field.Now.Contains("40", StringComparison.Ordinal) && field.Wanted.Contains("45", StringComparison.Ordinal));
        Assert.Contains("was not in the boat", ClashView.What(clash), StringComparison.Ordinal);
    }

    [Fact]
    public void Fields_ThingIsGone_SayThatNothingIsThereNow()
    {
        Clash clash = new("chest", Chest, null, Chest with { MassKg = 45 });

        Assert.All(Fields(clash), field => Assert.Equal("not there", field.Now));
        Assert.Contains("is gone", ClashView.What(clash), StringComparison.Ordinal);
    }

    private static IReadOnlyList<ClashField> Fields(Clash clash) => ClashView.Fields(clash, DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), new BoatModel { Things = [Chest] });
}
