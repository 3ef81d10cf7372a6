using System.Text.Json;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;

namespace Orlop.Boat.Format;

/// <summary>Walks a parsed boat file and makes the boat, as far as it goes; what does not fit becomes a problem. The rules are then checked on what was made.</summary>
internal sealed class BoatReading(ProblemList problems)
{
    private readonly RecordReading _records = new(problems);

    public BoatModel? Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            problems.Add(Spot.Boat, FoundJson.Words(root), "an object with formatVersion and things", "The file is JSON but no boat.");
            return null;
        }

        int? version = Version(root);
        if (version > BoatModel.CurrentFormatVersion)
        {
            problems.Add(
                Spot.Boat.At("formatVersion"),
                $"version {version}",
                $"up to {BoatModel.CurrentFormatVersion}",
                $"This file is of version {version}, this program reads up to {BoatModel.CurrentFormatVersion}.");
            return null;
        }

        RefuseUnknown(root);
        List<ThingEntry> entries = Things(root);
        BoatValidation.Check(entries, problems);
        return problems.Count == 0
            ? new BoatModel { FormatVersion = version!.Value, Things = entries.Select(entry => entry.Thing!).ToValueList() }
            : null;
    }

    private int? Version(JsonElement root)
    {
        Spot spot = Spot.Boat.At("formatVersion");
        if (!root.TryGetProperty("formatVersion", out JsonElement element))
        {
            problems.Add(spot, "nothing", $"1 to {BoatModel.CurrentFormatVersion}", "The file does not say which version of the format it is.");
            return null;
        }

        if (element.ValueKind == JsonValueKind.Number && element.TryGetInt32(out int version) && version >= 1)
        {
            return version;
        }

        problems.Add(spot, FoundJson.Words(element), $"1 to {BoatModel.CurrentFormatVersion}", "The version of the format is a whole number from 1 up.");
        return null;
    }

    private void RefuseUnknown(JsonElement root)
    {
        HashSet<string> seen = [];
        foreach (JsonProperty property in root.EnumerateObject())
        {
            bool isText = FoundJson.TryName(property, out string name);
            if (!isText || name is not ("formatVersion" or "things"))
            {
                problems.Add(Spot.Boat.At(name), name, "formatVersion, things", $"A boat file has no field {name}.");
            }
            else if (!seen.Add(name))
            {
                problems.Add(Spot.Boat.At(name), "it twice", "it once", $"The field {name} is given more than once.");
            }
        }
    }

    private List<ThingEntry> Things(JsonElement root)
    {
        List<ThingEntry> entries = [];
        if (!root.TryGetProperty("things", out JsonElement list) || list.ValueKind != JsonValueKind.Array)
        {
            string found = list.ValueKind == JsonValueKind.Undefined ? "nothing" : FoundJson.Words(list);
            problems.Add(Spot.Boat.At("things"), found, "a list of things", "A boat file has a list of things.");
            return entries;
        }

        int index = 0;
        foreach (JsonElement element in list.EnumerateArray())
        {
            string? id = Id(element);
            Spot spot = Spot.Thing(index++, id is null ? null : FoundJson.Short(id));
            int before = problems.Count;
            Thing? thing = _records.Thing(element, spot);
            entries.Add(new ThingEntry(thing, thing is null ? id : thing.Id, spot, problems.Count == before));
        }

        return entries;
    }

    private static string? Id(JsonElement element) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty("id", out JsonElement given)
            && given.ValueKind == JsonValueKind.String && FoundJson.TryText(given, out string text) ? text : null;
}
