using System.Collections.Concurrent;

namespace Orlop.Review;

/// <summary>
/// Remembers results by the content of their input, so that an edit solves again only what it touches. Safe from several threads.
/// Bounded: when full, it forgets what was neither made nor asked for since the last time it was full. It grows beyond its capacity where it keeps most of it: there is always room for half as much again.
/// </summary>
public sealed class Memo(int capacity = 4096)
{
    private sealed class Entry(Lazy<object> value)
    {
        public Lazy<object> Value { get; } = value;

        public bool WasAsked { get; set; } = true;
    }

    private readonly ConcurrentDictionary<(Type Kind, object Key), Entry> _entries = new();
    private readonly ConcurrentDictionary<Type, long> _computedCounts = new();
    private readonly Lock _forgetting = new();
    private volatile int _keptCount;

    private int Full => Math.Max(capacity, _keptCount + (Math.Max(capacity, _keptCount) / 2));

    /// <summary>How many results were computed, not remembered, since this memo was made.</summary>
    public long ComputedCount => _computedCounts.Values.Sum();

    /// <summary>How many results of one kind were computed.</summary>
    public long ComputedCountOf<T>()
        where T : class => _computedCounts.GetValueOrDefault(typeof(T));

    /// <summary>
    /// The remembered result for a key that is equal for equal inputs, or the computed one. Asked for by several threads, it is computed once. A computation
    /// that throws, because it was cancelled or for a reason of its own, is not remembered, and whoever waited for it computes for himself. It must not ask for itself.
    /// </summary>
    public T Get<T>(object key, Func<T> compute)
        where T : class
    {
        while (true)
        {
            bool isOwn = false;
            if (_entries.TryGetValue((typeof(T), key), out Entry? entry))
            {
                entry.WasAsked = true;
            }
            else
            {
                entry = _entries.GetOrAdd((typeof(T), key), new Entry(new Lazy<object>(() =>
                {
                    isOwn = true;
                    return Computed(compute);
                })));
            }

            try
            {
                return (T)entry.Value.Value;
            }
            catch (Exception) when (Forgotten(key, entry, isOwn))
            {
                // Somebody else's computation was cancelled or failed: this one is made anew.
            }
        }

        bool Forgotten(object failed, Entry entry, bool isOwn)
        {
            _entries.TryRemove(KeyValuePair.Create((typeof(T), failed), entry));
            return !isOwn;
        }
    }

    /// <summary>The result for a key is there and need not be computed.</summary>
    public bool Knows<T>(object key)
        where T : class => _entries.TryGetValue((typeof(T), key), out Entry? entry) && entry.Value.IsValueCreated;

    private T Computed<T>(Func<T> compute)
        where T : class
    {
        T value = compute();
        _computedCounts.AddOrUpdate(typeof(T), 1, (_, count) => count + 1);
        if (_entries.Count > Full)
        {
            Forget();
        }

        return value;
    }

    // Once for all who find it full: a second time at once would forget everything.
    private void Forget()
    {
        lock (_forgetting)
        {
            if (_entries.Count > Full)
            {
                ForgetUnasked();
                _keptCount = _entries.Count;
            }
        }
    }

    private void ForgetUnasked()
    {
        foreach ((var key, Entry entry) in _entries)
        {
            if (!entry.WasAsked)
            {
                _entries.TryRemove(key, out _);
            }

            entry.WasAsked = false;
        }
    }
}
