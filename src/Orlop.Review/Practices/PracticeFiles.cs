using System.Collections.Frozen;
using System.Globalization;
using System.Text.Json;
using Orlop.Electrics.Conductors;

namespace Orlop.Review.Practices;

/// <summary>The practices that come with the program, read once from the files beside this one.</summary>
public static class PracticeFiles
{
    private static readonly string[] Ids = ["us-federal", "iso-small-craft", "owner"];

    /// <summary>All practices by id.</summary>
    public static FrozenDictionary<string, Practice> ById { get; } =
        Ids.ToFrozenDictionary(id => id, Read, StringComparer.Ordinal);

    private static Practice Read(string id)
    {
        using JsonDocument file = JsonDocument.Parse(Text($"{id}.json"));
        JsonElement root = file.RootElement, ampacity = root.GetProperty("ampacity"), grouping = root.GetProperty("grouping");
        return new Practice
        {
            Id = id,
            Title = root.GetProperty("title").GetString()!,
            About = root.GetProperty("about").GetString()!,
            Limits = root.GetProperty("limits").EnumerateObject()
                .Select(limit => new Limit(
                    limit.Name,
                    limit.Value.GetProperty("value").GetDouble(),
                    limit.Value.GetProperty("source").GetString()!,
                    IsFromMemory(limit.Value)))
                .ToFrozenDictionary(limit => limit.Id, StringComparer.Ordinal),
            Ampacities = new AmpacityTable(
                ampacity.GetProperty("source").GetString()!,
                root.GetProperty("limits").GetProperty(LimitIds.TableAmbientC).GetProperty("value").GetDouble(),
                [.. Rows(ampacity).Select(AmpacityRowOf)]),
            IsAmpacityFromMemory = IsFromMemory(ampacity),
            Groupings = new BundleFactorTable(
                [.. Rows(grouping).Select(cells => new BundleFactorRow(Whole(cells[0]), cells[1].Length == 0 ? null : Whole(cells[1]), Number(cells[2])))],
                grouping.GetProperty("source").GetString()!),
            IsGroupingFromMemory = IsFromMemory(grouping),
        };
    }

    // The table by wire gauge has a fourth column, the metric one has not.
    private static AmpacityRow AmpacityRowOf(string[] cells) =>
        new(cells.Length == 4 ? GaugeMm2(cells[0]) : Number(cells[0]), Number(cells[1]), Number(cells[2]));

    private static double GaugeMm2(string text) => AmericanWireGauge.TryParse(text, out int gauge)
        ? AmericanWireGauge.AreaMm2(gauge)
        : throw new FormatException($"'{text}' is not a wire gauge");

    private static IEnumerable<string[]> Rows(JsonElement table) => Text($"tables.{table.GetProperty("table").GetString()}")
        .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Where(line => line[0] != '#')
        .Skip(1)
        .Select(line => line.Split(','));

    private static bool IsFromMemory(JsonElement element) => element.TryGetProperty("fromMemory", out JsonElement flag) && flag.GetBoolean();

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(string name)
    {
        using Stream stream = typeof(PracticeFiles).Assembly.GetManifestResourceStream($"Orlop.Review.Practices.{name}")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
