using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Bring;

/// <summary>How many clips hold a cable: one at each support of its ways and one at its end; none in a conduit or a gland.</summary>
/// <param name="Cable">The cable.</param>
/// <param name="Count">Clips; 0 where its run is not known, or all of it lies in conduits.</param>
/// <param name="IsAssumed">Of some stretch nobody has told how far apart its supports are.</param>
internal sealed record Clipped(Cable Cable, int Count, bool IsAssumed)
{
    // A stretch that is a support's distance long to the last digit needs no more for it.
    private const double Rounding = 1e-9;

    /// <summary>What is taken where a way tells no supports.</summary>
    public static Sentence Assumption => Sentence.Of($"Where no way tells its supports, one every {new Amount(Allowances.ClipSpacingM, "M")} (common practice, no source).");

    /// <summary>"12 for Winch feed, 12.5 mm thick."</summary>
    public Sentence Words => Cable.OuterDiameterMm is { } thick
        ? Sentence.Of($"{Count} for {Cable.Title}, {new Amount(thick.Value, "Mm")} thick.")
        : Sentence.Of($"{Count} for {Cable.Title}.");

    /// <summary>The cable that some lengths are cut for.</summary>
    public static Clipped Of(PackScope scope, IGrouping<string, CableCut> cuts)
    {
        Cable cable = scope.Whole.Find<Cable>(cuts.Key)!;
        (double LengthM, double? SupportM, bool IsHeld)[] stretches = cable.Run.Count > 0
            ? [.. cable.Run.Select(leg => (leg.LengthM, leg.Way is { } id ? scope.Whole.Find<Way>(id) : null)).Select(leg => (leg.LengthM, leg.Item2?.SupportM?.Value, leg.Item2?.Means is not (WayKind.Conduit or WayKind.Gland)))]
            : [(cuts.Max(cut => cut.RunM ?? 0), null, true)];
        (double LengthM, double? SupportM, bool IsHeld)[] held = [.. stretches.Where(stretch => stretch is { IsHeld: true, LengthM: > 0 })];
        int count = held.Sum(stretch => (int)Math.Ceiling((stretch.LengthM / (stretch.SupportM ?? Allowances.ClipSpacingM)) - Rounding));
        return new Clipped(cable, count == 0 ? 0 : count + 1, held.Any(stretch => stretch.SupportM is null));
    }
}
