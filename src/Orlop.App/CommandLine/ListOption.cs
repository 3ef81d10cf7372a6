using System.CommandLine;
using Orlop.Boat.Things;

namespace Orlop.App.CommandLine;

/// <summary>The option <c>--list KIND</c>.</summary>
internal static class ListOption
{
    private static readonly string[] Kinds = [.. ThingKinds.ByName.Keys.Order(StringComparer.Ordinal)];

    public static Option<string?> Make(string description)
    {
        Option<string?> option = new("--list") { Description = $"{description} Kinds: {string.Join(", ", Kinds)}." };
        option.CompletionSources.Add(Kinds);
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } kind }, ..] && !ThingKinds.ByName.ContainsKey(kind))
            {
                result.AddError($"There is no list '{kind}'.{NearNames.Hint(kind, Kinds)} Lists: {string.Join(", ", Kinds)}.");
            }
        });
        return option;
    }
}
