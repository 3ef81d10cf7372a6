using System.Collections.Concurrent;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;

namespace Orlop.Work.Tests;

/// <summary>The demo boat and the packs of its alterations.</summary>
internal static class DemoBoat
{
    public static readonly string[] Alterations = ["second-bilge-pump", "drying-locker", "sampling-winch", "sampling-winch-second"];

    private static readonly Lazy<BoatModel> Boat = new(() => BoatJson.Read(File.ReadAllText(Path.Combine(Root(), "examples", "sandgrouse.json"))).Boat!);
    private static readonly ConcurrentDictionary<string, Lazy<WorkPack>> Packs = new(StringComparer.Ordinal);

    /// <summary>The boat; one for all tests, since nothing can change her.</summary>
    public static BoatModel Read() => Boat.Value;

    /// <summary>The pack of an alteration; made once for all tests.</summary>
    public static WorkPack Pack(string alteration) =>
        Packs.GetOrAdd(alteration, id => new Lazy<WorkPack>(() => WorkPacks.Plan(Read(), Read().Find<Alteration>(id)!))).Value;

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
