namespace Orlop.App.CommandLine;

/// <summary>Where a command reads and writes; a test gives its own.</summary>
/// <param name="In">Read for a boat named "-".</param>
/// <param name="Out">Results.</param>
/// <param name="Error">What went wrong, and where files went.</param>
public sealed record CommandStreams(TextReader In, TextWriter Out, TextWriter Error)
{
    /// <summary>The streams of this process.</summary>
    public static CommandStreams OfProcess() => new(Console.In, Console.Out, Console.Error);
}
