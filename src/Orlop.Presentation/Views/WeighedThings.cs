using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Presentation.Views;

/// <summary>What the recorded gear, parts and cables of a boat weigh together, and which of them have no mass yet.</summary>
/// <param name="MassKg">Sum of the masses that are given, in kg.</param>
/// <param name="UnweighedIds">Gear, parts and cables without a mass.</param>
public sealed record WeighedThings(double MassKg, ImmutableHashSet<string> UnweighedIds)
{
    /// <summary>Adds up a boat.</summary>
    public static WeighedThings Of(BoatModel boat)
    {
        double sumKg = 0;
        ImmutableHashSet<string>.Builder unweighed = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
        foreach (Thing thing in boat.Things.Where(thing => thing is Gear or Part or Cable))
        {
            if (MassOf(thing) is { } massKg)
            {
                sumKg += massKg;
            }
            else
            {
                unweighed.Add(thing.Id);
            }
        }

        return new WeighedThings(sumKg, unweighed.ToImmutable());
    }

    private static double? MassOf(Thing thing) => thing switch
    {
        Gear gear => gear.MassKg?.Value,
        Part part => part.MassKg?.Value,
        Cable { MassKgPerM: { } perM } cable => cable.LengthM?.Value is { } length ? perM.Value * length
            : cable.Run.Count > 0 ? perM.Value * cable.Run.Sum(leg => leg.LengthM) : null,
        _ => null,
    };
}
