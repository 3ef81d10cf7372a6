using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Labels;

/// <summary>Lists the labels of an alteration: one for each core's end, one for each device, each once however often its thing is edited.</summary>
internal static class WorkLabels
{
    public static ImmutableArray<WorkLabel> Of(PackScope scope)
    {
        HashSet<string> open = [.. scope.Changes.Where(change => !change.IsBuilt).Select(change => change.Id)];
        return [.. All(scope).DistinctBy(label => label.Key).Select(label => label with { IsMade = !open.Contains(ElementIds.ThingOf(label.Key)) })];
    }

    /// <summary>How many are still to be made: what the step and the bring list count.</summary>
    public static int CountToMake(ImmutableArray<WorkLabel> labels) => labels.Count(label => !label.IsMade);

    private static IEnumerable<WorkLabel> All(PackScope scope) =>
    [
        .. scope.Of(ChangeKind.Cable, ChangeKind.Ends).SelectMany(change => OfCable(scope, (Cable)change.Thing)),
        .. scope.Of(ChangeKind.Fit, ChangeKind.Exchange).Select(change => change.Thing).OfType<Part>().Select(part => new WorkLabel(part.Id, part.Title, scope.Words.SpaceOf(part.Id) ?? "", "", Facts(part), null, false)),
    ];

    private static IEnumerable<WorkLabel> OfCable(PackScope scope, Cable cable)
    {
        Protection? protection = ProtectionOf(scope, cable);
        foreach (Core core in cable.Cores)
        {
            Sentence facts = protection is null
                ? Sentence.Of($"{new Amount(cable.AreaMm2.Value, "Mm2")}")
                : Sentence.Of($"{new Amount(cable.AreaMm2.Value, "Mm2")}, {Wording.KindOf(protection)} {new Amount(protection.RatedA.Value, "A")}");
            foreach (string key in new[] { ElementIds.FromJoint(cable, core), ElementIds.ToJoint(cable, core) })
            {
                yield return new WorkLabel(key, scope.Words.Element(ElementIds.Core(cable, core)), scope.Words.At(core.From), scope.Words.At(core.To), facts, cable.OuterDiameterMm?.Value, true);
            }
        }
    }

    private static Sentence Facts(Part part) => part switch
    {
        Protection device => Sentence.Of($"{Wording.KindOf(device)} {new Amount(device.RatedA.Value, "A")}"),
        IsolatorSwitch { RatedA: { } rated } => Sentence.Of($"{new Amount(rated.Value, "A")}"),
        PlugAndSocket { RatedA: { } rated } => Sentence.Of($"{new Amount(rated.Value, "A")}"),
        BatteryBank battery => Sentence.Of($"{new Amount(battery.NominalV.Value, "V")}"),
        ElectricLoad load => Sentence.Of($"{new Amount(load.NominalV.Value, "V")}"),
        _ => Sentence.Of($""),
    };

    // The nearest protection towards the source on the way to any part that this cable feeds.
    private static Protection? ProtectionOf(PackScope scope, Cable cable)
    {
        foreach (Part taker in scope.AsAltered.All<Part>())
        {
            if (Chain.Trace(scope.AsAltered, scope.AlteredWiring, taker) is not { } chain)
            {
                continue;
            }

            int at = IndexOf(chain.Out, cable.Id);
            if (at >= 0)
            {
                return chain.Out.Take(at).Select(item => item.Thing).OfType<Protection>().LastOrDefault();
            }

            if (IndexOf(chain.Back, cable.Id) >= 0)
            {
                return chain.Out.Select(item => item.Thing).OfType<Protection>().LastOrDefault();
            }
        }

        return null;
    }

    private static int IndexOf(ImmutableArray<ChainItem> items, string id)
    {
        for (int i = 0; i < items.Length; i++)
        {
            if (items[i].Thing.Id == id)
            {
                return i;
            }
        }

        return -1;
    }
}
