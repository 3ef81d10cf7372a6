using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;

namespace Orlop.Presentation.Views;

/// <summary>A problem as people read it: things by their names and fields by their labels, in place of the ids and paths of files.</summary>
public sealed partial class ProblemWords
{
    private const int MostTold = 3;

    private readonly Dictionary<string, Thing> _things = new(StringComparer.Ordinal);

    /// <summary>Words for problems of a boat and of edits that were to change her.</summary>
    public ProblemWords(BoatModel boat, IReadOnlyList<Edit> edits)
    {
        Thing[] newest = [.. boat.Things, .. edits.Select(edit => edit.Becomes).OfType<Thing>()];
        foreach (Edit edit in newest.OfType<Alteration>().SelectMany(alteration => alteration.Edits))
        {
            _things[edit.Id] = (edit.Becomes ?? edit.Was)!;
        }

        foreach (Thing thing in newest)
        {
            _things[thing.Id] = thing;
        }
    }

    /// <summary>The first problems in sentences, and how many more there are.</summary>
    public string Of(IReadOnlyList<Problem> problems) => string.Join(" ", problems.Take(MostTold).Select(Of)) + (problems.Count > MostTold ? $" And {problems.Count - MostTold} more." : "");

    /// <summary>One problem: where, what is wrong, what was found, what is allowed.</summary>
    public string Of(Problem problem)
    {
        Match path = Path().Match(problem.Path);
        Thing? thing = path.Success ? _things.GetValueOrDefault(path.Groups["id"].Value) : null;
        string[] steps = path.Success ? [.. path.Groups["steps"].Value.Split('/', StringSplitOptions.RemoveEmptyEntries)] : [];
        string draft = "";
        if (thing is Alteration alteration && steps is ["edits", { } index, ..] && int.TryParse(index, out int number))
        {
            draft = $"in “{alteration.Title}”, ";
            (thing, steps) = (alteration.Edits.ElementAtOrDefault(number) is { } edit ? _things.GetValueOrDefault(edit.Id, alteration) : alteration, steps.Length > 3 ? steps[3..] : []);
        }

        string where = thing is null ? problem.Path : $"{draft}{thing.Title}{Labels(thing, steps)}";
        return $"{char.ToUpperInvariant(where[0])}{where[1..]}: {Named(problem.Message, thing)} Found: {Value(problem.Found)}. Allowed: {Value(problem.Allowed).Replace("the id of ", "", StringComparison.Ordinal)}.";

        // Files write a share as a fraction; people read and type it as a percentage.
        string Value(string text) => FieldOf(thing, steps) is { Unit.Suffix: "Fraction" }
            ? Number().Replace(text, number => FormattableString.Invariant($"{double.Parse(number.Value, CultureInfo.InvariantCulture) * 100:0.###}\u00A0%"))
            : Named(text, thing);
    }

    private static FieldSchema? FieldOf(Thing? thing, IEnumerable<string> steps)
    {
        RecordSchema? schema = thing is null ? null : ThingSchema.Of(thing.GetType());
        FieldSchema? field = null;
        foreach (string step in steps.Where(step => !int.TryParse(step, out _)))
        {
            field = schema?.Field(step);
            schema = field?.Record;
        }

        return field;
    }

    private static string Labels(Thing thing, IEnumerable<string> steps)
    {
        RecordSchema? schema = ThingSchema.Of(thing.GetType());
        List<string> labels = [];
        foreach (string step in steps)
        {
            if (int.TryParse(step, out int index))
            {
                labels.Add($"no. {index + 1}");
            }
            else if (schema?.Field(step) is { } field)
            {
                labels.Add(FieldLabels.InSentence(field));
                schema = field.Record;
            }
        }

        return labels.Count == 0 ? "" : $", {string.Join(", ", labels)}";
    }

    private string Named(string text, Thing? about)
    {
        string withLabels = about is null ? text : FieldName().Replace(text, match => LabelOf(ThingSchema.Of(about.GetType()), match.Value) ?? match.Value);
        string withoutPaths = InnerPath().Replace(withLabels, match => _things.TryGetValue(match.Groups["id"].Value, out Thing? found) ? $"“{found.Title}”" : match.Value);
        return QuotedId().Replace(withoutPaths, match => _things.TryGetValue(match.Groups["id"].Value, out Thing? found)
            ? $"“{found.Title}”{(match.Groups["terminal"].Success ? $" {match.Groups["terminal"].Value}" : "")}"
            : match.Value);
    }

    private static string? LabelOf(RecordSchema schema, string name) => schema.Field(name) is { } field ? FieldLabels.InSentence(field)
        : schema.Fields.Where(inner => inner.Type is FieldType.List or FieldType.Record && inner.Record is not null).Select(inner => inner.Record!.Field(name)).OfType<FieldSchema>().FirstOrDefault() is { } inside
            ? FieldLabels.InSentence(inside) : null;

    [GeneratedRegex(@"^things\[\d+\](?: '(?<id>[^']*)')?(?: (?<steps>/.*))?$")]
    private static partial Regex Path();

    [GeneratedRegex(@"things\[\d+\] '(?<id>[^']*)'(?: /[^\s:]*)?")]
    private static partial Regex InnerPath();

    [GeneratedRegex(@"'(?<id>[a-z][a-z0-9-]*)(?:\.(?<terminal>[^']+))?'")]
    private static partial Regex QuotedId();

    [GeneratedRegex(@"(?<![\w.])-?\d+(?:\.\d+)?(?![\w.]\d|\w)")]
    private static partial Regex Number();

    // Words such as runningW or openCircuitV, as files write the names of fields.
    [GeneratedRegex(@"\b[a-z]+[A-Z][A-Za-z0-9]*\b")]
    private static partial Regex FieldName();
}
