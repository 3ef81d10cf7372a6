using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Energy;

/// <summary>The energy of a boat's day plans: every check in this folder's Checks, found by its type.</summary>
public sealed class EnergyDiscipline : IDiscipline
{
    private readonly CheckSet<EnergyView> _checks = new();

    public string Id => "energy";

    public ImmutableArray<CheckDescription> Checks => _checks.Descriptions;

    // Spaces, what heats them and where cables run tell how warm a charger gets.
    public bool Reads(Thing thing) => thing is Part or Cable or Link or Condition or PracticeChoice or Climate or DayPlan or Space or Way or Gear { HeatW: not null };

    public IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token) =>
        boat.All<DayPlan>().Any() ? _checks.Run(new EnergyView(boat, practice, memo, token), token) : [];
}
