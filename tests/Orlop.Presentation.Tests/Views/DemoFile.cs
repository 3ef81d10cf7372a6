namespace Orlop.Presentation.Tests.Views;

/// <summary>Where the demo boat stands.</summary>
internal static class DemoFile
{
    public static string Path()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(folder.FullName, "Orlop.slnx")))
        {
            folder = folder.Parent!;
        }

        return System.IO.Path.Combine(folder.FullName, "examples", "sandgrouse.json");
    }
}
