using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;

namespace Orlop.Presentation.Views;

/// <summary>How a part is made dead, in words: what to open in which order, what stays live, where to prove it.</summary>
public sealed record IsolationView
{
    /// <summary>Always said with a plan.</summary>
    public const string Caution = "Prove it dead before you touch it, with a meter tried on something live just before and just after. "
        + "Capacitors in an inverter or charger hold their charge after it is cut off: wait as its maker says, then measure again. "
        + "A battery cannot be switched off: rings off, insulated tools, cover the other post. A licensed electrician works on anything at 230\u00A0V.";

    /// <summary>Whether it can be made dead, in a sentence.</summary>
    public required string Status { get; init; }

    /// <summary>What is read and noted before anything is opened, point by point, and what to make of it; empty where nothing is to be read.</summary>
    public ImmutableArray<string> ReadBefore { get; init; } = [];

    /// <summary>What to do, in order, until it is dead.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

    /// <summary>What to do, in order, when the work is done.</summary>
    public ImmutableArray<string> Restore { get; init; } = [];

    /// <summary>What stays live near it, and why.</summary>
    public ImmutableArray<string> StaysLive { get; init; } = [];

    /// <summary>Readings that must be zero.</summary>
    public ImmutableArray<string> Proofs { get; init; } = [];

    /// <summary>What cannot be made dead, and why.</summary>
    public ImmutableArray<string> Cannot { get; init; } = [];

    /// <summary>The plan for a thing of the boat.</summary>
    public static IsolationView Of(BoatModel boat, string thingId)
    {
        ArgumentNullException.ThrowIfNull(boat);
        string title = boat.Find(thingId)?.Title ?? thingId;
        if (IsolationPlans.Plan(boat, thingId) is not { } plan)
        {
            return new IsolationView { Status = $"Unknown: {title} is not wired to anything, or the boat has no source. Treat it as live." };
        }

        PartWords words = new(boat);
        Wiring wiring = Wiring.Of(boat);
        ImmutableArray<BatteryBank> minus = MinusLeads.Of(boat, wiring, plan);
        ImmutableArray<Charger> solar = PanelsToCover.Of(boat, wiring, plan, minus);
        ImmutableArray<ProvingPoint> proofs = ProvingPoints.Of(boat, wiring, plan, minus);
        LiveBefore live = LiveBefore.Of(boat, wiring, plan, !minus.IsEmpty, proofs);
        ImmutableArray<Opening> closing = [.. ClosingOrder.Of(plan)];
        ImmutableArray<string> steps = [.. ToMakeDead(boat, words, plan, solar, minus)];
        return new IsolationView
        {
            Status = plan.Status switch
            {
                IsolationStatus.AlreadyDead => $"No source reaches {title} as the wiring is drawn; prove it all the same.",
                IsolationStatus.CanBeMadeDead => $"{title} can be made dead by {steps.Length} {(steps.Length == 1 ? "step" : "steps")}, switches taken as closed.",
                IsolationStatus.PartlyDead => $"Only part of {title} can be made dead; the rest stays live.",
                _ => $"{title} cannot be made dead.",
            },
            ReadBefore = live.Read.IsEmpty ? [] :
            [
                .. live.Read.Select(proof => Told(ReadBeforeWords.Reads(ProvingWords.Between(words, proof), proof, LiveBefore.MustGive(boat, wiring, proof), LiveBefore.OnFor(boat, wiring, proof).Select(words.Title), ProvingWords.Reach(words, proof)))),
                .. live.Covered.Select(proof => Told(ReadBeforeWords.Covered(ProvingWords.Between(words, proof)))),
                .. ReadBeforeWords.HowPutOn(live.PutOn),
                .. ReadBeforeWords.Notes,
            ],
            Steps = steps,
            Restore =
            [
                .. closing[..MinusLeads.PlaceAfter(closing)].Select(opening => IsolationWords.Close(words, opening, boat.Find(opening.Id))),
                .. minus.Select(bank => IsolationWords.MinusLast(words, bank)),
                .. closing[MinusLeads.PlaceAfter(closing)..].Select(opening => IsolationWords.Close(words, opening, boat.Find(opening.Id))),
                .. solar.IsEmpty ? Array.Empty<string>() : [IsolationWords.Uncover(words, solar)],
            ],
            StaysLive = [.. IsolationWords.StaysLive(words, StillFed.Each(boat, plan)).Select(SentenceText.Unbroken)],
            Proofs =
            [
                .. proofs.IsEmpty ? Array.Empty<string>() : ProvingWords.TryMeter(boat, words, plan, proofs),
                .. proofs.Select(proof => ProvingWords.Proof(words, proof, ReadBeforeWords.Told(proof, LiveBefore.IsFed(boat, wiring, proof), LiveBefore.IsLive(boat, wiring, plan, !minus.IsEmpty, proof), LiveBefore.IsMains(boat, proof)))),
            ],
            Cannot = [.. plan.CannotBeMadeDead.Select(part => $"{words.Node(part.Node)}: {words.Title(part.SourceId)} feeds it with nothing between that opens; {part.Because}.")],
        };
    }

    // Volts are volts in all units.
    private static string Told(Sentence sentence) => SentenceText.Of(sentence, DisplayUnits.Metric, CultureInfo.InvariantCulture);

    // Where something stays live for good, as a battery's posts, all that charges it is stopped all the same: it is worked on with nothing flowing.
    private static IEnumerable<string> ToMakeDead(BoatModel boat, PartWords words, IsolationResult plan, ImmutableArray<Charger> solar, ImmutableArray<BatteryBank> minus) =>
    [
        .. plan.Openings.IsEmpty && plan.CannotBeMadeDead.IsEmpty ? Array.Empty<string>() : [IsolationWords.LoadsOff],
        .. solar.IsEmpty ? Array.Empty<string>() : [IsolationWords.Cover(words, solar)],
        .. plan.CannotBeMadeDead.IsEmpty ? [] : plan.StaysLive.Select(live => live.SourceId).Where(id => plan.Openings.All(opening => opening.Id != id))
            .Select(boat.Find<Part>).OfType<Part>().Select(source => IsolationWords.Stop(words, source)).OfType<string>(),
        .. plan.Openings[..MinusLeads.PlaceBefore(plan.Openings)].Select(opening => SentenceText.Unbroken(IsolationWords.Open(words, opening))),
        .. minus.Select(bank => SentenceText.Unbroken(IsolationWords.MinusFirst(words, bank))),
        .. plan.Openings[MinusLeads.PlaceBefore(plan.Openings)..].Select(opening => SentenceText.Unbroken(IsolationWords.Open(words, opening))),
        .. plan.KeepOpen.Select(id => $"Keep {words.Located(id)} open."),
    ];
}
