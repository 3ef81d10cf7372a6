using System.Text.Json;
using System.Text.Json.Nodes;
using Orlop.Boat;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Presentation.Views;
using Orlop.Review.Isolation;

namespace Orlop.App.CommandLine;

/// <summary>How a part is made dead, as JSON for other programs; its form is <c>docs/isolation.schema.json</c>.</summary>
internal static class IsolationJson
{
    private const int FormatVersion = 1;

    public static string Write(BoatModel boat, string? alterationId, string thingId)
    {
        IsolationResult? plan = IsolationPlans.Plan(boat, thingId);
        IsolationView words = IsolationView.Of(boat, thingId);
        LivePoint? tryAt = plan is null ? null : ProvingPoints.TryMeterAt(boat, plan);
        PointVoltage? tried = tryAt is { } live ? PointVoltage.At(boat, Wiring.Of(boat), live.Node) : null;
        return new JsonObject
        {
            ["isolationFormat"] = FormatVersion,
            ["part"] = thingId,
            ["alteration"] = alterationId,
            ["status"] = plan is null ? "unknown" : Word(plan.Status),
            ["text"] = words.Status,
            ["openings"] = List(plan?.Openings ?? [], opening => new JsonObject { ["id"] = opening.Id, ["means"] = opening.Means is { } means ? Word(means) : "stop", ["how"] = opening.StopHow }),
            ["keepOpen"] = List(plan?.KeepOpen ?? [], id => id),
            ["readBefore"] = List(words.ReadBefore, text => text),
            ["steps"] = List(words.Steps, text => text),
            ["restore"] = List(words.Restore, text => text),
            ["cover"] = List(plan is null ? [] : PanelsToCover.Of(boat, Wiring.Of(boat), plan, MinusLeads.Of(boat, Wiring.Of(boat), plan)), charger => charger.Id),
            ["staysLive"] = List(plan?.StaysLive ?? [], live => new JsonObject { ["source"] = live.SourceId, ["because"] = live.Because, ["nearest"] = live.NearestNode, ["feeds"] = List(StillFed.By(boat, live), part => part.Id) }),
            ["proofs"] = List(plan is null ? [] : ProvingPoints.Of(boat, Wiring.Of(boat), plan, MinusLeads.Of(boat, Wiring.Of(boat), plan)), proof => new JsonObject
            {
                ["at"] = proof.Node,
                ["against"] = proof.OtherNode,
                ["meter"] = Meter(proof.IsAc),
                ["beforeV"] = proof.NominalV,
                ["standsFor"] = List(proof.StandsFor, node => node),
            }),
            ["tryMeterAt"] = tryAt?.Node,
            ["tryMeter"] = tried is null ? null : new JsonObject { ["against"] = tryAt!.OtherNode, ["meter"] = Meter(tried.IsAc), ["readsV"] = tried.NominalV },
            ["cannotBeMadeDead"] = List(plan?.CannotBeMadeDead ?? [], node => new JsonObject { ["at"] = node.Node, ["source"] = node.SourceId, ["because"] = node.Because }),
            ["caution"] = IsolationView.Caution,
        }.ToJsonString(JsonOutput.Options);
    }

    private static string Meter(bool? isAc) => isAc switch { true => "ac", false => "dc", null => "both" };

    private static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    private static JsonArray List<T>(IEnumerable<T> items, Func<T, JsonNode?> of) => [.. items.Select(of)];
}
