namespace Orlop.Boat.Tests.Boats;

/// <summary>The repository that the tests run in, for the files that the documentation publishes.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Orlop.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
