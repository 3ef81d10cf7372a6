using System.CommandLine;
using Orlop.Boat.Things;

namespace Orlop.App.CommandLine;

/// <summary>The option <c>--list KIND</c>.</summary>
internal static class ListOption
{
    public static Option<string?> Make(string description)
    {
        Option<string?> option = new("--list") { Description = $"{description} Kinds: {string.Join(", ", ThingKinds.ByName.Keys.Order(StringComparer.Ordinal))}." };
        option.AcceptOnlyFromAmong([.. ThingKinds.ByName.Keys.Order(StringComparer.Ordinal)]);
        return option;
    }
}
