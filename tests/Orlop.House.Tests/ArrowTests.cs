using Xunit;

namespace Orlop.House.Tests;

/// <summary>References go one way, as docs/architecture.md says.</summary>
public sealed class ArrowTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Orlop.Numerics"] = [],
        ["Orlop.Boat"] = [],
        ["Orlop.Electrics"] = ["Orlop.Numerics"],
        ["Orlop.Hull"] = [],
        ["Orlop.Store"] = ["Orlop.Boat"],
        ["Orlop.Review"] = ["Orlop.Boat", "Orlop.Electrics", "Orlop.Hull"],
        ["Orlop.Presentation"] = ["Orlop.Review"],
        ["Orlop.Drawings"] = ["Orlop.Presentation"],
        ["Orlop.Work"] = ["Orlop.Presentation", "Orlop.Drawings"],
        ["Orlop.App"] = ["Orlop.Store", "Orlop.Work"],
    };

    public static TheoryData<string> Rooms => [.. House.Rooms];

    [Theory, MemberData(nameof(Rooms))]
    public void Project_RefersOnlyToRoomsBelow(string room) =>
        Assert.Empty(House.ReferencesOf(room).Except(Allowed[room]));

    [Fact]
    public void Rooms_AreAllThereIs() =>
        Assert.Equal(House.Rooms.Order(StringComparer.Ordinal), Directory.GetDirectories(Path.Combine(House.Root, "src")).Select(Path.GetFileName).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("Orlop.Numerics")]
    [InlineData("Orlop.Electrics")]
    [InlineData("Orlop.Hull")]
    public void Engine_KnowsNothingOfBoatsFindingsOrWeb(string room)
    {
        string[] names = [.. House.AssemblyOf(room).GetReferencedAssemblies().Select(name => name.Name!)];
        Assert.DoesNotContain(names, name => name.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal) || name.StartsWith("Microsoft.Data", StringComparison.Ordinal)
            || name is "Orlop.Boat" or "Orlop.Review" or "Orlop.Store" or "System.Console");
    }

    [Theory]
    [InlineData("Orlop.Boat")]
    [InlineData("Orlop.Review")]
    [InlineData("Orlop.Presentation")]
    [InlineData("Orlop.Drawings")]
    public void CoreRoom_TouchesNeitherConsoleNorWeb(string room)
    {
        string[] names = [.. House.AssemblyOf(room).GetReferencedAssemblies().Select(name => name.Name!)];
        Assert.DoesNotContain(names, name => name.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal) || name is "System.Console" or "System.Net.Http");
    }
}
