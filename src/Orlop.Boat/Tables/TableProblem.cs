using System.Globalization;

namespace Orlop.Boat.Tables;

/// <summary>One thing that is wrong in a table: which cell, what was found, what is allowed.</summary>
/// <param name="Row">Row as a spreadsheet counts, the header being row 1; null for a thing of the boat that the table breaks.</param>
/// <param name="Column">Name of the column, or the path in the boat when there is no row.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Allowed">What may stand there.</param>
/// <param name="Message">What is wrong, in a sentence.</param>
public sealed record TableProblem(int? Row, string Column, string Found, string Allowed, string Message)
{
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{(Row is null ? "boat, " : $"row {Row}, ")}{Column}: {Message} Found: {Found}. Allowed: {Allowed}.");
}
