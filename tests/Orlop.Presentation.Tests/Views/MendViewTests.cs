using System.Globalization;
using Orlop.Presentation.Views;
using Orlop.Review.Mending;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>What is said while a set is sought.</summary>
public sealed class MendViewTests
{
    [Theory]
    [InlineData(null, 0.0, "none found yet")]
    [InlineData(null, 18.0, "none found yet; none is below 18.00 to pay")]
    [InlineData(25.0, 0.0, "one that clears it is found (25.00 to pay)")]
    [InlineData(25.0, 18.0, "one that clears it is found (25.00 to pay); none is below 18.00 to pay")]
    public void NothingIsSaidOfALeastThatIsNothing(double? most, double least, string expected) => Assert.Equal(expected,
        MendView.Near(new MendProgress(50, 2000, most is not null) { Aim = MendAim.Cost, Most = most, Least = least }, CultureInfo.InvariantCulture));
}
