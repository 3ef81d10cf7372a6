using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Bench.Reviews;

/// <summary>An edit of the demo boat; each step gives one that was not made before.</summary>
/// <param name="Name">What is edited.</param>
/// <param name="MaySolve">It touches a circuit.</param>
/// <param name="Apply">The boat to review, and the draft that is open on it, for a step from 1.</param>
internal sealed record BenchEdit(string Name, bool MaySolve, Func<BoatModel, int, (BoatModel AsBuilt, Alteration? Alteration)> Apply)
{
    public static ImmutableArray<BenchEdit> All { get; } =
    [
        Of<Gear>("gear moved", "tool-chests", false, (gear, step) => gear with { Note = $"moved {step} mm", Place = gear.Place is { } place ? place with { XM = place.XM + (step * 1e-3) } : null }),
        Of<ElectricLoad>("one load's power", "cabin-lights", true, (load, step) => load with { RunningW = 20 + (step * 0.01), RunningA = null }),
        Of<Cable>("one cable's size", "heater-cable", true, (cable, step) => cable with { AreaMm2 = cable.AreaMm2.Value + (step * 1e-3) }),
        Of<Protection>("a fuse's rating", "panel-fuse", true, (fuse, step) => fuse with { RatedA = fuse.RatedA.Value + (step * 0.01) }),
        new("a switch's position", true, (boat, step) => (With(boat, boat.Find<IsolatorSwitch>("panel-switch")! with { OpenIn = OpenIn(boat, step) }), null)),
        new("a circuit added", true, (boat, step) => (WithCircuit(boat, step), null)),
        new("the winch draft opened", true, (boat, step) => (boat, WinchDraft(boat, step))),
    ];

    private static BenchEdit Of<T>(string name, string id, bool maySolve, Func<T, int, T> change)
        where T : Thing => new(name, maySolve, (boat, step) => (With(boat, change(boat.Find<T>(id)!, step)), null));

    private static BoatModel With(BoatModel boat, Thing thing) => boat.WithThings(boat.Things.Select(other => other.Id == thing.Id ? thing : other));

    // Each step is another set of conditions: its binary digits.
    private static ValueList<string> OpenIn(BoatModel boat, int step) =>
        boat.All<Condition>().Select(condition => condition.Id).Where((_, index) => ((step >> index) & 1) == 1).ToValueList();

    // Another running current each time, so that nothing of the draft is remembered.
    private static Alteration WinchDraft(BoatModel boat, int step)
    {
        Alteration draft = boat.Find<Alteration>("sampling-winch")!;
        return draft with
        {
            Edits = draft.Edits.Select(edit => edit.Becomes is ElectricLoad winch
                ? edit with { Becomes = winch with { RunningA = 60 + (step * 0.01), RunningW = null } }
                : edit).ToValueList(),
        };
    }

    // Another pair of cabin lights with its own breaker and cable, beside the first.
    private static BoatModel WithCircuit(BoatModel boat, int step)
    {
        Protection breaker = boat.Find<Protection>("cabin-lights-breaker")! with { Id = "bench-breaker" };
        ElectricLoad load = boat.Find<ElectricLoad>("cabin-lights")! with { Id = "bench-load", RunningW = 10 + (step * 0.01), RunningA = null };
        Cable cable = boat.Find<Cable>("cabin-lights-cable")!;
        Cable added = cable with { Id = "bench-cable", Cores = cable.Cores.Select(core => core with { From = Moved(core.From), To = Moved(core.To) }).ToValueList() };
        IEnumerable<Link> links = boat.All<Link>().Where(link => link.To.Part == "cabin-lights-breaker" || link.From.Part == "cabin-lights-breaker")
            .Select(link => link with { Id = $"bench-{link.Id}", From = Moved(link.From), To = Moved(link.To) });
        return boat.WithThings([.. boat.Things, breaker, load, added, .. links]);
    }

    private static Terminal Moved(Terminal terminal) => terminal.Part switch
    {
        "cabin-lights" => terminal with { Part = "bench-load" },
        "cabin-lights-breaker" => terminal with { Part = "bench-breaker" },
        _ => terminal,
    };
}
