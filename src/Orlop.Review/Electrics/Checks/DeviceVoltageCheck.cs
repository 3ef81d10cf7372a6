using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Fuses, breakers and plugs are rated for the voltage they are used at.</summary>
public sealed class DeviceVoltageCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "device-voltage",
        "Device is rated for its voltage",
        "The highest voltage of any source that reaches a fuse, breaker or plug (a full battery, a charger's set voltage) against its voltage rating.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from device in view.Boat.All<Part>()
        where device is Protection or PlugAndSocket
        select Judge(view, device);

    private Finding Judge(ElectricsView view, Part device)
    {
        Quantity? rated = device is Protection protection ? protection.RatedV : ((PlugAndSocket)device).RatedV;
        Part[] sources = [.. view.SourcesReaching(device)];
        FindingInput[] unknown = [.. sources.Where(source => SystemVoltage.GreatestV(source) is null).Select(source => new FindingInput(source.Id, "openCircuit", IsMissing: true))];
        double? volts = sources.Select(SystemVoltage.GreatestV).Max();
        if (unknown.Length > 0 && rated is not null && !(volts > rated.Value))
        {
            return Unknown(Description, device.Id, null, Sentence.Of($"{device.Title}: the highest voltage it may see is not known"), [.. unknown]);
        }

        if (rated is not null && SystemVoltage.InSeries(view, sources) is { } upper && !(volts > rated.Value))
        {
            return Unknown(Description, device.Id, null, Sentence.Of($"{device.Title}: {upper.Title} stands in series on another source, so the highest voltage cannot be told"), [new FindingInput(upper.Id, "id")]);
        }

        if (rated is null || volts is null)
        {
            Sentence headline = rated is null ? Sentence.Of($"{device.Title}: the voltage it is rated for is not known") : Sentence.Of($"{device.Title}: no source reaches it, so its voltage is not known");
            return Unknown(Description, device.Id, null, headline, [new FindingInput(device.Id, rated is null ? "ratedV" : "id", IsMissing: rated is null)]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = device.Id,
            // A rating is a step of a series, not a quantity with a margin: at or below it the device is within its rating.
            Verdict = volts.Value > rated.Value ? Verdict.Fails : Verdict.Holds,
            UseFraction = Verdicts.UseOf(volts.Value, rated.Value),
            Headline = Sentence.Of($"{device.Title} is rated {V(rated.Value)} and may see {V(volts.Value)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Highest voltage", "the highest of all sources that reach it: a full battery, a charger at its set voltage", V(volts.Value), SystemVoltage.SourceOfGreatest(sources)),
                new WorkingLine("Rated", "", V(rated.Value), rated.Method ?? "as typed"),
                Use(volts.Value, rated.Value),
            ],
            Inputs = [new FindingInput(device.Id, "ratedV")],
        };
    }
}
