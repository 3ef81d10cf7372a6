using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>
/// The fuse or breaker at the end of a cable that is too long before it, moved along the straight line towards the other end until the length fits along the sides of the space. What leads on from
/// it becomes longer by as much and is bought anew. Only where both have a place, nothing is bolted to the device, and one cable at most leads on.
/// </summary>
/// <param name="Options">As bought and as from stock.</param>
/// <param name="AlsoIds">The device, and the cable that leads on.</param>
internal sealed record MovedDevice(ImmutableArray<MendOption> Options, ImmutableArray<string> AlsoIds)
{
    private const int Decimals = 2;

    /// <summary>The move; null where there is none.</summary>
    /// <param name="bench">What there is to choose from.</param>
    /// <param name="cable">The cable, with one core.</param>
    /// <param name="shortM">Length that it becomes, in metres.</param>
    public static MovedDevice? Of(MendBench bench, Cable cable, double shortM)
    {
        BoatModel boat = bench.Draft;
        if (cable.Cores.Count != 1 || cable.LengthM is null || Ends(boat, cable.Cores[0]) is not ({ Place: { } at } device, { Place: { } source }) || SquareM(at, source) <= shortM)
        {
            return null;
        }

        double share = shortM / SquareM(at, source);
        double Toward(double from, double to) => Math.Round(from + (share * (to - from)), Decimals);
        Place near = new(Toward(source.XM, at.XM), Toward(source.YM, at.YM), Toward(source.ZM, at.ZM));
        Cable[] on = [.. boat.All<Cable>().Where(other => other.Id != cable.Id && IsAt(other, device.Id))];
        bool isBolted = boat.All<Link>().Any(link => link.From.Part == device.Id || link.To.Part == device.Id);
        if (isBolted || on.Length > 1 || (device.Space is { } space && boat.Find<Space>(space)?.Contains(near) == false))
        {
            return null;
        }

        double moreM = Math.Round(SquareM(at, near), 3);
        Sentence moved = Sentence.Of($"{device.Title}: moved nearer, to {FormattableString.Invariant($"{near.XM:0.##} m forward, {near.YM:0.##} m to port, {near.ZM:0.##} m up")}, so that {cable.Title} is laid in {new Amount(shortM, "M")} in place of {new Amount(cable.LengthM.Value, "M")}; measure on board before it is relied on");
        MendOption option = new()
        {
            What = moved,
            Apply = now => MendBench.Change<Cable>(MendBench.Change<Protection>(now, device.Id, was => was with { Place = near }), cable.Id, was => CableChoices.InLength(was, shortM)),
            Traits = new MendTraits { AreaMm2 = cable.AreaMm2.Value, InsulationC = cable.InsulationC?.Value, LengthM = shortM, Route = MendTraits.MovedRoute },
            StepFactor = MendBench.StepFactor(shortM, cable.LengthM.Value),
        };
        return on.Length == 0 ? new MovedDevice([option], [device.Id])
            : Longer(bench, option, on[0], moreM) is { IsEmpty: false } longer ? new MovedDevice(longer, [device.Id, on[0].Id]) : null;
    }

    // As long as it becomes, of the catalogue part that it is now.
    private static ImmutableArray<MendOption> Longer(MendBench bench, MendOption option, Cable on, double moreM)
    {
        int cores = Math.Max(1, on.Cores.Count), sheathed = on.IsSheathed || cores == 1 ? cores : 1;
        if (on.LengthM is not { } wasM || on.Cores.Any(core => core.LengthM is not null))
        {
            return [];
        }

        double lengthM = Math.Round(wasM.Value + moreM, 3);
        ImmutableArray<double> cuts = [.. Enumerable.Repeat(bench.Cut.CutM(lengthM, wasM.PlusMinus), cores / sheathed)];
        return
        [
            .. bench.Catalogue.Parts.Where(part => part is { Use: CatalogueUse.Cable, AreaMm2: not null, InsulationC: not null } && part.CoreCount == sheathed && part.AreaMm2.Value == on.AreaMm2.Value && part.InsulationC.Value >= (on.InsulationC?.Value ?? 0))
                .SelectMany(part => bench.Ways(option with
                {
                    What = new Sentence([.. option.What.Parts, .. Sentence.Of($"; {on.Title} becomes {new Amount(lengthM, "M")}: {part.Title}, {new Amount(cuts.Sum(), "M")} to cut").Parts]),
                    Apply = boat => MendBench.Change<Cable>(option.Apply(boat), on.Id, was => was.LengthM is { } now ? CableChoices.InLength(CableChoices.As(was, part, cores, sheathed), Math.Round(now.Value + moreM, 3)) : was),
                    Cost = new MendCost(cuts.Sum() * (part.PriceMoneyPerM?.Value ?? 0), MendBench.AddedKg((part.MassKgPerM?.Value ?? 0) * (cores / sheathed) * lengthM, on.MassKgPerM?.Value * wasM.Value)),
                    Part = part,
                    CutsM = cuts,
                })),
        ];
    }

    private static (Protection Device, Part Source)? Ends(BoatModel boat, Core core) => (boat.Find<Part>(core.From.Part), boat.Find<Part>(core.To.Part)) switch
    {
        (Part and not Protection and { } source, Protection device) => (device, source),
        (Protection device, Part and not Protection and { } source) => (device, source),
        _ => null,
    };

    private static bool IsAt(Cable cable, string partId) => cable.Cores.Any(core => core.From.Part == partId || core.To.Part == partId);

    private static double SquareM(Place a, Place b) => Math.Abs(a.XM - b.XM) + Math.Abs(a.YM - b.YM) + Math.Abs(a.ZM - b.ZM);
}
