using System.Globalization;
using CsCheck;
using Orlop.Boat.Format;
using Orlop.Boat.Tests.Boats;
using Orlop.Boat.Validation;
using Xunit;

namespace Orlop.Boat.Tests.Format;

public sealed class BoatJsonPropertyTests
{
    private const int BoatCount = 300;

    [Fact]
    public void ReadOfWrite_AnyBoat_IsTheSameBoat() => Gen.Int.Sample(
        seed =>
        {
            BoatModel boat = RandomBoat.Of(seed);
            string text = BoatJson.Write(boat);
            BoatReadResult result = BoatJson.Read(text);
            Assert.Empty(result.Problems);
            Assert.Equal(boat, result.Boat);
            Assert.Equal(text, BoatJson.Write(result.Boat!));
        },
        iter: BoatCount);

    [Fact]
    public void Check_AnyBoat_FindsNothing() => Gen.Int.Sample(seed => Assert.Empty(BoatValidation.Check(RandomBoat.Of(seed))), iter: 50);

    [Fact]
    public void ReadOfWrite_CommaDecimalCulture_IsTheSameBoat()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            string text = BoatJson.Write(RandomBoat.Of(7));
            Assert.Equal(RandomBoat.Of(7), BoatJson.Read(text).Boat);
            Assert.Equal(SmallBoat.Text, BoatJson.Write(BoatJson.Read(SmallBoat.Text).Boat!));
            Assert.Contains("0.2 to 500 mm2", Assert.Single(BoatJson.Read(SmallBoat.With("\"areaMm2\": 4,", "\"areaMm2\": 0.15,")).Problems).Allowed, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
