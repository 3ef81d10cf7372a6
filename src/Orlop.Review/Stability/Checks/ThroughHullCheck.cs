using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>A through-hull at or below the waterline can be shut.</summary>
public sealed class ThroughHullCheck : ICheck<StabilityView>
{
    private const double NearM = 0.1;

    public CheckDescription Description { get; } = new(
        "through-hull-shuts",
        "Through-hull has a seacock",
        "Height of each through-hull and exhaust over the water at rest, in every condition: below water, or within 0.1 m of it, it must have a seacock (our rule, no source). Higher than that says nothing of water that comes in when she heels: without a seacock that shuts tight it is counted among the openings.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) =>
        from fitting in view.Boat.All<HullOpening>()
        where fitting.Use is OpeningUse.ThroughHull or OpeningUse.Exhaust
        from condition in view.Conditions
        select Judge(view, fitting, view.LoadedIn(condition)) with { SubjectId = fitting.Id };

    private Finding Judge(StabilityView view, HullOpening fitting, LoadedBoat loaded)
    {
        if (fitting.HasSeacock == true)
        {
            return Judged(Description, fitting.Id, loaded with { Missing = [] }, Verdict.Holds, null, Sentence.Of($"{fitting.Title} has a seacock"), []);
        }

        if (fitting.Place is not { } place)
        {
            return Unknown(Description, fitting.Id, loaded.Condition.Id, Sentence.Of($"{fitting.Title}: where it is is not given, so whether it needs a seacock cannot be told"), [new FindingInput(fitting.Id, "place", IsMissing: true)]);
        }

        if (view.FloatingIn(loaded.Condition) is not { } floating)
        {
            return WhyUnknown.Of(Description, view, loaded, $"how high {fitting.Title} stands over the water");
        }

        if (floating.Rest is not { Status: FloatingStatus.Floats, Position: { } at })
        {
            return Unknown(Description, fitting.Id, loaded.Condition.Id, Sentence.Of($"How high {fitting.Title} stands over the water {FindingLines.In(loaded.Condition)} cannot be told: she {Ending.Briefly(floating.Rest)}"), []);
        }

        double height = at.Attitude.HeightAboveWaterM(WeightLedger.At(place));
        Banded banded = view.NearbyIn(loaded.Condition).Banded(height, near => near.Attitude.HeightAboveWaterM(WeightLedger.At(place)));
        Verdict far = banded.AtLeast(NearM);
        WorkingLine[] working = [new WorkingLine("Height over the water", "at rest", M(height), "hydrostatics"), new WorkingLine("Near", "needs a seacock below", M(NearM), "our rule, no source"), BandLine(banded, "m")];
        Sentence where = height < 0 ? Sentence.Of($"{M(-height)} under water {FindingLines.In(loaded.Condition)}") : Sentence.Of($"{M(height)} over the water {FindingLines.In(loaded.Condition)}");
        Finding told = (far, fitting.HasSeacock) switch
        {
            (Verdict.Holds or Verdict.Tight, _) => Judged(Description, fitting.Id, loaded, far, banded.UseAtLeast(NearM), Sentence.Of($"{fitting.Title} is {where}, over the {M(NearM)} within which this rule asks for a seacock; {(fitting.IsWayIn ? "heeled under, it lets water in, and is counted among the openings" : "its seacock shuts it")}"), working),
            (_, null) => Judged(Description, fitting.Id, loaded, Verdict.Unknown, null, Sentence.Of($"{fitting.Title} is {where}, and whether it has a seacock is not given"), working, new FindingInput(fitting.Id, "hasSeacock", IsMissing: true)),
            (Verdict.Fails, _) => Judged(Description, fitting.Id, loaded, Verdict.Fails, null, Sentence.Of($"{fitting.Title} is {where} and has no seacock"), working),
            _ => Judged(Description, fitting.Id, loaded, Verdict.Unknown, null, Sentence.Of($"{fitting.Title} is {where} and has no seacock, {Unsure(view, loaded, banded, "m", NearM)}"), working),
        };
        return told with { GravityRatio = -height };
    }
}
