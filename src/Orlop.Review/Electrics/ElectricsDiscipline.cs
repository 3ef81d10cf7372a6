using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;

namespace Orlop.Review.Electrics;

/// <summary>The electrics of a boat: every check in this folder's Checks, found by its type.</summary>
public sealed class ElectricsDiscipline : IDiscipline
{
    private readonly ImmutableArray<IElectricsCheck> _checks =
    [
        .. typeof(ElectricsDiscipline).Assembly.GetTypes()
            .Where(type => type.IsClass && !type.IsAbstract && type.IsAssignableTo(typeof(IElectricsCheck)))
            .Select(type => (IElectricsCheck)Activator.CreateInstance(type)!)
            .OrderBy(check => check.Description.Id, StringComparer.Ordinal),
    ];

    public string Id => "electrics";

    public ImmutableArray<CheckDescription> Checks => [.. _checks.Select(check => check.Description)];

    public bool Reads(Thing thing) => thing is Part or Cable or Link or Space or Way or Condition or PracticeChoice;

    public IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
    {
        ElectricsView view = new(boat, practice, memo, token);
        Finding[][] findings = new Finding[_checks.Length][];
        Parallel.For(0, findings.Length, new ParallelOptions { CancellationToken = token }, check => findings[check] = [.. _checks[check].Run(view)]);
        return findings.SelectMany(found => found);
    }
}
