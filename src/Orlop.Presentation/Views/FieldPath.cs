using System.Collections;
using Orlop.Boat.Format;
using Orlop.Boat.Things;

namespace Orlop.Presentation.Views;

/// <summary>The way to a field inside a thing's lists and records, as findings write it: <c>cores/plus/fromEnd</c>, <c>run/2</c>.</summary>
/// <param name="Path">Its steps as far as they name something that the thing has; empty where the first names nothing.</param>
/// <param name="Box">The same as the end of the id of its box on a form: <c>cores-0-fromEnd</c>.</param>
public sealed record FieldPath(string Path, string Box)
{
    /// <summary>The way, as far as it goes: a core is named by its id, a stretch of a run by its number from 1.</summary>
    public static FieldPath In(Thing thing, string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        List<string> steps = [], boxes = [];
        Queue<string> left = new(path.Trim('/').Split('/', '.', '['));
        object? at = thing;
        while (at is not null && left.TryDequeue(out string? name) && RecordSchema.Of(at.GetType()).Field(name) is { } field)
        {
            steps.Add(name);
            boxes.Add(name);
            object? value = field.Get(at);
            at = field.Type is FieldType.Place or FieldType.Box or FieldType.Record ? value : null;
            if (field.Type == FieldType.List && value is IEnumerable items && left.TryDequeue(out string? one) && items.Cast<object>().Index().FirstOrDefault(item => Is(item, one)) is (var index, { } found))
            {
                steps.Add(one);
                boxes.Add(FormattableString.Invariant($"{index}"));
                at = found;
            }
            else if (OwnLimits.Asked(thing, path) is { } limit)
            {
                steps.Add(limit);
            }
        }

        return new FieldPath(string.Join('/', steps), string.Join('-', boxes));
    }

    private static bool Is((int Index, object Item) one, string name) => one.Item switch
    {
        Core core => core.Id == name,
        OwnLimit own => own.Limit == name,
        RunLeg => FormattableString.Invariant($"{one.Index + 1}") == name,
        _ => false,
    };
}
