using System.Globalization;
using System.Text.RegularExpressions;
using Orlop.Boat.Format;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed partial class FieldGuideFigureTests
{
    // What the help offers can be typed as it stands there: 0.95 was refused as 0.95 % or 95 %. The three figures are those of SOLAS II-1 regulation 7-3, from memory.
    [Fact]
    public void FiguresForWaterInASpace_CanBeTypedAsTheyStand()
    {
        FieldSchema field = ThingSchema.Of("space").Field("permeabilityFraction")!;
        string[] figures = [.. Figure().Matches(FieldGuide.How(field)!.Split('(')[0]).Select(match => match.Value)];
        Assert.Equal([0.6, 0.85, 0.95], figures.Select(figure => Assert.IsType<Quantity>(FieldText.Read(field, figure, DisplayUnits.Metric, CultureInfo.InvariantCulture).Value).Value));
    }

    [GeneratedRegex(@"\d[\d.]*( %)?")]
    private static partial Regex Figure();
}
