using System.Text.Json.Nodes;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Mending;

namespace Orlop.App.CommandLine;

/// <summary>A proposal as JSON for other programs, in the model's units; its form is <c>docs/mend.schema.json</c>.</summary>
internal static class MendJson
{
    private const int FormatVersion = 1;

    /// <param name="mended">The boat that was mended: as the alteration would make her, or as built.</param>
    public static string Write(BoatModel asBuilt, string? alterationId, BoatModel mended, MendResult result) => new JsonObject
    {
        ["mendFormat"] = FormatVersion,
        ["boat"] = asBuilt.Particulars?.Title ?? "",
        ["alteration"] = alterationId,
        ["for"] = result.Aim == MendAim.Cost ? "cost" : "mass",
        ["isTightToo"] = result.IsTightToo,
        ["currency"] = asBuilt.Particulars?.Currency,
        ["outcome"] = result.Outcome switch
        {
            MendOutcome.NothingFails => "nothing-fails",
            MendOutcome.Cleared => "cleared",
            MendOutcome.NotCleared => "not-cleared",
            _ => "not-found",
        },
        ["isStopped"] = result.IsStopped,
        ["isProved"] = result.IsProved,
        ["leastMoney"] = result.LeastMoney,
        ["leastKg"] = result.LeastKg,
        ["things"] = result.SlotCount,
        ["sets"] = result.SetCount,
        ["reviewed"] = result.ReviewedCount,
        ["targets"] = new JsonArray([.. result.Targets.Select(Of)]),
        ["beyond"] = new JsonArray([.. result.Beyond.Select(finding => Of(finding, result, mended))]),
        ["set"] = result.Set is { } set ? Of(set, mended) : null,
        ["classes"] = new JsonArray([.. MendView.Classes(result.Targets.Select(finding => (finding.CheckId, finding.SubjectId)), mended).Select(hint => new JsonObject { ["thing"] = hint.ThingId, ["field"] = "drop", ["text"] = hint.Text })]),
        ["commonTerminals"] = new JsonArray([.. TerminalSizes.Common.Select(size => new JsonObject { ["upToRatedA"] = size.RatedA, ["mostMm2"] = size.MostMm2 })]),
    }.ToJsonString(JsonOutput.Options);

    private static JsonObject Of(Finding finding) => new()
    {
        ["check"] = finding.CheckId,
        ["subject"] = finding.SubjectId,
        ["verdict"] = Wording.Of(finding.Verdict),
        ["headline"] = Text(finding.Headline),
    };

    private static JsonObject Of(Finding finding, MendResult result, BoatModel mended)
    {
        JsonObject beyond = Of(finding);
        beyond["why"] = MendView.WhyBeyond(finding, result, mended, DisplayUnits.Metric, UnitsOption.Culture);
        return beyond;
    }

    private static JsonObject Of(MendSet set, BoatModel mended) => new()
    {
        ["priceMoney"] = set.Cost.PriceMoney,
        ["addedKg"] = set.Cost.AddedKg,
        ["before"] = Counts(set.Before),
        ["after"] = Counts(set.After),
        ["newlyTight"] = new JsonArray([.. set.NewlyTight.Select(Of)]),
        ["remarks"] = new JsonArray([.. set.Remarks.Select(remark => JsonValue.Create(Text(remark)))]),
        ["changes"] = new JsonArray([.. set.Changes.Select(change => new JsonObject
        {
            ["thing"] = change.ThingId,
            ["what"] = Text(change.What),
            ["priceMoney"] = change.Cost.PriceMoney,
            ["addedKg"] = change.Cost.AddedKg,
            ["catalogue"] = change.CatalogueId,
            ["terminalsMostMm2"] = mended.Find<Cable>(change.ThingId) is { } cable && TerminalSizes.MostMm2(mended, cable) is var mostMm2 && double.IsFinite(mostMm2) ? mostMm2 : null,
            ["stock"] = new JsonArray([.. change.StockIds.Select(id => JsonValue.Create(id))]),
        })]),
    };

    private static JsonObject Counts(IReadOnlyDictionary<Verdict, int> counts) =>
        new(Enum.GetValues<Verdict>().Select(verdict => KeyValuePair.Create<string, JsonNode?>(Wording.Of(verdict), counts.GetValueOrDefault(verdict))));

    private static string Text(Sentence sentence) => SentenceText.Of(sentence, DisplayUnits.Metric, UnitsOption.Culture);
}
