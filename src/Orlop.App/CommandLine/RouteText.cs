using Orlop.Boat;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Ways;

namespace Orlop.App.CommandLine;

/// <summary>Routes of cables as lines of text.</summary>
internal static class RouteText
{
    private const string Note = "Along the ways as drawn, with slack; a cable is measured on board before it is cut. A weighted length counts, by the owner's preferences, what is worse than a dry metre along a way as more of them; it is for comparing ways, and no length to cut. Whether a wall can be drilled, and what lies behind it, is for eyes and hands.";

    public static void Write(TextWriter output, IReadOnlyList<CableRoutes> options, JointRoutes? together, DisplayUnits units, BoatModel boat)
    {
        foreach (CableRoutes each in options)
        {
            output.WriteLine(each.Cable.Title);
            foreach (FindingInput missing in each.Missing)
            {
                output.WriteLine($"  {(missing.IsMissing ? "not given" : "in the way")}: {RouteWords.Of(missing, boat)}");
            }

            if (each.Missing.IsEmpty && each.Routes.IsEmpty)
            {
                output.WriteLine("  no way is drawn from the one part to the other");
            }

            foreach ((int index, CableRoute route) in each.Routes.Index())
            {
                Write(output, index + 1, route, units, boat);
            }

            foreach (WayLeftOut left in each.LeftOut)
            {
                output.WriteLine($"  not looked at: {left.Way.Title}: {left.Why}");
            }

            output.WriteLine();
        }

        if (together is not null)
        {
            output.WriteLine($"Planned together: {Weighted(together.TogetherM, units)} instead of {Weighted(together.ApartM, units)} each for itself. {RouteWords.Proof(together, UnitsOption.Culture)}");
            foreach ((Boat.Things.Cable cable, CableRoute route) in together.Routes)
            {
                output.WriteLine($"  {cable.Title}: {route.Words}, {Length(route.CutM, units)} to cut {CableLengthWords.Cut}");
            }

            output.WriteLine($"  to open: {List(together.ToOpen.Select(way => way.Opened!).Distinct())}");
            output.WriteLine($"  holes to make: {List(together.NewHoles.Select(RouteWords.Of))}");
            output.WriteLine();
        }

        output.WriteLine(Note);
    }

    private static void Write(TextWriter output, int number, CableRoute route, DisplayUnits units, BoatModel boat)
    {
        output.WriteLine($"  {number}. {route.Words}");
        output.WriteLine($"     {Length(route.LengthM, units)} {CableLengthWords.Laid}, {Length(route.CutM, units)} to cut {CableLengthWords.Cut}, {Length(route.OutAndBackM, units)} there and back; wet {Length(route.WetM, units)}, engine space {Length(route.InM(Boat.Things.SpaceUse.Engine), units)}, beside the other kind of current {Length(route.BesideAcM, units)}");
        output.WriteLine($"     {Weighted(route.CostM, units)}: {string.Join(", ", route.Costs.Select(cost => $"{RouteWords.Of(cost.Kind)} {Length(cost.WorthM, units)}"))}");
        output.WriteLine($"     bends {route.BendCount}{(route.LeastBendMm is { } bend ? $", radius at least {Text(bend, "Mm", units)}" : "")}; supports {(route.SupportCount is { } count ? count : "not known")}");
        output.WriteLine($"     holes: {List(route.Holes.Select(RouteWords.Of))}");
        output.WriteLine($"     edges that may chafe: {List(route.Chafes.Select(hole => hole.Hole.Where))}");
        output.WriteLine($"     to open: {List(route.ToOpen.Select(way => way.Opened!).Distinct())}");
        output.WriteLine($"     conduits: {List(route.Fills.Select(fill => RouteWords.Of(fill, units, UnitsOption.Culture).Replace('\u00A0', ' ')))}");
        if (!route.Missing.IsEmpty)
        {
            output.WriteLine($"     not given: {string.Join("; ", route.Missing.Select(missing => RouteWords.Of(missing, boat)))}");
        }
    }

    private static string List(IEnumerable<string> words) => string.Join("; ", words) is { Length: > 0 } list ? list : "none";

    private static string Weighted(double costM, DisplayUnits units) => RouteWords.Weighted(costM, units, UnitsOption.Culture).Replace('\u00A0', ' ');

    private static string Length(double lengthM, DisplayUnits units) => Text(Math.Round(lengthM, 2), "M", units);

    private static string Text(double value, string suffix, DisplayUnits units) => QuantityText.Format(value, suffix, units, UnitsOption.Culture).Replace('\u00A0', ' ');
}
