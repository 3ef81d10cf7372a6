using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>What is wanted of a cable besides another size.</summary>
internal sealed record CableWant
{
    /// <summary>The length it may be shortened to, in metres; null where that is no remedy.</summary>
    public double? ShortM { get; init; }

    /// <summary>It may take another run.</summary>
    public bool IsOtherRun { get; init; }
}

/// <summary>What may become of a cable: another size or insulation, a shorter run where it is too long before its fuse, another one where it is hot or wet.</summary>
internal static class CableChoices
{
    // Outer diameter of so many equal round conductors side by side, over that of one: circles in a circle.
    private static readonly double[] BundleRatio = [1, 1, 2, 2.155, 2.415, 2.702];

    // What a cable laid short is at least, over the straight distance between the places of its ends. Common practice, no source.
    private const double RoundaboutFactor = 1.2;

    // Thinner than this share of what is there is not looked at.
    private const double ThinnestFraction = 0.5;

    /// <summary>The slot of a cable; null where nothing can become of it.</summary>
    /// <param name="bench">What there is to choose from.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="want">What else may become of it.</param>
    public static MendSlot? Slot(MendBench bench, Cable cable, CableWant want)
    {
        int cores = Math.Max(1, cable.Cores.Count), sheathed = cable.IsSheathed || cores == 1 ? cores : 1;
        List<Laying> layings = [new(0, cable.LengthM?.Value, null, null)];
        if (want.ShortM is { } shortM && cable.LengthM is not null)
        {
            layings.AddRange(Shorter(bench.Draft, cable, shortM));
        }

        if (want.IsOtherRun && OtherRuns.Of(bench.Draft, cable) is { } other && other.Legs != cable.Run)
        {
            layings.Add(new Laying(1, other.LengthM, other, Sentence.Of($"by {other.Words}")));
        }

        double mostMm2 = TerminalSizes.MostMm2(bench.Draft, cable);
        CataloguePart[] kinds =
        [
            .. bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Cable, AreaMm2: not null, InsulationC: not null } && part.CoreCount == sheathed && part.AreaMm2.Value <= mostMm2
                && part.AreaMm2.Value >= ThinnestFraction * cable.AreaMm2.Value && (part.AreaMm2.Value > cable.AreaMm2.Value || !(part.InsulationC.Value <= cable.InsulationC?.Value))),
        ];
        IEnumerable<MendOption> all = layings.SelectMany(laying => kinds.SelectMany(kind => bench.Ways(Of(bench, cable, kind, cores, sheathed, laying)))
            // What is there already can be laid anew where it is long enough.
            .Concat(laying.Words is not null && laying.LengthM <= cable.LengthM?.Value ? [Relaid(cable, laying)] : []));
        MovedDevice? moved = want.ShortM is { } nearM ? MovedDevice.Of(bench, cable, nearM) : null;
        MendSlot? slot = bench.Slot($"cable:{cable.Id}", SlotKind.Cable, cable.Id, Traits(cable, layings[0]), all.Concat(moved?.Options ?? []));
        return slot is null || moved is null ? slot : slot with { AlsoIds = moved.AlsoIds };
    }

    // Never shorter than her drawing says that it must be: what it becomes hangs on a length that nobody has measured.
    private static IEnumerable<Laying> Shorter(BoatModel boat, Cable cable, double shortM)
    {
        if (cable.Cores.Count == 0 || boat.Find<Part>(cable.Cores[0].From.Part)?.Place is null || boat.Find<Part>(cable.Cores[0].To.Part)?.Place is null)
        {
            yield return new Laying(0, shortM, null, Sentence.Of($"laid in {new Amount(shortM, "M")}, if that reaches: measure on board before it is relied on, for the drawing has not the places of both ends"));
        }
        else if (cable.Cores.Max(core => StraightM(boat, core)) is var straightM && shortM >= RoundaboutFactor * straightM)
        {
            yield return new Laying(0, shortM, null, Sentence.Of($"laid in {new Amount(shortM, "M")}, if that reaches: measure on board before it is relied on, for the drawing has {new Amount(straightM, "M")} straight through the air"));
        }
    }

    // Between the places of its ends; nothing where one has none.
    private static double StraightM(BoatModel boat, Core core) =>
        boat.Find<Part>(core.From.Part)?.Place is { } from && boat.Find<Part>(core.To.Part)?.Place is { } to ? from.DistanceM(to) : 0;

    /// <summary>How a cable is laid: as it is, or shorter, or by another run.</summary>
    private sealed record Laying(int Route, double? LengthM, OtherRun? Run, Sentence? Words);

    private static MendTraits Traits(Cable cable, Laying laying) => new()
    {
        AreaMm2 = cable.AreaMm2.Value,
        InsulationC = cable.InsulationC?.Value,
        LengthM = laying.LengthM,
        Route = laying.Route,
    };

    private static MendOption Of(MendBench bench, Cable cable, CataloguePart part, int cores, int sheathed, Laying laying)
    {
        ImmutableArray<double> cuts = Cuts(bench, cable, sheathed, laying);
        double eachKg = (part.MassKgPerM?.Value ?? 0) * (cores / sheathed), lengthM = laying.LengthM ?? 0;
        Amount cutM = new(cuts.Sum(), "M");
        return new MendOption
        {
            What = laying.Words is { } words ? Sentence.Of($"{cable.Title}: {part.Title}, {cutM} to cut, {words}") : Sentence.Of($"{cable.Title}: {part.Title}, {cutM} to cut"),
            Apply = boat => MendBench.Change<Cable>(boat, cable.Id, was => Laid(As(was, part, cores, sheathed), laying)),
            Cost = new MendCost(cuts.Sum() * (part.PriceMoneyPerM?.Value ?? 0), MendBench.AddedKg(eachKg * lengthM, cable.MassKgPerM?.Value * (cable.LengthM?.Value ?? 0))),
            Traits = Traits(cable, laying) with { AreaMm2 = part.AreaMm2!.Value, InsulationC = part.InsulationC!.Value },
            StepFactor = MendBench.StepFactor(part.AreaMm2.Value, cable.AreaMm2.Value) + MendBench.StepFactor(laying.LengthM, cable.LengthM?.Value),
            Part = part,
            CutsM = cuts,
        };
    }

    private static MendOption Relaid(Cable cable, Laying laying) => new()
    {
        What = Sentence.Of($"{cable.Title}: {laying.Words!}; it is given as {new Amount(cable.LengthM!.Value, "M")} now"),
        Apply = boat => MendBench.Change<Cable>(boat, cable.Id, was => Laid(was, laying)),
        Traits = Traits(cable, laying),
        StepFactor = MendBench.StepFactor(laying.LengthM, cable.LengthM.Value),
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
        OuterDiameterMm = Times(part.OuterDiameterMm, BundleRatio[Math.Min(cores / sheathed, BundleRatio.Length - 1)]),
        MassKgPerM = Times(part.MassKgPerM, cores / sheathed),
        Cores = EndChoices.LuggedFor(cable.Cores, part.AreaMm2!.Value),
        Note = MendBench.NoteOf(part),
    };

    private static Quantity? Times(Quantity? quantity, double ratio) => quantity is null || ratio == 1 ? quantity : quantity with { Value = Math.Round(quantity.Value * ratio, 6) };

    private static Cable Laid(Cable cable, Laying laying)
    {
        if (laying.Words is null || laying.LengthM is not { } lengthM)
        {
            return cable;
        }

        Cable laid = InLength(cable, lengthM);
        return laying.Run is null ? laid : laid with { Run = laying.Run.Legs, Cores = cable.Cores.Select(core => core with { LengthM = null }).ToValueList() };
    }

    /// <summary>The cable in another length, in metres; the longest stretch of its run gives way.</summary>
    public static Cable InLength(Cable cable, double lengthM)
    {
        RunLeg? longest = cable.Run.MaxBy(leg => leg.LengthM);
        double lessM = (cable.LengthM?.Value ?? lengthM) - lengthM;
        return cable with
        {
            LengthM = new Quantity(lengthM, Knowledge.Estimated, cable.LengthM?.PlusMinus, Method: "to be laid so; measure before cutting"),
            Run = cable.Run.Select(leg => ReferenceEquals(leg, longest) ? leg with { LengthM = Math.Round(Math.Max(0, leg.LengthM - lessM), 3) } : leg).ToValueList(),
        };
    }
}
