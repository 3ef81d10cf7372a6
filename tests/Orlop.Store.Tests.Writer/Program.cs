using System.Globalization;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Store;

// Adds 1 kg to the chest of a boat so many times, each time by a commit, and prints "revision mass" when one is acknowledged.
// Arguments: the boat's file, how many times.
using BoatStore store = BoatStore.Open(args[0]);
int left = int.Parse(args[1], CultureInfo.InvariantCulture);
while (left > 0)
{
    Gear chest = store.Head.Boat.Find<Gear>("chest")!;
    Gear heavier = chest with { MassKg = chest.MassKg!.Value + 1 };
    if (store.Commit(store.Head.Number, [BoatEdits.Replace(chest, heavier)], "1 kg more") is Committed committed)
    {
        Console.WriteLine(FormattableString.Invariant($"{committed.Head.Number} {heavier.MassKg!.Value}"));
        Console.Out.Flush();
        left--;
    }
}
