using System.Collections.Immutable;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>The findings that are to be cleared, and what is given up of them where nothing clears them all.</summary>
internal sealed class MendTargets
{
    private readonly List<Finding> _targets = [];
    private readonly List<Finding> _beyond = [];
    private readonly HashSet<(string, string)> _mayBeTight = [];
    private readonly bool _isTightBad;
    private bool _isNewTightBad;

    /// <param name="findings">The findings.</param>
    /// <param name="request">What is asked.</param>
    /// <param name="hasChoice">Whether anything may be changed for the sake of one; where not, it is beyond mending from the start.</param>
    public MendTargets(IEnumerable<Finding> findings, MendRequest request, Func<Finding, bool> hasChoice)
    {
        (_isTightBad, _isNewTightBad) = (request.IsTightToo, request.IsTightToo && request.Only.IsEmpty);
        foreach (Finding finding in findings)
        {
            (hasChoice(finding) ? _targets : _beyond).Add(finding);
        }
    }

    /// <summary>Something is still to be cleared.</summary>
    public bool Any => _targets.Count > 0;

    /// <summary>What no choice clears, or for which there is none.</summary>
    public IEnumerable<Finding> Beyond => _beyond;

    /// <summary>What is asked of a set now.</summary>
    public MendAsked Asked() => new(_targets.Select(KeyOf).ToHashSet(), _isTightBad, _isNewTightBad, _mayBeTight.ToHashSet());

    /// <summary>Gives up the least that lets the search go on, after one that found nothing; false where nothing can be given up.</summary>
    /// <param name="hopeless">What no choice clears; null where it is no single finding.</param>
    public bool Relax(Objection? hopeless)
    {
        if (hopeless is null)
        {
            bool wasBad = _isNewTightBad;
            _isNewTightBad = false;
            return wasBad;
        }

        Finding? stubborn = _targets.Find(target => KeyOf(target) == hopeless.Key);
        if (_isTightBad && stubborn?.Verdict != Verdict.Tight && _mayBeTight.Add(hopeless.Key))
        {
            // It may be that it cannot hold, and can be tight.
            _beyond.AddRange(stubborn is null ? [] : new[] { stubborn });
            return true;
        }

        if (stubborn is null)
        {
            return false;
        }

        _targets.Remove(stubborn);
        _beyond.AddRange(_beyond.Contains(stubborn) ? [] : new[] { stubborn });
        return true;
    }

    /// <summary>Gives up the one that stands against most of the sets that were reviewed, where no set clears them all and no single one is hopeless.</summary>
    /// <param name="reviewed">What stands against each of these sets.</param>
    /// <returns>What was given up, and what stood in the way of sets that cleared it.</returns>
    public MendConflict GiveUp(IReadOnlyCollection<ImmutableArray<Objection>> reviewed)
    {
        Finding given = _targets.OrderByDescending(target => reviewed.Count(objections => objections.Any(objection => objection.Key == KeyOf(target))))
            .ThenBy(target => target.CheckId, StringComparer.Ordinal).ThenBy(target => target.SubjectId, StringComparer.Ordinal).First();
        _targets.Remove(given);
        _beyond.AddRange(_beyond.Contains(given) ? [] : new[] { given });
        Finding? against = reviewed.Where(objections => objections.All(objection => objection.Key != KeyOf(given)))
            .SelectMany(objections => objections.Select(objection => objection.Finding))
            .GroupBy(KeyOf).OrderByDescending(group => group.Count()).ThenBy(group => group.Key).FirstOrDefault()?.First();
        return new MendConflict(given, against);
    }

    private static (string, string) KeyOf(Finding finding) => (finding.CheckId, finding.SubjectId);
}
