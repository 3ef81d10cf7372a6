using Microsoft.Data.Sqlite;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Store.Files;
using Orlop.Store.Tables;

namespace Orlop.Store;

/// <summary>
/// One boat's file (<c>.orlop</c>): every revision she ever had, the head among them, and her photographs. A commit that was
/// acknowledged is on the disk. May be used from several threads, and the file by several processes, at once.
/// </summary>
public sealed class BoatStore : IDisposable
{
    private readonly BoatFile _file;
    private readonly TimeProvider _time;
    private Revision _head;

    private BoatStore(BoatFile file, TimeProvider time)
    {
        _file = file;
        _time = time;
        _head = file.Read(db => BoatText.Revision(db, RevisionTable.Read(db, HeadTable.Read(db))));
        History = new BoatHistory(file);
        Attachments = new BoatAttachments(file, time);
    }

    /// <summary>The head has become this revision, by this store or, noticed by <see cref="Refresh"/>, by another process.</summary>
    public event Action<Revision>? Changed;

    /// <summary>The boat's file.</summary>
    public string Path => _file.Path;

    /// <summary>The boat as she is, as far as this store knows.</summary>
    public Revision Head => Volatile.Read(ref _head);

    /// <summary>All revisions.</summary>
    public BoatHistory History { get; }

    /// <summary>Photographs.</summary>
    public BoatAttachments Attachments { get; }

    /// <summary>Makes a new file with this boat as its first revision. Never overwrites. <see cref="StoreException"/> when it cannot.</summary>
    public static BoatStore Create(string path, BoatModel boat, string summary = "First revision", TimeProvider? time = null)
    {
        IReadOnlyList<Problem> problems = BoatValidation.Check(boat);
        if (problems.Count > 0)
        {
            throw StoreException.NotValid(path, problems);
        }

        string at = StoredRevision.Written((time ?? TimeProvider.System).GetUtcNow());
        StoredRevision first = new(1, null, 1, at, summary, BoatText.Pack(boat));
        BoatFileOpening.Create(path, db =>
        {
            RevisionTable.Add(db, first);
            HeadTable.StepTo(db, first.Number);
        });
        return Open(path, time);
    }

    /// <summary>Makes a new file from a boat's JSON text.</summary>
    public static BoatStore CreateFromJson(string path, string json, string summary = "Read from a JSON file", TimeProvider? time = null)
    {
        BoatReadResult read = BoatJson.Read(json);
        return read.IsGood ? Create(path, read.Boat, summary, time) : throw StoreException.NotValid(path, read.Problems);
    }

    /// <summary>Opens a boat's file. <see cref="StoreException"/> says why it cannot; the file is then byte for byte as it was.</summary>
    public static BoatStore Open(string path, TimeProvider? time = null)
    {
        BoatFile file = BoatFileOpening.Open(path);
        try
        {
            return new BoatStore(file, time ?? TimeProvider.System);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>The newest revision that can be read from a file that <see cref="Open"/> refuses as damaged; null when there is none. Changes nothing.</summary>
    public static Revision? Rescue(string path) => BoatFileOpening.Examine(
        path, db => RevisionTable.NewestReadable(db) is { } newest ? BoatText.Revision(db, newest) : null);

    /// <summary>
    /// Keeps edits as a new revision on the head. When the head is no longer the revision the edits were drafted on, they are kept
    /// if every edited thing still is as the edit saw it; otherwise nothing is kept and the clashes are shown.
    /// </summary>
    /// <param name="seenRevision">Number of the revision the edits were drafted on.</param>
    /// <param name="edits">At least one.</param>
    /// <param name="summary">What is done, in the owner's words.</param>
    public CommitResult Commit(long seenRevision, IReadOnlyList<Edit> edits, string summary)
    {
        CommittedEdits.Guard(edits, summary);
        return Move(db =>
        {
            RevisionTable.MustExist(db, seenRevision);
            Revision head = Current(db);
            EditOutcome outcome = BoatEdits.Apply(head.Boat, edits);
            if (outcome.Clashes.Count > 0)
            {
                return new Conflict(outcome.Clashes, head);
            }

            IReadOnlyList<Problem> problems = BoatValidation.Check(outcome.Boat);
            return problems.Count > 0
                ? new Refused(problems, head)
                : new Committed(Add(db, head, outcome.Boat, summary), IsOnNewerHead: head.Number != seenRevision);
        }, (CommitResult result) => result.Head);
    }

    /// <summary>Moves the head to its parent, if the head still is the revision that was seen.</summary>
    public StepResult Undo(long seenRevision) => Step(seenRevision, (_, head) => head.Parent, HeadTable.StepTo);

    /// <summary>Moves the head along the branch that was left last, if the head still is the revision that was seen.</summary>
    public StepResult Redo(long seenRevision) => Step(seenRevision, (db, head) => HeadTable.Onward(db, head.Number), HeadTable.StepTo);

    /// <summary>Moves the head to any revision, if the head still is the revision that was seen. Redo then follows the branch that was left.</summary>
    public StepResult GoTo(long seenRevision, long number) => Step(
        seenRevision,
        (db, _) =>
        {
            RevisionTable.MustExist(db, number);
            return number;
        },
        HeadTable.JumpTo);

    /// <summary>Another process has moved the head. Costs one look at one row.</summary>
    public bool HasMoved() => _file.Read(HeadTable.Read) != Head.Number;

    /// <summary>The head as it is in the file now.</summary>
    public Revision Refresh() => Move(Current, head => head, isReading: true);

    /// <summary>Writes the head's boat to a new JSON file.</summary>
    public void ExportJson(string path) => NewFile.Make(path, fresh =>
    {
        using FileStream stream = new(fresh, FileMode.CreateNew);
        BoatJson.Write(Head.Boat, stream);
        stream.Flush(flushToDisk: true);
    });

    /// <summary>Writes the whole file, as it is at this moment, to a new file, and opens that once to check it.</summary>
    public void BackupTo(string path) => NewFile.Make(path, fresh =>
    {
        _file.Use(db => db.Execute("VACUUM INTO $1", fresh), written: path);
        using BoatStore backup = Open(fresh);
    });

    /// <summary>Reads the whole file and says what in it is not as it was written, a sentence each; nothing when all is.</summary>
    public IReadOnlyList<string> Verify() => _file.Use(db => Damage.All(db));

    public void Dispose() => _file.Dispose();

    private StepResult Step(long seenRevision, Func<SqliteConnection, Revision, long?> target, Action<SqliteConnection, long> move) => Move(db =>
    {
        Revision head = Current(db);
        if (head.Number != seenRevision)
        {
            return new StepResult(StepOutcome.HeadHadMoved, head);
        }

        if (target(db, head) is not { } number)
        {
            return new StepResult(StepOutcome.NothingFurther, head);
        }

        Revision next = BoatText.Revision(db, RevisionTable.Read(db, number));
        move(db, number);
        return new StepResult(StepOutcome.Moved, next);
    }, (StepResult result) => result.Head);

    private Revision Current(SqliteConnection db)
    {
        long number = HeadTable.Read(db);
        return number == _head.Number ? _head : BoatText.Revision(db, RevisionTable.Read(db, number));
    }

    private Revision Add(SqliteConnection db, Revision head, BoatModel boat, string summary)
    {
        long number = RevisionTable.NextNumber(db);
        long branch = RevisionTable.HasChild(db, head.Number) ? number : head.Branch;
        StoredRevision next = new(number, head.Number, branch, StoredRevision.Written(_time.GetUtcNow()), summary, BoatText.Pack(boat));
        RevisionTable.Add(db, next);
        HeadTable.StepToNew(db, head.Number, number);
        return new Revision(number, next.Parent, branch, next.Instant, summary, boat);
    }

    /// <summary>Does the work in one transaction, and takes over the head once that is on the disk.</summary>
    private T Move<T>(Func<SqliteConnection, T> work, Func<T, Revision> headOf, bool isReading = false)
    {
        T result;
        Revision before, after;
        lock (_file.Gate)
        {
            before = _head;
            result = isReading ? _file.Read(work) : _file.Write(work);
            after = headOf(result);
            Volatile.Write(ref _head, after);
        }

        if (after.Number != before.Number)
        {
            Changed?.Invoke(after);
        }

        return result;
    }
}
