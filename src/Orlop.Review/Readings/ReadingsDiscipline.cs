using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Readings;

/// <summary>
/// The readings on record: every check in this folder's Checks, found by its type. A discipline of its own beside the electrics, so that writing down a
/// reading judges no circuit again.
/// </summary>
public sealed class ReadingsDiscipline : IDiscipline
{
    private readonly CheckSet<ReadingsView> _checks = new();

    public string Id => "readings";

    public ImmutableArray<CheckDescription> Checks => _checks.Descriptions;

    public bool IsOfWorkDone => true;

    public bool Reads(Thing thing) => thing is Part or Cable or Link or Space or Way or Condition or PracticeChoice or Reading or Alteration { Status: AlterationStatus.Accepted or AlterationStatus.UnderWay or AlterationStatus.Built };

    public IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token) =>
        boat.All<Reading>().Any() ? _checks.Run(new ReadingsView(boat, practice, memo, token), token) : [];
}
