using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Orlop.Hull.Floating;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Findings;
using Orlop.Review.Stability;

namespace Orlop.App.CommandLine;

/// <summary>How a boat floats, as JSON for other programs, in the model's units; its form is <c>docs/float.schema.json</c>.</summary>
internal static class FloatJson
{
    private const int FormatVersion = 1;

    public static string Write(LoadedInput input, IEnumerable<FloatingFacts> all, bool hasMotions) => new JsonObject
    {
        ["floatFormat"] = FormatVersion,
        ["boat"] = input.View.Boat.Particulars?.Title ?? "",
        ["alteration"] = input.AlterationId,
        ["hullNotMeasured"] = input.View.NotMeasured,
        ["conditions"] = new JsonArray([.. all.Select(facts => Condition(input, facts, hasMotions))]),
        ["caution"] = FloatingWords.Caution,
    }.ToJsonString(JsonOutput.Options);

    /// <summary>What is not given, as a list of things and fields.</summary>
    public static JsonArray Missing(ImmutableArray<FindingInput> missing) =>
        [.. missing.DistinctBy(field => (field.ThingId, field.Field)).Select(field => (JsonNode)new JsonObject { ["thing"] = field.ThingId, ["field"] = field.Field })];

    /// <summary>A number, or null where it is not known.</summary>
    public static JsonNode? Number(double? value) => value is { } number && double.IsFinite(number) ? JsonValue.Create(number) : null;

    private static JsonObject Condition(LoadedInput input, FloatingFacts facts, bool hasMotions)
    {
        FloatingPosition? at = facts.Position;
        FloatingDeviations deviations = facts.Deviations;
        JsonObject condition = new()
        {
            ["condition"] = facts.Condition.Id,
            ["status"] = Status(facts),
            ["text"] = FloatingWords.Trouble(input.View, facts, UnitsOption.Of(null), UnitsOption.Culture),
            ["displacementKg"] = Number(facts.MassKg),
            ["displacementDeviationKg"] = at is null ? null : Number(deviations.MassKg),
            ["draughts"] = new JsonArray([.. facts.Draughts.Select(draught => new JsonObject { ["where"] = draught.Where, ["xM"] = draught.XM, ["draughtM"] = draught.DraughtM })]),
            ["draughtDeviationM"] = at is null ? null : Number(deviations.DraughtM),
            ["trimM"] = Number(facts.TrimM),
            ["trimDeg"] = Number(at?.Attitude.TrimDeg),
            ["trimDeviationDeg"] = at is null ? null : Number(deviations.TrimDeg),
            ["heelDeg"] = Number(at?.Attitude.HeelDeg ?? facts.CapsizedHeelDeg),
            ["heelDeviationDeg"] = at is null ? null : Number(deviations.HeelDeg),
            ["gmM"] = Number(facts.GmM),
            ["gmDeviationM"] = facts.GmM is null ? null : Number(deviations.GmM),
            ["weakerSide"] = facts.Weaker is null ? null : facts.IsPortWeaker ? "port" : "starboard",
            ["starboard"] = Side(input.View, facts.Floating?.Starboard, facts.Starboard),
            ["port"] = Side(input.View, facts.Floating?.Port, facts.Port),
            ["missing"] = Missing(facts.Loaded.Missing),
        };
        if (hasMotions)
        {
            condition["motions"] = new JsonArray([.. facts.Loaded.Ledger.Rows.Select(row => Motion(row.ThingId, MotionAt.Of(input.View, facts.Condition, row.Place, row.Title)))]);
        }

        return condition;
    }

    private static string Status(FloatingFacts facts) => facts switch
    {
        { Position.IsLoll: true } => "loll",
        { Under: { } under } => under.Fills ? "fills" : "may-fill",
        { Floating.Rest.Status: var status } => JsonNamingPolicy.KebabCaseLower.ConvertName(status.ToString()),
        _ => "unknown",
    };

    private static JsonNode Motion(string thing, MotionAt found) => new JsonObject
    {
        ["thing"] = thing,
        ["acrossMPerS2"] = Number(found.Result?.AcrossMPerS2),
        ["alongMPerS2"] = Number(found.Result?.AlongMPerS2),
        ["mostDownMPerS2"] = Number(found.Result?.MostDownMPerS2),
        ["leastDownMPerS2"] = Number(found.Result?.LeastDownMPerS2),
        ["tiltDeg"] = Number(found.Result?.TiltDeg),
        ["isRollPeriodPredicted"] = found.Result is null ? null : found.IsPeriodPredicted,
        ["text"] = found.WhyNot,
    };

    private static JsonObject? Side(StabilityView view, RightingCurve? curve, RightingFeatures? features) => curve is null || features is null ? null : new JsonObject
    {
        ["greatestGzM"] = Number(features.GreatestGzM),
        ["greatestGzDeg"] = Number(features.GreatestGzDeg),
        ["greatestDryGzM"] = Number(FloatingBoat.GreatestLever(curve)?.LeverM),
        ["greatestDryGzDeg"] = Number(FloatingBoat.GreatestLever(curve)?.HeelDeg),
        ["lollDeg"] = Number(features.LollDeg),
        ["vanishingDeg"] = Number(features.VanishingDeg),
        ["downfloodingDeg"] = Number(features.DownfloodingDeg),
        ["downfloodingOpening"] = features.DownfloodingOpening,
        ["rangeDeg"] = Number(features.RangeDeg),
        ["levers"] = new JsonArray([.. curve.Points.Select(point => new JsonObject { ["heelDeg"] = point.HeelDeg, ["gzM"] = point.GzM, ["isFlooded"] = FloodedLevers.At(view.Boat, features, point.HeelDeg) })]),
    };
}
