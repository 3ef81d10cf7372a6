namespace Orlop.App.CommandLine;

/// <summary>Reads and writes the files that a command names, and says plainly why it cannot.</summary>
internal static class CommandFiles
{
    /// <summary>Refuses what is no file, or not there.</summary>
    public static void MustExist(string path, string otherwise = "Check the name and the folder.")
    {
        if (Directory.Exists(path))
        {
            throw new CommandException($"'{path}' is a folder. Name a file in it.");
        }

        if (!File.Exists(path))
        {
            throw new CommandException($"There is no file '{path}'. {otherwise}");
        }
    }

    /// <summary>The text of a file.</summary>
    public static string ReadText(string path)
    {
        MustExist(path);
        return Try(() => File.ReadAllText(path), $"'{path}' cannot be read");
    }

    /// <summary>Writes a new file, whole or not at all; never overwrites.</summary>
    public static void WriteNew(string path, string text)
    {
        if (Directory.Exists(path))
        {
            throw new CommandException($"'{path}' is a folder. Name a file in it, or - for standard output.");
        }

        if (File.Exists(path))
        {
            throw new CommandException($"'{path}' is there already and is not overwritten. Name another file, or - for standard output.");
        }

        string fresh = $"{path}.{Guid.NewGuid():N}.new";
        Try(() =>
        {
            try
            {
                File.WriteAllText(fresh, text);
                File.Move(fresh, path);
            }
            finally
            {
                File.Delete(fresh);
            }

            return path;
        }, $"'{path}' cannot be written");
    }

    /// <summary>Does what may fail on a file; the exception says what was tried and what to look at.</summary>
    public static T Try<T>(Func<T> act, string failed)
    {
        try
        {
            return act();
        }
        catch (UnauthorizedAccessException)
        {
            throw new CommandException($"{failed}: you have no permission. Choose another place, or ask for it.");
        }
        catch (DirectoryNotFoundException)
        {
            throw new CommandException($"{failed}: its folder is not there. Make the folder, or choose another.");
        }
        catch (IOException fault)
        {
            throw new CommandException($"{failed}: {fault.Message}");
        }
    }

    /// <summary>A path as it can be typed after a command.</summary>
    public static string Typed(string path) => path.All(sign => char.IsLetterOrDigit(sign) || sign is '.' or '_' or '-' or '/' or '\\' or ':' or '~') ? path : $"\"{path}\"";
}
