using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>
/// Usual spaces to begin from, as boxes in proportion to the boat: common practice, no source, to be corrected by measuring. They say what a space is like and about where it lies; no temperature
/// comes with them, so that what rests on it stays unknown until it is given.
/// </summary>
public static class SpaceStarts
{
    /// <summary>What a box says of itself that is kept as it was begun.</summary>
    public const string Note = "Its box was begun in proportion to the boat and is not measured.";

    private const double StepM = 0.05;

    private sealed record Share(string Name, SpaceUse Use, double Aft, double Fore, double HalfBreadth, double Low, double High);

    // Shares of her length, of half her breadth and of her depth.
    private static readonly Share[] Usual =
    [
        new("Whole cabin", SpaceUse.Dry, 0.35, 0.75, 0.8, 0.15, 1.4),
        new("Engine space", SpaceUse.Engine, 0.1, 0.35, 0.7, 0.05, 0.85),
        new("Fore peak", SpaceUse.Wet, 0.75, 0.95, 0.5, 0.2, 1),
        new("After locker", SpaceUse.Wet, 0, 0.1, 0.7, 0.3, 1),
        new("Bilge", SpaceUse.Bilge, 0.1, 0.9, 0.5, 0, 0.15),
        new("Open deck", SpaceUse.OpenDeck, 0, 1, 1, 1, 2),
    ];

    /// <summary>The usual spaces of a boat: by her hull where it is drawn, else by the length, beam and depth of her particulars. Empty where neither is given.</summary>
    public static IReadOnlyList<Space> For(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return HullSize.Of(boat) is not { } size ? [] :
        [
            .. Usual.Select(share => new Space
            {
                Id = ReadableId.Of(share.Name, id => boat.Find(id) is not null),
                Name = share.Name,
                Use = share.Use,
                From = new Place(Round(size.AftXM + (share.Aft * size.LengthM)), Round(-share.HalfBreadth * size.BreadthM / 2), Round(share.Low * size.DepthM)),
                To = new Place(Round(size.AftXM + (share.Fore * size.LengthM)), Round(share.HalfBreadth * size.BreadthM / 2), Round(share.High * size.DepthM)),
                Note = Note,
            }),
        ];
    }

    private static double Round(double value) => Math.Round(Math.Round(value / StepM) * StepM, 2);
}
