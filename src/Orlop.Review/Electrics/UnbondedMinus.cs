using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>
/// A minus that counts as ungrounded because nothing that it is wired to is marked as bonded to the hull: it then wants a device of its own, which an owner
/// who knows it as the earthed side does not expect.
/// </summary>
internal sealed class UnbondedMinus
{
    private const string Question = "bonded to the hull, the engine block or an earth plate";

    private readonly BatteryBank[] _batteries;
    private readonly Busbar[] _bars;

    private UnbondedMinus(BatteryBank[] batteries, Busbar[] bars) => (_batteries, _bars) = (batteries, bars);

    // Neither a bar, whose mark is yes or no, nor a battery says whether it is bonded.
    private bool IsNotTold => _bars.Length == 0 && _batteries.Length > 0 && _batteries.All(battery => battery.IsMinusBonded is null);

    /// <summary>The minus that a core leads to: that of a battery or other DC source, and the plus of none. Null where it leads to no such minus, or to one that is bonded.</summary>
    public static UnbondedMinus? Of(ElectricsView view, WiringEdge core)
    {
        HashSet<string> seen = [core.A];
        Queue<string> queue = new(seen);
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in view.Wiring.At(node))
            {
                if (seen.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        PolePair[] giving = [.. view.Boat.All<Part>().Select(Poles.Giving).OfType<PolePair>().Where(poles => !poles.IsAc)];
        bool isIt = giving.Any(poles => seen.Contains(poles.Minus)) && !giving.Any(poles => seen.Contains(poles.Plus)) && !seen.Any(view.Grounding.IsGrounded);
        return !isIt ? null : new UnbondedMinus(
            [.. view.Boat.All<BatteryBank>().Where(battery => seen.Contains(battery.At(TerminalNames.Minus).ToString()))],
            [.. view.Boat.All<Busbar>().Where(bar => seen.Contains(bar.At(TerminalNames.Bar).ToString()))]);
    }

    /// <summary>The finding with the reason and what to do about it; unknown where nothing says whether the minus is bonded.</summary>
    public Finding Explain(Finding finding) => IsNotTold ? NotTold(finding) : finding with
    {
        Headline = Sentence.Of($"{finding.Headline}. This minus counts as ungrounded, since nothing it is wired to is marked as bonded to the hull: {WhereToMark()} if it is, or protect both poles"),
        WorkingWhenAsked = () =>
        [
            .. finding.Working,
            new WorkingLine("Minus", "not bonded anywhere it is wired to, so it counts as ungrounded and needs a fuse or breaker as the plus does", null, "the wiring as drawn"),
            new WorkingLine("What to do", $"if it is {Question}, {WhereToMark()}; if it is not, protect both poles", null, ""),
        ],
        Inputs = [.. finding.Inputs, .. _batteries.Select(battery => new FindingInput(battery.Id, FieldOfBattery, IsMissing: battery.IsMinusBonded is null)), .. _bars.Select(bar => new FindingInput(bar.Id, FieldOfBar))],
    };

    private const string FieldOfBattery = "isMinusBonded";
    private const string FieldOfBar = "isBonded";

    private Finding NotTold(Finding finding) => finding with
    {
        Verdict = Verdict.Unknown,
        UseFraction = null,
        Headline = Sentence.Of($"{finding.Headline}; whether it needs one cannot be told before “Minus bonded” of {_batteries[0].Title} is answered: yes if the minus post is {Question}, and it needs none; no, and both poles need protection"),
        WorkingWhenAsked = () =>
        [
            .. finding.Working.Where(line => line.What != "Use"),
            .. _batteries.Select(battery => new WorkingLine("Missing", $"{battery.Id}: whether its minus post is {Question} is not given", null, "")),
            new WorkingLine("What to do", "answer “Minus bonded” on the battery's sheet: a bonded minus needs no fuse of its own, one that is not needs protection in both poles", null, ""),
        ],
        Inputs = [.. _batteries.Select(battery => new FindingInput(battery.Id, FieldOfBattery, IsMissing: true))],
    };

    private string WhereToMark() => (_bars, _batteries) switch
    {
        ([var bar, ..], _) => $"tick “Bonded” of {bar.Title}",
        (_, [var battery, ..]) => $"answer “Minus bonded” of {battery.Title} with yes",
        _ => "wire it to a minus bar and tick “Bonded” there",
    };
}
