using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Ways;

namespace Orlop.Review.Mending;

/// <summary>What is wanted of a cable besides another size.</summary>
internal sealed record CableWant
{
    /// <summary>The length it may be shortened to, in metres; null where that is no remedy.</summary>
    public double? ShortM { get; init; }

    /// <summary>It may take another run.</summary>
    public bool IsOtherRun { get; init; }

    /// <summary>The device at its end may be moved nearer; null where it may not.</summary>
    public MovedDevice? TailOf { get; init; }

    /// <summary>It leads on from a device that may be moved; null where it does not.</summary>
    public MovedDevice? LedOn { get; init; }
}

/// <summary>What may become of a cable: another size or insulation, a shorter run where it is too long before its fuse, another one where it is hot or wet; with a device at its end moved.</summary>
internal static class CableChoices
{
    // Outer diameter of so many equal round conductors side by side, over that of one: circles in a circle.
    private static readonly double[] BundleRatio = [1, 1, 2, 2.155, 2.415, 2.702];

    // Thinner than this share of what is there is not looked at.
    private const double ThinnestFraction = 0.5;

    /// <summary>The slot of a cable; null where nothing can become of it.</summary>
    /// <param name="bench">What there is to choose from.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="want">What else may become of it.</param>
    public static MendSlot? Slot(MendBench bench, Cable cable, CableWant want)
    {
        (int cores, int sheathed) = CoresOf(cable);
        Laying[] layings = [.. Laying.All(bench, cable, want)];
        CataloguePart[] kinds = [.. Kinds(bench.Catalogue, bench.Draft, cable).Where(part => part.AreaMm2!.Value >= ThinnestFraction * cable.AreaMm2.Value)];
        IEnumerable<MendOption> all = layings.SelectMany(laying => kinds.Where(kind => IsOther(cable, kind) || (IsTooShort(cable, laying) && IsAsGood(cable, kind))).SelectMany(kind => bench.Ways(Of(bench, cable, kind, cores, sheathed, laying)))
            // What is there already can be laid anew where it is long enough.
            .Concat(laying.Words is not null && laying.LengthM <= cable.LengthM?.Value ? [Relaid(cable, laying)] : []));
        MendSlot? slot = bench.Slot($"cable:{cable.Id}", SlotKind.Cable, cable.Id, layings[0].Traits(cable), all);
        return slot is null || want.TailOf is null ? slot : slot with { AlsoIds = [want.TailOf.DeviceId] };
    }

    /// <summary>The cable as the thickest of the catalogue that its terminals take, with insulation no worse; null where none is thicker than it is.</summary>
    public static Cable? Thickest(Catalogue catalogue, BoatModel boat, Cable cable)
    {
        (int cores, int sheathed) = CoresOf(cable);
        return Kinds(catalogue, boat, cable).Where(part => part.AreaMm2!.Value > cable.AreaMm2.Value && !(part.InsulationC!.Value < cable.InsulationC?.Value)).MaxBy(part => part.AreaMm2!.Value) is { } part
            ? As(cable, part, cores, sheathed)
            : null;
    }

    // How many cores in all, and in each sheath.
    private static (int Cores, int Sheathed) CoresOf(Cable cable)
    {
        int cores = Math.Max(1, cable.Cores.Count);
        return (cores, cable.IsSheathed || cores == 1 ? cores : 1);
    }

    private static IEnumerable<CataloguePart> Kinds(Catalogue catalogue, BoatModel boat, Cable cable)
    {
        (int cores, int sheathed) = CoresOf(cable);
        double mostMm2 = TerminalSizes.MostMm2(boat, cable), mostMm = Math.Max(GlandFit.MostMm(cable, boat), cable.OuterDiameterMm?.Value ?? 0);
        return catalogue.Parts.Where(part => part is { Use: CatalogueUse.Cable, AreaMm2: not null, InsulationC: not null } && part.CoreCount == sheathed && part.AreaMm2.Value <= mostMm2 && !(part.OuterDiameterMm?.Value * RatioOf(cores, sheathed) > mostMm));
    }

    private static double RatioOf(int cores, int sheathed) => BundleRatio[Math.Min(cores / sheathed, BundleRatio.Length - 1)];

    private static bool IsOther(Cable cable, CataloguePart kind) => kind.AreaMm2!.Value > cable.AreaMm2.Value || !(kind.InsulationC!.Value <= cable.InsulationC?.Value);

    private static bool IsTooShort(Cable cable, Laying laying) => laying.LengthM > cable.LengthM?.Value;

    private static bool IsAsGood(Cable cable, CataloguePart kind) => kind.AreaMm2!.Value == cable.AreaMm2.Value && kind.InsulationC!.Value >= cable.InsulationC?.Value;

    // Choices that only go together, of the cable before a device that is moved and of the one that leads on.
    private static string? TogetherOf(Laying laying) => laying.Moved is { OnId: not null } moved ? moved.DeviceId : null;

    private static MendOption Of(MendBench bench, Cable cable, CataloguePart part, int cores, int sheathed, Laying laying)
    {
        ImmutableArray<double> cuts = Cuts(bench, cable, sheathed, laying);
        double eachKg = (part.MassKgPerM?.Value ?? 0) * (cores / sheathed), lengthM = laying.LengthM ?? 0;
        Amount cutM = new(cuts.Sum(), "M");
        return new MendOption
        {
            What = laying is { Words: { } moving, Moved: { } moved } && moved.TailId == cable.Id ? Sentence.Of($"{cable.Title}: {part.Title}, {cutM} to cut; {moving}")
                : laying.Words is { } words ? Sentence.Of($"{cable.Title}: {part.Title}, {cutM} to cut, {words}") : Sentence.Of($"{cable.Title}: {part.Title}, {cutM} to cut"),
            Apply = boat => laying.Apply(boat, cable.Id, was => As(was, part, cores, sheathed)),
            Cost = new MendCost(cuts.Sum() * (part.PriceMoneyPerM?.Value ?? 0), MendBench.AddedKg(eachKg * lengthM, cable.MassKgPerM?.Value * (cable.LengthM?.Value ?? 0))),
            Traits = laying.Traits(cable) with { AreaMm2 = part.AreaMm2!.Value, InsulationC = part.InsulationC!.Value },
            StepFactor = MendBench.StepFactor(part.AreaMm2.Value, cable.AreaMm2.Value) + MendBench.StepFactor(laying.LengthM, cable.LengthM?.Value),
            Part = part,
            CutsM = cuts,
            TogetherId = TogetherOf(laying),
        };
    }

    private static MendOption Relaid(Cable cable, Laying laying) => new()
    {
        What = laying.Moved?.TailId == cable.Id ? laying.Words! : Sentence.Of($"{cable.Title}: {laying.Words!}; it is given as {new Amount(cable.LengthM!.Value, "M")} now"),
        Apply = boat => laying.Apply(boat, cable.Id, was => was),
        Traits = laying.Traits(cable),
        StepFactor = MendBench.StepFactor(laying.LengthM, cable.LengthM?.Value),
        TogetherId = TogetherOf(laying),
    };

    private static ImmutableArray<double> Cuts(MendBench bench, Cable cable, int sheathed, Laying laying)
    {
        double? laidM = laying.Words is not null ? laying.LengthM : null;
        Quantity? LengthOf(Core core) => core.LengthM ?? cable.LengthM;
        double alongM = cable.Run.Sum(leg => leg.LengthM);
        double CutM(double? givenM, double? deviationM) => bench.Cut.CutM(laidM ?? Math.Max(givenM ?? 0, alongM), deviationM);
        return sheathed > 1 || cable.Cores.Count <= 1
            ? [CutM(cable.Cores.Select(core => LengthOf(core)?.Value).Append(cable.LengthM?.Value).Max(), cable.LengthM?.PlusMinus)]
            : [.. cable.Cores.Select(core => CutM(LengthOf(core)?.Value, LengthOf(core)?.PlusMinus))];
    }

    /// <summary>The cable as one of a catalogue part: so many cores in all, so many in each sheath.</summary>
    public static Cable As(Cable cable, CataloguePart part, int cores, int sheathed) => cable with
    {
        AreaMm2 = part.AreaMm2!,
        InsulationC = part.InsulationC,
        Strands = part.Strands,
        OuterDiameterMm = Times(part.OuterDiameterMm, RatioOf(cores, sheathed)),
        MassKgPerM = Times(part.MassKgPerM, cores / sheathed),
        Cores = EndChoices.LuggedFor(cable.Cores, part.AreaMm2!.Value),
        Note = MendBench.NoteOf(part),
    };

    private static Quantity? Times(Quantity? quantity, double ratio) => quantity is null || ratio == 1 ? quantity : quantity with { Value = Math.Round(quantity.Value * ratio, 6) };
}
