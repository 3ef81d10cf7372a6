namespace Orlop.App.CommandLine;

/// <summary>A command cannot do what was asked. The message says what happened, to what, and what to do.</summary>
public sealed class CommandException(string message) : Exception(message);
