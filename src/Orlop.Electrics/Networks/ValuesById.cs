using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace Orlop.Electrics.Networks;

/// <summary>Values by id over an index that many results share, so that a solve builds no dictionary of its own.</summary>
internal sealed class ValuesById<T>(IdIndex index, T[] values) : IReadOnlyDictionary<string, T>
{
    public int Count => index.Ids.Length;

    public IEnumerable<string> Keys => index.Ids;

    public IEnumerable<T> Values => Array.AsReadOnly(values);

    public T this[string key] => TryGetValue(key, out var value)
        ? value
        : throw new KeyNotFoundException($"'{key}' is not among the {Count} ids of this result.");

    public bool ContainsKey(string key) => index.Find(key) >= 0;

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out T value)
    {
        var at = index.Find(key);
        value = at >= 0 ? values[at] : default;
        return at >= 0;
    }

    public IEnumerator<KeyValuePair<string, T>> GetEnumerator()
    {
        for (var k = 0; k < values.Length; k++)
        {
            yield return new KeyValuePair<string, T>(index.Ids[k], values[k]);
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Ids and their places; the dictionary is made when it is first asked.</summary>
internal sealed class IdIndex(string[] ids)
{
    private readonly Lazy<Dictionary<string, int>> _places = new(() =>
    {
        var places = new Dictionary<string, int>(ids.Length, StringComparer.Ordinal);
        for (var k = 0; k < ids.Length; k++)
        {
            places.Add(ids[k], k);
        }

        return places;
    });

    public string[] Ids => ids;

    public int Find(string id) => _places.Value.TryGetValue(id, out var place) ? place : -1;
}
