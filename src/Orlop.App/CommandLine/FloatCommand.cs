using System.CommandLine;
using System.Globalization;
using Orlop.Presentation.Views.Floating;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop float</c>: how a boat floats in her conditions, and how she rights herself.</summary>
internal static class FloatCommand
{
    public static Command Make(CommandStreams streams) => LoadedInput.Command(
        "float", "Tell how she floats: displacement, draughts, trim, heel, GM, righting levers.", streams, (input, form, units) =>
        {
            FloatingFacts[] all = [.. input.Conditions.Select(condition => FloatingFacts.Of(input.View, condition, input.Memo))];
            switch (form)
            {
                case LoadedInput.OutputForm.Json:
                    streams.Out.WriteLine(FloatJson.Write(input, all));
                    break;
                case LoadedInput.OutputForm.Csv:
                    WriteCsv(streams.Out, all);
                    break;
                default:
                    FloatText.Write(streams.Out, input.View, all, UnitsOption.Of(units), UnitsOption.Culture);
                    break;
            }
        });

    // In the model's units, port heels below 0, levers with the sign of the heel they right her from.
    private static void WriteCsv(TextWriter output, IEnumerable<FloatingFacts> all)
    {
        output.WriteLine("condition,heel_deg,gz_m,draught_m,trim_deg");
        foreach (FloatingFacts facts in all)
        {
            foreach (var point in (facts.Floating?.Port.Points.Reverse() ?? []).Concat(facts.Floating?.Starboard.Points.Skip(1) ?? []))
            {
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{facts.Condition.Id},{point.HeelDeg:0.###},{point.GzM:R},{point.Attitude.DraughtM:R},{point.Attitude.TrimDeg:R}"));
            }
        }
    }
}
