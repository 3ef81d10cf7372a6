using CsCheck;
using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Store.Tests;

/// <summary>Random commits, undos, redos, jumps and reopenings, held against a model that fits on a page.</summary>
public sealed class BoatHistoryPropertyTests : TemporaryFolder
{
    private enum Act { Add, Weigh, Undo, Redo, GoTo, Reopen }

    [Fact]
    public void Store_AnySequence_DoesWhatTheModelDoes() =>
        Gen.Select(Gen.Enum<Act>(), Gen.Int[0, 1000]).Array[1, 30].Sample(Run, iter: 60, threads: 1);

    private void Run((Act Act, int Pick)[] steps)
    {
        string path = At($"{Guid.NewGuid():N}.orlop");
        BoatStore store = BoatStore.Create(path, Boats.Small);
        try
        {
            Model model = new(Boats.Small);
            foreach ((Act act, int pick) in steps)
            {
                if (act == Act.Reopen)
                {
                    store.Dispose();
                    store = BoatStore.Open(path);
                }
                else
                {
                    Do(store, model, act, pick);
                }

                Assert.Equal(model.Head, store.Head.Number);
                Assert.Equal(model.Boats[model.Head], store.Head.Boat);
            }

            Assert.Equal(model.Parents.OrderByDescending(pair => pair.Key).Select(pair => (pair.Key, pair.Value)), store.History.Page().Select(entry => (entry.Number, entry.Parent ?? 0)));
            Assert.All(model.Boats, pair => Assert.Equal(pair.Value, store.History.Read(pair.Key).Boat));
            Assert.Empty(store.Verify());
        }
        finally
        {
            store.Dispose();
        }
    }

    private static void Do(BoatStore store, Model model, Act act, int pick)
    {
        long head = model.Head;
        switch (act)
        {
            case Act.Undo:
                Assert.Equal(model.Undo() ? StepOutcome.Moved : StepOutcome.NothingFurther, store.Undo(head).Outcome);
                break;
            case Act.Redo:
                Assert.Equal(model.Redo() ? StepOutcome.Moved : StepOutcome.NothingFurther, store.Redo(head).Outcome);
                break;
            case Act.GoTo:
                long number = (pick % model.Boats.Count) + 1;
                model.GoTo(number);
                Assert.Equal(StepOutcome.Moved, store.GoTo(head, number).Outcome);
                break;
            default:
                Edit edit = act == Act.Add ? Boats.AddChest($"chest-{model.Boats.Count}", pick) : Boats.Weigh(store.Head.Boat, "chest", pick);
                model.Commit(edit);
                store.Keep(edit);
                break;
        }
    }

    /// <summary>A tree of boats in memory; going forward follows the trail that was walked last.</summary>
    private sealed class Model
    {
        private readonly Dictionary<long, long> _lastLeft = [];

        public Model(BoatModel first)
        {
            Boats[1] = first;
            Parents[1] = 0;
        }

        public Dictionary<long, BoatModel> Boats { get; } = [];

        public Dictionary<long, long> Parents { get; } = [];

        public long Head { get; private set; } = 1;

        public void Commit(Edit edit)
        {
            List<Thing> things = [.. Boats[Head].Things];
            int index = things.FindIndex(thing => thing.Id == edit.Id);
            if (index < 0)
            {
                things.Add(edit.Becomes!);
            }
            else
            {
                things[index] = edit.Becomes!;
            }

            long number = Boats.Count + 1;
            Boats[number] = Boats[Head].WithThings(things);
            Parents[number] = Head;
            GoTo(number);
        }

        public bool Undo()
        {
            if (Parents[Head] == 0)
            {
                return false;
            }

            Head = Parents[Head];
            return true;
        }

        public bool Redo()
        {
            if (!_lastLeft.TryGetValue(Head, out long child))
            {
                return false;
            }

            Head = child;
            return true;
        }

        public void GoTo(long number)
        {
            Head = number;
            for (long child = number; Parents[child] != 0; child = Parents[child])
            {
                _lastLeft[Parents[child]] = child;
            }
        }
    }
}
