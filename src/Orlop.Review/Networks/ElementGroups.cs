using System.Collections.Immutable;

namespace Orlop.Review.Networks;

/// <summary>The group of each element of one kind, by its place in the list; below 0 for one that is left out.</summary>
internal sealed class ElementGroups
{
    private readonly int[] _groups;
    private readonly int[] _counts;

    public ElementGroups(int groupCount, IEnumerable<int> groups)
    {
        _groups = [.. groups];
        _counts = new int[groupCount];
        foreach (int group in _groups)
        {
            if (group >= 0)
            {
                _counts[group]++;
            }
        }
    }

    /// <summary>The elements of each group, in the order of the list.</summary>
    public ImmutableArray<T>[] Split<T>(ImmutableArray<T> elements)
    {
        ImmutableArray<T>.Builder[] builders = [.. _counts.Select(ImmutableArray.CreateBuilder<T>)];
        for (int k = 0; k < _groups.Length; k++)
        {
            if (_groups[k] >= 0)
            {
                builders[_groups[k]].Add(elements[k]);
            }
        }

        return [.. builders.Select(builder => builder.MoveToImmutable())];
    }
}
