using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Changes;

namespace Orlop.Drawings.Boats;

/// <summary>What a sheet shows of a boat: her things and how they change, her lines, and how far these reach.</summary>
internal sealed class SheetContent
{
    private const int MostNamed = 5;

    public SheetContent(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options)
    {
        (AsBuilt, Altered, HasAlteration, Options) = (asBuilt, altered ?? asBuilt, altered is not null, options);
        Changes = [.. ThingChange.Between(asBuilt, altered).Where(IsShown)];
        Hull = DrawnOutline.LinesOf(Altered);
    }

    /// <summary>The boat as she is.</summary>
    public BoatModel AsBuilt { get; }

    /// <summary>As an alteration leaves her; as she is where there is none.</summary>
    public BoatModel Altered { get; }

    /// <summary>An alteration is shown.</summary>
    public bool HasAlteration { get; }

    /// <summary>What the owner wants drawn.</summary>
    public BoatDrawingOptions Options { get; }

    /// <summary>The things that are drawn.</summary>
    public IReadOnlyList<ThingChange> Changes { get; }

    /// <summary>Her lines; null where none are given.</summary>
    public HullLines? Hull { get; }

    /// <summary>The water that labels keep clear of: where she floats, else at the draught that is typed; null for none.</summary>
    public Waterline? Water => Options.Waterline ?? (Options.ShowsTypedDraught && Altered.Particulars?.DraughtM is { } draught ? Waterline.Level(draught.Value) : null);

    /// <summary>How far a view reaches; null where there is nothing to draw in it.</summary>
    public Extent? ExtentOf(ViewKind kind, double? cutXM = null) => BoatExtents.Of(kind, Hull, Changes, cutXM, Options.Marks, cutXM is null ? Options.Routes : []);

    /// <summary>Names what has a place too far from the hull to be drawn: a likely slip of typing.</summary>
    public string Outside()
    {
        Extent? extent = BoatExtents.Of(ViewKind.Profile, Hull, Changes), plan = BoatExtents.Of(ViewKind.Plan, Hull, Changes);
        string[] names = [.. Changes.Where(change => BoatExtents.PlaceOf(change.Shown) is { } place
            && !(new BoatView(ViewKind.Profile, extent!, 1, default).Shows(place) && new BoatView(ViewKind.Plan, plan!, 1, default).Shows(place)))
            .Select(change => change.Shown.Title)];
        return names.Length == 0 ? "" : $"Too far from the hull to be drawn: {string.Join(", ", names.Take(MostNamed))}{(names.Length > MostNamed ? ", …" : "")}. ";
    }

    /// <summary>For those who cannot see it: how many things, and which change.</summary>
    public string Description()
    {
        string[] Names(ChangeKind kind) => [.. Changes.Where(change => change.Kind == kind).Select(change => change.Shown.Title)];
        string Part(string what, string[] names) => names.Length == 0 ? "" : $" {what}: {string.Join(", ", names)}.";
        return $"{Changes.Count} {(Changes.Count == 1 ? "thing" : "things")}, to scale.{Part("Added", Names(ChangeKind.Added))}{Part("Changed", Names(ChangeKind.Altered))}{Part("Taken out", Names(ChangeKind.Gone))}";
    }

    private bool IsShown(ThingChange change) => (!Options.ShowsOnlyChanges || change.Kind != ChangeKind.Kept) && change.Shown switch
    {
        Gear or Tank or Deadweight => Options.ShowsGear,
        Part or Compass => Options.ShowsParts,
        Way or Cable => Options.ShowsRuns,
        Space => Options.ShowsSpaces,
        HullOpening => Options.ShowsOpenings,
        _ => false,
    };
}
