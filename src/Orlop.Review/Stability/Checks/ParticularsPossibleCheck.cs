using Orlop.Boat.Things;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>Length, beam, depth, draught and weight of the particulars can be those of one boat.</summary>
public sealed class ParticularsPossibleCheck : ICheck<StabilityView>
{
    private const double SaltWaterKgPerM3 = 1025;

    // Wider or deeper than these shares of her length no boat is that anybody refits; a raft may be as wide as it is long.
    private const double MostBeamFraction = 0.7;
    private const double MostDepthFraction = 0.5;
    private const double LeastBeamFraction = 0.1;

    public CheckDescription Description { get; } = new(
        "particulars-possible",
        "Particulars can be true",
        "Unknown for each pair of particulars that no boat has together, as a slip of the keyboard or of the unit leaves them: beam over 0.7 or under 0.1 of the length, depth over half the length, draught as great as the depth or greater, displacement more than the box of length, beam and draught (of length, beam and depth where no draught is given) holds in sea water (our rules, no source, but the last two: geometry). Nothing where they can be; a boat that is as she says is left with the finding.",
        []);

    private sealed record Doubt(string Field, string Other, Sentence Said, WorkingLine Bound);

    public IEnumerable<Finding> Run(StabilityView view) => view.Boat.Particulars is { } particulars
        ? DoubtsOf(particulars).Select(doubt => Unknown(Description, $"{particulars.Id}.{doubt.Field}", null, Sentence.Of($"{doubt.Said}: one of the two is likely mistyped, or typed in another unit"), [new FindingInput(particulars.Id, doubt.Field), new FindingInput(particulars.Id, doubt.Other)]) with { Working = [doubt.Bound] })
        : [];

    // A comparison that is not known to be wrong is no doubt: what is not given is asked for elsewhere.
    private static IEnumerable<Doubt> DoubtsOf(Particulars particulars)
    {
        if (particulars is { LengthOverAllM.Value: var length, BeamM.Value: var beam } && (beam > MostBeamFraction * length || beam < LeastBeamFraction * length))
        {
            bool isWide = beam > MostBeamFraction * length;
            yield return new Doubt("beamM", "lengthOverAllM", Sentence.Of($"A beam of {M(beam)} on a length of {M(length)} is {(isWide ? "more" : "less")} than boats have"),
                isWide ? Rule("beam at most, 0.7 of the length", MostBeamFraction * length) : Rule("beam at least, 0.1 of the length", LeastBeamFraction * length));
        }

        if (particulars is { LengthOverAllM.Value: var along, DepthM.Value: var deep } && deep > MostDepthFraction * along)
        {
            yield return new Doubt("depthM", "lengthOverAllM", Sentence.Of($"A depth of {M(deep)} on a length of {M(along)} is more than boats have"), Rule("depth at most, half of the length", MostDepthFraction * along));
        }

        if (particulars is { DraughtM.Value: var draught, DepthM.Value: var depth } && draught >= depth)
        {
            yield return new Doubt("draughtM", "depthM", Sentence.Of($"A draught of {M(draught)} on a depth of {M(depth)} puts her deck edge under water"), new WorkingLine("Draught, less than", "depth from the base line to the deck edge", M(depth), "geometry"));
        }

        if (particulars is { LengthOverAllM.Value: var overAll, BeamM.Value: var broad, DisplacementKg.Value: var mass } && (particulars.DraughtM ?? particulars.DepthM) is { Value: var high } && SaltWaterKgPerM3 * overAll * broad * high is var most && mass > most)
        {
            (string field, string name) = particulars.DraughtM is null ? ("depthM", "depth") : ("draughtM", "draught");
            yield return new Doubt("displacementKg", field, Sentence.Of($"A displacement of {Kg(mass)} is more than a box of her length, beam and {name} pushes aside, {Kg(most)}"),
                new WorkingLine("Displacement, at most", FormattableString.Invariant($"1025 × {overAll:0.##} × {broad:0.##} × {high:0.##}, a block coefficient of 1 in sea water"), Kg(most), "Archimedes"));
        }
    }

    private static WorkingLine Rule(string expression, double m) => new("Boats have", expression, M(m), "our rule, no source");
}
