using System.Globalization;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Presentation.Tests.Quantities;

public sealed class WireGaugeTests
{
    /// <summary>Published diameters in inches: solid copper wire table of an open text on electric circuits (same gauge as ASTM B258 and NBS Handbook 100).</summary>
    [Theory]
    [InlineData("4/0", 0.4600)]
    [InlineData("3/0", 0.4096)]
    [InlineData("2/0", 0.3648)]
    [InlineData("1/0", 0.3249)]
    [InlineData("1", 0.2893)]
    [InlineData("2", 0.2576)]
    [InlineData("4", 0.2043)]
    [InlineData("6", 0.1620)]
    [InlineData("8", 0.1285)]
    [InlineData("10", 0.1019)]
    [InlineData("12", 0.08081)]
    [InlineData("14", 0.06408)]
    [InlineData("16", 0.05082)]
    [InlineData("18", 0.04030)]
    [InlineData("24", 0.02010)]
    public void Area_PublishedDiameters_Agree(string gauge, double diameterIn)
    {
        double area = QuantityText.Parse($"{gauge} AWG", "Mm2", DisplayUnits.Metric, CultureInfo.InvariantCulture).Quantity!.Value;
        double published = Math.PI / 4 * Math.Pow(diameterIn * 25.4, 2);

        Assert.Equal(1, area / published, 1e-3); // four published digits: 5e-4 of an area at most
    }

    [Theory]
    [InlineData("1/0", 53.4751)]
    [InlineData("2/0", 67.4309)]
    [InlineData("00 AWG", 67.4309)]
    [InlineData("awg 10", 5.2612)]
    [InlineData("10awg", 5.2612)]
    [InlineData("0 AWG", 53.4751)]
    public void Read_WaysOfWriting_AreUnderstoodInEitherUnits(string text, double areaMm2)
    {
        foreach (DisplayUnits units in Enum.GetValues<DisplayUnits>())
        {
            Assert.Equal(areaMm2, QuantityText.Parse(text, "Mm2", units, CultureInfo.InvariantCulture).Quantity!.Value, 1e-3);
        }
    }

    [Fact]
    public void NumberOf_EverySize_FindsItself()
    {
        for (int number = -3; number <= 40; number++)
        {
            Assert.Equal(number, WireGauge.NumberOf(WireGauge.AreaMm2(number)));
        }

        Assert.Null(WireGauge.NumberOf(16));
        Assert.Null(WireGauge.NumberOf(double.NaN));
    }

    [Theory]
    [InlineData(-4)]
    [InlineData(41)]
    public void Area_OutsideTheGauge_IsRefused(int number) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.AreaMm2(number));
}
