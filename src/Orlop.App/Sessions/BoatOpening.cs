using System.Globalization;
using Orlop.App.CommandLine;
using Orlop.Boat.Format;
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

        BoatStore made = BoatStore.Create(beside, BoatInput.ReadJson(boat), $"Read from {Path.GetFileName(boat)}");
        notes.WriteLine($"Read {boat} into {beside}; edits are kept there.");
        return made;
    }

    /// <summary>Opens the user's copy of the demo boat, made on first use.</summary>
    public static BoatStore OpenDemo(TextWriter notes)
    {
        string path = Path.Combine(DataFolder(), "sandgrouse.orlop");
        if (!File.Exists(path))
        {
            return FreshDemo(path, notes);
        }

        BoatStore kept = BoatStore.Open(path);
        if (IsOutdated(kept))
        {
            kept.Dispose();
            File.Move(path, Path.ChangeExtension(path, ".earlier.orlop"), overwrite: true);
            return FreshDemo(path, notes);
        }

        DateTimeOffset copied = kept.History.Read(1).At.ToLocalTime();
        notes.WriteLine($"No boat was named: this is your copy of the demo boat from {copied.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, {(kept.Head.Number == 1 ? "not edited yet" : "with your edits since")}. To start afresh, rename or delete {path}");
        return kept;
    }

    private static BoatStore FreshDemo(string path, TextWriter notes)
    {
        BoatStore fresh = BoatStore.CreateFromJson(path, DemoText(), "The demo boat");
        notes.WriteLine($"No boat was named: this is a fresh copy of the demo boat. Edits are kept in {path}");
        return fresh;
    }

    // A copy that nobody edited, of a demo boat that has changed since with the program.
    private static bool IsOutdated(BoatStore kept) => kept.History.Page(count: 2).Count == 1 && BoatJson.Read(DemoText()).Boat is { } newest && !newest.Equals(kept.Head.Boat);

    private static string DataFolder()
    {
        string data = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        string folder = Path.Combine(data, "orlop");
        try
        {
            return Directory.CreateDirectory(folder).FullName;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new CommandException(
                $"The folder '{folder}' for your copy of the demo boat cannot be made: {fault.Message} Name a file where you may write: orlop new BOAT.orlop, then orlop serve BOAT.orlop"
                + (OperatingSystem.IsWindows() ? "" : ". Or set XDG_DATA_HOME to another folder."));
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
