namespace Orlop.App.Tests.Sessions;

/// <summary>Does each task at once on the thread that gives it, but for those it is told to hold back until they are let go.</summary>
internal sealed class HandedScheduler : TaskScheduler
{
    private readonly List<Task> _held = [];
    private bool _isHolding;

    public override int MaximumConcurrencyLevel => 1;

    /// <summary>Holds back what is given from now on.</summary>
    public void Hold() => _isHolding = true;

    /// <summary>Does what was held back, in its order, and holds back nothing more.</summary>
    public void LetGo()
    {
        _isHolding = false;
        Task[] held = [.. _held];
        _held.Clear();
        foreach (Task task in held)
        {
            TryExecuteTask(task);
        }
    }

    protected override IEnumerable<Task> GetScheduledTasks() => _held;

    protected override void QueueTask(Task task)
    {
        if (_isHolding)
        {
            _held.Add(task);
            return;
        }

        TryExecuteTask(task);
    }

    protected override bool TryExecuteTaskInline(Task task, bool taskWasPreviouslyQueued) => !_isHolding && TryExecuteTask(task);
}
