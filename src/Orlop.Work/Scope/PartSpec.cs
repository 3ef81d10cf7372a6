using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;

namespace Orlop.Work.Scope;

/// <summary>What a part must be, beyond its rating: what one reads off the piece in the shop, before it is paid for or fitted.</summary>
internal static class PartSpec
{
    /// <summary>In one line: "Fuse-link gG (IEC 60269-1), for at least 80 V DC, breaks at least 50 kA at DC"; null where nothing is told. What breaks AC may not break DC: a voltage is never told without its kind.</summary>
    public static Sentence? Of(PackScope scope, Part part)
    {
        string current = part is Protection or PlugAndSocket ? CurrentAt(scope, part) : "";
        Sentence[] facts = part switch
        {
            Protection device =>
            [
                .. Said(device.OwnTimes.Count > 0 ? "operating times as on its sheet" : DeviceGates.ListedOf(device) is { } gates ? Wording.OfGates(gates) : null),
                .. Said("for at least", device.RatedV, "V", $" {current}"), .. Said("breaks at least", device.BreakingA, "A", $" at {current}"), .. Said(device.IsTwoPole ? "two poles" : null), .. Said("opens at a residual current of", device.ResidualA, "A", ""),
            ],
            IsolatorSwitch device => [.. Said(device.IsTwoPole ? "two poles" : null)],
            Changeover { IsInterlocked: true } => [.. Said("its two sides locked to each other")],
            PlugAndSocket plug => [.. Said(plug.Keying), .. Said(plug.Arrangement), .. Said("for at least", plug.RatedV, "V", $" {current}")],
            _ => [],
        };
        return facts.Length == 0 ? null : facts.Skip(1).Aggregate(facts[0], (all, fact) => Sentence.Of($"{all}, {fact}"));
    }

    private static IEnumerable<Sentence> Said(string? words) => string.IsNullOrWhiteSpace(words) ? [] : [Sentence.Of($"{words.Trim()}")];

    private static IEnumerable<Sentence> Said(string before, Quantity? quantity, string suffix, string after) => quantity is null ? [] : [Sentence.Of($"{before} {new Amount(quantity.Value, suffix)}{after}")];

    private static string CurrentAt(PackScope scope, Part part) => PointVoltage.At(scope.Whole, scope.WholeWiring, part.At(part.TerminalNames[0]).ToString()).IsAc switch
    {
        true => "AC",
        false => "DC",
        null => "AC or DC (the wiring does not tell which: find out)",
    };
}
