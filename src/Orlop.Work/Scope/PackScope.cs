using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review.Practices;

namespace Orlop.Work.Scope;

/// <summary>An alteration as the planners of its work pack see it.</summary>
internal sealed class PackScope
{
    private readonly Dictionary<string, int> _stepsFromSource;

    public PackScope(BoatModel asBuilt, Alteration alteration)
    {
        AsBuilt = asBuilt;
        Before = BeforeWork(asBuilt, alteration);
        WiringBefore = Wiring.Of(Before);
        Alteration = alteration;
        EditOutcome outcome = AlteredBoat.Of(asBuilt, alteration);
        AsAltered = outcome.Boat;
        Clashes = [.. outcome.Clashes];
        Edits = [.. alteration.Edits.Where(edit => edit.Was is not null || edit.Becomes is not null)];
        Changes = [.. Edits.Where(edit => !Assumptions.IsOne(edit)).Select(WorkChange.Of)];
        Whole = Union(AsAltered, alteration);
        WholeWiring = Wiring.Of(Whole);
        AlteredWiring = Wiring.Of(AsAltered);
        Words = new PartWords(Whole);
        Practice = Practice.Of(asBuilt.All<PracticeChoice>().FirstOrDefault());
        _stepsFromSource = StepsFromSource(Whole, WholeWiring);
    }

    public BoatModel AsBuilt { get; }

    /// <summary>The boat before anything of the alteration was built: what is recorded meanwhile changes neither the plan nor its numbers.</summary>
    public BoatModel Before { get; }

    public Wiring WiringBefore { get; }

    public BoatModel AsAltered { get; }

    public Alteration Alteration { get; }

    public ImmutableArray<Clash> Clashes { get; }

    /// <summary>Every edit, in the owner's order.</summary>
    public ImmutableArray<Edit> Edits { get; }

    /// <summary>One for each edit of what hands build, in the owner's order.</summary>
    public ImmutableArray<WorkChange> Changes { get; }

    /// <summary>Everything that is in the boat at any time of the work: as altered, and what is taken out.</summary>
    public BoatModel Whole { get; }

    public Wiring WholeWiring { get; }

    public Wiring AlteredWiring { get; }

    public PartWords Words { get; }

    public Practice? Practice { get; }

    /// <summary>A boat without what was built of an alteration.</summary>
    public static BoatModel BeforeWork(BoatModel asBuilt, Alteration alteration) =>
        BoatEdits.Apply(asBuilt, alteration.Edits.Where(edit => edit.BuiltOn is not null).Reverse().Select(BoatEdits.Inverse)).Boat;

    /// <summary>How many pieces of the wiring lie between a node and the nearest source; large where none feeds it.</summary>
    public int StepsFrom(string node) => _stepsFromSource.GetValueOrDefault(node, int.MaxValue);

    /// <summary>The part is a battery that the alteration adds: its leads go on last.</summary>
    public bool IsNewBattery(string partId) => Changes.Any(change => change is { IsAddition: true, Thing: BatteryBank } && change.Id == partId);

    /// <summary>Changes of these kinds.</summary>
    public IEnumerable<WorkChange> Of(params ReadOnlySpan<ChangeKind> kinds)
    {
        HashSet<ChangeKind> wanted = [.. kinds];
        return Changes.Where(change => wanted.Contains(change.Kind));
    }

    // A removed thing is put back, and a replaced cable's old ends need not be: its terminals are in the edits.
    private static BoatModel Union(BoatModel altered, Alteration alteration)
    {
        List<Thing> missing = [];
        foreach (Edit edit in alteration.Edits)
        {
            if ((edit.Becomes ?? edit.Was) is { } thing && altered.Find(edit.Id) is null && missing.TrueForAll(other => other.Id != edit.Id))
            {
                missing.Add(thing);
            }
        }

        return altered.WithThings([.. altered.Things, .. missing]);
    }

    private static Dictionary<string, int> StepsFromSource(BoatModel boat, Wiring wiring)
    {
        Dictionary<string, int> steps = new(StringComparer.Ordinal);
        Queue<string> queue = new();
        foreach (Part source in boat.All<Part>().Where(part => part is BatteryBank or Charger or ShoreInlet or DcConverter or Inverter))
        {
            PolePair poles = Poles.Giving(source)!;
            foreach (string node in new[] { poles.Plus, poles.Minus }.Where(node => steps.TryAdd(node, 0)))
            {
                queue.Enqueue(node);
            }
        }

        while (queue.TryDequeue(out string? node))
        {
            foreach (string next in wiring.At(node).Select(edge => edge.Other(node)).Where(next => steps.TryAdd(next, steps[node] + 1)))
            {
                queue.Enqueue(next);
            }
        }

        return steps;
    }
}
