using System.Text.RegularExpressions;
using Orlop.Boat.Things;

namespace Orlop.Review.Mending;

/// <summary>The name of a device whose kind changes.</summary>
internal static class KindName
{
    /// <summary>The name as it becomes: the word of its kind, wherever it stands as a whole word, becomes that of the other.</summary>
    public static string? Of(string? name, ProtectionMeans was, ProtectionMeans becomes) => was == becomes || name is null ? name
        : Regex.Replace(name, $@"\b{WordOf(was)}\b", found => char.IsUpper(found.Value[0]) ? WordOf(becomes) : WordOf(becomes).ToLowerInvariant(), RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>What is said of it beside the change; nothing where the kind stays.</summary>
    public static string Words(Protection device, ProtectionMeans becomes) => (device.Means == becomes, Of(device.Name, device.Means, becomes)) switch
    {
        (true, _) => "",
        (_, { } name) when name != device.Name => $"; its name becomes “{name}”",
        _ => "; its name stays",
    };

    private static string WordOf(ProtectionMeans means) => means == ProtectionMeans.Fuse ? "Fuse" : "Breaker";
}
