using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Work.Bring;

namespace Orlop.Work.Steps;

/// <summary>What to mind of what runs while readings are taken (common practice, no source; makers' manuals go first). Loads are told by the words of their names.</summary>
internal static class RunningCautions
{
    private static readonly (string[] Words, int PeopleCount, string Text)[] OfLoads =
    [
        (["pump"], 1, "Pumps: none runs dry longer than its maker allows; water in the bilge or its inlet open first, and nobody's hand at its strainer or float."),
        (["wiper"], 1, "Wiper: never on dry glass; wet it first, and nobody's fingers near the arm."),
        (["horn", "siren", "whistle"], 1, "Horn: at a berth one short blast at most, told to those near first, hands over the ears; it is a signal to others."),
        (["compressor", "winch", "windlass", "thruster", "fan"], 2, "What turns or pulls: hair, sleeves and lines away from it before it is switched on, one person at its switch."),
    ];

    private const string Engine = "Engine running: belts and shafts turn where covers are open, manifold and exhaust burn. Hair, sleeves and meter leads tied back; at a berth out of gear and moored. Exhaust gas kills in a closed space: ports and hatches open, an alarm for carbon monoxide in the cabin, never in a shed with its doors shut.";

    /// <summary>Cautions for a condition with these loads on.</summary>
    public static IEnumerable<Caution> Of(Condition condition, ImmutableArray<ElectricLoad> on)
    {
        if (condition.EngineRuns)
        {
            yield return new Caution(CautionKind.Running, Engine);
        }

        foreach ((_, _, string text) in Kinds(on))
        {
            yield return new Caution(CautionKind.Running, text);
        }
    }

    /// <summary>People whom the readings need with these loads on: 2 where a caution asks for one at the switch of what runs while another reads.</summary>
    public static int PeopleFor(ImmutableArray<ElectricLoad> on) => Kinds(on).Select(kind => kind.PeopleCount).DefaultIfEmpty(1).Max();

    private static IEnumerable<(string[] Words, int PeopleCount, string Text)> Kinds(ImmutableArray<ElectricLoad> on) => OfLoads.Where(kind => on.Any(load => StockWords.Says(load.Title, kind.Words)));
}
