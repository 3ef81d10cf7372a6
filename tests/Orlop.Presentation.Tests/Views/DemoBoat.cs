using Orlop.Boat;
using Orlop.Boat.Format;

namespace Orlop.Presentation.Tests.Views;

internal static class DemoBoat
{
    public static BoatModel Read() => BoatJson.Read(File.ReadAllText(DemoPath())).Boat!;

    private static string DemoPath()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Orlop.slnx")))
        {
            folder = folder.Parent!;
        }

        return Path.Combine(folder.FullName, "examples", "sandgrouse.json");
    }
}
