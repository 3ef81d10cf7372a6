using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>All that is listed aboard in a condition, without the bare boat and without liquids in tanks.</summary>
/// <param name="Rows">One for each thing with a mass and a place.</param>
/// <param name="Missing">Masses, places and lengths that are not given; what they belong to is not in the rows.</param>
public sealed record WeightLedger(ImmutableArray<WeightRow> Rows, ImmutableArray<FindingInput> Missing)
{
    /// <summary>How a mass is known that is only a number.</summary>
    public const string NothingSaid = "taken as guessed: nothing says how it is known";

    /// <summary>Somebody is listed aboard, with a mass and a place: without, her numbers are those of an empty boat.</summary>
    public bool HasPeople(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return Rows.Any(row => boat.Find<Deadweight>(row.ThingId) is { Use: DeadweightUse.People });
    }

    /// <summary>The ledger of a condition.</summary>
    public static WeightLedger Of(BoatModel boat, Condition condition)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(condition);
        ImmutableArray<WeightRow>.Builder rows = ImmutableArray.CreateBuilder<WeightRow>();
        ImmutableArray<FindingInput>.Builder missing = ImmutableArray.CreateBuilder<FindingInput>();
        foreach (Thing thing in boat.Things)
        {
            switch (thing)
            {
                case Gear gear:
                    Add(gear, WeightKind.Gear, gear.MassKg, gear.Place, 1, gear.PlaceDeviationM?.Value);
                    break;
                case Part { MassKg: null } part when IsSmall(part):
                    break;
                case Part part:
                    Add(part, WeightKind.Part, part.MassKg, part.Place, 1, null);
                    break;
                case Cable cable when CableWeight.Row(boat, cable) is { } row:
                    rows.Add(row);
                    break;
                case Cable cable:
                    missing.Add(new FindingInput(cable.Id, CableWeight.LengthM(cable) is null ? "lengthM" : CableWeight.HasMass(cable) ? "run" : "massKgPerM", IsMissing: true));
                    break;
                case Deadweight deadweight when deadweight.PiecesIn(condition.Id) is var count and > 0:
                    Add(deadweight, WeightKind.Deadweight, deadweight.MassKg, deadweight.Place, count, null);
                    break;
            }
        }

        return new WeightLedger(rows.ToImmutable(), missing.ToImmutable());

        void Add(Thing thing, WeightKind kind, Quantity? mass, Place? place, int count, double? placeDeviationM)
        {
            if (mass is null)
            {
                missing.Add(new FindingInput(thing.Id, "massKg", IsMissing: true));
            }
            else if (mass.Value == 0)
            {
                return;
            }
            else if (place is null)
            {
                missing.Add(new FindingInput(thing.Id, "place", IsMissing: true));
            }
            else
            {
                rows.Add(Row(thing, kind, mass, place, count, placeDeviationM)!);
            }
        }
    }

    /// <summary>The row of so many pieces of a thing; null where its mass or its place is not given. Pieces of one kind come from one scale: their errors go together.</summary>
    internal static WeightRow? Row(Thing thing, WeightKind kind, Quantity? mass, Place? place, int count, double? placeDeviationM) => mass is null || place is null
        ? null
        : new WeightRow(
            thing.Id, thing.Title, kind, count * mass.Value, count * WeightKnowledge.DeviationKg(mass), place, placeDeviationM ?? WeightKnowledge.PlaceDeviationM,
            count == 1 ? Said(mass, thing) : $"{count} of them, {Said(mass, thing)}")
        {
            PieceCount = count,
        };

    /// <summary>A row as the engine takes it.</summary>
    public static LedgerItem Item(WeightRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return new LedgerItem(row.ThingId, row.MassKg, row.DeviationKg, At(row.Place), new Point3(row.PlaceDeviationM, row.PlaceDeviationM, row.PlaceDeviationM)) { PieceCount = row.PieceCount };
    }

    internal static Point3 At(Place place) => new(place.XM, place.YM, place.ZM);

    // Fuses, switches, bars and plugs weigh less than the errors of what is weighed; with a mass given they count (common practice, no source).
    private static bool IsSmall(Part part) => part is Protection or IsolatorSwitch or PlugAndSocket or Busbar or Changeover or ShoreInlet;

    private static string Said(Quantity mass, Thing thing) => mass.Known switch
    {
        Knowledge.Exact => mass.PlusMinus is null ? NothingSaid : "as given",
        Knowledge.Measured => mass.Method is { } method ? $"weighed: {method}" : thing is Deadweight { Use: DeadweightUse.People } ? "as given, with its ±" : "weighed",
        Knowledge.Sheet => "from its sheet",
        Knowledge.Estimated => "estimated",
        _ => "guessed",
    };
}
