using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>What the least GM in the wind is found from. What is not known is null and leaves the criterion unknown.</summary>
/// <param name="Subject">What it is, for messages.</param>
/// <param name="Exposure">Waters.</param>
/// <param name="LengthM">Length between perpendiculars, above 0 to 200.</param>
/// <param name="BeamM">Above 0 to 50.</param>
/// <param name="MassKg">Displacement.</param>
/// <param name="FreeboardM">Least freeboard, above 0 to 20.</param>
/// <param name="WindAreaM2">Side area above the waterline, above 0 to 10 000.</param>
/// <param name="WindLeverM">From the centre of that area to half the draught, above 0 to 100.</param>
/// <param name="GmM">GM with free surfaces taken off.</param>
public sealed record WindHeelGmInput(
    string Subject, WaterExposure Exposure, double LengthM, double BeamM, double MassKg, double? FreeboardM, double? WindAreaM2, double? WindLeverM, double? GmM);

/// <summary>
/// 46 CFR 170.170: GM not less than P·A·H/(W·tan T), P = 0.055, 0.036 or 0.028 + (L/1309)² t/m², T the lesser of 14° and the heel that puts half the freeboard under. A rule of small angles: not for boats under sail.
/// </summary>
public static class WindHeelGm
{
    private const double MostHeelDeg = 14;
    private const double RadPerDeg = Math.PI / 180;
    private const string Source = "46 CFR 170.170";

    public static CriterionResult Check(WindHeelGmInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var subject = input.Subject;
        Guard.Positive(input.LengthM, 200, "m", subject);
        Guard.Positive(input.BeamM, 50, "m", subject);
        Guard.Positive(input.MassKg, 1e7, "kg", subject);
        if (input.FreeboardM is not { } freeboard || input.WindAreaM2 is not { } area || input.WindLeverM is not { } lever)
        {
            return CriterionResult.AtLeast("us-wind-gm", "GM over what the wind asks for", null, 0, "m", Source, ["freeboard, wind area or its lever is not given"], "GM − P·A·H/(W·tan T)");
        }

        Guard.Positive(freeboard, 20, "m", subject);
        Guard.Positive(area, 10_000, "m²", subject);
        Guard.Positive(lever, 100, "m", subject);
        var pressure = input.Exposure switch { WaterExposure.Protected => 0.028, WaterExposure.PartiallyProtected => 0.036, _ => 0.055 } + Math.Pow(input.LengthM / 1309, 2);
        var tangent = Math.Min(Math.Tan(MostHeelDeg * RadPerDeg), freeboard / input.BeamM);
        var least = pressure * area * lever / (input.MassKg / 1000 * tangent);
        var result = CriterionResult.AtLeast("us-wind-gm", "initial GM in the wind", input.GmM, least, "m", Source, input.GmM is null ? ["GM is not given"] : [], "GM");
        return result with
        {
            Working =
            [
                new WorkingStep("P", FormattableString.Invariant($"{input.Exposure}: constant + ({input.LengthM:0.##}/1309)²"), pressure, "t/m²", Source),
                new WorkingStep("T", FormattableString.Invariant($"least of 14° and atan({freeboard:0.###}/{input.BeamM:0.###})"), Math.Atan(tangent) / RadPerDeg, "°", Source),
                new WorkingStep("least GM", FormattableString.Invariant($"{pressure:0.#####}·{area:0.##}·{lever:0.###}/({input.MassKg / 1000:0.###}·{tangent:0.####})"), least, "m", Source),
                .. result.Working,
            ],
        };
    }
}
