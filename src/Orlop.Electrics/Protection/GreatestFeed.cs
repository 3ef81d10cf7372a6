using System.Collections.Immutable;
using Orlop.Electrics.Isolation;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>A fuse or breaker between two pieces of plain metal.</summary>
/// <param name="Id">Its id.</param>
/// <param name="A">Number of the piece at one side.</param>
/// <param name="B">Number of the piece at the other.</param>
/// <param name="RatedA">Its rating, above 0; null when not known.</param>
public sealed record FeedDevice(string Id, int A, int B, double? RatedA);

/// <summary>What a source gives at a piece of plain metal.</summary>
/// <param name="Id">Its id.</param>
/// <param name="At">Number of the piece that its pole is on.</param>
/// <param name="LimitA">The most it gives by itself, above 0; infinite for a battery, null when not known.</param>
public sealed record FeedSource(string Id, int At, double? LimitA);

/// <summary>A device or source that limits a feed.</summary>
/// <param name="Id">Its id.</param>
/// <param name="LimitA">Its rating, or the most a source gives; infinite where that is not known or a battery gives it.</param>
public sealed record FeedPart(string Id, double LimitA);

/// <summary>What can be fed before something opens.</summary>
/// <param name="LeastA">The most that is sure to be possible: what is not known counted as nothing.</param>
/// <param name="MostA">The most that may be possible: what is not known counted as unlimited. Infinite where a battery reaches it with nothing between.</param>
/// <param name="LimitedBy">What limits it: the ratings that together are <see cref="MostA"/>.</param>
public sealed record FeedLimit(double LeastA, double MostA, ImmutableArray<FeedPart> LimitedBy)
{
    /// <summary>Nothing reaches it.</summary>
    public static FeedLimit None { get; } = new(0, 0, []);

    /// <summary>The limit rests on no rating that is not known.</summary>
    public bool IsKnown => LeastA == MostA;
}

/// <summary>
/// The greatest current, in amperes, that a piece of plain metal can be fed before something opens: the least sum of ratings over any set of devices
/// that parts it from every source (maximum flow is minimum cut, Ford and Fulkerson 1956). Two fuses side by side count together.
/// </summary>
public static class GreatestFeed
{
    // Ratings are compared in whole microamperes; the sum is that of the ratings as given.
    private const double UnitsPerA = 1e6;
    private const double MostRatingA = 1e6;

    /// <summary>What can feed one piece.</summary>
    /// <param name="pieceCount">Pieces are numbered from 0.</param>
    /// <param name="devices">The devices between them.</param>
    /// <param name="sources">What gives power.</param>
    /// <param name="piece">The piece asked about.</param>
    public static FeedLimit Of(int pieceCount, IReadOnlyList<FeedDevice> devices, IReadOnlyList<FeedSource> sources, int piece)
    {
        Check(devices, sources);
        if (sources.FirstOrDefault(source => source.At == piece && source.LimitA is { } limit && double.IsPositiveInfinity(limit)) is { } bare)
        {
            return new FeedLimit(double.PositiveInfinity, double.PositiveInfinity, [new FeedPart(bare.Id, double.PositiveInfinity)]);
        }

        (double mostA, ImmutableArray<FeedPart> limitedBy) = Cut(pieceCount, devices, sources, piece, double.PositiveInfinity);
        bool isAllKnown = devices.All(device => device.RatedA is not null) && sources.All(source => source.LimitA is not null);
        return new FeedLimit(isAllKnown ? mostA : Cut(pieceCount, devices, sources, piece, 0).SumA, mostA, limitedBy);
    }

    private static (double SumA, ImmutableArray<FeedPart> Of) Cut(
        int pieceCount, IReadOnlyList<FeedDevice> devices, IReadOnlyList<FeedSource> sources, int piece, double unknownA)
    {
        MinimumCut cut = new(pieceCount + 1, devices.Count + sources.Count);
        foreach (FeedDevice device in devices)
        {
            long units = Units(device.RatedA ?? unknownA);
            cut.Join(device.A, device.B, units, units);
        }

        foreach (FeedSource source in sources)
        {
            cut.Join(pieceCount, source.At, Units(source.LimitA ?? unknownA), 0);
        }

        bool[] isNear = cut.EndSide(pieceCount, piece);
        FeedPart[] limitedBy =
        [
            .. devices.Where(device => isNear[device.A] != isNear[device.B]).Select(device => new FeedPart(device.Id, device.RatedA ?? unknownA)),
            .. sources.Where(source => isNear[source.At]).Select(source => new FeedPart(source.Id, source.LimitA ?? unknownA)),
        ];
        return (limitedBy.Sum(part => part.LimitA), [.. limitedBy]);
    }

    private static long Units(double ratingA) => double.IsPositiveInfinity(ratingA) ? MinimumCut.Uncuttable : (long)Math.Round(ratingA * UnitsPerA);

    private static void Check(IReadOnlyList<FeedDevice> devices, IReadOnlyList<FeedSource> sources)
    {
        foreach (FeedDevice device in devices)
        {
            if (device.RatedA is { } ratedA)
            {
                Guard.Positive(ratedA, MostRatingA, "A", device.Id);
            }
        }

        foreach (FeedSource source in sources)
        {
            if (source.LimitA is { } limitA)
            {
                Guard.Positive(limitA, double.PositiveInfinity, "A", source.Id);
            }
        }
    }
}
