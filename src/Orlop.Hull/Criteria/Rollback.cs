using System.Collections.Immutable;
using Orlop.Hull.Working;

namespace Orlop.Hull.Criteria;

/// <summary>Roll to windward by waves, and the natural period it rests on; both null without a positive GM.</summary>
/// <param name="PeriodS">Natural roll period, T = 2·C·B/√GM.</param>
/// <param name="RollbackDeg">Angle of roll to windward φ1.</param>
/// <param name="Warnings">Where the tables are used beyond the ships they were made for.</param>
/// <param name="Working">The steps.</param>
public sealed record RollbackResult(double? PeriodS, double? RollbackDeg, ImmutableArray<string> Warnings, ImmutableArray<WorkingStep> Working);

/// <summary>φ1 = 109·k·X1·X2·√(r·s), Res. A.749(18) 3.2 (2008 IS Code part A 2.3).</summary>
public static class Rollback
{
    private const string Source = "Res. A.749(18) 3.2";

    private static readonly FactorTable X1 = new([(2.4, 1.0), (2.5, 0.98), (2.6, 0.96), (2.7, 0.95), (2.8, 0.93), (2.9, 0.91), (3.0, 0.90), (3.1, 0.88), (3.2, 0.86), (3.4, 0.82), (3.5, 0.80)]);

    // At 0.50 one public coding has 0.83; another, and memory, 0.82.
    private static readonly FactorTable X2 = new([(0.45, 0.75), (0.50, 0.82), (0.55, 0.89), (0.60, 0.95), (0.65, 0.97), (0.70, 1.0)]);

    private static readonly FactorTable K = new([(0, 1.0), (1.0, 0.98), (1.5, 0.95), (2.0, 0.88), (2.5, 0.79), (3.0, 0.74), (3.5, 0.72), (4.0, 0.70)]);

    private static readonly FactorTable S = new([(6, 0.100), (7, 0.098), (8, 0.093), (12, 0.065), (14, 0.053), (16, 0.044), (18, 0.038), (20, 0.035)]);

    public static RollbackResult Calculate(RollbackInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.WaterlineLengthM, 200, "m", input.Subject);
        Guard.Positive(input.BeamM, 50, "m", input.Subject);
        Guard.Positive(input.DraughtM, 20, "m", input.Subject);
        Guard.Positive(input.BlockCoefficient, 1, "", input.Subject);
        Guard.InRange(input.KgM, -20, 50, "m", input.Subject);
        Guard.InRange(input.GmM, -50, 50, "m", input.Subject);
        Guard.InRange(input.KeelAreaM2, 0, 500, "m²", input.Subject);
        if (input.GmM <= 0)
        {
            return new RollbackResult(null, null, [FormattableString.Invariant($"{input.Subject}: GM {input.GmM:0.###} m is not above 0: no roll period")], []);
        }

        var slenderness = input.BeamM / input.DraughtM;
        var inertia = 0.373 + (0.023 * slenderness) - (0.043 * input.WaterlineLengthM / 100);
        var period = 2 * inertia * input.BeamM / Math.Sqrt(input.GmM);
        var keel = 100 * input.KeelAreaM2 / (input.WaterlineLengthM * input.BeamM);
        var (x1, x2, s) = (X1.At(slenderness), X2.At(input.BlockCoefficient), S.At(period));
        var k = input.Bilge switch { BilgeShape.Sharp => 0.7, BilgeShape.Keels => K.At(keel), _ => 1.0 };
        var r = 0.73 + (0.6 * (input.KgM - input.DraughtM) / input.DraughtM);
        var angle = r > 0 ? 109 * k * x1 * x2 * Math.Sqrt(r * s) : (double?)null;
        return new RollbackResult(period, angle, Warnings(input, slenderness, period, r),
        [
            new WorkingStep("C", FormattableString.Invariant($"0.373 + 0.023·{slenderness:0.###} − 0.043·{input.WaterlineLengthM:0.##}/100"), inertia, "", Source),
            new WorkingStep("T", FormattableString.Invariant($"2·{inertia:0.#####}·{input.BeamM:0.###}/√{input.GmM:0.####}"), period, "s", Source),
            new WorkingStep("k", input.Bilge == BilgeShape.Keels ? FormattableString.Invariant($"table at 100·Ak/(L·B) = {keel:0.###}") : $"{input.Bilge} bilge", k, "", Source),
            new WorkingStep("X1", FormattableString.Invariant($"table at B/d = {slenderness:0.###}"), x1, "", Source),
            new WorkingStep("X2", FormattableString.Invariant($"table at CB = {input.BlockCoefficient:0.###}"), x2, "", Source),
            new WorkingStep("r", FormattableString.Invariant($"0.73 + 0.6·({input.KgM:0.###} − {input.DraughtM:0.###})/{input.DraughtM:0.###}"), r, "", Source),
            new WorkingStep("s", FormattableString.Invariant($"table at T = {period:0.###} s"), s, "", Source),
            new WorkingStep("φ1", "109·k·X1·X2·√(r·s)", angle, "°", Source),
        ]);
    }

    private static ImmutableArray<string> Warnings(RollbackInput input, double slenderness, double period, double r)
    {
        var warnings = ImmutableArray.CreateBuilder<string>();
        if (input.WaterlineLengthM < 24)
        {
            warnings.Add(FormattableString.Invariant($"meant for ships of 24 m and more; at {input.WaterlineLengthM:0.#} m indicative only"));
        }

        if (slenderness > 3.5)
        {
            warnings.Add(FormattableString.Invariant($"B/d = {slenderness:0.##} is beyond the table, which ends at 3.5"));
        }

        // From memory: the ships behind the tables had KG/d - 1 from -0.3 to 0.5 and T to 20 s.
        if (input.KgM / input.DraughtM - 1 is < -0.3 or > 0.5)
        {
            warnings.Add(FormattableString.Invariant($"KG/d − 1 = {(input.KgM / input.DraughtM) - 1:0.##} is outside -0.3 to 0.5 (range from memory)"));
        }

        if (period is < 6 or > 20)
        {
            warnings.Add(FormattableString.Invariant($"roll period {period:0.##} s is outside the table's 6 to 20 s"));
        }

        if (r <= 0)
        {
            warnings.Add(FormattableString.Invariant($"r = {r:0.###} is not above 0: no angle of roll"));
        }

        return warnings.ToImmutable();
    }
}
