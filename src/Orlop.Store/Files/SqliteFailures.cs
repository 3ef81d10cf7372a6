using Microsoft.Data.Sqlite;
using Orlop.Store.Tables;

namespace Orlop.Store.Files;

/// <summary>Says in the owner's words what SQLite reports. Codes: sqlite.org/rescode.html.</summary>
internal static class SqliteFailures
{
    private const int Error = 1, Permission = 3, Busy = 5, TableLocked = 6, ReadOnly = 8, InputOutput = 10, Corrupt = 11, Full = 13,
        CannotOpen = 14, TooBig = 18, Constraint = 19, Mismatch = 20, NotADatabase = 26;

    private const int ShortRead = 522, SharedMemorySize = 4874;

    /// <summary>The store's exception for one of SQLite's.</summary>
    public static StoreException For(string path, SqliteException exception)
    {
        (StoreFailure failure, string message) = exception.SqliteErrorCode switch
        {
            _ when exception.SqliteExtendedErrorCode == SharedMemorySize => Fullness(path),
            _ when exception.SqliteExtendedErrorCode == ShortRead => (StoreFailure.Damaged, Damage.Message(path, "its end is missing")),
            Full => Fullness(path),
            Busy or TableLocked => (StoreFailure.Locked,
                $"'{path}' is held by another program. Nothing was kept. Close the other program, or wait, and try again."),
            ReadOnly => (StoreFailure.ReadOnly,
                $"'{path}' or its folder is write-protected. Nothing was kept. Take the protection off, or copy the file to where you may write."),
            CannotOpen or Permission => (StoreFailure.NoAccess,
                $"'{path}' cannot be opened. Check that you may read and write both the file and its folder."),
            NotADatabase => (StoreFailure.NotABoat, NotABoat(path)),
            InputOutput => (StoreFailure.DiskFault,
                $"The disk failed while '{path}' was read or written ({Code(exception)}). What was kept before is still there. Check the disk, and make a backup on another one."),
            Error or Corrupt or TooBig or Constraint or Mismatch => (StoreFailure.Damaged, Damage.Message(path, Code(exception))),
            _ => (StoreFailure.DiskFault, $"'{path}' could not be used ({Code(exception)}: {exception.Message}). Make a copy of the file before anything else."),
        };
        return new StoreException(failure, path, message, exception);
    }

    public static string NotABoat(string path) =>
        $"'{path}' is not a boat's file, or its beginning is damaged. It was left as it is. Choose another file, or a backup.";

    private static (StoreFailure Failure, string Message) Fullness(string path) => (StoreFailure.DiskFull,
        $"There is no room left on the disk of '{path}'. Nothing of this change was kept; everything before it is. Free some room and try again.");

    private static string Code(SqliteException exception) =>
        FormattableString.Invariant($"SQLite code {exception.SqliteExtendedErrorCode}");
}
