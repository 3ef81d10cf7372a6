using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Store;

namespace Orlop.App.Sessions;

/// <summary>
/// One opened boat, shared by all windows: the head, the open draft, and the review of both, worked out off the render path. Safe from
/// several threads. Notices within about a second when another process commits.
/// </summary>
public sealed class BoatSession : IDisposable
{
    private static readonly Type[] AlwaysAsBuilt =
        [typeof(Alteration), typeof(Reading), typeof(Photograph), typeof(BerthTest), typeof(Condition), typeof(PracticeChoice), typeof(StockItem), typeof(CataloguePart), typeof(Tool)];

    private static readonly TimeSpan PollInterval = TimeSpan.FromSeconds(1);

    private readonly Lock _gate = new();
    private readonly Lock _polling = new();
    private readonly TaskScheduler _background;
    private readonly ITimer _poll;
    private CancellationTokenSource _reviewing = new();
    private bool _isDisposed;
    private bool _wasChosen;
    private string? _draftId;
    private BoatSnapshot _now;

    /// <summary>Opens a session on a boat; what is long is done by <paramref name="background"/>, else by the thread pool.</summary>
    public BoatSession(BoatStore store, ReviewEngine engine, TimeProvider? time = null, TaskScheduler? background = null)
    {
        Store = store;
        Engine = engine;
        _background = background ?? TaskScheduler.Default;
        Time = time ?? TimeProvider.System;
        _now = new BoatSnapshot { Head = store.Head, Shown = store.Head.Boat };
        store.Changed += OnHeadChanged;
        _poll = Time.CreateTimer(_ => NoticeOtherProcess(), null, PollInterval, PollInterval);
        Advance();
    }

    /// <summary>Something in <see cref="Now"/> has changed; raised on any thread.</summary>
    public event Action? Changed;

    public BoatStore Store { get; }

    public ReviewEngine Engine { get; }

    public TimeProvider Time { get; }

    /// <summary>Today where the owner is.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Time.GetLocalNow().DateTime);

    /// <summary>The boat at this moment.</summary>
    public BoatSnapshot Now => Volatile.Read(ref _now);

    /// <summary>Does what is long off the render path.</summary>
    public Task<T> InBackground<T>(Func<T> work, CancellationToken token = default) =>
        Task.Factory.StartNew(work, token, TaskCreationOptions.DenyChildAttach | TaskCreationOptions.HideScheduler, _background);

    /// <summary>
    /// Opens a draft, so that edits go into it for as long as it takes edits: once it is built or dropped they go into the boat as built, and where that
    /// is undone, into it again unless something else was opened meanwhile. Null, and what takes no edits, closes it.
    /// </summary>
    public void OpenDraft(string? alterationId)
    {
        _wasChosen = true;
        _draftId = TakesEdits(Store.Head.Boat, alterationId)?.Id;
        Advance();
    }

    /// <summary>
    /// Opens the draft that a window remembers from before the program was started again; not where a window has chosen since, nor where
    /// it is no longer there, built or dropped.
    /// </summary>
    public void OpenRemembered(string alterationId)
    {
        if (!_wasChosen && TakesEdits(Now.AsBuilt, alterationId) is not null)
        {
            OpenDraft(alterationId);
        }
    }

    /// <summary>Keeps changes: in the open draft where they change the boat herself, else in the boat as built.</summary>
    public EditResult Edit(string summary, params IReadOnlyList<ThingChange> changes) =>
        Now.Draft is not null && changes.All(change => IsDrafted((change.Becomes ?? change.Seen)!))
            ? EditDraft(summary, changes)
            : EditAsBuilt(summary, changes);

    /// <summary>Keeps changes of the boat as built, her alterations and her records, whatever draft is open.</summary>
    public EditResult EditAsBuilt(string summary, params IReadOnlyList<ThingChange> changes) =>
        Commit(summary, [.. changes.Select(change => new Edit { Id = change.Id, Was = change.Seen, Becomes = change.Becomes })]);

    /// <summary>Keeps edits that were drafted on this moment's head.</summary>
    public EditResult Commit(string summary, IReadOnlyList<Edit> edits) => Try(() => Store.Commit(Store.Head.Number, edits, summary) switch
    {
        Conflict conflict => new EditClashed(conflict.Clashes),
        Refused refused => new EditRefused(new ProblemWords(Store.Head.Boat, edits).Of(refused.Problems)),
        _ => new EditKept(),
    });

    /// <summary>Steps back in the history.</summary>
    public EditResult Undo() => Step(seen => Store.Undo(seen), (left, _) => $"Undone: {left.Summary.TrimEnd('.')}.", "There is nothing further to undo.");

    /// <summary>Steps forward again.</summary>
    public EditResult Redo() => Step(seen => Store.Redo(seen), (_, head) => $"Done again: {head.Summary.TrimEnd('.')}.", "There is nothing further to redo.");

    /// <summary>Makes a revision of the history the head.</summary>
    public EditResult GoTo(long number) => Step(seen => Store.GoTo(seen, number), (_, head) => $"Gone to revision {head.Number}: {head.Summary.TrimEnd('.')}.", "That revision is the head already.");

    public void Dispose()
    {
        _poll.Dispose();
        lock (_polling)
        {
            _isDisposed = true;
        }

        Store.Changed -= OnHeadChanged;
        _reviewing.Cancel();
        _reviewing.Dispose();
        Store.Dispose();
    }

    /// <summary>A thing of this kind changes with a draft; what the owner plans by, and what was found out, is always kept in the boat as built.</summary>
    public static bool IsDrafted(Type kind) => !AlwaysAsBuilt.Any(type => type.IsAssignableFrom(kind));

    // The one rule for what edits may go into.
    private static Alteration? TakesEdits(BoatModel boat, string? alterationId) =>
        alterationId is not null && boat.Find<Alteration>(alterationId) is { } found && AlteredBoat.TakesEdits(found) ? found : null;

    private static bool IsDrafted(Thing thing) => IsDrafted(thing.GetType());

    private EditResult EditDraft(string summary, IReadOnlyList<ThingChange> changes)
    {
        BoatSnapshot now = Now;
        Alteration seen = now.Draft!, becomes = seen;
        List<Clash> clashes = [];
        foreach (ThingChange change in changes)
        {
            Thing? found = now.Shown.Find(change.Id);
            if (!Equals(found, change.Seen))
            {
                clashes.Add(new Clash(change.Id, change.Seen, found, change.Becomes));
            }

            becomes = AlteredBoat.WithEdit(now.AsBuilt, becomes, change.Id, change.Becomes);
        }

        return clashes.Count > 0 ? new EditClashed(clashes)
            : Equals(seen, becomes) ? new EditKept()
            : Commit($"{seen.Title}: {summary}", [BoatEdits.Replace(seen, becomes)]);
    }

    private EditResult Step(Func<long, StepResult> step, Func<Revision, Revision, string> done, string nothingFurther) => Try(() =>
    {
        Revision left = Store.Head;
        return step(left.Number) switch
        {
            { Outcome: StepOutcome.Moved, Head: var head } => new EditKept(done(left, head)),
            { Outcome: StepOutcome.NothingFurther } => new EditRefused(nothingFurther),
            _ => new EditRefused("The boat was changed elsewhere just now. Look at the newest revision and decide again."),
        };
    });

    private static EditResult Try(Func<EditResult> work)
    {
        try
        {
            return work();
        }
        catch (StoreException failure)
        {
            return new EditRefused(failure.Message);
        }
    }

    private void NoticeOtherProcess()
    {
        try
        {
            lock (_polling)
            {
                if (!_isDisposed && Store.HasMoved())
                {
                    Store.Refresh();
                }
            }
        }
        catch (Exception failure) when (failure is StoreException or ObjectDisposedException)
        {
            // The next poll looks again; an edit in the meantime tells the owner what is wrong with the file.
        }
    }

    private void OnHeadChanged(Revision head) => Advance();

    private void Advance()
    {
        BoatSnapshot next;
        CancellationToken token;
        lock (_gate)
        {
            Revision head = Store.Head;
            Alteration? draft = TakesEdits(head.Boat, _draftId);
            EditOutcome? outcome = draft is null ? null : AlteredBoat.Of(head.Boat, draft);
            next = _now with
            {
                Head = head,
                Draft = draft,
                Shown = outcome?.Boat ?? head.Boat,
                Clashes = outcome?.Clashes ?? [],
                IsReviewing = true,
            };
            Volatile.Write(ref _now, next);
            _reviewing.Cancel();
            _reviewing = new CancellationTokenSource();
            token = _reviewing.Token;
        }

        Changed?.Invoke();
        _ = Task.Factory.StartNew(() => ReviewInBackground(next, token), CancellationToken.None, TaskCreationOptions.DenyChildAttach | TaskCreationOptions.HideScheduler, _background);
    }

    private void ReviewInBackground(BoatSnapshot moment, CancellationToken token)
    {
        ReviewResult? review = null;
        string? failure = null;
        try
        {
            review = Engine.Review(moment.AsBuilt, moment.Draft, new ReviewStages(moment.Review, stage => Show(now => now with { Review = stage }, token)), token);
        }
        catch (OperationCanceledException)
        {
            return;
        }
        catch (Exception fault) when (fault is ArgumentException or InvalidOperationException or ArithmeticException or KeyNotFoundException)
        {
            failure = $"The review could not be finished: {fault.Message} The findings shown are of an earlier revision; undo the last edit or correct it.";
        }

        Show(now => now with { Review = review ?? now.Review, IsReviewing = false, ReviewFailure = failure }, token);
    }

    private void Show(Func<BoatSnapshot, BoatSnapshot> become, CancellationToken token)
    {
        lock (_gate)
        {
            if (token.IsCancellationRequested)
            {
                return;
            }

            Volatile.Write(ref _now, become(_now));
        }

        Changed?.Invoke();
    }
}
