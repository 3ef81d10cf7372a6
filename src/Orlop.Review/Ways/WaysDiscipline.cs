using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Ways;

/// <summary>The ways of a boat's cables: every check in this folder's Checks, found by its type.</summary>
public sealed class WaysDiscipline : IDiscipline
{
    private readonly CheckSet<WaysView> _checks = new();

    public string Id => "ways";

    public ImmutableArray<CheckDescription> Checks => _checks.Descriptions;

    public bool Reads(Thing thing) => thing is Part or Cable or Link or Space or Way or Condition or PracticeChoice or Compass or Alteration;

    public IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token) =>
        boat.Things.Any(thing => thing is Way or Compass) ? _checks.Run(new WaysView(boat, practice, memo, token), token) : [];
}
