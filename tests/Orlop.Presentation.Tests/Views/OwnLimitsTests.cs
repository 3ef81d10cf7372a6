using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>A limit of the owner's is chosen by its title and typed in its own unit.</summary>
public sealed class OwnLimitsTests
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en");
    private static readonly RecordSchema Schema = RecordSchema.Of(typeof(OwnLimit));

    [Fact]
    public void EveryLimit_HasATitleAndAUnitThatIsKnown() => Assert.All(LimitWords.Choosable, id =>
    {
        Assert.NotEqual(id, LimitWords.Of(id));
        Assert.True(id == LimitIds.DeviceUsesDeratedAmpacityFlag || OwnLimits.In(Schema.Field("value")!, id).Unit is not null, id);
    });

    // 1 ft is 0.3048 m exactly (NIST SP 811, appendix B); 5 % is 0.05.
    [Theory]
    [InlineData("most-lifting-heel-deg", "5°", 5)]
    [InlineData("least-gm-m", "1 ft", 0.3048)]
    [InlineData("general-drop-fraction", "5 %", 0.05)]
    [InlineData("longest-roll-period-s", "6 s", 6)]
    public void Value_IsReadInTheUnitOfItsLimit(string limit, string typed, double value) => Assert.Equal(value, Assert.IsType<OwnLimit>(Draft(limit, typed).Make(DisplayUnits.Metric, Culture)).Value, 1e-9);

    [Fact]
    public void Value_InAnotherUnit_IsRefusedInThatOfTheLimit()
    {
        RecordDraft draft = Draft("most-lifting-heel-deg", "5 kg");

        Assert.Null(draft.Make(DisplayUnits.Metric, Culture));
        Assert.Contains("12°", draft.Refusal(Schema.Field("value")!), StringComparison.Ordinal);
        Assert.DoesNotContain("coefficient", draft.Refusal(Schema.Field("value")!), StringComparison.Ordinal);
    }

    [Fact]
    public void Value_WithoutALimit_AsksForTheLimitFirst()
    {
        RecordDraft draft = Draft("", "5°");

        Assert.Null(draft.Make(DisplayUnits.Metric, Culture));
        Assert.StartsWith("Choose the limit first", draft.Refusal(Schema.Field("value")!), StringComparison.Ordinal);
    }

    [Fact]
    public void Asked_IsTheLimitThatIsNotSet()
    {
        PracticeChoice none = new() { Id = "practice", Basis = "owner" }, set = none with { Own = [new OwnLimit("most-lifting-heel-deg", 5, "mine")] };

        Assert.Equal("most-lifting-heel-deg", OwnLimits.Asked(none, "own/most-lifting-heel-deg"));
        Assert.Null(OwnLimits.Asked(none, "own/no-such-limit"));
        Assert.Null(OwnLimits.Asked(set, "own/most-lifting-heel-deg"));
        Assert.Equal("own/most-lifting-heel-deg", FieldPath.In(none, "own/most-lifting-heel-deg").Path);
        Assert.Equal("own-0", FieldPath.In(set, "own/most-lifting-heel-deg").Box);
    }

    private static RecordDraft Draft(string limit, string value) => new(Schema)
    {
        [Schema.Field("limit")!] = limit,
        [Schema.Field("value")!] = value,
        [Schema.Field("reason")!] = "mine",
    };
}
