using System.Collections.Immutable;
using Orlop.Electrics.Strings;
using Xunit;

namespace Orlop.Electrics.Tests.Strings;

/// <summary>Strings found from the wiring, as a hand draws them; what is reversed or missing is put there on purpose.</summary>
public sealed class BatteryStringsTests
{
    [Fact]
    public void OneBattery_IsOneStringAlone()
    {
        BatteryString only = Assert.Single(Assert.Single(Find([Battery("a", "p", "n")], [], Load("p", "n"))).Strings);
        Assert.Equal((12, null), (only.NominalV, only.IsProtected));
    }

    [Fact]
    public void TwoInSeries_AreOneStringFromPlusToMinus()
    {
        StringGroup group = Assert.Single(Find([Battery("low", "m2", "n"), Battery("high", "p", "m1")], [Join("m1", "m2")], Load("p", "n", 24)));
        Assert.Equal(["high", "low"], group.Strings[0].Members.Select(member => member.Id));
        Assert.Equal((24, 24), (group.Strings[0].NominalV, group.FedV));
        Assert.DoesNotContain(group.Strings[0].Members, member => member.IsReversed);
    }

    [Fact]
    public void TwoByTwo_AreTwoStringsOfTwo()
    {
        StringGroup group = Assert.Single(TwoByTwo());
        Assert.Equal([("a1", "a2"), ("b1", "b2")], group.Strings.Select(each => (each.Members[0].Id, each.Members[1].Id)));
        Assert.All(group.Strings, each => Assert.Equal(24, each.NominalV));
    }

    // Loads at 12 V between the two: they stay one string.
    [Fact]
    public void LoadTappedBetweenTwo_LeavesOneString() =>
        Assert.Equal(2, Assert.Single(Find([Battery("high", "p", "m"), Battery("low", "m", "n")], [], Load("p", "n", 24), Load("m", "n"))).Strings[0].Members.Length);

    [Fact]
    public void OneTurnedInOneOfTwoStrings_IsFoundAndTakesTwiceItsVoltageOff()
    {
        BatteryString turned = Assert.Single(TwoByTwo(Battery("b1", "mb", "p"))).Strings.Single(each => each.Members.Any(member => member.Id == "b1"));
        Assert.Equal("b1", Assert.Single(turned.Members, member => member.IsReversed).Id);
        Assert.Equal(0, turned.NominalV);
    }

    [Fact]
    public void OneTurnedInTheOnlyString_IsFound()
    {
        BatteryString only = Assert.Single(Find([Battery("high", "p", "m"), Battery("low", "n", "m")], [], Load("p", "n", 24))).Strings[0];
        Assert.Equal(("low", 0.0), (Assert.Single(only.Members, member => member.IsReversed).Id, only.NominalV));
    }

    [Fact]
    public void WholeStringTurned_IsFoundByWhatItFeeds()
    {
        StringGroup group = Assert.Single(Find([Battery("a", "p", "n"), Battery("b", "n", "p")], [], Load("p", "n")));
        Assert.Equal([false, true], group.Strings.Select(each => each.Members[0].IsReversed));
        Assert.Equal([12.0, -12.0], group.Strings.Select(each => each.NominalV));
    }

    [Fact]
    public void StringOneShort_GivesLess()
    {
        StringGroup group = Assert.Single(Find([Battery("a1", "p", "ma"), Battery("a2", "ma", "n"), Battery("b", "p", "n")], [], Load("p", "n", 24)));
        Assert.Equal([24.0, 12.0], group.Strings.Select(each => each.NominalV));
    }

    // House and engine bank share the minus bar and nothing else.
    [Fact]
    public void TwoBanksWithOneMinus_AreTwoGroups() =>
        Assert.Equal(2, Find([Battery("house", "p", "n"), Battery("engine", "q", "n")], [], Load("p", "n"), Load("q", "n")).Length);

    // All loads are behind an open switch: nothing is wired to the plus.
    [Fact]
    public void TwoSideBySideWithNothingAtThePlus_StaySideBySide() =>
        Assert.Equal(2, Assert.Single(Find([Battery("a", "p", "n"), Battery("b", "p", "n")], [], Load("elsewhere", "n"))).Strings.Length);

    // a and b each through a fuse or not, c always through one: a string without is joined to the bar, and to what else is.
    [Theory]
    [InlineData(true, true, true, true)]
    [InlineData(true, false, true, true)]
    [InlineData(false, false, false, false)]
    public void OwnFuseInThePlusLead_Protects(bool isFusedA, bool isFusedB, bool isProtectedA, bool isProtectedB)
    {
        StringGroup group = Assert.Single(Find([Battery("a", "pa", "n"), Battery("b", "pb", "n"), Battery("c", "pc", "n")], [Join("pa", "p", isFusedA), Join("pb", "p", isFusedB), Join("pc", "p", true)], Load("p", "n")));
        Assert.Equal([isProtectedA, isProtectedB, true], group.Strings.Select(each => each.IsProtected!.Value));
    }

    // What is bolted straight to another's post stays joined to it, whatever fuse comes after.
    [Fact]
    public void OneFuseForTwoStrings_ProtectsNeither() => Assert.All(
        Assert.Single(Find([Battery("a", "q", "n"), Battery("b", "q", "n")], [Join("q", "p", true)], Load("p", "n"))).Strings, each => Assert.False(each.IsProtected));

    [Fact]
    public void OrderOfBatteriesAndJoins_ChangesNoString()
    {
        ImmutableArray<StringGroup> groups = Find([Battery("b2", "mb", "n"), Battery("a2", "ma", "n"), Battery("b1", "p", "mb"), Battery("a1", "p", "ma")], [], Load("p", "n", 24));
        Assert.Equal([("a1", "a2"), ("b1", "b2")], Assert.Single(groups).Strings.Select(each => (each.Members[0].Id, each.Members[1].Id)).Order());
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-12)]
    [InlineData(double.PositiveInfinity)]
    public void NominalVoltageOutOfRange_IsRefused(double nominalV) => Assert.Throws<ArgumentException>(() => Find([Battery("a", "p", "n") with { NominalV = nominalV }], []));

    [Fact]
    public void OneIdTwice_IsRefused() => Assert.Throws<ArgumentException>(() => Find([Battery("a", "p", "n"), Battery("a", "p", "n")], []));

    private static ImmutableArray<StringGroup> TwoByTwo(StringBattery? upperOfB = null) =>
        Find([Battery("a1", "p", "ma"), Battery("a2", "ma", "n"), upperOfB ?? Battery("b1", "p", "mb"), Battery("b2", "mb", "n")], [], Load("p", "n", 24));

    private static ImmutableArray<StringGroup> Find(StringBattery[] batteries, StringJoin[] joins, params StringOutside[] outside) =>
        BatteryStrings.Find(new StringInput { Batteries = [.. batteries], Joins = [.. joins], Outside = [.. outside] });

    private static StringBattery Battery(string id, string plus, string minus) => new(id, plus, minus, 12);

    private static StringJoin Join(string a, string b, bool isProtection = false) => new(a, b, isProtection);

    private static StringOutside Load(string plus, string minus, double nominalV = 12) => new(plus, minus, nominalV);
}
