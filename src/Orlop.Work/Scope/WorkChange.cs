using Orlop.Boat.Things;

namespace Orlop.Work.Scope;

/// <summary>An edit and what it means for the hands.</summary>
internal sealed record WorkChange(Edit Edit, ChangeKind Kind)
{
    public string Id => Edit.Id;

    /// <summary>The thing as it will be; as it was, for a removal.</summary>
    public Thing Thing => (Edit.Becomes ?? Edit.Was)!;

    /// <summary>It was not in the boat before.</summary>
    public bool IsAddition => Edit.Was is null;

    public bool IsBuilt => Edit.BuiltOn is not null;

    /// <summary>An old cable of the same id comes out first.</summary>
    public bool ReplacesCable => Kind == ChangeKind.Cable && !IsAddition;

    public static WorkChange Of(Edit edit) => new(edit, (edit.Was, edit.Becomes) switch
    {
        (_, null) => ChangeKind.Remove,
        (null, Cable) => ChangeKind.Cable,
        (null, Link) => ChangeKind.Link,
        (null, Part or Way or Gear) => ChangeKind.Fit,
        (Cable was, Cable becomes) => OfCables(was, becomes),
        (Link was, Link becomes) => was.From == becomes.From && was.To == becomes.To ? ChangeKind.Record : ChangeKind.Link,
        (Part was, Part becomes) => PartIdentity.Of(was) != PartIdentity.Of(becomes) ? ChangeKind.Exchange : Moved(was.Place, was.Space, becomes.Place, becomes.Space),
        (Gear was, Gear becomes) => Moved(was.Place, was.Space, becomes.Place, becomes.Space),
        (Way was, Way becomes) => was.Means == becomes.Means && was.Points == becomes.Points ? ChangeKind.Record : ChangeKind.Exchange,
        _ => ChangeKind.Record,
    });

    private static ChangeKind Moved(object? place, string? space, object? newPlace, string? newSpace) =>
        Equals(place, newPlace) && space == newSpace ? ChangeKind.Record : ChangeKind.Move;

    private static ChangeKind OfCables(Cable was, Cable becomes)
    {
        bool isSameCable = was.AreaMm2.Value == becomes.AreaMm2.Value && was.Strands == becomes.Strands && was.InsulationC?.Value == becomes.InsulationC?.Value
            && was.IsSheathed == becomes.IsSheathed && was.Run.SequenceEqual(becomes.Run) && was.Cores.Select(core => core.Id).SequenceEqual(becomes.Cores.Select(core => core.Id));
        bool areSameEnds = was.Cores.Select(Ends).SequenceEqual(becomes.Cores.Select(Ends));
        return !isSameCable ? ChangeKind.Cable : areSameEnds ? ChangeKind.Record : ChangeKind.Ends;
    }

    private static object Ends(Core core) =>
        (core.From, core.To, core.FromEnd?.Means, core.FromEnd?.StudMm, core.ToEnd?.Means, core.ToEnd?.StudMm);
}
