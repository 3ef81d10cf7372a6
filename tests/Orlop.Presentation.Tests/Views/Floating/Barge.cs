using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Tests.Views.Floating;

/// <summary>A box barge of 10 m by 3 m by 1.8 m and 12 t in fresh water: she floats at 0.4 m, and her GM follows from I/V by hand.</summary>
internal static class Barge
{
    public static BoatModel Boat { get; } = new()
    {
        Things =
        [
            new Particulars { Id = "particulars", Name = "Barge", BeamM = 3, Deck = DeckKind.Closed, WaterDensityKgPerM3 = 1000 },
            new Condition { Id = "light", Name = "Light" },
            new HullLines { Id = "hull-lines", Name = "Box", Stations = [End("transom", 0), End("bow", 10)] },
            new BareBoat { Id = "bare-boat", Name = "Bare boat", MassKg = new Quantity(12_000, Knowledge.Estimated, 300), LcgM = 5, KgM = new Quantity(0.8, Knowledge.Estimated, 0.1) },
        ],
    };

    public static StabilityView View(BoatModel boat) => new(boat, null, new Memo());

    public static FloatingFacts Facts(BoatModel boat)
    {
        StabilityView view = View(boat);
        return FloatingFacts.Of(view, view.Conditions[0], new Memo());
    }

    private static HullStation End(string name, double xM) => new()
    {
        Name = name,
        IsSharp = true,
        Points = [new StationPoint(xM, 1.5, 0, "bilge"), new StationPoint(xM, 1.5, 1.8)],
    };
}
