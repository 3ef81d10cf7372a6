using Orlop.Boat;
using Orlop.Boat.Format;

namespace Orlop.Bench.Reviews;

/// <summary>The demo boat beside the program.</summary>
internal static class DemoBoat
{
    /// <summary>The boat; the reason is told where she cannot be read.</summary>
    public static BoatModel? Read(TextWriter output)
    {
        BoatModel? boat = BoatJson.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "sandgrouse.json"))).Boat;
        if (boat is null)
        {
            output.WriteLine("The demo boat cannot be read.");
        }

        return boat;
    }
}
