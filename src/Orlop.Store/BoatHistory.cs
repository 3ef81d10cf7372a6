using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Store.Files;
using Orlop.Store.Tables;

namespace Orlop.Store;

/// <summary>Every revision of a boat, on all branches.</summary>
public sealed class BoatHistory
{
    private readonly BoatFile _file;

    internal BoatHistory(BoatFile file) => _file = file;

    /// <summary>A page of the history, newest first: at most <paramref name="count"/> revisions with numbers below <paramref name="before"/>.</summary>
    public IReadOnlyList<HistoryEntry> Page(long before = long.MaxValue, int count = 50) => _file.Read(db =>
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        long head = HeadTable.Read(db);
        HashSet<long> behind = [.. HeadTable.Behind(db, head)], ahead = [.. HeadTable.Ahead(db, head)];
        return RevisionTable.Page(db, before, count).ConvertAll(row => Entry(row, Place(row.Number)));

        HistoryPlace Place(long number) =>
            number == head ? HistoryPlace.Head
            : behind.Contains(number) ? HistoryPlace.Behind
            : ahead.Contains(number) ? HistoryPlace.Ahead
            : HistoryPlace.Aside;
    });

    /// <summary>A revision with its boat. <see cref="StoreException"/> when it is damaged, <see cref="ArgumentOutOfRangeException"/> when there is none of this number.</summary>
    public Revision Read(long number) => _file.Read(db =>
    {
        RevisionTable.MustExist(db, number);
        return BoatText.Revision(db, RevisionTable.Read(db, number));
    });

    /// <summary>What a revision changed in its parent; nothing for the first.</summary>
    public IReadOnlyList<Edit> EditsOf(long number)
    {
        Revision revision = Read(number);
        return revision.Parent is { } parent ? BoatEdits.Between(Read(parent).Boat, revision.Boat) : [];
    }

    private static HistoryEntry Entry((long Number, StoredRevision? Revision) row, HistoryPlace place) => row.Revision is not { } revision
        ? new HistoryEntry { Number = row.Number, Place = place, IsDamaged = true }
        : new HistoryEntry
        {
            Number = row.Number,
            Place = place,
            Parent = revision.Parent,
            Branch = revision.Branch,
            At = revision.Instant,
            Summary = revision.Summary,
        };
}
