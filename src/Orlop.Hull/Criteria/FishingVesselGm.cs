using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>A decked fishing vessel as the simple rule sees her. What is not known is null and leaves the rule unknown.</summary>
/// <param name="Subject">What it is, for messages.</param>
/// <param name="LengthM">L on the waterline in the fullest condition, above 0 to 200; the rule is for less than 30.</param>
/// <param name="BeamM">B, the greatest moulded breadth at the waterline, above 0 to 50.</param>
/// <param name="DepthM">D, moulded depth amidships, above 0 to 20.</param>
/// <param name="FreeboardM">f, least freeboard, -5 to 20.</param>
/// <param name="EnclosedLengthM">ls, length of enclosed superstructure from side to side, 0 to the boat's length.</param>
/// <param name="GmM">GM with free surfaces taken off.</param>
public sealed record FishingVesselInput(string Subject, double LengthM, double BeamM, double DepthM, double? FreeboardM, double? EnclosedLengthM, double? GmM);

/// <summary>
/// IMO Res. A.207(VII), simple rule for decked fishing vessels under 30 m: least GM = 0.53 + 2B(0.075 - 0.37 f/B + 0.82 (f/B)² - 0.014 B/D - 0.032 ls/L); coefficients from memory. Made from 119 vessels of 15 to
/// 29 m; for f/B 0.02 to 0.20, ls/L below 0.60, B/D 1.75 to 2.15. Outside of that it says nothing, and most small boats are outside in B/D.
/// </summary>
public static class FishingVesselGm
{
    private const string Source = "Res. A.207(VII) (coefficients from memory)";

    public static CriterionResult Check(FishingVesselInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var (length, beam, depth) = (Guard.Positive(input.LengthM, 200, "m", input.Subject, "LengthM"), Guard.Positive(input.BeamM, 50, "m", input.Subject, "BeamM"), Guard.Positive(input.DepthM, 20, "m", input.Subject, "DepthM"));
        if (input.FreeboardM is not { } freeboard || input.EnclosedLengthM is not { } enclosed)
        {
            return Result(null, ["freeboard or enclosed length is not given"]);
        }

        var f = Guard.InRange(freeboard, -5, 20, "m", input.Subject) / beam;
        var share = Guard.InRange(enclosed, 0, length, "m", input.Subject) / length;
        var slenderness = beam / depth;
        var outside = ImmutableArray.CreateBuilder<string>();
        AddWhen(!(length < 30), FormattableString.Invariant($"L = {length:0.##} m; the rule is for less than 30 m"));
        AddWhen(f is < 0.02 or > 0.20, FormattableString.Invariant($"f/B = {f:0.###}; the rule is for 0.02 to 0.20"));
        AddWhen(!(share < 0.60), FormattableString.Invariant($"ls/L = {share:0.##}; the rule is for less than 0.60"));
        AddWhen(slenderness is < 1.75 or > 2.15, FormattableString.Invariant($"B/D = {slenderness:0.##}; the rule is for 1.75 to 2.15"));
        if (outside.Count > 0)
        {
            return Result(null, outside.ToImmutable());
        }

        var least = 0.53 + (2 * beam * (0.075 - (0.37 * f) + (0.82 * f * f) - (0.014 * slenderness) - (0.032 * share)));
        var result = Result(input.GmM, [.. length < 15 ? ["built on vessels of 15 to 29 m"] : ImmutableArray<string>.Empty, .. input.GmM is null ? ["GM is not given"] : ImmutableArray<string>.Empty], least);
        return result with
        {
            Working =
            [
                new WorkingStep("least GM", FormattableString.Invariant($"0.53 + 2·{beam:0.###}·(0.075 − 0.37·{f:0.####} + 0.82·{f:0.####}² − 0.014·{slenderness:0.####} − 0.032·{share:0.####})"), least, "m", Source),
                .. result.Working,
            ],
        };

        void AddWhen(bool isSo, string remark)
        {
            if (isSo)
            {
                outside.Add(remark);
            }
        }
    }

    private static CriterionResult Result(double? gmM, ImmutableArray<string> remarks, double least = 0) =>
        CriterionResult.AtLeast("fishing-gm", "initial GM by the simple rule", gmM, least, "m", Source, remarks, "GM");
}
