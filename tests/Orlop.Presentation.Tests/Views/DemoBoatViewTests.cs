using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class DemoBoatViewTests
{
    private static readonly BoatModel Demo = DemoBoat.Read();

    [Theory]
    [InlineData("drying-breaker", "Take Breaker, drying locker out of the boat as built? It protects the way to Fan heater.")]
    [InlineData("tool-chests", "Take Tool chests out of the boat as built?")]
    public void RemovalQuestion_SaysWhatIsLost(string id, string question) => Assert.Equal(question, RemovalWords.Question(Demo, Demo.Find(id)!));

    [Fact]
    public void RemovalQuestion_ManyBehindIt_NamesThreeAndCountsTheRest()
    {
        string question = RemovalWords.Question(Demo, Demo.Find("main-isolator")!);

        Assert.Contains("It makes dead ", question, StringComparison.Ordinal);
        Assert.Matches(@" and \d+ more\.$", question);
    }

    [Fact]
    public void RemovalQuestion_NothingRunsThroughIt_SaysSo() => Assert.EndsWith(
        "No circuit runs through it.",
        RemovalWords.Question(new BoatModel(), new Protection { Id = "spare", Means = ProtectionMeans.Fuse, RatedA = 10 }),
        StringComparison.Ordinal);

    [Fact]
    public void Subjects_OfAnAlteration_StandFirstThenByKindAndName()
    {
        Alteration locker = Demo.Find<Alteration>("drying-locker")!;
        IReadOnlyList<SubjectGroup> groups = SubjectGroup.Of(Demo, locker);

        Assert.Equal((locker.Title, locker.Id), (groups[0].Title, groups[0].Things[0].Id));
        Assert.Contains("drying-breaker", groups[0].Things.Select(thing => thing.Id));
        Assert.Equal(groups.Skip(1).Select(group => group.Title).Order(StringComparer.OrdinalIgnoreCase), groups.Skip(1).Select(group => group.Title));
        Assert.All(groups.Skip(1), group => Assert.Equal(group.Things.Select(thing => thing.Title).Order(StringComparer.OrdinalIgnoreCase), group.Things.Select(thing => thing.Title)));
        Assert.Equal(groups.Sum(group => group.Things.Count), groups.SelectMany(group => group.Things).Distinct().Count());
    }

    [Fact]
    public void Subjects_OfTheSameName_SayWhereTheyRun()
    {
        IReadOnlyDictionary<string, string> names = SubjectGroup.Of(Demo, null)[0].Names;
        Link[] straps = [.. Demo.All<Link>().Where(link => link.Title == "Strap from the plus bar")];

        Assert.Equal(3, straps.Length);
        Assert.All(straps, strap => Assert.Equal($"Strap from the plus bar ({new PartWords(Demo).At(strap.From)} to {new PartWords(Demo).At(strap.To)})", names[strap.Id]));
        Assert.Equal(names.Count, names.Values.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void ReadingPlace_PartOfADraft_IsNotBuilt()
    {
        BoatModel altered = AlteredBoat.Of(Demo, Demo.Find<Alteration>("sampling-winch")!).Boat;

        Assert.Equal(["winch"], ReadingPlace.Unbuilt(Demo, altered, new("winch", "+"), new("main-minus", "bar"), null).Select(thing => thing.Id));
        Assert.Equal(["winch-feed"], ReadingPlace.Unbuilt(Demo, altered, null, null, "winch-feed.plus").Select(thing => thing.Id));
        Assert.Empty(ReadingPlace.Unbuilt(Demo, altered, new("main-plus", "bar"), new("main-minus", "bar"), null));
    }
}
