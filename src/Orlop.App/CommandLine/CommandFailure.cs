namespace Orlop.App.CommandLine;

/// <summary>A command cannot do what was asked. The message says what happened, to what, and what to do.</summary>
public sealed class CommandFailure(string message) : Exception(message);
