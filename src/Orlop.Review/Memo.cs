using System.Collections.Concurrent;

namespace Orlop.Review;

/// <summary>
/// Remembers results by the content of their input, so that an edit solves again only what it touches. Safe from several threads.
/// Bounded: when full, it forgets what was not asked for since the last time it was full.
/// </summary>
public sealed class Memo(int capacity = 4096)
{
    private sealed class Entry(Lazy<object> value)
    {
        public Lazy<object> Value { get; } = value;

        public bool WasAsked { get; set; }
    }

    private readonly ConcurrentDictionary<(Type Kind, object Key), Entry> _entries = new();
    private readonly ConcurrentDictionary<Type, long> _computedCounts = new();

    /// <summary>How many results were computed, not remembered, since this memo was made.</summary>
    public long ComputedCount => _computedCounts.Values.Sum();

    /// <summary>How many results of one kind were computed.</summary>
    public long ComputedCountOf<T>()
        where T : class => _computedCounts.GetValueOrDefault(typeof(T));

    /// <summary>
    /// The remembered result for a key that is equal for equal inputs, or the computed one. Asked for by several threads, it is computed once; a
    /// computation that throws is not remembered, and must not ask for itself.
    /// </summary>
    public T Get<T>(object key, Func<T> compute)
        where T : class
    {
        if (_entries.TryGetValue((typeof(T), key), out Entry? entry))
        {
            entry.WasAsked = true;
        }
        else
        {
            entry = _entries.GetOrAdd((typeof(T), key), new Entry(new Lazy<object>(() => Computed(compute))));
        }

        try
        {
            return (T)entry.Value.Value;
        }
        catch
        {
            _entries.TryRemove(KeyValuePair.Create((typeof(T), key), entry));
            throw;
        }
    }

    private T Computed<T>(Func<T> compute)
        where T : class
    {
        T value = compute();
        _computedCounts.AddOrUpdate(typeof(T), 1, (_, count) => count + 1);
        if (_entries.Count > capacity)
        {
            Forget();
        }

        return value;
    }

    private void Forget()
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
