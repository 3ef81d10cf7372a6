using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.App.CommandLine;

/// <summary>The option <c>--condition NAME</c>.</summary>
internal static class ConditionOption
{
    public static Option<string?> Make() => new("--condition") { Description = "Id or name of a condition; every one when left out." };

    /// <summary>The named condition, or all of them.</summary>
    public static IReadOnlyList<Condition> Of(BoatModel boat, string? named)
    {
        Condition[] all = [.. boat.All<Condition>()];
        if (named is null)
        {
            return all.Length > 0 ? all : throw new CommandException("The boat has no condition to be loaded in. Add one, such as “At anchor”.");
        }

        Condition[] found = [.. all.Where(condition => condition.Id == named)];
        found = found.Length > 0 ? found : [.. all.Where(condition => string.Equals(condition.Name, named, StringComparison.OrdinalIgnoreCase))];
        return found.Length switch
        {
            1 => found,
            0 => throw new CommandException($"There is no condition '{named}'.{NearNames.Hint(named, all.Select(condition => (condition.Id, condition.Name)))} The boat has: {string.Join(", ", all.Select(condition => condition.Id))}."),
            _ => throw new CommandException($"{found.Length} conditions are named '{named}'. Give the id of one: {string.Join(", ", found.Select(condition => condition.Id))}."),
        };
    }
}
