namespace Orlop.Boat.Format;

/// <summary>What to say of a field name that does not exist.</summary>
internal static class NearestField
{
    private static readonly string[] ForeignSuffixes =
        ["Feet", "Foot", "Ft", "Inches", "Inch", "In", "Cm", "Km", "Yd", "Awg", "Lb", "Lbs", "Pounds", "G", "T", "Ma", "Mv", "Kv", "Kw", "Hp", "Kwh", "J", "Mah", "Min", "H", "MilliOhm", "Milliohm", "Mohm", "Uf", "Percent", "Pct"];

    /// <summary>The names that do exist.</summary>
    public static string Allowed(RecordSchema schema, string? besides) =>
        string.Join(", ", (besides is null ? [] : new[] { besides }).Concat(schema.Fields.Select(field => field.Name)));

    /// <summary>The sentence: the unit that is wanted, the nearest name, or only that there is none.</summary>
    public static string Advice(RecordSchema schema, string name, Func<FieldSchema, string> shown)
    {
        FieldSchema? sameButUnit = schema.Fields.FirstOrDefault(field => field.Unit is not null && SameButUnit(field, name));
        if (sameButUnit is not null)
        {
            return $"There is no field {FoundJson.Short(name)}; {sameButUnit.Unit!.Words} are wanted: {shown(sameButUnit)}.";
        }

        FieldSchema? nearest = name.Length > 60 ? null : schema.Fields.MinBy(field => Distance(field.Name, name));
        int distance = nearest is null ? int.MaxValue : Distance(nearest.Name, name);
        return nearest is not null && distance < name.Length && distance <= Math.Max(2, name.Length / 3)
            ? $"There is no field {name}; {shown(nearest)} is nearest."
            : $"There is no field {FoundJson.Short(name)}.";
    }

    private static bool SameButUnit(FieldSchema field, string name)
    {
        string stem = field.Name[..^field.Unit!.Suffix.Length];
        return name.StartsWith(stem, StringComparison.OrdinalIgnoreCase)
            && (name.Length == stem.Length
                || ForeignSuffixes.Concat(UnitSuffix.All.Select(unit => unit.Suffix)).Contains(name[stem.Length..], StringComparer.OrdinalIgnoreCase));
    }

    private static int Distance(string left, string right)
    {
        int[] row = [.. Enumerable.Range(0, right.Length + 1)];
        for (int i = 1; i <= left.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                int kept = diagonal + (char.ToLowerInvariant(left[i - 1]) == char.ToLowerInvariant(right[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(kept, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
