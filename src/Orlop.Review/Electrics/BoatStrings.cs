using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Strings;

namespace Orlop.Review.Electrics;

/// <summary>The strings that a boat's batteries stand in, from her wiring.</summary>
/// <param name="Groups">Strings side by side, and those that stand alone.</param>
public sealed record BoatStrings(ImmutableArray<StringGroup> Groups)
{
    /// <summary>The strings in a condition; with none, everything that can be closed is.</summary>
    public static BoatStrings Of(BoatModel boat, Wiring wiring, string? conditionId)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        ImmutableArray<StringBattery> batteries = [.. boat.All<BatteryBank>().Select(bank => new StringBattery(bank.Id, Node(bank, TerminalNames.Plus), Node(bank, TerminalNames.Minus), bank.NominalV.Value))];
        return batteries.IsEmpty ? new BoatStrings([]) : new BoatStrings(BatteryStrings.Find(new StringInput
        {
            Batteries = batteries,
            Joins = [.. wiring.Edges.Where(edge => edge.IsClosedIn(conditionId)).Select(edge => new StringJoin(edge.A, edge.B, edge.Kind == WiringEdgeKind.ProtectionPole))],
            Outside = [.. boat.All<Part>().SelectMany(OutsideOf)],
        }));
    }

    /// <summary>What strings are made from besides the shape of the wiring: nominal voltages, and which edges are of fuses and breakers.</summary>
    internal static ValueList<string> NumbersOf(BoatModel boat, Wiring wiring) =>
    [
        .. boat.All<BatteryBank>().Select(bank => string.Create(CultureInfo.InvariantCulture, $"{bank.Id} {bank.NominalV.Value:R}")),
        .. boat.All<ElectricLoad>().Select(load => string.Create(CultureInfo.InvariantCulture, $"{load.Id} {load.NominalV.Value:R}")),
        .. wiring.Edges.Where(edge => edge.Kind == WiringEdgeKind.ProtectionPole).Select(edge => edge.Id),
    ];

    /// <summary>The strings of several conditions, those that are the same once.</summary>
    internal static BoatStrings Together(IEnumerable<BoatStrings> conditions) => new([
        .. conditions.SelectMany(strings => strings.Groups)
            .DistinctBy(group => string.Join('|', group.Strings.Select(each => string.Join(',', each.Members)).Order(StringComparer.Ordinal)), StringComparer.Ordinal),
    ]);

    private static IEnumerable<StringOutside> OutsideOf(Part part)
    {
        if (Poles.Taking(part) is { IsAc: false } taking)
        {
            yield return new StringOutside(taking.Plus, taking.Minus, part is ElectricLoad load ? load.NominalV.Value : null);
        }

        if (part is not BatteryBank && Poles.Giving(part) is { IsAc: false } giving)
        {
            yield return new StringOutside(giving.Plus, giving.Minus, null);
        }
    }

    private static string Node(Part part, string terminal) => part.At(terminal).ToString();
}
