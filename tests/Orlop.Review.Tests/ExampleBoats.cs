using Orlop.Boat;
using Orlop.Boat.Format;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>The boats in the examples folder.</summary>
internal static class ExampleBoats
{
    public static string Text(string name) => File.ReadAllText(Path.Combine(Root(), "examples", name + ".json"));

    public static BoatModel Read(string name)
    {
        BoatReadResult read = BoatJson.Read(Text(name));
        Assert.True(read.IsGood, string.Join(Environment.NewLine, read.Problems));
        return read.Boat;
    }

    public static string Root()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Orlop.slnx")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new DirectoryNotFoundException("No folder above the tests holds Orlop.slnx.");
    }
}
