using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Mending;

/// <summary>What a device of another make-up needs to be fitted.</summary>
/// <param name="Words">What is said of it: ", with its holder …"; empty where it needs nothing.</param>
/// <param name="Money">Price of the holder or place that is not there yet.</param>
/// <param name="AddedKg">What device and holder make her heavier by.</param>
internal sealed record MountChange(string Words, double Money, double AddedKg);

/// <summary>Holders of fuses and places of breakers in a panel: what stands there is known by the parts of the catalogue that are of its kind and gates, of its rating or the next above.</summary>
internal static class Mounting
{
    /// <summary>Price of the holder or place of a part; nothing where its entry tells none.</summary>
    public static double MoneyOf(CataloguePart part) => part.MountPriceMoney?.Value ?? 0;

    /// <summary>A part with its holder or place.</summary>
    public static MendCost CostOf(CataloguePart part) => new((part.PriceMoney?.Value ?? 0) + MoneyOf(part), MassKg(part)?.Value ?? 0);

    /// <summary>Mass of a part with its holder or place; null where the part's own is not known.</summary>
    public static Quantity? MassKg(CataloguePart part) => part.MassKg is { } mass && part.MountMassKg is { } mount ? mass with { Value = mass.Value + mount.Value } : part.MassKg;

    /// <summary>What is said of the holder or place that comes with a part.</summary>
    public static string Words(CataloguePart part) => part.Mount is { } mount ? $" with a {mount}" : "";

    /// <summary>What comes with a part that stands in the place of a device.</summary>
    public static MountChange Change(Catalogue catalogue, Protection device, CataloguePart made) =>
        new(Fits(catalogue, device, made) ? "" : Words(made), Fits(catalogue, device, made) ? 0 : MoneyOf(made), MendBench.AddedKg(BecomesKg(catalogue, device, made)?.Value, device.MassKg?.Value));

    /// <summary>What a device weighs when the part stands in its place; in the same holder as before, for there links weigh alike.</summary>
    public static Quantity? BecomesKg(Catalogue catalogue, Protection device, CataloguePart made) =>
        made.Mount is not null && device.MassKg is not null && Fits(catalogue, device, made) ? device.MassKg : MassKg(made) ?? device.MassKg;

    /// <summary>The part goes where the device stands: a device that the catalogue does not know is taken to stand in something else; a part that tells no holder needs none.</summary>
    public static bool Fits(Catalogue catalogue, Protection device, CataloguePart made)
    {
        CatalogueUse use = device.Means == ProtectionMeans.Fuse ? CatalogueUse.Fuse : CatalogueUse.Breaker;
        CataloguePart[] like = [.. catalogue.Parts.Where(part => part.Use == use && part.Gates is not null && part.Gates == device.Gates && part.IsTwoPole == device.IsTwoPole).OrderBy(part => part.RatedA?.Value)];
        return made.Mount is not { } mount || (like.FirstOrDefault(part => part.RatedA?.Value >= device.RatedA.Value) ?? like.LastOrDefault())?.Mount == mount;
    }
}
