using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Ways.Checks;

/// <summary>The boat's own currents do not turn the compass too far.</summary>
public sealed class CompassFieldCheck : ICheck<WaysView>
{
    private const string Source = "Biot and Savart's law over straight pieces of each run";

    public CheckDescription Description { get; } = new(
        "compass-field",
        "Currents leave the compass alone",
        "For each compass in each condition that she is steered in by it: the deviation on the worst heading that the direct currents of all runs could cause, against what the owner bears. Steel, magnets in loudspeakers and motors, and alternating current are not counted.",
        []);

    public IEnumerable<Finding> Run(WaysView view) => view.Boat.All<Compass>().SelectMany(compass => CompassField.Of(view, compass)).Select(field => Judge(view, field));

    private Finding Judge(WaysView view, CompassField field)
    {
        Compass compass = field.Compass;
        FindingInput[] missing =
        [
            .. compass.EarthUT is null ? new[] { new FindingInput(compass.Id, "earthUT", IsMissing: true) } : [],
            .. compass.MostDeviationDeg is null ? new[] { new FindingInput(compass.Id, "mostDeviationDeg", IsMissing: true) } : [],
            .. field.Missing,
        ];
        if (missing.Length > 0)
        {
            return Unknown(Description, compass.Id, field.Condition.Id, Sentence.Of($"{compass.Title}: what the currents do to it {In(field.Condition)} cannot be told while something is missing"), [.. missing]);
        }

        if (field.DeviationDeg is not { } deviation)
        {
            return NotSolved(Description, compass.Id, field.Condition, compass.Title);
        }

        double most = compass.MostDeviationDeg!.Value;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = compass.Id,
            ConditionId = field.Condition.Id,
            Verdict = Verdicts.Of(deviation, most),
            UseFraction = Verdicts.UseOf(deviation, most),
            Headline = deviation >= 180
                ? Sentence.Of($"{compass.Title} may point anywhere {In(field.Condition)}: the boat's own currents are as strong there as the Earth")
                : Sentence.Of($"{compass.Title} may be off by {Deg(deviation)} {In(field.Condition)} through the boat's own currents; {Deg(most)} is borne"),
            Working =
            [
                new WorkingLine("Loops", "horizontal field of currents whose ways there and back differ", UT(field.LoopsUT), Source),
                new WorkingLine("Cores beside each other", "most that they add, whichever way they lie in their cable", UT(field.PairsUT), Source),
                .. field.Greatest.Select(one => new WorkingLine("Does most by itself", view.Boat.Find(one.ThingId)?.Title ?? one.ThingId, UT(one.OwnUT), Source)),
                new WorkingLine("Earth, horizontal", "as typed", UT(compass.EarthUT!.Value), ""),
                new WorkingLine("Deviation on the worst heading", $"arcsin({N(field.OwnUT!.Value)} / {N(compass.EarthUT.Value)})", Deg(deviation), "two fields at right angles to their sum"),
                new WorkingLine("Not counted", "steel near by, magnets, alternating current, and what runs in parts themselves", null, ""),
                new WorkingLine("Borne", "as typed", Deg(most), ""),
                Use(deviation, most),
            ],
            Inputs = [new FindingInput(compass.Id, "place"), Of(compass.Id, "earthUT", compass.EarthUT), Of(compass.Id, "mostDeviationDeg", compass.MostDeviationDeg)],
            Caution = "A compass is steered by when all else has failed: swing it, and look at the card with the loads on and off.",
        };
    }

    private static Amount Deg(double value) => new(value, "Deg");

    private static Amount UT(double value) => new(value, "UT");

    private static FindingInput Of(string id, string field, Quantity? value) => new(id, field, IsGuess: value?.Known is Knowledge.Guessed or Knowledge.Estimated);
}
