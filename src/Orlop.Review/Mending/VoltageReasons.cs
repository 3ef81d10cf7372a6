using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics;
using Orlop.Review.Electrics.Checks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Mending;

/// <summary>Why nothing clears a finding on too little voltage: where it is lost, what the thickest cables that the terminals take would reach, what would help.</summary>
internal static class VoltageReasons
{
    /// <summary>The checks it speaks of.</summary>
    public static bool IsOf(string checkId) => checkId is "voltage-drop" or "least-voltage" or "voltage-while-starting";

    /// <summary>The reason; null where the way or its losses cannot be told.</summary>
    public static Sentence? Of(string checkId, string subjectId, string? conditionId, BoatModel draft)
    {
        ElectricsView view = MendBench.ViewOf(draft);
        if (draft.Find<Part>(subjectId) is not { } taker || view.Conditions.FirstOrDefault(condition => condition.Id == conditionId) is not { } condition || Shares(view, checkId, taker, condition) is not { } shares)
        {
            return null;
        }

        bool isSourceCounted = checkId != "voltage-drop";
        (BoatModel thick, ImmutableArray<Cable> thickened) = Thickest(view, taker, condition);
        ElectricsView best = MendBench.ViewOf(thick);
        string help = (Shares(best, checkId, taker, condition) ?? shares).Help(isSourceCounted);
        return (thickened.Length, Worst(best, checkId, subjectId)) switch
        {
            (0, _) or (_, null) => Sentence.Of($"{shares.Words(isSourceCounted)}. No cable on the way can become thicker: its terminals or the catalogue have no larger one. What would help: {help}"),
            (_, { Verdict: Verdict.Holds or Verdict.Tight } found) => Sentence.Of($"{shares.Words(isSourceCounted)}. With {Sizes(thickened)} alone: {found.Headline}; what goes with that brings new trouble, or is not to be had. What would help: {help}"),
            (_, { } found) => Sentence.Of($"{shares.Words(isSourceCounted)}. With the thickest that terminals and catalogue have ({Sizes(thickened)}): {found.Headline}. What would help: {help}"),
        };
    }

    private static LossShares? Shares(ElectricsView view, string checkId, Part taker, Condition condition)
    {
        NetworkCase[] cases = checkId switch
        {
            "voltage-drop" => [new(condition.Id, ChargeCase.Normal), new(condition.Id, ChargeCase.Lowest)],
            "least-voltage" => [new(condition.Id, ChargeCase.Lowest)],
            _ => [new(condition.Id, ChargeCase.Lowest, taker.Id)],
        };
        return cases.Select(each => LossShares.Of(view, taker, condition, each)).OfType<LossShares>().MaxBy(shares => shares.OnWayV);
    }

    // Her with every cable on the way as thick as the terminals at its ends take.
    private static (BoatModel Boat, ImmutableArray<Cable> Thickened) Thickest(ElectricsView view, Part taker, Condition condition)
    {
        Catalogue catalogue = Catalogue.Of(view.Boat);
        ShortestWay way = view.WayTo(taker, condition);
        ImmutableArray<Cable> thickened =
        [
            .. way.Out.Concat(way.Back).Select(view.Wiring.Find).OfType<WiringEdge>().Select(edge => edge.Owner).OfType<Cable>().Distinct()
                .Select(cable => CableChoices.Thickest(catalogue, view.Boat, cable)).OfType<Cable>(),
        ];
        Dictionary<string, Cable> becomes = thickened.ToDictionary(cable => cable.Id, StringComparer.Ordinal);
        return (view.Boat.WithThings(view.Boat.Things.Select(thing => becomes.GetValueOrDefault(thing.Id) ?? thing)), thickened);
    }

    private static Finding? Worst(ElectricsView view, string checkId, string subjectId) => (checkId switch
    {
        "voltage-drop" => new VoltageDropCheck().Run(view),
        "least-voltage" => new LeastVoltageCheck().Run(view),
        _ => new StartVoltageCheck().Run(view),
    }).Where(finding => finding.SubjectId == subjectId).OrderByDescending(finding => Verdicts.Weight(finding.Verdict)).ThenByDescending(finding => finding.UseFraction ?? double.PositiveInfinity).FirstOrDefault();

    private static Sentence Sizes(ImmutableArray<Cable> cables) =>
        cables.Select(cable => Sentence.Of($"{cable.Title} {new Amount(cable.AreaMm2.Value, "Mm2")}")).Aggregate((all, next) => Sentence.Of($"{all}, {next}"));
}
