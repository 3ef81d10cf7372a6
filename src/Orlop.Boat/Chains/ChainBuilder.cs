using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Chains;

/// <summary>Makes a whole circuit of a plan: load, protection, isolator, plug, links and cables with a core for each pole.</summary>
public static class ChainBuilder
{
    /// <summary>What a plan still lacks, in a sentence; null when a circuit can be made of it.</summary>
    public static string? Complaint(BoatModel boat, CircuitPlan plan) =>
        string.IsNullOrWhiteSpace(plan.LoadName) ? "Give the load a name."
        : plan.RunningA is null && plan.RunningW is null ? $"Say what {plan.LoadName} draws: its power or its current."
        : plan.Protection is not null && plan.ProtectionA is null ? "Give the rating of the fuse or breaker, or choose none."
        : boat.Find<Part>(plan.From.Part)?.TerminalNames.Contains(plan.From.Name) != true ? $"There is no terminal '{plan.From}' to feed it from."
        : boat.Find<Part>(plan.Return.Part)?.TerminalNames.Contains(plan.Return.Name) != true ? $"There is no terminal '{plan.Return}' for the current to return to."
        : plan.From == plan.Return ? $"It cannot be fed from '{plan.From}' and return there too."
        : null;

    /// <summary>The edits that add the circuit. Nothing that is in the boat already is changed.</summary>
    /// <exception cref="ArgumentException">The plan lacks something; see <see cref="Complaint"/>.</exception>
    public static IReadOnlyList<Edit> NewCircuit(BoatModel boat, CircuitPlan plan)
    {
        if (Complaint(boat, plan) is { } complaint)
        {
            throw new ArgumentException(complaint, nameof(plan));
        }

        ChainParts chain = new(boat, plan.LoadName.Trim());
        ElectricLoad load = Load(chain, plan);
        Terminal feed = plan.From;
        if (plan.Protection is { } means)
        {
            string words = means == ProtectionMeans.Fuse ? "fuse" : "breaker";
            feed = Fed(boat, chain, plan, feed, new Protection { Id = chain.Id(words), Name = chain.Title(words), Means = means, RatedA = plan.ProtectionA! });
        }

        if (plan.HasIsolator)
        {
            feed = Fed(boat, chain, plan, feed, new IsolatorSwitch { Id = chain.Id("isolator"), Name = chain.Title("isolator"), IsIsolator = true });
        }

        Terminal plus = load.At(TerminalNames.Plus), minus = load.At(TerminalNames.Minus);
        if (plan.HasPlug)
        {
            PlugAndSocket plug = new() { Id = chain.Id("plug"), Name = chain.Title("plug") };
            chain.Add(plug);
            chain.Add(Cable(chain, "lead", plan, plug.At(TerminalNames.Out), plus, plug.At(TerminalNames.Out2), minus) with { LengthM = plan.LeadM, Run = [] });
            (plus, minus) = (plug.At(TerminalNames.In), plug.At(TerminalNames.In2));
        }

        chain.Add(WithOwnBack(Cable(chain, "feed", plan, feed, plus, plan.Return, minus), plan));
        chain.Add(load);
        return [.. chain.Things.Select(BoatEdits.Add)];
    }

    /// <summary>The space that the wire to the first device is taken to run in: that of what feeds it, else that of the way its cable follows; null where neither is known.</summary>
    public static string? FeedSpace(BoatModel boat, CircuitPlan plan)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(plan);
        return boat.Find<Part>(plan.From.Part)?.Space ?? (plan.Way is { } way ? boat.Find<Way>(way)?.Space : null);
    }

    // What stands first may be fed by a wire; what stands behind it is bolted to it.
    private static Terminal Fed(BoatModel boat, ChainParts chain, CircuitPlan plan, Terminal feed, Part device)
    {
        if (!plan.HasFeedWire || feed != plan.From)
        {
            return chain.Join(feed, device);
        }

        chain.Add(new Cable
        {
            Id = chain.Id("feed wire"),
            Name = chain.Title("feed wire"),
            AreaMm2 = plan.AreaMm2,
            InsulationC = plan.InsulationC,
            LengthM = plan.FeedM,
            Run = FeedSpace(boat, plan) is { } space && plan.FeedM is { } length ? [new RunLeg { Space = space, LengthM = length.Value }] : [],
            Cores = [new Core { Id = "plus", From = feed, To = device.At(TerminalNames.In) }],
        });
        chain.Add(device);
        return device.At(TerminalNames.Out);
    }

    private static ElectricLoad Load(ChainParts chain, CircuitPlan plan) => new()
    {
        Id = chain.Id(""),
        Name = plan.LoadName.Trim(),
        Behaviour = plan.RunningW is not null ? LoadBehaviour.Power : LoadBehaviour.Current,
        NominalV = plan.NominalV,
        RunningW = plan.RunningW,
        RunningA = plan.RunningA,
        StartRatio = plan.StartRatio,
        StartS = plan.StartS,
        Drop = plan.Drop,
        Uses = plan.OnIn.Select(condition => new LoadUse(condition, plan.DutyFraction)).ToValueList(),
    };

    private static Cable Cable(ChainParts chain, string words, CircuitPlan plan, Terminal fromPlus, Terminal toPlus, Terminal fromMinus, Terminal toMinus) => new()
    {
        Id = chain.Id(words),
        Name = chain.Title(words),
        AreaMm2 = plan.AreaMm2,
        InsulationC = plan.InsulationC,
        LengthM = plan.OutM,
        Cores =
        [
            new Core { Id = "plus", From = fromPlus, To = toPlus },
            new Core { Id = "minus", From = toMinus, To = fromMinus },
        ],
        Run = plan.Way is { } way && plan.OutM is { } length ? [new RunLeg { Way = way, LengthM = length.Value }] : [],
    };

    private static Cable WithOwnBack(Cable cable, CircuitPlan plan) => plan.BackM is null || plan.BackM == plan.OutM
        ? cable
        : cable with { Cores = [cable.Cores[0], cable.Cores[1] with { LengthM = plan.BackM }] };
}
