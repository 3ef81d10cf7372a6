using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Words;
using Orlop.Review.Isolation;

namespace Orlop.Presentation.Views;

/// <summary>How a part is made dead, in words: what to open in which order, what stays live, where to prove it.</summary>
public sealed record IsolationView
{
    /// <summary>Always said with a plan.</summary>
    public const string Caution = "Prove it dead before you touch it, with a meter tried on something live just before and just after. "
        + "A battery cannot be switched off: rings off, insulated tools, cover the other post. A licensed electrician works on anything at 230\u00A0V.";

    /// <summary>Whether it can be made dead, in a sentence.</summary>
    public required string Status { get; init; }

    /// <summary>What to do, in order.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

    /// <summary>What stays live near it, and why.</summary>
    public ImmutableArray<string> StaysLive { get; init; } = [];

    /// <summary>Readings that must be zero.</summary>
    public ImmutableArray<string> Proofs { get; init; } = [];

    /// <summary>What cannot be made dead, and why.</summary>
    public ImmutableArray<string> Cannot { get; init; } = [];

    /// <summary>The plan for a thing of the boat.</summary>
    public static IsolationView Of(BoatModel boat, string thingId)
    {
        string title = boat.Find(thingId)?.Title ?? thingId;
        if (IsolationPlans.Plan(boat, thingId) is not { } plan)
        {
            return new IsolationView { Status = $"Unknown: {title} is not wired to anything, or the boat has no source. Treat it as live." };
        }

        string Node(string node) => Terminal.TryParse(node, out Terminal terminal) ? $"{boat.Find(terminal.Part)?.Title ?? terminal.Part}, {terminal.Name}" : node;
        return new IsolationView
        {
            Status = plan.Status switch
            {
                IsolationStatus.AlreadyDead => $"No source reaches {title} as the wiring is drawn; prove it all the same.",
                IsolationStatus.CanBeMadeDead => $"{title} can be made dead by {plan.Openings.Length} {(plan.Openings.Length == 1 ? "step" : "steps")}, switches taken as closed.",
                IsolationStatus.PartlyDead => $"Only part of {title} can be made dead; the rest stays live.",
                _ => $"{title} cannot be made dead.",
            },
            Steps = [.. plan.Openings.Select(opening => Step(boat, opening)), .. plan.KeepOpen.Select(id => $"Keep {boat.Find(id)?.Title ?? id} open.")],
            StaysLive = [.. plan.StaysLive.Select(live => $"{boat.Find(live.SourceId)?.Title ?? live.SourceId}: {SentenceText.Unbroken(live.Because)}; live as near as {Node(live.NearestNode)}.")],
            Proofs =
            [
                .. plan.TryMeterAtNode is { } node ? [$"Try the meter at {Node(node)}, before and after."] : Array.Empty<string>(),
                .. plan.Proofs.Select(proof => $"0\u00A0V between {Node(proof.Node)} and {(proof.OtherNode is { } other ? Node(other) : "the hull's bond")}."),
            ],
            Cannot = [.. plan.CannotBeMadeDead.Select(part => $"{Node(part.Node)}: {boat.Find(part.SourceId)?.Title ?? part.SourceId} feeds it with nothing between that opens; {part.Because}.")],
        };
    }

    private static string Step(BoatModel boat, Opening opening)
    {
        Thing? thing = boat.Find(opening.Id);
        string title = thing?.Title ?? opening.Id;
        string where = thing is Part { Space: { } space } ? $" ({boat.Find(space)?.Title ?? space})" : "";
        return opening.Means switch
        {
            OpeningMeans.Isolator => $"Open {title}{where} and secure it open.",
            OpeningMeans.Breaker => $"Open {title}{where} and secure it open.",
            OpeningMeans.Unplug => $"Pull {title}{where} apart.",
            OpeningMeans.PullFuse => $"With its load off, take out {title}{where} and keep it with you.",
            OpeningMeans.LiftBatteryLead => $"Take {title}{where} off and cap it.",
            _ => SentenceText.Unbroken($"{title}{where}: {opening.StopHow}."),
        };
    }
}
