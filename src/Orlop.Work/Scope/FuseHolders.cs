using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Bring;

namespace Orlop.Work.Scope;

/// <summary>What a fuse that is fitted or exchanged wants of its holder. A fuse of the same form goes into the holder that is there; one of another form wants its own, with other studs or clamps.</summary>
internal static class FuseHolders
{
    /// <summary>The holders to bring: for each fuse that is new, or of another form than the one that goes.</summary>
    public static IEnumerable<PieceNeed> Of(PackScope scope) => scope.Of(ChangeKind.Fit, ChangeKind.Exchange).Where(change => !change.IsBuilt && change.Thing is Protection { Means: ProtectionMeans.Fuse } && IsOther(change) == true)
        .GroupBy(change => ((Protection)change.Thing).RatedA.Value).Select(rating => new PieceNeed(
            string.Create(CultureInfo.InvariantCulture, $"holder:{rating.Key}"),
            BringKind.Device,
            Sentence.Of($"Fuse holder for {new Amount(rating.Key, "A")}, with cover"),
            rating.Count(),
            [.. rating.Select(change => change.Id)],
            item => StockWords.Says(item.Title, "holder", "fuseholder") && item.RatedA?.Value >= rating.Key)
        {
            Remarks =
            [
                Sentence.Of($"For the fuse's own kind and the cable's stud: look. Not needed where the fuse block on board has a place left."),
                .. rating.Where(change => !change.IsAddition).Select(change => Sentence.Of($"{change.Thing.Title}: a holder for it, as {FormOf((Protection)change.Thing)} does not go where {WasForm(change)} is now. Look at the holder first, and bring ends for its studs or clamps: {Leads(scope, change)}.")),
            ],
        });

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

    // By their gates, whose standards give a fuse its form; null where those of one are not told.
    private static bool? IsOther(WorkChange change) => (change.Edit.Was as Protection, (Protection)change.Thing) switch
    {
        (null, _) or ({ Means: not ProtectionMeans.Fuse }, _) => true,
        ({ Gates: { } was }, { Gates: { } becomes }) => was != becomes,
        _ => null,
    };

    private static string FormOf(Protection device) => device.Gates is { } gates ? Wording.OfGates(gates) : "the new fuse";

    private static string WasForm(WorkChange change) => change.Edit.Was is Protection { Means: ProtectionMeans.Fuse, Gates: { } gates } ? Wording.OfGates(gates) : $"the old {PartWords.Small(change.Edit.Was!.Title)}";

    private static string Leads(PackScope scope, WorkChange change)
    {
        Part device = (Part)change.Thing;
        ImmutableArray<string> leads = [.. device.TerminalNames.SelectMany(name => scope.WholeWiring.At(device.At(name).ToString())).Select(edge => edge.Owner).Where(owner => owner is Cable or Boat.Things.Link).Select(owner => owner.Title).Distinct(StringComparer.Ordinal)];
        return leads.IsEmpty ? "none is drawn" : string.Join("; ", leads);
    }
}
