using Orlop.Boat.Things;

namespace Orlop.Review.Mending;

/// <summary>The name of a device whose kind changes.</summary>
internal static class KindName
{
    /// <summary>The name as it becomes: where it begins with the word of its kind, with that of the other.</summary>
    public static string? Of(string? name, ProtectionMeans was, ProtectionMeans becomes)
    {
        string word = WordOf(was);
        return was != becomes && name is not null && name.StartsWith(word, StringComparison.OrdinalIgnoreCase) && (name.Length == word.Length || !char.IsLetter(name[word.Length]))
            ? (char.IsUpper(name[0]) ? WordOf(becomes)[0] : char.ToLowerInvariant(WordOf(becomes)[0])) + WordOf(becomes)[1..] + name[word.Length..]
            : name;
    }

    /// <summary>What is said of it beside the change; nothing where the kind stays.</summary>
    public static string Words(Protection device, ProtectionMeans becomes) => (device.Means == becomes, Of(device.Name, device.Means, becomes)) switch
    {
        (true, _) => "",
        (_, { } name) when name != device.Name => $"; its name becomes “{name}”",
        _ => "; its name stays",
    };

    private static string WordOf(ProtectionMeans means) => means == ProtectionMeans.Fuse ? "Fuse" : "Breaker";
}
