using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review;
using Orlop.Review.Networks;
using Orlop.Review.Readings;
using Orlop.Work.Scope;
using Orlop.Work.Steps;

namespace Orlop.Work.Tests.Steps;

/// <summary>
/// A visit walked through step by step by the hardest reading of its words: whoever switches off all that runs opens every breaker, switch and change-over, and puts on only what a step names. At each
/// reading the network of the boat is solved as she then stands, with what is open left out, by the engine that predicts readings: nothing of the planning of the isolation is asked.
/// </summary>
internal sealed class SimulatedVisit
{
    private readonly PackScope _scope;
    private readonly WorkPack _pack;
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);
    private readonly HashSet<string> _lifted = new(StringComparer.Ordinal);
    private readonly HashSet<string> _built = new(StringComparer.Ordinal);
    private bool _isSunny = true;
    private bool _isRunning = true;

    public SimulatedVisit(BoatModel boat, Alteration alteration)
    {
        _scope = new PackScope(boat, alteration);
        _pack = WorkPacks.Plan(boat, alteration);
    }

    /// <summary>Each DC reading of the pack that has its points: the step, what is accepted and the voltage that stands there.</summary>
    public IEnumerable<(WorkStep Step, AcceptedReading Accepted, double Volts)> Readings()
    {
        foreach (WorkStep step in _pack.Steps)
        {
            string[] putOn = [.. step.PutOn.Where(_open.Remove)];
            foreach (AcceptedReading accepted in (step.WriteDown?.Accepts ?? []).Where(accepted => accepted is { At: not null, Suffix: "V" }))
            {
                yield return (step, accepted, Between(accepted.At!.Value.Node, accepted.At.Value.OtherNode));
            }

            if (step.Key == "read-before:all")
            {
                _open.UnionWith(putOn);
            }

            Do(step);
        }
    }

    private void Do(WorkStep step)
    {
        string[] key = step.Key.Split('/')[0].Split(':', 2);
        (string verb, string id) = (key[0], key[1]);
        switch (verb, id)
        {
            case ("isolate", "loads-off"):
                _isRunning = false;
                _open.UnionWith(Standing().All<Part>().Where(part => part is Protection { Means: ProtectionMeans.Breaker } or IsolatorSwitch or Changeover).Select(part => part.Id));
                break;
            case ("isolate", "panels"):
                _isSunny = false;
                break;
            case ("restore", "panels"):
                _isSunny = true;
                break;
            case ("isolate" or "restore", _) when id.StartsWith("minus:", StringComparison.Ordinal):
                Turn(verb == "isolate", [.. Wiring.Of(_scope.Whole).At($"{id["minus:".Length..]}.-").Select(edge => edge.Id)]);
                break;
            case ("isolate", "keep-open"):
                _open.UnionWith(step.About);
                break;
            case ("isolate" or "restore", _):
                Turn(verb == "isolate", [id]);
                break;
            case ("switch-on", _):
                Turn(false, [id]);
                break;
            default:
                break;
        }

        foreach (string built in step.Builds)
        {
            _built.Add(built);
            if (_scope.AsAltered.Find(built) is Protection or IsolatorSwitch or Changeover or PlugAndSocket)
            {
                _open.Add(built);
            }
        }
    }

    // A device is open, or a lead is off its post.
    private void Turn(bool isOpened, string[] ids)
    {
        foreach (string id in ids)
        {
            HashSet<string> set = _scope.Whole.Find(id) is Part ? _open : _lifted;
            _ = isOpened ? set.Add(id) : set.Remove(id);
        }
    }

    // What is built stands as altered, the rest as before.
    private BoatModel Standing()
    {
        IEnumerable<Thing> before = _scope.Before.Things.Where(thing => !_built.Contains(thing.Id));
        return _scope.Before.WithThings([.. before, .. _built.Select(_scope.AsAltered.Find).OfType<Thing>()]);
    }

    private double Between(string node, string otherNode)
    {
        Condition quiet = new() { Id = "quiet", Name = "Quiet", SunShines = _isSunny, EngineRuns = _isRunning, ChargeFraction = 0.7 };
        BoatModel standing = Standing();
        BoatModel boat = standing.WithThings([.. standing.Things.Where(thing => thing is not Condition && !_open.Contains(thing.Id)).Select(Without).OfType<Thing>(), quiet]);
        SolvedNetwork network = ConditionPrediction.NominalOf(boat, Wiring.Of(boat), _scope.Practice, quiet, new Memo(), CancellationToken.None);
        return network.BetweenV(node, otherNode) ?? 0;
    }

    // A lead that is off one of its posts carries nothing.
    private Thing? Without(Thing thing) => thing switch
    {
        Cable cable => cable with { Cores = [.. cable.Cores.Where(core => !_lifted.Contains(ElementIds.FromJoint(cable, core)) && !_lifted.Contains(ElementIds.ToJoint(cable, core)))] },
        Link link when _lifted.Contains(link.Id) => null,
        _ => thing,
    };
}
