using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;

namespace Orlop.Store.Tests;

/// <summary>Small boats and edits to store.</summary>
internal static class Boats
{
    public static BoatModel Small => new()
    {
        Things =
        [
            new Particulars { Id = "particulars", Name = "Petrel", LengthOverAllM = 11.5, BeamM = 3.6 },
            new Space { Id = "forepeak", Use = SpaceUse.Dry, From = new(9, -1, 0.5), To = new(11, 1, 2) },
            Chest("chest", 40),
        ],
    };

    public static Gear Chest(string id, double massKg) => new() { Id = id, MassKg = massKg, Space = "forepeak" };

    public static Edit AddChest(string id, double massKg = 1) => BoatEdits.Add(Chest(id, massKg));

    /// <summary>The edit that gives a piece of gear this mass.</summary>
    public static Edit Weigh(BoatModel boat, string id, double massKg)
    {
        Gear was = boat.Find<Gear>(id)!;
        return BoatEdits.Replace(was, was with { MassKg = massKg });
    }

    public static double MassKg(this BoatModel boat, string id) => boat.Find<Gear>(id)!.MassKg!.Value;

    /// <summary>Commits one edit drafted on the head.</summary>
    public static Revision Keep(this BoatStore store, Edit edit, string summary = "an edit") =>
        Assert.IsType<Committed>(store.Commit(store.Head.Number, [edit], summary)).Head;
}
