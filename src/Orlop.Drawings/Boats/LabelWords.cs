using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Boats;

/// <summary>What stands beside a thing: its name, and what a piece of gear weighs.</summary>
internal static class LabelWords
{
    internal static string Of(Thing thing, BoatDrawingOptions options) => thing.Title + Mass(thing, options);

    internal static string Mass(Thing thing, BoatDrawingOptions options) =>
        thing is Gear { MassKg: { } massKg } ? $", {QuantityText.Format(massKg.Value, "Kg", options.Units, options.Culture)}" : "";
}
