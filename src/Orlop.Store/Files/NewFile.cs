using Microsoft.Data.Sqlite;

namespace Orlop.Store.Files;

/// <summary>Writes a file beside its name first, so that under its name it is whole or not there. Never overwrites.</summary>
internal static class NewFile
{
    public static void Make(string path, Action<string> write)
    {
        if (Path.Exists(path))
        {
            throw AlreadyThere(path);
        }

        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { } folder && !Directory.Exists(folder))
        {
            throw new StoreException(StoreFailure.NotThere, path, $"'{path}' cannot be made: its folder is not there. Make the folder, or choose another.");
        }

        string fresh = $"{path}.{Guid.NewGuid():N}.new";
        try
        {
            write(fresh);
            File.Move(fresh, path);
        }
        catch (SqliteException exception)
        {
            throw SqliteFailures.For(path, exception);
        }
        catch (UnauthorizedAccessException exception)
        {
            throw new StoreException(StoreFailure.NoAccess, path, $"'{path}' cannot be made: you may not write in its folder. Choose another folder.", exception);
        }
        catch (IOException exception)
        {
            throw Path.Exists(path)
                ? AlreadyThere(path)
                : new StoreException(StoreFailure.DiskFault, path, $"'{path}' could not be written ({exception.Message}). Check the disk and the room left on it.", exception);
        }
        finally
        {
            Discard(fresh);
            Discard(fresh + "-journal");
        }
    }

    private static void Discard(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (IOException)
        {
            // A leftover with a name of its own hurts nobody; the first failure is the one to report.
        }
    }

    private static StoreException AlreadyThere(string path) =>
        new(StoreFailure.AlreadyThere, path, $"There is a file '{path}' already. It was left as it is. Choose another name.");
}
