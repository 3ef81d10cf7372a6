namespace Orlop.Work.Ends;

/// <summary>How tight a terminal is made, where no maker's figure is at hand.</summary>
/// <param name="LeastNm">In newton metres.</param>
/// <param name="MostNm">In newton metres.</param>
/// <param name="Connection">What it is given for: "battery stud, M8".</param>
/// <param name="Source">Where the value is from.</param>
public sealed record TerminalTorque(double LeastNm, double MostNm, string Connection, string Source);
