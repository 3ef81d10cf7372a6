namespace Orlop.Browser.Tests.Harness;

/// <summary>How long a test waits for a condition before it says that it did not come.</summary>
internal static class Waiting
{
    /// <summary>Long, for a busy machine: a condition that comes is not waited for any longer.</summary>
    public const float MostMs = 60_000;
}
