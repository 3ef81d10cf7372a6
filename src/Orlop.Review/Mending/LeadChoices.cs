using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Strings;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>Leads of one length and size for strings of batteries side by side, where each has leads of its own to one point.</summary>
internal static class LeadChoices
{
    private const double SameM = 1e-6;

    /// <summary>The slot of a group; null where its strings share leads, or a length is not known.</summary>
    public static MendSlot? Slot(MendBench bench, StringGroup group)
    {
        if (bench.Strings.Leads(group, true) is not { } plus || bench.Strings.Leads(group, false) is not { } minus)
        {
            return null;
        }

        // Each set of leads that are to be alike: those of one place on the way from the post.
        Cable[][] alike = [.. new[] { plus, minus }.SelectMany(leads => Enumerable.Range(0, leads[0].Length).Select(place => leads.Select(each => each[place]).ToArray()))];
        Cable[] all = [.. alike.SelectMany(each => each)];
        if (all.Any(cable => cable.LengthM is null || cable.Cores.Count != 1 || cable.Cores[0].LengthM is not null))
        {
            return null;
        }

        double leastMm2 = all.Max(cable => cable.AreaMm2.Value), mostMm2 = all.Min(cable => TerminalSizes.MostMm2(bench.Draft, cable));
        int choice = 0;
        string title = string.Join(", ", group.Strings.Select(each => bench.Draft.Find(each.Members[0].Id)?.Title ?? each.Members[0].Id));
        IEnumerable<MendOption> cut = bench.Catalogue.Parts
            .Where(part => part is { Use: CatalogueUse.Cable, AreaMm2: not null, CoreCount: 1 } && (part.AreaMm2.Value >= leastMm2 || WantedCable.IsSameSize(leastMm2, part.AreaMm2.Value)) && part.AreaMm2.Value <= Math.Max(mostMm2, leastMm2))
            .SelectMany(part => bench.Ways(Longest(bench, title, alike, part, ++choice)));
        // Made shorter only where the review can tell whether they reach.
        bool canTell = all.All(cable => cable.Cores.All(core => bench.Draft.Find<Part>(core.From.Part)?.Place is not null && bench.Draft.Find<Part>(core.To.Part)?.Place is not null));
        return bench.Slot($"leads:{all[0].Id}", SlotKind.Leads, all[0].Id, new MendTraits(), canTell ? cut.Append(Shortest(title, alike, ++choice)) : cut) is { } slot ? slot with { AlsoIds = [.. all.Skip(1).Select(cable => cable.Id)] } : null;
    }

    private static MendOption Longest(MendBench bench, string title, Cable[][] alike, CataloguePart part, int choice)
    {
        (Cable Cable, double LengthM)[] anew = [.. alike.SelectMany(leads => leads.Select(cable => (cable, LengthM: leads.Max(each => each.LengthM!.Value)))).Where(each => !IsSo(each.cable, part, each.LengthM))];
        ImmutableArray<double> cutsM = [.. anew.Select(each => bench.Cut.CutM(each.LengthM, each.Cable.LengthM!.PlusMinus))];
        return new MendOption
        {
            What = Sentence.Of($"{title}: leads of one length and size, {part.Title}: {string.Join(", ", anew.Select(each => $"{each.Cable.Title} {FormattableString.Invariant($"{each.LengthM:0.##}")} m"))}; {new Amount(cutsM.Sum(), "M")} to cut, each with its lugs"),
            Apply = boat => anew.Aggregate(boat, (becomes, each) => MendBench.Change<Cable>(becomes, each.Cable.Id, was => Laying.InLength(CableChoices.As(was, part, 1, 1), each.LengthM))),
            Cost = new MendCost(cutsM.Sum() * (part.PriceMoneyPerM?.Value ?? 0), anew.Sum(each => MendBench.AddedKg(part.MassKgPerM?.Value * each.LengthM, each.Cable.MassKgPerM?.Value * each.Cable.LengthM!.Value))),
            Traits = new MendTraits { Circuit = choice },
            Part = part,
            StepFactor = anew.Sum(each => MendBench.StepFactor(each.LengthM, each.Cable.LengthM!.Value) + MendBench.StepFactor(part.AreaMm2!.Value, each.Cable.AreaMm2.Value)),
            CutsM = cutsM,
        };
    }

    private static MendOption Shortest(string title, Cable[][] alike, int choice)
    {
        (Cable Cable, double LengthM)[] shorter = [.. alike.SelectMany(leads => leads.Select(cable => (cable, LengthM: leads.Min(each => each.LengthM!.Value)))).Where(each => each.cable.LengthM!.Value - each.LengthM > SameM)];
        return new MendOption
        {
            What = Sentence.Of($"{title}: leads cut to the length of the shortest: {string.Join(", ", shorter.Select(each => $"{each.Cable.Title} {FormattableString.Invariant($"{each.LengthM:0.##}")} m"))}; measure on board whether they reach"),
            Apply = boat => shorter.Aggregate(boat, (becomes, each) => MendBench.Change<Cable>(becomes, each.Cable.Id, was => Laying.InLength(was, each.LengthM))),
            // With none to shorten it is what is there.
            Traits = shorter.Length == 0 ? new MendTraits() : new MendTraits { Circuit = choice },
            StepFactor = shorter.Sum(each => MendBench.StepFactor(each.LengthM, each.Cable.LengthM!.Value)),
        };
    }

    private static bool IsSo(Cable cable, CataloguePart part, double lengthM) => WantedCable.IsSameSize(cable.AreaMm2.Value, part.AreaMm2!.Value) && Math.Abs(cable.LengthM!.Value - lengthM) <= SameM;
}
