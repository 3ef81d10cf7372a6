using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;

namespace Orlop.Work.Loading;

/// <summary>The condition in which a boat is measured at the berth, and why that one.</summary>
/// <param name="Condition">The condition.</param>
/// <param name="Why">Why it is taken, a whole sentence.</param>
internal sealed record MeasuringLoading(Condition Condition, Sentence Why)
{
    // Less of people and stores is no difference between two loadings.
    private const double SameKg = 1;

    /// <summary>
    /// With nothing on a hook: the loading of the latest survey, so that what differs from it is the work; where there is none, or it does not tell what was aboard, the one with the fewest people and the
    /// least carried. Null for a boat without conditions.
    /// </summary>
    public static MeasuringLoading? Of(BoatModel boat, FreeboardSurvey? latest)
    {
        FreeboardSurvey? survey = latest is { TellsAboard: true } ? latest : null;
        if (boat.All<Condition>().OrderBy(condition => Hangs(boat, condition) ? 1 : 0).ThenBy(condition => survey is null ? 0 : Apart(boat, condition, survey))
            .ThenBy(condition => People(boat, condition)).ThenBy(condition => Carried(boat, condition)).ThenBy(condition => (condition.EngineRuns ? 1 : 0) + (condition.OnShore ? 1 : 0)).FirstOrDefault() is not { } condition)
        {
            return null;
        }

        return new MeasuringLoading(condition, survey is null
            ? Sentence.Of($"That loading is taken for its few people and little aboard: what is not there cannot be in the wrong place or of another mass. Where she lies does not matter, what is aboard does.")
            : Apart(boat, condition, survey) is var apart && apart < SameKg
                ? Sentence.Of($"That is who and what was carried at “{survey.Title}”, the latest survey: what differs from it is then the work alone. Where she lies does not matter, what is aboard does.")
                : Sentence.Of($"That is the loading nearest to “{survey.Title}”, the latest survey: people, stores and cargo of {new Amount(Math.Round(apart), "Kg")} differ. Where she lies does not matter, what is aboard does."));
    }

    /// <summary>People that a condition lists.</summary>
    public static int People(BoatModel boat, Condition condition) => boat.All<Deadweight>().Where(deadweight => deadweight.Use == DeadweightUse.People).Sum(deadweight => Pieces(deadweight, condition));

    private static double Carried(BoatModel boat, Condition condition) => boat.All<Deadweight>().Sum(deadweight => Pieces(deadweight, condition) * (deadweight.MassKg?.Value ?? 0));

    // What would have to come or go of what is carried, liquids left out: their levels stand in the condition.
    private static double Apart(BoatModel boat, Condition condition, FreeboardSurvey survey) => boat.All<Deadweight>().Sum(deadweight =>
        Math.Abs((Pieces(deadweight, condition) * (deadweight.MassKg?.Value ?? 0)) - survey.Aboard.Where(item => item.Id == deadweight.Id).Sum(item => item.MassKg)));

    private static bool Hangs(BoatModel boat, Condition condition) => boat.All<Deadweight>().Any(deadweight => deadweight.Use == DeadweightUse.Hung && Pieces(deadweight, condition) > 0);

    private static int Pieces(Deadweight deadweight, Condition condition) => deadweight.Aboard.Where(count => count.Condition == condition.Id).Sum(count => count.PieceCount);
}
