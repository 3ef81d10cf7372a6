using System.Text;

namespace Orlop.Boat.Format;

/// <summary>How one property is called in JSON, in tables and on forms.</summary>
public static class FieldNames
{
    /// <summary><c>LengthM</c> in JSON: <c>lengthM</c>; only the first letter changes.</summary>
    public static string Camel(string property) => char.ToLowerInvariant(property[0]) + property[1..];

    /// <summary><c>LengthM</c> in a table: <c>length_m</c>.</summary>
    public static string Snake(string property) => Parted(property, '_');

    /// <summary><c>UnderWay</c> as a choice: <c>under-way</c>.</summary>
    public static string Kebab(string member) => Parted(member, '-');

    /// <summary><c>InternalResistanceOhm</c> on a form: <c>Internal resistance</c>, without its unit; <c>IsBonded</c>: <c>Bonded</c>.</summary>
    public static string Label(string property, string suffix)
    {
        string bare = property.Length > suffix.Length ? property[..^suffix.Length] : property;
        bare = bare.Length > 2 && bare.StartsWith("Is", StringComparison.Ordinal) && char.IsUpper(bare[2]) ? bare[2..] : bare;
        string words = Parted(bare, ' ');
        return words == "ac" ? "AC" : char.ToUpperInvariant(words[0]) + words[1..];
    }

    private static string Parted(string name, char separator)
    {
        StringBuilder parted = new(name.Length + 8);
        for (int i = 0; i < name.Length; i++)
        {
            if (i > 0 && char.IsUpper(name[i]))
            {
                parted.Append(separator);
            }

            parted.Append(char.ToLowerInvariant(name[i]));
        }

        return parted.ToString();
    }
}
