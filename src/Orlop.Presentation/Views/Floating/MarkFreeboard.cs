using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>How high a mark of the latest freeboard survey stands over the water in a condition.</summary>
/// <param name="Name">What the mark is called.</param>
/// <param name="Mark">Where it is on the boat.</param>
/// <param name="HeightM">Height over the water, plumb; below 0 under water.</param>
/// <param name="DeviationM">One standard deviation, from the errors of her weight alone; infinite where it cannot be told.</param>
public sealed record MarkFreeboard(string Name, Place Mark, double HeightM, double DeviationM)
{
    /// <summary>The latest freeboard survey; null without one.</summary>
    public static FreeboardSurvey? SurveyOf(BoatModel boat) => boat.All<FreeboardSurvey>().Where(survey => survey.Marks.Count > 0).MaxBy(survey => survey.On ?? DateOnly.MinValue);

    /// <summary>Every mark; none without a survey or a position of rest.</summary>
    public static IReadOnlyList<MarkFreeboard> Of(StabilityView view, Condition condition)
    {
        if (SurveyOf(view.Boat) is not { } survey || view.FloatingIn(condition)?.Rest is not { Status: FloatingStatus.Floats, Position: { } at })
        {
            return [];
        }

        LoadedBoat loaded = view.LoadedIn(condition);
        Dictionary<FloatingInput, FloatingPosition?> near = [];
        FloatingPosition? Rest(FloatingInput boat) => near.TryGetValue(boat, out FloatingPosition? known) ? known
            : near[boat] = Equilibrium.Solve(boat) is { Status: FloatingStatus.Floats } result ? result.Position : null;
        return
        [
            .. survey.Marks.Select(mark => (mark.Name, mark.Mark, At: new Point3(mark.Mark.XM, mark.Mark.YM, mark.Mark.ZM))).Select(mark => new MarkFreeboard(
                mark.Name, mark.Mark, at.Attitude.HeightAboveWaterM(mark.At), ResultDeviation.Of(loaded, boat => Rest(boat)?.Attitude.HeightAboveWaterM(mark.At)))),
        ];
    }
}
