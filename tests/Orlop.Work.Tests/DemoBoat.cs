using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;

namespace Orlop.Work.Tests;

/// <summary>The demo boat and the packs of its alterations.</summary>
internal static class DemoBoat
{
    public static readonly string[] Alterations = ["second-bilge-pump", "drying-locker", "sampling-winch", "sampling-winch-second"];

    public static BoatModel Read() => BoatJson.Read(File.ReadAllText(Path.Combine(Root(), "examples", "sandgrouse.json"))).Boat!;

    public static WorkPack Pack(string alteration)
    {
        BoatModel boat = Read();
        return WorkPacks.Plan(boat, boat.Find<Alteration>(alteration)!);
    }

    private static string Root()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Orlop.slnx")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new DirectoryNotFoundException("No folder above the tests holds Orlop.slnx.");
    }
}
