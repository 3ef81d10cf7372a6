namespace Orlop.Store;

/// <summary>Why a boat's file could not be used.</summary>
public enum StoreFailure
{
    /// <summary>No file has this name.</summary>
    NotThere,

    /// <summary>A file has this name already and is not overwritten.</summary>
    AlreadyThere,

    /// <summary>The file is something else: empty, not a database, or another program's database.</summary>
    NotABoat,

    /// <summary>The file is a boat, but bytes in it are not as they were written.</summary>
    Damaged,

    /// <summary>A newer version of the program wrote it.</summary>
    NewerVersion,

    /// <summary>The file or its folder is write-protected.</summary>
    ReadOnly,

    /// <summary>The operating system does not let this user open it.</summary>
    NoAccess,

    /// <summary>There is no room left where the file lies.</summary>
    DiskFull,

    /// <summary>The disk could not read or write.</summary>
    DiskFault,

    /// <summary>Another program holds the file and did not let go in time.</summary>
    Locked,

    /// <summary>The boat that was handed over does not pass the model's checks.</summary>
    NotValid,
}
