using System.Text.Json.Nodes;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;

namespace Orlop.App.CommandLine;

/// <summary>A table of hydrostatics, levers or cross curves as JSON, in the model's units; its form is <c>docs/table.schema.json</c>.</summary>
internal static class TableJson
{
    private const int FormatVersion = 1;

    public static string Write(StabilityTable table, StabilityView view, string? alterationId)
    {
        JsonObject json = new()
        {
            ["tableFormat"] = FormatVersion,
            ["boat"] = view.Boat.Particulars?.Title ?? "",
            ["alteration"] = alterationId,
            ["waterKgPerM3"] = view.WaterKgPerM3,
        };
        foreach ((string name, JsonNode? value) in table.Json())
        {
            json[name] = value?.DeepClone();
        }

        json["caution"] = FloatingWords.Caution;
        return json.ToJsonString(JsonOutput.Options);
    }
}
