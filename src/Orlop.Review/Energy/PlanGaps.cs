using System.Collections.Immutable;
using Orlop.Review.Findings;

namespace Orlop.Review.Energy;

/// <summary>What a plan lacks, and what was taken for granted.</summary>
internal sealed class PlanGaps
{
    private readonly List<FindingInput> _missing = [];
    private readonly List<string> _assumed = [];

    public ImmutableArray<FindingInput> Missing => [.. _missing.Distinct()];

    public ImmutableArray<string> Assumed => [.. _assumed.Distinct()];

    /// <summary>A value that must be there.</summary>
    public void Need(object? value, string thingId, string field)
    {
        if (value is null)
        {
            _missing.Add(new FindingInput(thingId, field, IsMissing: true));
        }
    }

    /// <summary>A value that cannot be as it is typed.</summary>
    public void InTheWay(string thingId, string field) => _missing.Add(new FindingInput(thingId, field));

    /// <summary>Something that is missing or in the way, as another found it.</summary>
    public void Add(FindingInput input) => _missing.Add(input);

    public void Assume(string words) => _assumed.Add(words);
}
