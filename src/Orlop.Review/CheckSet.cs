using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Review.Findings;

namespace Orlop.Review;

/// <summary>All checks that read one kind of view, found by their type, in the order of their ids. They run beside each other; their findings come in that order.</summary>
internal sealed class CheckSet<TView>
{
    private readonly ImmutableArray<ICheck<TView>> _checks =
    [
        .. typeof(TView).Assembly.GetTypes()
            .Where(type => type.IsClass && !type.IsAbstract && type.IsAssignableTo(typeof(ICheck<TView>)))
            .Select(type => (ICheck<TView>)Activator.CreateInstance(type)!)
            .OrderBy(check => check.Description.Id, StringComparer.Ordinal),
    ];

    /// <summary>What each check is.</summary>
    public ImmutableArray<CheckDescription> Descriptions => [.. _checks.Select(check => check.Description)];

    /// <summary>All findings on a view.</summary>
    public IEnumerable<Finding> Run(TView view, CancellationToken token)
    {
        Finding[][] findings = new Finding[_checks.Length][];
        // One at a time, since one check may take as long as ten others.
        Parallel.ForEach(
            Partitioner.Create(Enumerable.Range(0, findings.Length), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { CancellationToken = token },
            check => findings[check] = [.. _checks[check].Run(view)]);
        return findings.SelectMany(found => found);
    }
}
