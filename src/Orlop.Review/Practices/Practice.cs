using System.Collections.Frozen;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Conductors;

namespace Orlop.Review.Practices;

/// <summary>The chosen set of limits and tables, each with its source.</summary>
public sealed record Practice
{
    /// <summary>Id in files: <c>us-federal</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public required string Title { get; init; }

    /// <summary>What it rests on and what it leaves out.</summary>
    public required string About { get; init; }

    public required FrozenDictionary<string, Limit> Limits { get; init; }

    /// <summary>Ampacity by size and insulation, at the table's own ambient.</summary>
    public required AmpacityTable Ampacities { get; init; }

    public required bool IsAmpacityFromMemory { get; init; }

    /// <summary>Factors for conductors that are loaded together.</summary>
    public required BundleFactorTable Groupings { get; init; }

    public required bool IsGroupingFromMemory { get; init; }

    /// <summary>A limit of the closed list; null when the practice has none, and the check that wants it is unknown.</summary>
    public Limit? Find(string id) => Limits.GetValueOrDefault(id);

    private sealed record Chosen(Practice? Practice);

    /// <summary>The practice a boat has chosen, the same object for the same choice; null when it has chosen none or an unknown one.</summary>
    public static Practice? Of(BoatModel boat, Memo memo) => boat.All<PracticeChoice>().FirstOrDefault() is { } choice
        ? memo.Get(choice, () => new Chosen(Of(choice))).Practice
        : null;

    /// <summary>The practice a boat has chosen with its owner's limits, or null when it has chosen none or an unknown one.</summary>
    public static Practice? Of(PracticeChoice? choice)
    {
        if (choice is null || !PracticeFiles.ById.TryGetValue(choice.Basis, out Practice? practice))
        {
            return null;
        }

        Dictionary<string, Limit> limits = new(practice.Limits, StringComparer.Ordinal);
        foreach (OwnLimit own in choice.Own)
        {
            limits[own.Limit] = new Limit(own.Limit, own.Value, $"the owner's own: {own.Reason}", false);
        }

        return practice with { Limits = limits.ToFrozenDictionary(StringComparer.Ordinal) };
    }
}
