using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Networks;

/// <summary>The resistance of a joint, link, device pole or mated contact.</summary>
/// <param name="Given">As typed; null where nobody gave it.</param>
/// <param name="AssumedOhm">What is taken where nobody gave it.</param>
/// <param name="Field">The field of its owner in which it is typed.</param>
internal sealed record EdgeContact(Quantity? Given, double AssumedOhm, string Field)
{
    /// <summary>Of any edge that is no core.</summary>
    public static EdgeContact Of(WiringEdge edge) => edge.Owner switch
    {
        Cable => new((edge.Id.EndsWith("@from", StringComparison.Ordinal) ? edge.Core!.FromEnd : edge.Core!.ToEnd)?.ResistanceOhm, AssumedResistance.JointOhm, "cores"),
        Link link => new(link.ResistanceOhm, AssumedResistance.JointOhm, "resistanceOhm"),
        Protection device => new(device.ResistanceOhm, AssumedResistance.OfProtection(device), "resistanceOhm"),
        IsolatorSwitch device => new(device.ResistanceOhm, AssumedResistance.OfSwitch(device.RatedA?.Value), "resistanceOhm"),
        Changeover device => new(device.ResistanceOhm, AssumedResistance.OfSwitch(device.RatedA?.Value), "resistanceOhm"),
        PlugAndSocket device => new(device.ContactOhm, AssumedResistance.ContactOhm, "contactOhm"),
        _ => throw new ArgumentException($"{edge.Id}: an edge of {edge.Owner.GetType().Name} has no contact.", nameof(edge)),
    };

    /// <summary>The assumed resistance as an input that looks guessed.</summary>
    public FindingInput AssumedInput(WiringEdge edge) => new(edge.Owner.Id, Field, IsGuess: true);
}
