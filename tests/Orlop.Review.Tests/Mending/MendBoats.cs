using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;

namespace Orlop.Review.Tests.Mending;

/// <summary>Small boats to mend, small catalogues to mend them from, and what the review says of them by itself.</summary>
internal static class MendBoats
{
    public static readonly CutAllowance Cut = new(0.15, 0.2, 0.1);

    /// <summary>One lamp circuit of which everything is given.</summary>
    /// <param name="runningA">What the lamp takes, in A.</param>
    /// <param name="areaMm2">Its cable's cross-section, in mm².</param>
    /// <param name="lengthM">Its cable's length, in m.</param>
    /// <param name="fuseA">Its fuse, in A.</param>
    /// <param name="breakingA">What its fuse can break, in A.</param>
    public static BoatModel Lamp(double runningA = 5, double areaMm2 = 2.5, double lengthM = 2, double fuseA = 10, double breakingA = 2000) => SmallBoat.OneLamp(runningA, fuseA)
        .Change<Protection>("fuse", fuse => fuse with { BreakingA = breakingA })
        .Change<Cable>("lamp-cable", cable => cable with { AreaMm2 = areaMm2, LengthM = lengthM, Run = [new RunLeg { Space = "cabin", LengthM = lengthM }] });

    public static CataloguePart Twin(double areaMm2, double pricePerM) => new()
    {
        Id = FormattableString.Invariant($"twin-{areaMm2 * 10:0}"),
        Use = CatalogueUse.Cable,
        AreaMm2 = areaMm2,
        CoreCount = 2,
        InsulationC = 90,
        OuterDiameterMm = 8,
        MassKgPerM = 0.03 * areaMm2,
        PriceMoneyPerM = pricePerM,
    };

    public static CataloguePart Fuse(double ratedA, double price, double breakingA = 5000) => new()
    {
        Id = FormattableString.Invariant($"fuse-{ratedA * 10:0}-{breakingA:0}"),
        Use = CatalogueUse.Fuse,
        RatedA = ratedA,
        RatedV = 58,
        BreakingA = breakingA,
        Gates = "blade-type-c",
        ResistanceOhm = 0.1 / ratedA,
        MassKg = 0.02,
        PriceMoney = price,
    };

    public static MendResult Mend(BoatModel boat, params IEnumerable<CataloguePart> parts) => Mend(boat, MendAim.Cost, parts);

    public static MendResult Mend(BoatModel boat, MendAim aim, IEnumerable<CataloguePart> parts) => Mender.Find(Request(boat, parts) with { Aim = aim }, null, TestContext.Current.CancellationToken);

    public static MendRequest Request(BoatModel boat, IEnumerable<CataloguePart> parts) => new() { Draft = boat, Catalogue = Catalogue.Of(parts), Cut = Cut };

    /// <summary>The boat with another cable and another fuse, each as it is where null.</summary>
    public static BoatModel Exchanged(BoatModel boat, CataloguePart? size, CataloguePart? rating)
    {
        Cable cable = boat.Find<Cable>("lamp-cable")!;
        Protection fuse = boat.Find<Protection>("fuse")!;
        return boat.With(
            [
                .. size is null ? Array.Empty<Thing>() : [cable with { AreaMm2 = size.AreaMm2!, InsulationC = size.InsulationC, OuterDiameterMm = size.OuterDiameterMm, MassKgPerM = size.MassKgPerM, Strands = size.Strands }],
                .. rating is null ? Array.Empty<Thing>() : [fuse with { RatedA = rating.RatedA!, RatedV = rating.RatedV, BreakingA = rating.BreakingA, Gates = rating.Gates, ResistanceOhm = rating.ResistanceOhm }],
            ]);
    }

    /// <summary>The worst of each check on each subject, by an engine of its own.</summary>
    public static ImmutableDictionary<(string, string), Verdict> Verdicts(BoatModel boat) => new ReviewEngine([new ElectricsDiscipline()]).Review(boat, TestContext.Current.CancellationToken)
        .Findings.ToImmutableDictionary(pair => (pair.CheckId, pair.SubjectId), pair => pair.Shown.Verdict);

    /// <summary>Nothing fails, and nothing is unknown that was not in the boat before, but how ends are made off, which is in no proof.</summary>
    public static bool IsMended(BoatModel boat, BoatModel before)
    {
        ImmutableDictionary<(string, string), Verdict> was = Verdicts(before);
        return Verdicts(boat).All(finding => finding.Value switch
        {
            Verdict.Fails => false,
            // The thread of a stud that a new lead goes over is told when it is made off.
            Verdict.Unknown => was.GetValueOrDefault(finding.Key, Verdict.Holds) == Verdict.Unknown || finding.Key.Item1 == "ends-told",
            _ => true,
        });
    }
}
