using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Drawings.Circuits;

/// <summary>Finds the terminals of the return side: what is joined to a minus, neutral or earth terminal, through bars and devices.</summary>
internal static class ReturnSide
{
    private static readonly HashSet<string> ReturnNames = new(StringComparer.Ordinal)
    {
        TerminalNames.Minus, TerminalNames.InMinus, TerminalNames.OutMinus, TerminalNames.Neutral, TerminalNames.Earth,
        TerminalNames.In2, TerminalNames.Out2, TerminalNames.A2, TerminalNames.B2,
    };

    private static readonly HashSet<string> SupplyNames = new(StringComparer.Ordinal)
    {
        TerminalNames.Plus, TerminalNames.InPlus, TerminalNames.OutPlus, TerminalNames.Live, TerminalNames.A, TerminalNames.B,
    };

    /// <summary>The terminals of the return side, given all conductors as pairs of terminals.</summary>
    internal static HashSet<Terminal> Of(IEnumerable<Part> parts, IEnumerable<(Terminal From, Terminal To)> conductors)
    {
        Dictionary<string, Part> byId = [];
        foreach (Part part in parts)
        {
            byId.TryAdd(part.Id, part);
        }

        ILookup<Terminal, Terminal> joined = conductors.SelectMany(pair => new[] { pair, (From: pair.To, To: pair.From) }).ToLookup(pair => pair.From, pair => pair.To);
        HashSet<Terminal> found = [.. byId.Values.SelectMany(part => part.TerminalNames.Where(ReturnNames.Contains).Select(part.At))];
        Queue<Terminal> open = new(found);
        while (open.TryDequeue(out Terminal terminal))
        {
            foreach (Terminal next in joined[terminal].Concat(Through(terminal, byId)))
            {
                if (!SupplyNames.Contains(next.Name) && found.Add(next))
                {
                    open.Enqueue(next);
                }
            }
        }

        return found;
    }

    /// <summary>The other end of a one-pole device.</summary>
    private static IEnumerable<Terminal> Through(Terminal terminal, Dictionary<string, Part> byId) =>
        byId.GetValueOrDefault(terminal.Part) switch
        {
            Protection { IsTwoPole: false } or IsolatorSwitch { IsTwoPole: false } => [terminal with { Name = terminal.Name == TerminalNames.In ? TerminalNames.Out : TerminalNames.In }],
            _ => [],
        };
}
