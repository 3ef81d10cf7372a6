using System.Text.Json.Nodes;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Ways;

namespace Orlop.App.CommandLine;

/// <summary>Routes of cables as JSON, as docs/route.schema.json says.</summary>
internal static class RouteJson
{
    private const int FormatVersion = 1;

    public static string Write(BoatModel boat, string? alteration, IReadOnlyList<CableRoutes> options, JointRoutes? together) => new JsonObject
    {
        ["routeFormat"] = FormatVersion,
        ["boat"] = boat.Particulars?.Title ?? "",
        ["alteration"] = alteration,
        ["cables"] = Array(options.Select(each => new JsonObject
        {
            ["cable"] = each.Cable.Id,
            ["missing"] = Inputs(each.Missing),
            ["leftOut"] = Array(each.LeftOut.Select(left => new JsonObject { ["way"] = left.Way.Id, ["why"] = left.Why })),
            ["routes"] = Array(each.Routes.Select(Route)),
        })),
        ["together"] = together is null ? null : new JsonObject
        {
            ["apartM"] = together.ApartM,
            ["togetherM"] = together.TogetherM,
            ["leastM"] = together.LeastM,
            ["isProved"] = together.IsProved,
            ["toOpen"] = Array(together.ToOpen.Select(way => new JsonObject { ["way"] = way.Id, ["opened"] = way.Opened })),
            ["newHoles"] = Array(together.NewHoles.Select(Hole)),
            ["routes"] = Array(together.Routes.Select(pair =>
            {
                JsonObject route = Route(pair.Route);
                route.Insert(0, "cable", pair.Cable.Id);
                return route;
            })),
        },
    }.ToJsonString(JsonOutput.Options);

    private static JsonObject Route(CableRoute route) => new()
    {
        ["run"] = Array(route.Stretches.Select(stretch => new JsonObject { ["way"] = stretch.Way?.Id, ["space"] = stretch.Space?.Id, ["use"] = Word(stretch.Use), ["lengthM"] = stretch.LengthM })),
        ["lengthM"] = route.LengthM,
        ["allowanceM"] = route.AllowanceM,
        ["cutM"] = route.CutM,
        ["outAndBackM"] = route.OutAndBackM,
        ["wetM"] = route.WetM,
        ["engineM"] = route.InM(SpaceUse.Engine),
        ["besideAcM"] = route.BesideAcM,
        ["costM"] = route.CostM,
        ["costs"] = Array(route.Costs.Select(cost => new JsonObject { ["for"] = FieldNames.Kebab(cost.Kind.ToString()), ["worthM"] = cost.WorthM })),
        ["bends"] = route.BendCount,
        ["leastBendMm"] = route.LeastBendMm,
        ["supports"] = route.SupportCount,
        ["holes"] = Array(route.Holes.Select(Hole)),
        ["toOpen"] = Array(route.ToOpen.Select(way => new JsonObject { ["way"] = way.Id, ["opened"] = way.Opened })),
        ["conduits"] = Array(route.Fills.Select(fill => new JsonObject { ["way"] = fill.Way.Id, ["fillFraction"] = fill.FillFraction, ["mostFraction"] = fill.MostFraction })),
        ["missing"] = Inputs(route.Missing),
    };

    private static JsonObject Hole(PassedHole hole) => new() { ["way"] = hole.Way.Id, ["where"] = hole.Hole.Where, ["guard"] = Word(hole.Hole.Guard), ["boreMm"] = hole.Hole.BoreMm?.Value, ["leastClampedMm"] = hole.Hole.LeastClampedMm?.Value, ["isMade"] = hole.Hole.IsMade };

    private static JsonArray Inputs(IEnumerable<FindingInput> inputs) => Array(inputs.Select(missing => new JsonObject { ["thing"] = missing.ThingId, ["field"] = missing.Field }));

    private static JsonArray Array(IEnumerable<JsonObject> objects) => new([.. objects]);

    private static string? Word<T>(T? choice)
        where T : struct, Enum => choice is { } made ? FieldNames.Kebab(made.ToString()) : null;
}
