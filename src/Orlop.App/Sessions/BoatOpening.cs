using Orlop.App.CommandLine;
using Orlop.Store;

namespace Orlop.App.Sessions;

/// <summary>Finds or makes the store that <c>orlop serve</c> works on.</summary>
internal static class BoatOpening
{
    private const string DemoFile = "sandgrouse.json";

    /// <summary>Opens the named store; a boat file is read into a new store beside it once, and that store is opened from then on.</summary>
    public static BoatStore Open(string boat, TextWriter notes)
    {
        if (!BoatInput.IsJson(boat))
        {
            BoatInput.MustExist(boat);
            return BoatStore.Open(boat);
        }

        string beside = Path.ChangeExtension(boat, ".orlop");
        if (File.Exists(beside))
        {
            notes.WriteLine($"Opening {beside}, made from {boat} earlier; it holds the edits since.");
            return BoatStore.Open(beside);
        }

        BoatInput.MustExist(boat);
        notes.WriteLine($"Read {boat} into {beside}; edits are kept there.");
        return BoatStore.CreateFromJson(beside, File.ReadAllText(boat), $"Read from {Path.GetFileName(boat)}");
    }

    /// <summary>Opens the user's copy of the demo boat, made on first use.</summary>
    public static BoatStore OpenDemo(TextWriter notes)
    {
        string path = Path.Combine(DataFolder(), "sandgrouse.orlop");
        if (!File.Exists(path))
        {
            BoatStore.CreateFromJson(path, DemoText(), "The demo boat").Dispose();
        }

        notes.WriteLine($"No boat was named, so this is a copy of the demo boat: {path}");
        return BoatStore.Open(path);
    }

    private static string DataFolder()
    {
        string data = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData);
        string folder = data.Length > 0 ? Path.Combine(data, "orlop") : Path.Combine(Path.GetTempPath(), "orlop");
        try
        {
            Directory.CreateDirectory(folder);
            return folder;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Directory.CreateTempSubdirectory("orlop-").FullName;
        }
    }

    private static string DemoText()
    {
        using Stream? demo = typeof(BoatOpening).Assembly.GetManifestResourceStream(DemoFile);
        if (demo is null)
        {
            throw new CommandException("This build has no demo boat. Name a boat: orlop serve BOAT.orlop, or make one: orlop new BOAT.orlop");
        }

        using StreamReader reader = new(demo);
        return reader.ReadToEnd();
    }
}
