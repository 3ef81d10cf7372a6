namespace Orlop.App.Sessions;

/// <summary>Work that is done off the render path; of several that were begun, the newest is shown.</summary>
public sealed class LatestWork<T>
    where T : class
{
    private int _turn;

    /// <summary>The newest that is done; null before the first, or where it found nothing.</summary>
    public T? Result { get; private set; }

    /// <summary>Nothing is done yet.</summary>
    public bool IsFirst { get; private set; } = true;

    /// <summary>Why the newest could not be done; null where it could.</summary>
    public string? Failure { get; private set; }

    /// <summary>Begins; when it is done and still the newest, <paramref name="show"/> draws it.</summary>
    public async Task Begin(BoatSession session, Func<T?> work, Action show)
    {
        int turn = ++_turn;
        T? result = null;
        string? failure = null;
        try
        {
            result = await session.InBackground(work);
        }
        catch (Exception fault) when (fault is ArgumentException or InvalidOperationException or ArithmeticException or KeyNotFoundException)
        {
            failure = $"It could not be worked out: {fault.Message}";
        }

        if (turn == _turn)
        {
            (Result, Failure, IsFirst) = (failure is null ? result : Result, failure, false);
            show();
        }
    }
}
