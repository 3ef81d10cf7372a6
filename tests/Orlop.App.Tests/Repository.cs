namespace Orlop.App.Tests;

/// <summary>The repository that the tests run in, for its examples and published schemas.</summary>
internal static class Repository
{
    private static readonly string Root = Find();

    public static string At(params string[] path) => Path.Combine([Root, .. path]);

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
