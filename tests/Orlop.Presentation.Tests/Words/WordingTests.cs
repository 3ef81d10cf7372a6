using System.Globalization;
using System.Xml.Linq;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Presentation.Tests.Words;

public sealed class WordingTests
{
    [Fact]
    public void KindOf_EveryKindOfThing_HasPlainWords()
    {
        foreach (string name in ThingKinds.ByName.Keys)
        {
            Assert.False(string.IsNullOrWhiteSpace(Wording.KindOf(name)), name);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => Wording.KindOf("spaceship"));
    }

    [Theory]
    [InlineData("Winch plug", "Winch plug")]
    [InlineData("Winch", "Winch, plug and socket")]
    [InlineData("Plugboard", "Plugboard, plug and socket")]
    public void NameWithKind_OfAPlug_SaysEachOnce(string name, string said) => Assert.Equal(said, Wording.NameWithKind(new PlugAndSocket { Id = "plug", Name = name }));

    [Theory]
    [InlineData("Fuse of the winch", "Fuse of the winch")]
    [InlineData("Winch fuse", "Winch fuse")]
    [InlineData("Winch", "Winch, fuse")]
    public void NameWithKind_OfAFuse_SaysEachOnce(string name, string said) =>
        Assert.Equal(said, Wording.NameWithKind(new Protection { Id = "fuse", Name = name, Means = ProtectionMeans.Fuse, RatedA = 10 }));

    [Fact]
    public void Unbroken_NumberAndUnit_StayTogether() => Assert.Equal("12.8\u00A0V from the bank, 2\u00A0m away, 3 steps", SentenceText.Unbroken("12.8 V from the bank, 2 m away, 3 steps"));

    [Fact]
    public void Shapes_OfTheVerdicts_DifferInShapeAndName()
    {
        Verdict[] verdicts = Enum.GetValues<Verdict>();
        XElement[] drawn = [.. verdicts.Select(verdict => XElement.Parse(VerdictShape.Svg(verdict)))];

        Assert.Equal(verdicts.Length, drawn.Select(svg => (string?)svg.Attribute("aria-label")).Distinct().Count());
        Assert.Equal(verdicts.Length, drawn.Select(svg => svg.Elements().Last().ToString()).Distinct().Count());
        Assert.Equal("none", (string?)drawn[Array.IndexOf(verdicts, Verdict.Unknown)].Elements().Last().Attribute("fill"));
    }

    [Fact]
    public void Default_Verdict_ReadsUnknown() => Assert.Equal("unknown", Wording.Of(default(Verdict)));

    [Fact]
    public void Guess_IsSaidForWhatIsGuessedOrEstimated()
    {
        Assert.Equal("guess", Wording.Of(Knowledge.Guessed));
        Assert.True(Wording.LooksGuessed(new Quantity(1, Knowledge.Guessed)));
        Assert.False(Wording.LooksGuessed(new Quantity(1, Knowledge.Measured)));
        Assert.False(Wording.LooksGuessed(null));
    }

    [Fact]
    public void Sentence_Amounts_AreInTheReadersUnits()
    {
        Sentence sentence = Sentence.Of($"{"Winch feed"} is {new Amount(1.0668, "M")} long and runs at {new Amount(90, "C")}");

        Assert.Equal("Winch feed is 3\u00A0ft\u00A06\u00A0in long and runs at 194\u00A0°F", SentenceText.Of(sentence, DisplayUnits.Us, CultureInfo.InvariantCulture));
        Assert.Equal("Winch feed is 1,07\u00A0m long and runs at 90\u00A0°C", SentenceText.Of(sentence, DisplayUnits.Metric, CultureInfo.GetCultureInfo("de-DE")));
    }

    [Fact]
    public void Sentence_NumbersWrittenOut_StayWithTheirUnits() => Assert.Equal(
        "Converter 24\u00A0V to 12\u00A0V: 0\u00A0V, at most 5\u00A0mΩ in 8 cells",
        SentenceText.Of(Sentence.Of($"Converter 24 V to 12 V: 0 V, at most 5 mΩ in 8 cells"), DisplayUnits.Metric, CultureInfo.InvariantCulture));

    [Fact]
    public void Listed_Words_KeepOnlyTheFirstCapital() => Assert.Equal("Drilling, heavy and lining burns", SentenceText.Listed(["Drilling", "Heavy", "Lining burns"]));

    [Theory]
    [InlineData(1.145123, "M", "1.15\u00A0m")]
    [InlineData(-10.004, "M", "-10\u00A0m")]
    [InlineData(0.0725, "M", "0.073\u00A0m")]
    [InlineData(0.7771, "V", "0.777\u00A0V")]
    public void Amount_Length_EndsAtTheCentimetreFromAMetreUp_AndAtTheMillimetreBelow(double value, string suffix, string shown) =>
        Assert.Equal(shown, SentenceText.Of(new Amount(value, suffix), DisplayUnits.Metric, CultureInfo.InvariantCulture));

    [Fact]
    public void Condition_SaysWhatIsOn()
    {
        Condition condition = new() { Id = "anchor", Name = "At anchor", SunShines = true };

        Assert.Equal("At anchor: engine stopped, no shore power, sun.", Wording.Of(condition));
    }
}
