using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>What may stand in the place of a fuse, breaker, switch, plug or bar.</summary>
internal static class PartChoices
{
    // What is far from the rating that is there is not looked at.
    private const double LeastRatingFraction = 0.3;
    private const double MostRatingFraction = 4;

    /// <summary>The slot of a part; null where nothing can stand in its place.</summary>
    /// <param name="bench">What there is to choose from.</param>
    /// <param name="part">The part.</param>
    /// <param name="isOtherMeans">A breaker may stand in the place of a fuse, and a fuse in that of a breaker.</param>
    public static MendSlot? Slot(MendBench bench, Part part, bool isOtherMeans) => part switch
    {
        // One that opens on a residual current is there for more than its rating.
        Protection { ResidualA: null } device => bench.Slot($"device:{device.Id}", SlotKind.Device, device.Id, Traits(device), Of(bench, device, isOtherMeans).Select(option => Fitted(bench, device, option))) is { } slot
            ? slot with { Ends = [.. bench.Draft.All<Cable>().Where(cable => cable.Cores.Any(core => core.From.Part == device.Id || core.To.Part == device.Id)).Select(cable => (cable.Id, cable.AreaMm2.Value))] }
            : null,
        PlugAndSocket plug => bench.Slot($"plug:{plug.Id}", SlotKind.Contact, plug.Id, Traits(plug), Of(bench, plug)),
        IsolatorSwitch { IsTwoPole: false } device => bench.Slot($"switch:{device.Id}", SlotKind.Contact, device.Id, Traits(device), Of(bench, device)),
        Busbar bar => bench.Slot($"bar:{bar.Id}", SlotKind.Contact, bar.Id, new MendTraits { RatedA = bar.RatedA?.Value }, Of(bench, bar)),
        _ => null,
    };

    private static MendTraits Traits(Protection device) => new()
    {
        RatedA = device.RatedA.Value,
        RatedV = device.RatedV?.Value,
        BreakingA = device.BreakingA?.Value,
        Gates = device.OwnTimes.Count > 0 ? "own" : DeviceGates.ListedOf(device),
        Means = device.Means,
        ResistanceOhm = device.ResistanceOhm?.Value,
    };

    private static MendTraits Traits(PlugAndSocket plug) => new()
    {
        RatedA = plug.RatedA?.Value,
        RatedV = plug.RatedV?.Value,
        ResistanceOhm = plug.ContactOhm?.Value,
        Keying = plug.Keying,
        Arrangement = plug.Arrangement,
    };

    private static MendTraits Traits(IsolatorSwitch device) => new() { RatedA = device.RatedA?.Value, ResistanceOhm = device.ResistanceOhm?.Value };

    /// <summary>What the rules compare of a part.</summary>
    internal static MendTraits Traits(CataloguePart part) => new()
    {
        RatedA = part.RatedA?.Value,
        RatedV = part.RatedV?.Value,
        BreakingA = part.BreakingA?.Value,
        Gates = part.Gates,
        Means = MeansOf(part.Use),
        ResistanceOhm = part.ResistanceOhm?.Value,
        Keying = part.Keying,
        Arrangement = part.Arrangement,
    };

    private static ProtectionMeans? MeansOf(CatalogueUse use) => use switch
    {
        CatalogueUse.Fuse => ProtectionMeans.Fuse,
        CatalogueUse.Breaker => ProtectionMeans.Breaker,
        _ => null,
    };

    private static IEnumerable<MendOption> Of(MendBench bench, Protection device, bool isOtherMeans)
    {
        CatalogueUse[] uses = isOtherMeans ? [CatalogueUse.Fuse, CatalogueUse.Breaker] : [device.Means == ProtectionMeans.Fuse ? CatalogueUse.Fuse : CatalogueUse.Breaker];
        return uses.SelectMany(use => Like(bench, device, use, device.RatedA.Value, part => part.IsTwoPole == device.IsTwoPole, (was, part) => was with
        {
            Means = MeansOf(use)!.Value,
            Name = KindName.Of(was.Name, was.Means, MeansOf(use)!.Value),
            RatedA = part.RatedA!,
            RatedV = part.RatedV,
            BreakingA = part.BreakingA,
            Gates = part.Gates,
            OwnTimes = [],
            MeltingA2S = null,
            ClearingA2S = null,
            ResistanceOhm = part.ResistanceOhm,
            MassKg = was.Place is null ? was.MassKg : Mounting.BecomesKg(bench.Catalogue, was, part),
            Note = MendBench.NoteOf(part),
        }, part => Mounting.Change(bench.Catalogue, device, part), use == CatalogueUse.Breaker && device.Means == ProtectionMeans.Fuse ? "a fuse of " : use == CatalogueUse.Fuse && device.Means == ProtectionMeans.Breaker ? "a breaker of " : "", KindName.Words(device, MeansOf(use)!.Value)));
    }

    // In another holder or place its terminals are others, and the cables on it are made off for them.
    private static MendOption Fitted(MendBench bench, Protection device, MendOption option) => option.Part is not { } part || Mounting.Fits(bench.Catalogue, device, part) ? option : option with
    {
        What = Sentence.Of($"{option.What}{DeviceEnds.Words(bench.Draft, device, part, MeansOf(part.Use)!.Value)}"),
        Apply = boat => DeviceEnds.MadeOff(MendBench.Change<Protection>(option.Apply(boat), device.Id, was => DeviceEnds.WithTerminals(was, part)), device.Id, part),
        Traits = option.Traits with { MadeOffAs = DeviceEnds.MadeOffAs(part) },
        TakesMm2 = DeviceEnds.TakesMm2(part),
    };

    private static IEnumerable<MendOption> Of(MendBench bench, PlugAndSocket plug) => Like(bench, plug, CatalogueUse.Plug, plug.RatedA?.Value, _ => true, (was, part) => was with
    {
        RatedA = part.RatedA,
        RatedV = part.RatedV,
        ContactOhm = part.ResistanceOhm,
        Keying = part.Keying,
        Arrangement = part.Arrangement,
        MassKg = MendBench.MassAt(was, part),
        Note = MendBench.NoteOf(part),
    });

    private static IEnumerable<MendOption> Of(MendBench bench, IsolatorSwitch device) => Like(bench, device, CatalogueUse.Switch, device.RatedA?.Value, _ => true, (was, part) => was with
    {
        RatedA = part.RatedA,
        ResistanceOhm = part.ResistanceOhm,
        MassKg = MendBench.MassAt(was, part),
        Note = MendBench.NoteOf(part),
    });

    private static IEnumerable<MendOption> Of(MendBench bench, Busbar bar) => Like(bench, bar, CatalogueUse.Busbar, bar.RatedA?.Value, _ => true, (was, part) => was with
    {
        RatedA = part.RatedA,
        MassKg = MendBench.MassAt(was, part),
        Note = MendBench.NoteOf(part),
    }).Select(option => option with { Traits = new MendTraits { RatedA = option.Traits.RatedA } });

    private static IEnumerable<MendOption> Like<T>(MendBench bench, T part, CatalogueUse use, double? ratedA, Func<CataloguePart, bool> fits, Func<T, CataloguePart, T> stands)
        where T : Part => Like(bench, part, use, ratedA, fits, stands, made => new MountChange("", 0, MendBench.AddedKg(made.MassKg?.Value, part.MassKg?.Value)), "", "");

    private static IEnumerable<MendOption> Like<T>(MendBench bench, T part, CatalogueUse use, double? ratedA, Func<CataloguePart, bool> fits, Func<T, CataloguePart, T> stands, Func<CataloguePart, MountChange> mounting, string inPlaceOf, string naming)
        where T : Part =>
        from made in bench.Catalogue.Parts
        where made.Use == use && made.RatedA is not null && fits(made)
            && (ratedA is not { } rated || (made.RatedA.Value >= LeastRatingFraction * rated && made.RatedA.Value <= MostRatingFraction * rated))
        let mount = mounting(made)
        from option in bench.Ways(new MendOption
        {
            What = ratedA is { } was ? Sentence.Of($"{part.Title}: {made.Title}{mount.Words} in place of {inPlaceOf}{new Amount(was, "A")}{naming}") : Sentence.Of($"{part.Title}: {made.Title}"),
            Apply = boat => MendBench.Change<T>(boat, part.Id, now => stands(now, made)),
            Cost = new MendCost((made.PriceMoney?.Value ?? 0) + mount.Money, mount.AddedKg),
            BesidesMoney = mount.Money,
            Traits = Traits(made),
            StepFactor = MendBench.StepFactor(made.RatedA?.Value, ratedA),
            Part = made,
        })
        select option;
}
