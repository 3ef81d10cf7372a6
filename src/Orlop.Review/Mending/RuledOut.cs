using System.Collections.Immutable;
using System.Numerics;

namespace Orlop.Review.Mending;

/// <summary>Sets that are ruled out together: those that choose, for every slot, one of these choices. A choice is a bit.</summary>
internal sealed record RuledOut(ImmutableArray<ulong> Choices)
{
    /// <summary>The set is one of them.</summary>
    public bool Has(ReadOnlySpan<int> choice)
    {
        for (int slot = 0; slot < choice.Length; slot++)
        {
            if ((Choices[slot] & (1UL << choice[slot])) == 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Slots by which a set out of these domains may still escape.</summary>
    public int EscapeCount(ReadOnlySpan<ulong> domains)
    {
        int count = 0;
        for (int slot = 0; slot < domains.Length; slot++)
        {
            count += (domains[slot] & ~Choices[slot]) != 0 ? 1 : 0;
        }

        return count;
    }

    /// <summary>The parts that domains fall into without these sets: each escapes by one slot more, none twice.</summary>
    public IEnumerable<ulong[]> Without(ulong[] domains)
    {
        ulong[] within = [.. domains];
        for (int slot = 0; slot < domains.Length; slot++)
        {
            ulong escape = within[slot] & ~Choices[slot];
            if (escape != 0)
            {
                ulong[] part = [.. within];
                part[slot] = escape;
                yield return part;
                within[slot] &= Choices[slot];
                if (within[slot] == 0)
                {
                    yield break;
                }
            }
        }
    }

    /// <summary>The first choice of a domain: the least, for choices stand in rising order.</summary>
    public static int First(ulong domain) => BitOperations.TrailingZeroCount(domain);
}
