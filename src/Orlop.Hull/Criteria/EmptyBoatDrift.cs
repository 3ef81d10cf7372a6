using System.Collections.Immutable;
using System.Globalization;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>The empty boat (lightship) at one time. What is not known is null.</summary>
/// <param name="MassKg">Without stores, crew, cargo and tank liquids, above 0.</param>
/// <param name="LcgM">From the after perpendicular.</param>
/// <param name="KgM">Above the keel, above 0 to 50.</param>
public sealed record EmptyBoat(double? MassKg, double? LcgM, double? KgM);

/// <summary>
/// How far the empty boat has drifted since she was last surveyed, held against the changes at which an inclining test is due again (mass 2 %, LCG 1 % of length, KG 1 %) and at which the stability papers
/// are (mass 1 %, LCG 0.5 % of length, KG 0.5 %, the last from memory): SOLAS II-1/5.4 and 5.5 with the notes of MSC.429(98)/Rev.1. They are written for ships under SOLAS; on a small boat they are a measure, not a duty.
/// </summary>
public static class EmptyBoatDrift
{
    private const string Source = "SOLAS II-1/5.4-5.5, MSC.429(98)/Rev.1";

    /// <summary>What is left of each limit, in percent; below 0 the test or the papers are due.</summary>
    public static ImmutableArray<CriterionResult> Check(string subject, double lengthM, EmptyBoat surveyed, EmptyBoat now)
    {
        ArgumentNullException.ThrowIfNull(surveyed);
        ArgumentNullException.ThrowIfNull(now);
        Guard.Positive(lengthM, 200, "m", subject);
        Checked(subject, surveyed);
        Checked(subject, now);
        return
        [
            Left("retest-mass", "inclining test due: mass", surveyed.MassKg, now.MassKg, surveyed.MassKg, 2, Source),
            Left("retest-lcg", "inclining test due: centre fore and aft, over length", surveyed.LcgM, now.LcgM, lengthM, 1, Source),
            Left("retest-kg", "inclining test due: height of the centre", surveyed.KgM, now.KgM, surveyed.KgM, 1, Source),
            Left("reissue-mass", "stability papers due: mass", surveyed.MassKg, now.MassKg, surveyed.MassKg, 1, Source),
            Left("reissue-lcg", "stability papers due: centre fore and aft, over length", surveyed.LcgM, now.LcgM, lengthM, 0.5, Source),
            Left("reissue-kg", "stability papers due: height of the centre", surveyed.KgM, now.KgM, surveyed.KgM, 0.5, $"{Source} (from memory)"),
        ];
    }

    private static CriterionResult Left(string id, string subject, double? before, double? now, double? over, double limitPercent, string source) =>
        CriterionResult.AtLeast(id, subject, limitPercent - (100 * Math.Abs((now - before) / over ?? double.NaN)) is var left && double.IsFinite(left) ? left : null, 0, "%", source,
            before is null || now is null ? ["the value at the survey or the value now is not given"] : [],
            FormattableString.Invariant($"{limitPercent} % − |{Printed(now)} − {Printed(before)}|/{Printed(over)}"));

    // A percentage to four digits after the point wants seven of a height in metres.
    private static string Printed(double? value) => value?.ToString(Math.Abs(value.Value) < 1000 ? "0.#######" : "0.####", CultureInfo.InvariantCulture) ?? "?";

    private static void Checked(string subject, EmptyBoat boat)
    {
        Guard.Positive(boat.MassKg ?? 1, 1e7, "kg", subject, "MassKg");
        Guard.InRange(boat.LcgM ?? 0, -200, 200, "m", subject, "LcgM");
        Guard.Positive(boat.KgM ?? 1, 50, "m", subject, "KgM");
    }
}
