using Microsoft.Data.Sqlite;
using Orlop.Boat;
using Orlop.Boat.Format;

namespace Orlop.Store.Tables;

/// <summary>A revision's boat as packed text, and back.</summary>
internal static class BoatText
{
    /// <summary>The boat's canonical text, packed, after making sure that it reads back as the same boat.</summary>
    public static byte[] Pack(BoatModel boat)
    {
        string text = BoatJson.Write(boat);
        return boat.Equals(BoatJson.Read(text).Boat)
            ? PackedText.Pack(text)
            : throw new InvalidOperationException("The boat's text does not read back as the same boat, so it was not kept.");
    }

    /// <summary>The revision with its boat.</summary>
    public static Revision Revision(SqliteConnection db, StoredRevision stored)
    {
        BoatReadResult read = BoatJson.Read(PackedText.Unpack(stored.Boat));
        return read.IsGood
            ? new Revision(stored.Number, stored.Parent, stored.Branch, stored.Instant, stored.Summary, read.Boat)
            : throw new StoreException(StoreFailure.NewerVersion, db.DataSource, FormattableString.Invariant(
                $"Revision {stored.Number} of '{db.DataSource}' is as it was written, but this version of the program cannot read it: {read.Problems[0].Message} The file was left as it is. Open it with the version that wrote it."));
    }
}
