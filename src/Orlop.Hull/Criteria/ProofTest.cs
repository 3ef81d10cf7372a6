using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>A simplified proof test foreseen on the computed boat. What is not known is null and leaves it unknown.</summary>
public sealed record ProofTestInput
{
    /// <summary>Levers to the side she is heeled to, fully loaded, tanks three-quarters full.</summary>
    public required RightingCurve Curve { get; init; }

    public required WaterExposure Exposure { get; init; }

    /// <summary>Length over deck, above 0 to 200; the test is for 19.8 m and less.</summary>
    public required double LengthM { get; init; }

    /// <summary>The deck edge at its lowest, on the side that goes down.</summary>
    public required Point3 LowestDeckEdge { get; init; }

    /// <summary>Mass of all persons, 0 to 100 000; 83.9 kg each now, 72.6 kg in the text of 2003.</summary>
    public required double? PersonsKg { get; init; }

    /// <summary>Greatest breadth that they can reach, above 0 to 50.</summary>
    public required double? PersonsBreadthM { get; init; }

    /// <summary>Side area above the waterline, above 0 to 10 000.</summary>
    public required double? WindAreaM2 { get; init; }

    /// <summary>Centre of that area above the waterline, above 0 to 100.</summary>
    public required double? WindHeightM { get; init; }

    /// <summary>Length of an open cockpit, 0 to the boat's length.</summary>
    public double CockpitLengthM { get; init; }
}

/// <summary>
/// 46 CFR 178.330: the greater of M = W·B/6 (persons to one side) and M = P·A·H (wind), met by weights moved across, may put no more than i of the freeboard f under: i = f/2, with a
/// cockpit f(2L - 1.5L')/(4L) on exposed waters, f(2L - L')/(4L) on others; and heel her 14° at most. P for exposed and partially protected waters, which route takes which formula, and the 14° are from memory. The
/// test itself is done afloat, before an inspector. The heel is where the moment brings her from where she rests: of a boat that lists away from it, it may lie short of upright.
/// </summary>
public static class ProofTest
{
    /// <summary>Symbol of the step of working that tells the heel, starboard positive.</summary>
    public const string HeelSymbol = "φ";

    private const double LongestM = 19.8;
    private const double MostHeelDeg = 14;
    private const double RadPerDeg = Math.PI / 180;
    private const string Source = "46 CFR 178.330";

    public static ImmutableArray<CriterionResult> Check(ProofTestInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var subject = input.Curve.Input.Boat.Subject;
        Guard.Positive(input.LengthM, 200, "m", subject);
        Guard.Place(input.LowestDeckEdge, subject);
        Guard.InRange(input.CockpitLengthM, 0, input.LengthM, "m", subject);
        if (input.LengthM > LongestM)
        {
            return Unknown(FormattableString.Invariant($"does not apply: {input.LengthM:0.#} m is over 19.8 m (65 ft)"));
        }

        if (input.PersonsKg is not { } persons || input.PersonsBreadthM is not { } breadth || input.WindAreaM2 is not { } area || input.WindHeightM is not { } height)
        {
            return Unknown("persons, their breadth, wind area or its height is not given");
        }

        var byPersons = Guard.InRange(persons, 0, 100_000, "kg", subject) * Guard.Positive(breadth, 50, "m", subject) / 6;
        var pressure = input.Exposure switch { WaterExposure.Protected => 36.6, WaterExposure.PartiallyProtected => 48.8, _ => 73.3 };
        var byWind = pressure * Guard.Positive(area, 10_000, "m²", subject) * Guard.Positive(height, 100, "m", subject);
        return Heeled(input, Math.Max(byPersons, byWind),
        [
            new WorkingStep("M persons", FormattableString.Invariant($"{persons:0.#}·{breadth:0.###}/6"), byPersons, "kg m", Source),
            new WorkingStep("M wind", FormattableString.Invariant($"{pressure}·{area:0.##}·{height:0.###}"), byWind, "kg m", input.Exposure == WaterExposure.Protected ? Source : $"{Source} (pressure from memory)"),
        ]);
    }

    private static ImmutableArray<CriterionResult> Heeled(ProofTestInput input, double moment, ImmutableArray<WorkingStep> moments)
    {
        var curve = input.Curve;
        if (curve.Points.IsEmpty)
        {
            return Unknown(curve.Message);
        }

        var side = curve.Input.ToDeg < 0 ? -1 : 1;
        var lever = moment / curve.MassKg;
        double Beyond(RightingPoint point) => (side * point.GzM) - (lever * Math.Cos(point.HeelDeg * RadPerDeg));
        var found = Beyond(curve.Points[0]) > 0 ? BeforeUpright(curve, side, Beyond)
            : CurveCrossing.First(curve, 0, Beyond) is { } heel && Math.Abs(heel) < 90 ? curve.At(heel) : null;
        if (found is null)
        {
            var reason = FormattableString.Invariant($"{To(side)} the levers never reach {lever:0.###} m, what moves people or wind heels her with");
            return curve.Status == FloatingStatus.Floats && Math.Abs(curve.Input.ToDeg) >= 90
                ? [CriterionResult.FailedWithout("us-proof-immersion", "freeboard left of what may go under", 0, "m", Source, [], reason), CriterionResult.FailedWithout("us-proof-heel", "heel left of 14°", 0, "°", Source, [], reason)]
                : Unknown("the curve ends before the levers reach the moment");
        }

        var freeboard = curve.Points[0].Attitude.HeightAboveWaterM(input.LowestDeckEdge);
        var immersion = freeboard - found.Attitude.HeightAboveWaterM(input.LowestDeckEdge);
        var share = (2 - ((input.Exposure == WaterExposure.Exposed ? 1.5 : 1) * input.CockpitLengthM / input.LengthM)) / 4;
        var allowed = share * freeboard;
        ImmutableArray<WorkingStep> working =
        [
            .. moments,
            new WorkingStep(HeelSymbol, FormattableString.Invariant($"GZ = {moment:0.#}·cos φ/{curve.MassKg:0.#}"), found.HeelDeg, "°", "weights moved across; starboard positive"),
            new WorkingStep("i", FormattableString.Invariant($"{share:0.####}·{freeboard:0.###}"), allowed, "m", $"{Source} (which route from memory)"),
            new WorkingStep("immersion", FormattableString.Invariant($"{freeboard:0.###} m less what is left at {Math.Abs(found.HeelDeg):0.##}° {To(found.HeelDeg)}"), immersion, "m", "deck edge at that heel"),
        ];
        var heeled = CriterionResult.AtLeast("us-proof-heel", "heel left of 14°", MostHeelDeg - Math.Abs(found.HeelDeg), 0, "°", $"{Source} (limit from memory)", [], FormattableString.Invariant($"14° − {Math.Abs(found.HeelDeg):0.##}°"));
        return
        [
            CriterionResult.AtLeast("us-proof-immersion", "freeboard left of what may go under", allowed - immersion, 0, "m", Source, [], "i − immersion") with { Working = working },
            heeled with { Working = [.. working[..^2], .. heeled.Working] },
        ];
    }

    // She rests heeled to the other side, and upright her lever is more than the moment already: it rights her part of the way.
    private static RightingPoint? BeforeUpright(RightingCurve curve, int side, Func<RightingPoint, double> beyond)
    {
        var other = RightingCurve.Calculate(curve.Input with { ToDeg = -side * 90 });
        return CurveCrossing.First(other, 0, point => -beyond(point)) is { } heel ? other.At(heel) : null;
    }

    private static string To(double heelDeg) => heelDeg < 0 ? "to port" : "to starboard";

    private static ImmutableArray<CriterionResult> Unknown(string why) =>
    [
        CriterionResult.AtLeast("us-proof-immersion", "freeboard left of what may go under", null, 0, "m", Source, [why], "i − immersion"),
        CriterionResult.AtLeast("us-proof-heel", "heel left of 14°", null, 0, "°", $"{Source} (limit from memory)", [why], "14° − φ"),
    ];
}
