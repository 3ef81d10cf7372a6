using System.CommandLine;

namespace Orlop.App.CommandLine;

/// <summary>What is said of a command line that cannot be run: what was wrong with it first, then the way on.</summary>
internal static class UsageText
{
    /// <summary>Writes it; nothing goes to the results.</summary>
    public static void Write(ParseResult parsed, TextWriter error)
    {
        Command command = parsed.CommandResult.Command;
        foreach (string line in Complaints(parsed, command).Distinct())
        {
            error.WriteLine(line);
        }

        error.WriteLine();
        if (command is not RootCommand)
        {
            error.WriteLine($"Use: orlop {command.Name}{string.Concat(command.Arguments.Select(Shown))}{string.Concat(command.Options.Where(option => option.Required).Select(Shown))}");
            error.WriteLine($"More: orlop {command.Name} --help");
            return;
        }

        foreach (Command sub in command.Subcommands)
        {
            error.WriteLine($"  orlop {sub.Name,-8}  {sub.Description}");
        }

        error.WriteLine("More: orlop --help, orlop COMMAND --help");
    }

    private static IEnumerable<string> Complaints(ParseResult parsed, Command command)
    {
        if (parsed.UnmatchedTokens is [{ } first, ..])
        {
            yield return first.StartsWith('-')
                ? $"There is no option '{first}'{Where(command)}.{NearNames.Hint(first, command.Options.Concat(parsed.RootCommandResult.Command.Options).Select(option => option.Name))}"
                : command is RootCommand
                    ? $"There is no command '{first}'.{NearNames.Hint(first, command.Subcommands.Select(sub => sub.Name))}"
                    : $"'{first}' is one argument too many{Where(command)}.";
            yield break;
        }

        if (command is RootCommand)
        {
            yield return "A command is missing: say what to do.";
            yield break;
        }

        string[] missing = [.. command.Arguments.Where(argument => parsed.GetResult(argument) is null or { Tokens.Count: 0 } && argument.Arity.MinimumNumberOfValues > 0).Select(argument => argument.Name.ToUpperInvariant())];
        foreach (string name in missing)
        {
            yield return $"{name} is missing{Where(command)}.";
        }

        foreach (string message in parsed.Errors.Select(fault => fault.Message).Where(message => missing.Length == 0 || !message.StartsWith("Required argument", StringComparison.Ordinal)))
        {
            yield return message;
        }
    }

    private static string Where(Command command) => command is RootCommand ? "" : $" in orlop {command.Name}";

    private static string Shown(Argument argument) =>
        argument.Arity.MinimumNumberOfValues == 0 ? $" [{argument.Name.ToUpperInvariant()}]" : $" {argument.Name.ToUpperInvariant()}";

    private static string Shown(Option option) => $" {option.Name} {option.Name.TrimStart('-').ToUpperInvariant()}";
}
