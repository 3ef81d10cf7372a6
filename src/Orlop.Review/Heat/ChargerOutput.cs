using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Findings;

namespace Orlop.Review.Heat;

/// <summary>
/// What a charger gives in the air where it stands. Its space is told as warm as everything on can make it, this charger at its full output among it, so it gives no less. Where more is worse — conductors, devices, the greatest fault, gas — its full output counts: its space may be cool.
/// </summary>
internal static class ChargerOutput
{
    /// <summary>The charger works in a condition.</summary>
    public static bool WorksIn(Charger charger, Condition condition) => charger.Drive switch
    {
        ChargerDrive.Engine => condition.EngineRuns,
        ChargerDrive.Shore => condition.OnShore,
        _ => condition.SunShines,
    };

    /// <summary>The least share of its output that it gives in any of some conditions in which it works, 0 to 1, for a plan; what is missing goes to the gaps, and a share below 1 is said among what is assumed.</summary>
    public static double ShareFraction(ElectricsView view, Charger charger, IEnumerable<Condition> conditions, PlanGaps gaps)
    {
        double least = 1;
        foreach (Condition condition in conditions.Where(condition => WorksIn(charger, condition)))
        {
            Derating derating = Derating.Of(view, charger, condition);
            foreach (FindingInput missing in derating.Missing)
            {
                gaps.Add(missing);
            }

            if (derating.ShareFraction < 1)
            {
                gaps.Assume(FormattableString.Invariant($"{charger.Title} gives {100 * derating.ShareFraction:0.#} % of its {charger.LimitA.Value:0.#} A in the {derating.AmbientC:0.#} °C of its space {FindingLines.In(condition)}"));
            }

            least = Math.Min(least, derating.ShareFraction);
        }

        return least;
    }
}
