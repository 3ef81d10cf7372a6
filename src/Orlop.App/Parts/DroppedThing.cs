using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.Drawings.Boats;
using Orlop.Presentation.Views.Floating;

namespace Orlop.App.Parts;

/// <summary>What becomes of a thing that is dragged on a drawing: the water while it is held, an edit when it is let go.</summary>
internal static class DroppedThing
{
    /// <summary>What a hand does on a drawing of the boat, wherever things are drawn to be moved.</summary>
    public const string Hint = "A click opens a thing, a drag moves it; a finger moves the one that is open. Undo takes it back.";

    /// <summary>Where the water stands while it is held; null where that cannot be told.</summary>
    public static HeldAt? Held(ThingMove move, BoatSnapshot now, FloatingMoment? afloat, Reader reader) =>
        afloat is { Boat.Bodies.Hull: { } hull } moment && now.Shown.Find(move.ThingId) is { } thing && move.Held(thing) is { } place
        && HeldWeight.Of(moment.Boat, moment.Facts.Condition, thing.Id, place, reader.Units, reader.Culture) is { } held && Waterline.Of(held.Attitude) is { } water
            ? new HeldAt(water, OutsideHull.Of(hull, move.Moved(thing)!, reader.Units, reader.Culture) is { } outside ? $"{held.Words}. {outside.Words}" : held.Words)
            : null;

    /// <summary>Keeps it where it was let go; in the boat as built the header says so, and takes it back. Why it cannot be kept; null where it is, or has no place.</summary>
    public static string? Keep(ThingMove move, BoatSession session, PageHead head)
    {
        if (session.Now.Shown.Find(move.ThingId) is not { } thing || move.Moved(thing) is not { } moved)
        {
            return null;
        }

        long seen = session.Now.Head.Number;
        switch (session.Edit($"Move {thing.Title}", new ThingChange(thing, moved)))
        {
            case EditRefused refused:
                return refused.Message;
            case EditClashed:
                return $"{thing.Title} was changed elsewhere just now. Look again before moving it.";
            default:
                if (session.Now.Draft is null && session.Now.Head.Number != seen)
                {
                    head.Tell($"{thing.Title} is moved in the boat as built.", session.Now.Head.Number, canUndo: true);
                }

                return null;
        }
    }
}
