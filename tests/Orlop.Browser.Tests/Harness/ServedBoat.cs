namespace Orlop.Browser.Tests.Harness;

/// <summary>A boat in a temporary folder of her own, and the program that serves her.</summary>
public sealed class ServedBoat : IDisposable
{
    /// <summary>The example that most tests are about.</summary>
    public const string Demo = "sandgrouse.json";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("orlop-browser-");
    private OrlopProcess? _process;

    private ServedBoat()
    {
    }

    /// <summary>Where her pages are: http://127.0.0.1:PORT.</summary>
    public string Address { get; private set; } = "";

    /// <summary>Her store.</summary>
    public string Store => Path.Combine(_folder.FullName, "boat.orlop");

    /// <summary>A copy of an example.</summary>
    public static async Task<ServedBoat> OfExampleAsync(string file)
    {
        ServedBoat boat = new();
        string copy = Path.ChangeExtension(boat.Store, ".json");
        File.Copy(Built.Example(file), copy);
        await boat.StartAsync(copy);
        return boat;
    }

    /// <summary>A boat made by <c>orlop new</c>.</summary>
    public static async Task<ServedBoat> OfNewAsync(params string[] options)
    {
        ServedBoat boat = new();
        await OrlopProcess.RunAsync(boat._folder.FullName, ["new", boat.Store, .. options]);
        await boat.StartAsync(boat.Store);
        return boat;
    }

    /// <summary>A file beside the boat, for what a test writes or downloads.</summary>
    public string FileBeside(string name) => Path.Combine(_folder.FullName, name);

    /// <summary>Kills the program as a power cut would, and starts it again on the same store and the same port.</summary>
    public async Task KillAndStartAgainAsync()
    {
        _process!.Kill();
        _process.Dispose();
        await StartAsync(Store, new Uri(Address).Port);
    }

    public void Dispose()
    {
        _process?.Dispose();
        _folder.Delete(recursive: true);
    }

    private async Task StartAsync(string boat, int port = 0)
    {
        try
        {
            (_process, Address) = await OrlopProcess.ServeAsync(_folder.FullName, boat, port);
        }
        catch
        {
            Dispose();
            throw;
        }
    }
}
