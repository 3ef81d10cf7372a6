namespace Orlop.App.CommandLine;

/// <summary>What the program tells the shell.</summary>
public static class ExitCode
{
    /// <summary>Done; in a review, nothing fails.</summary>
    public const int Good = 0;

    /// <summary>The review has findings that fail.</summary>
    public const int SomethingFails = 1;

    /// <summary>The command or its input cannot be used.</summary>
    public const int BadInput = 2;

    /// <summary>A fault of the program itself.</summary>
    public const int OwnFault = 3;

    /// <summary>Stopped by Ctrl-C.</summary>
    public const int Stopped = 130;
}
