using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability.Checks;

namespace Orlop.Review.Stability;

/// <summary>Weights, floating position and stability: every check in this folder's Checks, found by its type.</summary>
public sealed class StabilityDiscipline : IDiscipline
{
    private readonly CheckSet<StabilityView> _checks = new();

    public string Id => "stability";

    public ImmutableArray<CheckDescription> Checks => _checks.Descriptions;

    public bool Reads(Thing thing) => thing is Particulars or HullLines or HullOpening or Tank or Space or Way or Gear or Part or Cable or Deadweight
        or BareBoat or BerthTest or StabilityBasis or Condition or PracticeChoice or Alteration;

    // What an alteration makes of masses, and when: neither a tick nor a remark of its work weighs anything.
    public Thing AsRead(Thing thing) => thing is Alteration alteration
        ? new Alteration { Id = alteration.Id, Status = alteration.Status == AlterationStatus.Dropped ? AlterationStatus.Dropped : AlterationStatus.Draft, Edits = [.. alteration.Edits.Where(edit => IsWeighed(edit.Was) || IsWeighed(edit.Becomes))] }
        : thing;

    private static bool IsWeighed(Thing? thing) => thing is Gear or Part or Cable or Deadweight;

    public IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
    {
        StabilityView view = new(boat, practice, memo);
        if (!view.IsAsked)
        {
            // Drawings and rules go by the particulars before there is a hull.
            return new ParticularsPossibleCheck().Run(view);
        }

        Parallel.ForEach(view.Conditions, new ParallelOptions { CancellationToken = token }, condition => view.FloatingIn(condition));
        Dictionary<string, CheckDescription> checks = Checks.ToDictionary(check => check.Id, StringComparer.Ordinal);
        return EitherWay.Of(view, checks, one => _checks.Run(one, token));
    }
}
