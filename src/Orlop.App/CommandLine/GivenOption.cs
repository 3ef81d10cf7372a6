using System.CommandLine.Parsing;

namespace Orlop.App.CommandLine;

/// <summary>Whether an option stands on the command line. A validator may not ask for its value: that throws where the value is one that the option does not take.</summary>
internal static class GivenOption
{
    /// <summary>It was typed, with whatever value.</summary>
    public static bool IsGiven(this CommandResult command, string option) =>
        command.Children.OfType<OptionResult>().Any(result => result.Option.Name == option && !result.Implicit);
}
