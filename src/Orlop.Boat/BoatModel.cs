using System.Collections.Concurrent;
using System.Text.Json.Serialization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat;

/// <summary>The whole boat: one immutable value. An edit makes a new one.</summary>
public sealed record BoatModel
{
    /// <summary>Version of the file format that this program writes.</summary>
    public const int CurrentFormatVersion = 1;

    /// <summary>Version of the file format.</summary>
    public int FormatVersion { get; init; } = CurrentFormatVersion;

    /// <summary>All things of the boat as built, in the owner's order, and the alterations drafted against it.</summary>
    public ValueList<Thing> Things { get; init; } = [];

    private Dictionary<string, Thing>? _byId;
    private ConcurrentDictionary<Type, object>? _byKind;

    private Dictionary<string, Thing> ById
    {
        get
        {
            if (_byId is null)
            {
                Dictionary<string, Thing> byId = new(Things.Count, StringComparer.Ordinal);
                foreach (Thing thing in Things)
                {
                    byId.TryAdd(thing.Id, thing);
                }

                _byId = byId;
            }

            return _byId;
        }
    }

    /// <summary>The thing with this id, or null.</summary>
    public Thing? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>The thing with this id if it is of this kind, or null.</summary>
    public T? Find<T>(string id)
        where T : Thing => Find(id) as T;

    /// <summary>All things of one kind, in the owner's order.</summary>
    public IEnumerable<T> All<T>()
        where T : Thing => (T[])(_byKind ??= new()).GetOrAdd(typeof(T), _ => Things.OfType<T>().ToArray());

    /// <summary>The particulars, or null in a boat that has none yet.</summary>
    [JsonIgnore]
    public Particulars? Particulars => All<Particulars>().FirstOrDefault();

    /// <summary>The same boat with these things.</summary>
    public BoatModel WithThings(IEnumerable<Thing> things) => new() { FormatVersion = FormatVersion, Things = things.ToValueList() };

    public bool Equals(BoatModel? other) => other is not null && FormatVersion == other.FormatVersion && Things == other.Things;

    public override int GetHashCode() => HashCode.Combine(FormatVersion, Things);
}
