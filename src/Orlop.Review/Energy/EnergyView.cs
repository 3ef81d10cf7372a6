using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Practices;

namespace Orlop.Review.Energy;

/// <summary>What the checks of energy read: each day plan and what came of it. Safe from several threads.</summary>
public sealed class EnergyView(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
{
    // Infinite is a word of its own in a key.
    private static readonly JsonSerializerOptions KeyOptions = new() { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };

    private readonly ElectricsView _electrics = new(boat, practice, memo, token);

    public BoatModel Boat { get; } = boat;

    /// <summary>Her day plans, in the owner's order.</summary>
    public ImmutableArray<PlanResult> Plans => field.IsDefault ? field = [.. Boat.All<DayPlan>().Select(Of)] : field;

    /// <summary>Loads that are on in no hour of any day plan: no number of energy counts them.</summary>
    public ImmutableArray<ElectricLoad> InNoPlan
    {
        get
        {
            PlanHours[] planned = [.. Boat.All<DayPlan>().SelectMany(plan => plan.Hours)];
            return
            [
                .. Boat.All<ElectricLoad>().Where(load => !load.Uses.Any(use => use.DutyFraction > 0 && planned.Any(row => row.Condition == use.Condition
                    && Enumerable.Range(0, 24).Any(hour => UseHours.IsWithin(row.FromHour, row.ToHour, hour) && UseHours.Holds(use, hour))))),
            ];
        }
    }

    /// <summary>Name of a load, charger or plan.</summary>
    public string TitleOf(string id) => Boat.Find(id) switch
    {
        DayPlan plan => $"what stays on between visits ({plan.Title})",
        { } thing => thing.Title,
        _ => id,
    };

    private PlanResult Of(DayPlan plan)
    {
        PlanInput input = PlanInput.Of(_electrics, plan);
        return input.Input is null
            ? new PlanResult(Boat, input, null)
            : new PlanResult(Boat, input, memo.Get(JsonSerializer.Serialize(input.Input, KeyOptions), () => PlanEnergy.Of(input.Input, token)));
    }
}
