using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Review.Ways;

namespace Orlop.App.CommandLine;

/// <summary>Routes of cables as a table: a row for each stretch, those of the whole route repeated on each.</summary>
internal static class RouteCsv
{
    public static void Write(TextWriter output, IReadOnlyList<CableRoutes> options, JointRoutes? together)
    {
        output.WriteLine("plan,cable,route,stretch,way,space,use,length_m,route_length_m,cut_m,out_and_back_m,wet_m,cost_m,bends,supports,new_holes,to_open");
        foreach (CableRoutes each in options)
        {
            foreach ((int index, CableRoute route) in each.Routes.Index())
            {
                Write(output, "alone", each.Cable.Id, index + 1, route);
            }
        }

        foreach ((Boat.Things.Cable cable, CableRoute route) in together?.Routes ?? [])
        {
            Write(output, "together", cable.Id, 1, route);
        }
    }

    private static void Write(TextWriter output, string plan, string cable, int number, CableRoute route)
    {
        foreach ((int index, RouteStretch stretch) in route.Stretches.Index())
        {
            output.WriteLine(string.Join(',', new[]
            {
                plan, cable, I(number), I(index + 1), stretch.Way?.Id ?? "", stretch.Space?.Id ?? "", stretch.Use is { } use ? FieldNames.Kebab(use.ToString()) : "", R(stretch.LengthM),
                R(route.LengthM), R(route.CutM), R(route.OutAndBackM), R(route.WetM), R(route.CostM), I(route.BendCount), route.SupportCount is { } count ? I(count) : "", I(route.NewHoleCount),
                string.Join("; ", route.ToOpen.Select(way => way.Opened!).Distinct()),
            }.Select(Csv.Cell)));
        }
    }

    private static string I(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string R(double value) => Math.Round(value, 6).ToString("R", CultureInfo.InvariantCulture);
}
