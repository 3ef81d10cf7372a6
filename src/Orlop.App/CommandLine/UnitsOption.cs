using System.CommandLine;
using System.Globalization;
using Orlop.Presentation.Quantities;

namespace Orlop.App.CommandLine;

/// <summary>The option <c>--units metric|us</c>.</summary>
internal static class UnitsOption
{
    /// <summary>How numbers are written on the command line.</summary>
    public static CultureInfo Culture { get; } = CultureInfo.InvariantCulture;

    public static Option<string> Make()
    {
        Option<string> option = new("--units") { Description = "Units to show: metric or us.", DefaultValueFactory = _ => "metric" };
        option.AcceptOnlyFromAmong("metric", "us");
        return option;
    }

    public static DisplayUnits Of(string? units) => units == "us" ? DisplayUnits.Us : DisplayUnits.Metric;
}
