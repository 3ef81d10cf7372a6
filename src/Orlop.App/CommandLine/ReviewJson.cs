using System.Text;
using System.Text.Json;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.App.CommandLine;

/// <summary>A review as JSON for other programs, in the model's units; its form is <c>docs/review.schema.json</c>.</summary>
internal static class ReviewJson
{
    private const int FormatVersion = 1;

    public static string Write(ReviewResult result)
    {
        using MemoryStream utf8 = new();
        using (Utf8JsonWriter json = new(utf8, new JsonWriterOptions { Indented = true, Encoder = JsonOutput.Options.Encoder }))
        {
            json.WriteStartObject();
            json.WriteNumber("reviewFormat", FormatVersion);
            json.WriteString("boat", result.AsBuilt.Particulars?.Title ?? "");
            json.WriteString("alteration", result.AlterationId);
            json.WriteStartObject("counts");
            foreach (Verdict verdict in Enum.GetValues<Verdict>())
            {
                json.WriteNumber(Wording.Of(verdict), result.Count(verdict));
            }

            json.WriteEndObject();
            json.WriteStartArray("clashes");
            foreach (string id in result.Clashes.Select(clash => clash.Id))
            {
                json.WriteStringValue(id);
            }

            json.WriteEndArray();
            json.WriteStartArray("findings");
            foreach (PairedFinding pair in result.Findings)
            {
                json.WriteStartObject();
                json.WriteString("check", pair.CheckId);
                json.WriteString("subject", pair.SubjectId);
                json.WriteString("change", ChangeWords.Id(pair.Change));
                Write(json, "asBuilt", pair.Before?.Worst);
                Write(json, "asAltered", pair.After?.Worst);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(utf8.ToArray());
    }

    private static void Write(Utf8JsonWriter json, string name, Finding? finding)
    {
        if (finding is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("verdict", Wording.Of(finding.Verdict));
        json.WriteString("condition", finding.ConditionId);
        if (finding.UseFraction is { } use && double.IsFinite(use))
        {
            json.WriteNumber("useFraction", use);
        }
        else
        {
            json.WriteNull("useFraction");
        }

        json.WriteString("headline", SentenceText.Of(finding.Headline, DisplayUnits.Metric, UnitsOption.Culture));
        json.WriteStartArray("working");
        foreach (WorkingLine line in finding.Working)
        {
            json.WriteStartObject();
            json.WriteString("what", line.What);
            json.WriteString("expression", line.Expression);
            Write(json, line.Value);
            json.WriteString("source", line.Source);
            json.WriteBoolean("isFromMemory", line.IsFromMemory);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("inputs");
        foreach (FindingInput input in finding.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("thing", input.ThingId);
            json.WriteString("field", input.Field);
            json.WriteBoolean("isGuess", input.IsGuess);
            json.WriteBoolean("isMissing", input.IsMissing);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Amount? amount)
    {
        if (amount is null || !double.IsFinite(amount.Value))
        {
            json.WriteNull("value");
            return;
        }

        json.WriteStartObject("value");
        json.WriteNumber("number", amount.Value);
        json.WriteString("unit", amount.Suffix);
        json.WriteString("text", SentenceText.Of(amount, DisplayUnits.Metric, UnitsOption.Culture));
        json.WriteEndObject();
    }
}
