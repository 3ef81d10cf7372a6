using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Electrics;

/// <summary>The electrics of a boat: every check in this folder's Checks, found by its type.</summary>
public sealed class ElectricsDiscipline : IDiscipline
{
    private readonly CheckSet<ElectricsView> _checks = new();

    public string Id => "electrics";

    public ImmutableArray<CheckDescription> Checks => _checks.Descriptions;

    public bool Reads(Thing thing) => thing is Part or Cable or Link or Space or Way or WayPreferences or Condition or PracticeChoice or CataloguePart or Gear { HeatW: not null };

    public IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
    {
        ElectricsView view = new(boat, practice, memo, token);
        view.SolveAhead(token);
        return _checks.Run(view, token);
    }
}
