using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Work.Bring;

namespace Orlop.Work.Scope;

/// <summary>
/// What a fuse or breaker that is fitted or exchanged wants of its holder or its place. A fuse of the same form goes into the holder that is there; one of another form, and a breaker in the place of a fuse
/// or a fuse in that of a breaker, wants its own, with other studs or clamps.
/// </summary>
internal static class DeviceMounts
{
    /// <summary>The holders to bring: for each fuse that is new, or of another form than the one that goes.</summary>
    public static IEnumerable<PieceNeed> Of(PackScope scope) => scope.Of(ChangeKind.Fit, ChangeKind.Exchange).Where(change => !change.IsBuilt && change.Thing is Protection { Means: ProtectionMeans.Fuse } && IsOther(change) == true)
        .GroupBy(change => ((Protection)change.Thing).RatedA.Value).Select(rating => new PieceNeed(
            string.Create(CultureInfo.InvariantCulture, $"holder:{rating.Key}"),
            BringKind.Device,
            Sentence.Of($"Fuse holder for {new Amount(rating.Key, "A")}, with cover"),
            rating.Count(),
            [.. rating.Select(change => change.Id)],
            item => StockWords.Is(item.Title, "holder", "fuseholder") && item.RatedA?.Value >= rating.Key)
        {
            Remarks =
            [
                Sentence.Of($"For the fuse's own kind and the cable's stud: look. Not needed where the fuse block on board has a place left."),
                .. rating.Where(change => !change.IsAddition).Select(change => Sentence.Of($"{change.Thing.Title}: a holder for it, as {FormOf((Protection)change.Thing)} does not go where {WasForm(change)} is now. Look at the holder first, and bring ends for its studs or clamps: {Leads(scope, change)}.")),
            ],
        });

    /// <summary>Exchanges in which the old holder or breaker comes out and the leads on it get new ends.</summary>
    public static IEnumerable<WorkChange> Remounted(PackScope scope) => scope.Of(ChangeKind.Exchange).Where(IsRemounted);

    /// <summary>The old holder or breaker comes out, and another goes in.</summary>
    public static bool IsRemounted(WorkChange change) => change is { Kind: ChangeKind.Exchange, Edit.Was: Protection, Thing: Protection } && IsOther(change) == true;

    /// <summary>Places to make for breakers that go where fuses were, and holes to close where a device of another kind was.</summary>
    public static IEnumerable<BringItem> Places(PackScope scope) => Remounted(scope).Where(change => !change.IsBuilt && !IsSameKind(change)).Select(change => new BringItem
    {
        Key = $"place:{change.Id}",
        Kind = BringKind.Fastening,
        What = change.Thing is Protection { Means: ProtectionMeans.Fuse }
            ? Sentence.Of($"For {change.Thing.Title}: a blanking plate where the old breaker was")
            : Sentence.Of($"For {change.Thing.Title}: its place, a cut-out in a panel or a rail, with its screws and a cover over its terminals; a blanking plate where the old holder was"),
        Needed = PieceNeed.Pieces(1),
        State = StockState.Look,
        Remarks = [Sentence.Of($"By the new device's own sheet: its cut-out, its depth and what it stands on, measured on board before the old one comes off.")],
        For = [change.Id],
    });

    /// <summary>What the step that exchanges a breaker, or a fuse for one, says of its place.</summary>
    public static Sentence[] PlaceWords(PackScope scope, WorkChange change, Protection device) => (change.Kind == ChangeKind.Exchange, IsRemounted(change)) switch
    {
        (true, true) =>
        [
            Sentence.Of($"It does not go where {WasForm(change)} was: make its place first, cut-out or rail, by its own sheet; cover its terminals, close the old hole."),
            Sentence.Of($"Make the ends on it anew, for its terminals, and tighten them to its maker's torque: {Leads(scope, change)}. See that each still reaches without pull."),
            Off(device),
        ],
        (true, false) =>
        [
            Sentence.Of($"Where its sheet says that it can be set to {new Amount(device.RatedA.Value, "A")}, set it anew. Where it cannot, another goes in: look first whether that goes into the same place and onto the same ends. If not, a place for it and new ends on its leads are needed: {Leads(scope, change)}."),
            Off(device),
        ],
        _ => [Off(device)],
    };

    /// <summary>The step in which the old holder or breaker comes out.</summary>
    public static Sentence TakenOut(WorkChange change) => change.Edit.Was is Protection { Means: ProtectionMeans.Fuse }
        ? Sentence.Of($"Take out the old holder of {change.Edit.Was.Title}, its fuse first.")
        : Sentence.Of($"Take out the old breaker, {change.Edit.Was!.Title}.");

    /// <summary>What the step says that puts the new one in: "Exchange Pump fuse (locker): fuse out, breaker in."</summary>
    public static Sentence Exchanged(PackScope scope, WorkChange change) => !IsRemounted(change) ? Sentence.Of($"Exchange or set anew: {scope.Words.Located(change.Id)}.")
        : IsSameKind(change) ? Sentence.Of($"Exchange {scope.Words.Located(change.Id)}, with its holder.")
        : Sentence.Of($"Exchange {scope.Words.Located(change.Id)}: {Wording.KindOf(change.Edit.Was!)} out, {Wording.KindOf(change.Thing)} in.");

    /// <summary>Titles of the cables and links on a device.</summary>
    public static string Leads(PackScope scope, WorkChange change)
    {
        ImmutableArray<string> leads = [.. LeadsOn(scope, change.Id).Select(owner => owner.Title)];
        return leads.IsEmpty ? "none is drawn" : string.Join("; ", leads);
    }

    /// <summary>Cables and links on a device.</summary>
    public static IEnumerable<Thing> LeadsOn(PackScope scope, string deviceId) => scope.Whole.Find<Part>(deviceId) is not { } device ? []
        : device.TerminalNames.SelectMany(name => scope.WholeWiring.At(device.At(name).ToString())).Select(edge => edge.Owner).Where(owner => owner is Cable or Boat.Things.Link).DistinctBy(owner => owner.Id);

    /// <summary>What the step that fits or exchanges the fuse says of its holder.</summary>
    public static Sentence[] Words(PackScope scope, WorkChange change, Protection device)
    {
        Sentence pocket = Sentence.Of($"The fuse, {new Amount(device.RatedA.Value, "A")}, stays in your pocket until it is switched on.");
        return (change.IsAddition || change.Edit.Was is not Protection, IsOther(change)) switch
        {
            (true, _) => [Sentence.Of($"Holder only: the fuse, {new Amount(device.RatedA.Value, "A")}, stays in your pocket until it is switched on.")],
            (_, true) =>
            [
                Sentence.Of($"Exchange the holder too: {FormOf(device)} does not go where {WasForm(change)} is now. Look at the new holder before the old one comes off: its rating, its cover, its studs."),
                Sentence.Of($"Make the ends on it anew, for its studs or clamps, and tighten them to its maker's torque: {Leads(scope, change)}. See that each still reaches without pull."),
                pocket,
            ],
            (_, false) => [Sentence.Of($"The holder stays, if it is marked for {new Amount(device.RatedA.Value, "A")} and shows no heat: look. The old fuse comes out."), pocket],
            _ => [Sentence.Of($"Nobody has said of what form both fuses are: look first whether the new one goes into the holder that is there. If not, a holder for it and new ends on its leads are needed: {Leads(scope, change)}."), pocket],
        };
    }

    private static Sentence Off(Protection device) => Sentence.Of($"{new Amount(device.RatedA.Value, "A")}. Leave it off.");

    private static bool IsSameKind(WorkChange change) => change.Edit.Was is Protection { Means: var was } && was == ((Protection)change.Thing).Means;

    // Fuses by their gates, whose standards give a fuse its form; null where those of one are not told. Of two breakers nothing tells whether one goes where the other was.
    private static bool? IsOther(WorkChange change) => (change.Edit.Was as Protection, (Protection)change.Thing) switch
    {
        (null, _) => true,
        ({ Means: var was }, { Means: var becomes }) when was != becomes => true,
        ({ Means: not ProtectionMeans.Fuse }, _) => null,
        var (was, becomes) => DeviceGates.ListedOf(was) is { } had && DeviceGates.ListedOf(becomes) is { } wants ? had != wants : null,
    };

    private static string FormOf(Protection device) => DeviceGates.ListedOf(device) is { } gates ? Wording.OfGates(gates) : "the new fuse";

    private static string WasForm(WorkChange change) => change.Edit.Was is Protection { Means: ProtectionMeans.Fuse } was && DeviceGates.ListedOf(was) is { } gates ? Wording.OfGates(gates) : $"the old {PartWords.Small(change.Edit.Was!.Title)}";
}
