using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class AlterationWordsTests
{
    [Theory]
    [InlineData(AlterationStatus.Draft, 0, "drafted")]
    [InlineData(AlterationStatus.Accepted, 0, "accepted")]
    [InlineData(AlterationStatus.UnderWay, 8, "8 of 12 edits built")]
    [InlineData(AlterationStatus.UnderWay, 12, "built")]
    [InlineData(AlterationStatus.Built, 12, "built")]
    public void State_SaysWhatIsBuilt(AlterationStatus status, int built, string state) => Assert.Equal(state, AlterationWords.State(new Alteration
    {
        Id = "work",
        Status = status,
        Edits = [.. Enumerable.Range(0, 12).Select(at => BoatEdits.Add(new Gear { Id = $"gear-{at}" }) with { BuiltOn = at < built ? new DateOnly(2026, 11, 1) : null })],
    }));
}
