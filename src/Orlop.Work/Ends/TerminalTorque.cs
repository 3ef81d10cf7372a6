namespace Orlop.Work.Ends;

/// <summary>How tight a terminal is made: by its maker where that is told at the stud, else by a table.</summary>
/// <param name="LeastNm">In newton metres.</param>
/// <param name="MostNm">In newton metres.</param>
/// <param name="Connection">What it is given for: "battery stud, M8".</param>
/// <param name="Source">Where the value is from.</param>
/// <param name="IsMakers">It is the maker's own figure, as typed at the stud.</param>
public sealed record TerminalTorque(double LeastNm, double MostNm, string Connection, string Source, bool IsMakers = false);
