namespace Orlop.Electrics.Isolation;

/// <summary>Finds what to open and stop so that nothing live reaches one part of some wiring.</summary>
public static class IsolationPlan
{
    /// <summary>The plan of one part; see <see cref="PreparedIsolation"/> for the method, and for several parts of the same wiring.</summary>
    /// <exception cref="ArgumentException">The wiring cannot be reasoned about; the message names the place.</exception>
    public static IsolationResult Find(IsolationInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return new PreparedIsolation(input).Find(input.TargetNodes);
    }
}
