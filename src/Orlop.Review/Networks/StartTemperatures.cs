using Orlop.Electrics.Conductors;
using Orlop.Electrics.Networks;

namespace Orlop.Review.Networks;

/// <summary>
/// A start lasts seconds, a cable warms in minutes: while a load starts, every conductor keeps the temperature it has while all that the
/// condition has is running (an assumption, common practice, no source).
/// </summary>
internal static class StartTemperatures
{
    private const double HottestC = 250;

    /// <summary>The network with its conductors held at their running temperature; one without such a temperature is left as it is.</summary>
    public static Network Hold(Network starting, SolvedNetwork running) => starting with
    {
        Conductors = [.. starting.Conductors.Select(conductor => running.ConductorC(conductor.Id) is { } conductorC and <= HottestC
            ? conductor with { ResistanceAt20Ohm = conductor.ResistanceAt20Ohm * AnnealedCopper.ResistanceFactor(conductorC), Heating = null }
            : conductor)],
    };
}
