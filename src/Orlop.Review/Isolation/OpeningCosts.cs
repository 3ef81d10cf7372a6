using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>
/// How unwelcome each way of opening a circuit is, so that the least unwelcome set is chosen: a handle that stays open and shows it
/// before a tool, a tool before a bare battery lead. The order is common practice, no source; only the ratios matter.
/// </summary>
public static class OpeningCosts
{
    /// <summary>Stopping an engine or pulling a shore lead: welcome before any work.</summary>
    public const int StopSource = 5;

    /// <summary>The cost of one means of opening.</summary>
    public static int Of(OpeningMeans means) => means switch
    {
        OpeningMeans.Isolator => 10,
        OpeningMeans.Breaker => 20,
        OpeningMeans.Unplug => 30,
        OpeningMeans.PullFuse => 60,
        _ => 400,
    };
}
