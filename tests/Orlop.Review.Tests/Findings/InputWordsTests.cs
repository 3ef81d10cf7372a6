using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Findings;

public sealed class InputWordsTests
{
    [Theory]
    [InlineData("ratedA", "rated current")]
    [InlineData("nominalV", "nominal voltage")]
    [InlineData("internalResistanceOhm", "internal resistance")]
    [InlineData("cores/plus/fromEnd/lugMm2", "lug made for")]
    [InlineData("kgM", "centre of gravity, up (KG)")]
    [InlineData("run/2", "way or space of run 2")]
    [InlineData("openCircuit/0.3", "open-circuit voltage at 30 % charge, outside the points of its curve,")]
    [InlineData("gates/60/50/63", "operating time at 60 A, which its kind has only at 50 A and 63 A,")]
    [InlineData("least-gm", "least-gm")]
    [InlineData("noFieldOfAnyKindKg", "no field of any kind")]
    public void Field_IsNamedInTheWordsOfTheTrade(string path, string words) => Assert.Equal(words, InputWords.Of(path));
}
