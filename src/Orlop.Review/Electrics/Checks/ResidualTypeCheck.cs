using Orlop.Boat.Things;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>A residual-current device sees the faults of what it feeds.</summary>
public sealed class ResidualTypeCheck : ICheck<ElectricsView>
{
    private const string Source = "IEC 60755 and IEC 60364-5-53, 531.3.3";

    public CheckDescription Description { get; } = new(
        "residual-device-type",
        "The residual-current device sees what its loads leak",
        "Each residual-current device on the AC side is of type A, F or B, unless all behind it is plain resistance: type AC need not open on the pulsating current that leaks from electronics.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => view.EarthFaults
        .SelectMany(fault => fault.Circuit.Devices.Where(device => device.ResidualA is not null).Select(device => (Device: device, fault.Circuit.Taker)))
        .GroupBy(pair => pair.Device, pair => pair.Taker)
        .Select(group => Judge(group.Key, group.FirstOrDefault(taker => taker is not ElectricLoad { Behaviour: LoadBehaviour.Resistance })) with { Caution = Cautions.MainsVoltage });

    private Finding Judge(Protection device, Part? electronic)
    {
        if (device.ResidualType is not { } type)
        {
            return electronic is null
                ? Told(device, Verdict.Holds, Sentence.Of($"{device.Title} feeds plain resistance alone, whose leak any type sees"), "any type")
                : Unknown(Description, device.Id, null, Sentence.Of($"{device.Title}: of which type it is, is not known; {electronic.Title} behind it may leak what type AC does not see"), [new FindingInput(device.Id, "residualType", IsMissing: true)]);
        }

        return type == ResidualType.Ac && electronic is not null
            ? Told(device, Verdict.Fails, Sentence.Of($"{device.Title} is of type AC and feeds {electronic.Title}, whose fault it may not see"), "type A, F or B")
            : Told(device, Verdict.Holds, Sentence.Of($"{device.Title} is of type {type.ToString().ToUpperInvariant()}, which sees what its loads leak"), electronic is null ? "any type" : "type A, F or B");
    }

    private Finding Told(Protection device, Verdict verdict, Sentence headline, string wanted) => new()
    {
        CheckId = Description.Id,
        SubjectId = device.Id,
        Verdict = verdict,
        Headline = headline,
        Working = [new WorkingLine("Wanted", wanted, null, Source, IsFromMemory: true), new WorkingLine("Smooth direct current", "from an inverter or charger without a transformer only type B sees it: its maker says which is asked", null, Source, IsFromMemory: true)],
        Inputs = [new FindingInput(device.Id, "residualType")],
    };
}
