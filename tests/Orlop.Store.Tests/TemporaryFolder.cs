namespace Orlop.Store.Tests;

/// <summary>A folder that is gone after the test.</summary>
public abstract class TemporaryFolder : IDisposable
{
    protected TemporaryFolder() => Folder = Directory.CreateTempSubdirectory("orlop-store-").FullName;

    protected string Folder { get; }

    protected string BoatPath => At("boat.orlop");

    protected string At(string name) => Path.Combine(Folder, name);

    public virtual void Dispose()
    {
        Directory.Delete(Folder, recursive: true);
        GC.SuppressFinalize(this);
    }
}
