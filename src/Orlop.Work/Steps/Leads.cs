using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The cables that end at a part, and whether those that stay as they are reach its new place.</summary>
internal static class Leads
{
    private const double CentimetresPerM = 100;

    /// <summary>Every cable at a part, with the id of the part at its other end.</summary>
    public static IEnumerable<(Cable Cable, string Other)> Of(BoatModel boat, string partId) =>
        (from cable in boat.All<Cable>()
         from core in cable.Cores
         where core.From.Part == partId || core.To.Part == partId
         select (cable, core.From.Part == partId ? core.To.Part : core.From.Part)).Distinct();

    /// <summary>What is said of each cable of a moved part that the alteration leaves as it is: its length beside the straight way to its other end.</summary>
    public static IEnumerable<Sentence> Reach(PackScope scope, Part part) =>
        Of(scope.Before, part.Id).Where(lead => lead.Other != part.Id && !scope.Changes.Any(change => change.Id == lead.Cable.Id)).Select(lead => Said(scope, part, lead.Cable, lead.Other));

    // To the next centimetre, so that what does not reach never reads as if it did.
    private static Amount RoundedUp(double m) => new(Math.Ceiling(m * CentimetresPerM) / CentimetresPerM, "M");

    private static Sentence Said(PackScope scope, Part part, Cable cable, string other)
    {
        string end = scope.Words.Title(other);
        double? straightM = scope.AsAltered.Find<Part>(other)?.Place is { } there ? part.Place?.DistanceM(there) : null;
        return (cable.LengthM, straightM) switch
        {
            ({ } length, { } wayM) when wayM > length.Value =>
                Sentence.Of($"{cable.Title} does not reach: {new Amount(length.Value, "M")} long, and {end} is {RoundedUp(wayM)} away in a straight line. Nothing is moved before the draft has a longer one."),
            ({ } length, { } wayM) =>
                Sentence.Of($"See first that {cable.Title} reaches, without pull and clear of edges: {new Amount(length.Value, "M")} long, and {end} is {RoundedUp(wayM)} away in a straight line."),
            _ => Sentence.Of($"See first that {cable.Title} reaches, without pull and clear of edges: its length or the way to {end} is not known."),
        };
    }
}
