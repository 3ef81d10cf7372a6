using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Starting forms scaled to length over all, greatest beam and depth amidships (keel to deck edge): to be corrected section by section with the tape. x runs from 0 at the
/// transom to the length at the stem head, z from 0 at the keel amidships.
/// </summary>
public static class StartingForm
{
    private static readonly ImmutableArray<double> Stations = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

    public static HullForm Create(string id, StartingShape shape, double lengthM, double beamM, double depthM)
    {
        Guard.Positive(lengthM, 100, "m", id);
        Guard.Positive(beamM, 30, "m", id);
        Guard.Positive(depthM, 20, "m", id);
        return new HullForm
        {
            Id = id,
            Sections = shape switch
            {
                StartingShape.Box => [Box("aft end", 0), Box("forward end", lengthM)],
                StartingShape.Barge => [Rake("transom", 0), Box("foot of after rake", 0.12 * lengthM), Box("foot of forward rake", 0.85 * lengthM), Rake("bow", lengthM)],
                StartingShape.SingleChine => [.. Stations.Select(Chine), Stem("chine")],
                StartingShape.RoundBilge => [.. Stations.Select(Round), Stem(null)],
                _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, $"{id}: shape: allowed box, barge, single chine and round bilge."),
            },
        };

        HullSection Box(string name, double x) =>
            HullSection.At(name, x, (beamM / 2, 0, null), (beamM / 2, depthM, null)) with { IsSharp = true };

        HullSection Rake(string name, double x) =>
            HullSection.At(name, x, (beamM / 2, 0.6 * depthM, null), (beamM / 2, depthM, null)) with { IsSharp = true };

        HullSection Chine(double share) => HullSection.At(Name(share), share * lengthM,
            (0, depthM * Keel(share), null),
            (beamM / 2 * SheerBreadth(share) * ChineBreadth(share), depthM * ChineHeight(share), "chine"),
            (beamM / 2 * SheerBreadth(share), depthM * SheerHeight(share), null));

        HullSection Round(double share)
        {
            var (keel, sheer, breadth) = (depthM * Keel(share), depthM * SheerHeight(share), beamM / 2 * SheerBreadth(share));
            var fullness = 2.9 - (1.4 * share);
            var points = Enumerable.Range(0, 7).Select(i => i / 6.0)
                .Select(turn => new SectionPoint(share * lengthM, breadth * Math.Pow(Math.Sin(turn * Math.PI / 2), 2 / fullness), sheer - ((sheer - keel) * Math.Pow(Math.Cos(turn * Math.PI / 2), 2 / fullness))));
            return new HullSection { Id = Name(share), Points = [.. points] };
        }

        HullSection Stem(string? line) => HullSection.Profile("stem",
            (0.94 * lengthM, depthM * 0.30, null), (0.975 * lengthM, depthM * 0.70, line), (lengthM, depthM * SheerHeight(1), null));
    }

    private static string Name(double share) => share == 0 ? "transom" : FormattableString.Invariant($"station {share:0.0}");

    private static double Keel(double share) =>
        share < 0.35 ? 0.20 * Math.Pow((0.35 - share) / 0.35, 2) : share > 0.6 ? 0.30 * Math.Pow((share - 0.6) / 0.34, 2.4) : 0;

    private static double SheerHeight(double share) => 1 + (share > 0.4 ? 0.25 * Math.Pow((share - 0.4) / 0.6, 2) : 0.05 * Math.Pow((0.4 - share) / 0.4, 2));

    private static double SheerBreadth(double share) => share < 0.4 ? 1 - (0.10 * Math.Pow((0.4 - share) / 0.4, 2)) : 1 - Math.Pow((share - 0.4) / 0.6, 2.5);

    private static double ChineBreadth(double share) => 0.92 - (share > 0.4 ? 0.42 * Math.Pow((share - 0.4) / 0.6, 1.8) : 0);

    private static double ChineHeight(double share) => 0.28 + (share > 0.4 ? 0.42 * Math.Pow((share - 0.4) / 0.6, 2) : 0.12 * Math.Pow((0.4 - share) / 0.4, 2));
}
