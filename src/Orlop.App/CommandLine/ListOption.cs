using System.CommandLine;
using Orlop.Review;

namespace Orlop.App.CommandLine;

/// <summary>The option <c>--list KIND</c>.</summary>
internal static class ListOption
{
    public static Option<string?> Make(string description)
    {
        Option<string?> option = new("--list") { Description = $"{description} Lists: {string.Join(", ", BoatTable.Lists)}." };
        option.CompletionSources.Add([.. BoatTable.Lists]);
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } kind }, ..] && !BoatTable.Lists.Contains(kind))
            {
                result.AddError($"There is no list '{kind}'.{NearNames.Hint(kind, BoatTable.Lists)} Lists: {string.Join(", ", BoatTable.Lists)}.");
            }
        });
        return option;
    }
}
