using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Work.Scope;
using Orlop.Work.Tables;

namespace Orlop.Work.Ends;

/// <summary>Lists what lies on a stud, and on the studs of an alteration.</summary>
public static class EndStacks
{
    /// <summary>The stacks of a part's terminals on which anything is bolted; a bar has studs enough and is left out.</summary>
    public static ImmutableArray<EndStack> Of(ElectricsView view, Part part)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(part);
        PartWords words = new(view.Boat);
        return part is Busbar ? [] : [.. part.TerminalNames.Select(part.At).Select(at => StudStack.Of(view, at)).Where(stack => stack.Rings.Length > 0).Select(stack => Of(stack, part, words))];
    }

    internal static ImmutableArray<EndStack> Of(PackScope scope, ImmutableArray<CableEnd> ends, CancellationToken token)
    {
        HashSet<Terminal> touched = [.. ends.Select(end => end.At), .. scope.Of(ChangeKind.Link).Select(change => change.Thing).OfType<Link>().SelectMany(link => new[] { link.From, link.To })];
        ElectricsView view = new(scope.AsAltered, scope.Practice, new Memo(), token);
        return
        [
            .. touched.Select(at => at.Part).Distinct().Select(id => scope.AsAltered.Find<Part>(id)).OfType<Part>().SelectMany(part => Of(view, part))
                .Where(stack => touched.Contains(stack.At) && (view.Boat.Find(stack.At.Part) is BatteryBank || view.Rings.At(stack.At).Count(ring => ring.IsBolted) > 1)),
        ];
    }

    private static EndStack Of(StudStack stack, Part part, PartWords words)
    {
        Stud? stud = part.StudOf(stack.At.Name);
        double? threadMm = stud?.SizeMm ?? stack.Rings.Select(each => each.Ring.End?.StudMm).FirstOrDefault(mm => mm is not null);
        return new EndStack(stack.At, words.At(stack.At), threadMm,
        [
            .. stack.Rings.Select(each => each.Ring.Core is null ? $"{each.Ring.Title}, a link" : FormattableString.Invariant($"{each.Ring.Title}, {((Cable)each.Ring.Owner).AreaMm2.Value:0.##} mm²")),
            .. stud?.Locking == StudLocking.FlangeNut ? Array.Empty<string>() : ["plain washer"],
            stud?.Locking switch
            {
                StudLocking.SpringWasher => "spring washer",
                StudLocking.ToothedWasher => "toothed washer",
                StudLocking.LockNut => "lock nut",
                StudLocking.FlangeNut => "flange nut",
                _ => "locking as its maker says; none is told",
            },
            .. stud?.Locking is StudLocking.LockNut or StudLocking.FlangeNut ? Array.Empty<string>() : [stud?.Means == StudMeans.Insert ? "bolt" : "nut"],
        ], EndTables.Torque(part, stack.At.Name, threadMm));
    }
}
