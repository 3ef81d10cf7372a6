using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Findings;

public sealed class WorkingLineTests
{
    // ISO 80000-2: the minus sign is U+2212; a hyphen in a name, a clause or a day is none.
    [Theory]
    [InlineData("(-0.0500, 1.2, -.3) m", "(−0.0500, 1.2, −.3) m")]
    [InlineData("0.5 - -0.3 = 0.8", "0.5 − −0.3 = 0.8")]
    [InlineData("atan((1 - 2)/(3) - (4))", "atan((1 − 2)/(3) − (4))")]
    [InlineData("3E-05 Ω", "3E−05 Ω")]
    [InlineData("14° - 3.2°, 0.5 % - |1 - 2|/3", "14° − 3.2°, 0.5 % − |1 − 2|/3")]
    [InlineData("pump-fuse 2 of bank-2, 2026-04-30, IEC 60364-4-41", "pump-fuse 2 of bank-2, 2026-04-30, IEC 60364-4-41")]
    [InlineData("Tank - port, day-tank 1", "Tank - port, day-tank 1")]
    [InlineData("", "")]
    public void Expression_HasMinusSigns_AndKeepsItsHyphens(string written, string shown)
    {
        WorkingLine line = new("Found", written, null, "");
        Assert.Equal(shown, line.Expression);
        Assert.Equal(shown, (line with { Expression = written }).Expression);
    }
}
