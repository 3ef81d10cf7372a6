using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Work.Bring;

/// <summary>So many pieces of one kind, and which stock items are of that kind.</summary>
internal sealed record PieceNeed(string Key, BringKind Kind, Sentence What, int Count, ImmutableArray<string> For, Func<StockItem, bool> Fits)
{
    public ImmutableArray<Sentence> Remarks { get; init; } = [];

    /// <summary>It is known what they are; otherwise nobody can say what is to be bought.</summary>
    public bool IsKindKnown { get; init; } = true;

    /// <summary>The line of the list, taking from stock in the owner's order.</summary>
    public BringItem Match(IEnumerable<StockItem> stock)
    {
        int left = Count;
        ImmutableArray<StockTake>.Builder takes = ImmutableArray.CreateBuilder<StockTake>();
        foreach (StockItem item in stock.Where(item => item.PieceCount > 0 && Fits(item)))
        {
            int taken = Math.Min(left, item.PieceCount!.Value);
            if (taken > 0)
            {
                takes.Add(new StockTake(item.Id, item.Title, Pieces(taken), item.Where));
                left -= taken;
            }
        }

        return new BringItem
        {
            Key = Key,
            Kind = Kind,
            What = What,
            Needed = Pieces(Count),
            ToBuy = IsKindKnown ? Pieces(left) : null,
            State = !IsKindKnown ? StockState.Look : left == 0 ? StockState.InStock : left < Count ? StockState.Partly : StockState.ToBuy,
            Takes = takes.ToImmutable(),
            Remarks = Remarks,
            For = For,
        };
    }

    public static Amount Pieces(int count) => new(count, "Count");
}
