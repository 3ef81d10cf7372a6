using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Starts;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review.Electrics;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop start</c>: what a load that starts does to every other, in time.</summary>
internal static class StartCommand
{
    private const int FormatVersion = 1;

    public static Command Make(CommandStreams streams)
    {
        Option<string?> load = new("--load") { Description = "Id or name of the load that starts, or of an inverter that is connected; every load that has a start when left out." };
        return LoadedInput.Command(
            "start", "Tell what a start does in time, with the battery at its lowest: the voltage at every other load, what drops out, the current of each fuse.", streams, [load], (input, form, parsed, _) =>
            {
                ElectricsView view = new(input.View.Boat, Practice.Of(input.View.Boat, input.Memo), input.Memo, CancellationToken.None);
                StartInTime[] starts = [.. from condition in input.Conditions
                                           from starter in Starters(input, parsed.GetValue(load))
                                           let start = StartInTime.Of(view, starter, condition, ChargeCase.Lowest)
                                           where start is not null
                                           select start];
                switch (form)
                {
                    case LoadedInput.OutputForm.Json:
                        streams.Out.WriteLine(Json(input, starts));
                        break;
                    case LoadedInput.OutputForm.Csv:
                        WriteCsv(streams.Out, starts);
                        break;
                    default:
                        WriteText(streams.Out, starts, input.View.Boat, UnitsOption.Of(parsed.GetValue<string?>("--units")));
                        break;
                }

                return Task.CompletedTask;
            });
    }

    private static Part[] Starters(LoadedInput input, string? named)
    {
        Part[] all = [.. input.View.Boat.All<Part>().Where(part => part is ElectricLoad or Inverter)];
        if (named is null)
        {
            return [.. all.Where(part => part is ElectricLoad load && LoadElements.HasStart(load))];
        }

        Part[] found = [.. all.Where(part => part.Id == named)];
        found = found.Length > 0 ? found : [.. all.Where(part => string.Equals(part.Name, named, StringComparison.OrdinalIgnoreCase))];
        return found.Length switch
        {
            1 => found,
            0 => throw new CommandException($"There is no load or inverter '{named}'.{NearNames.Hint(named, all.Select(part => (part.Id, part.Name)))}"),
            _ => throw new CommandException($"{found.Length} loads are named '{named}'. Give the id of one: {string.Join(", ", found.Select(part => part.Id))}."),
        };
    }

    private static void WriteText(TextWriter output, IReadOnlyList<StartInTime> starts, BoatModel boat, DisplayUnits units)
    {
        string Text(double? value, string suffix) => value is { } known && double.IsFinite(known) ? QuantityText.Format(known, suffix, units, UnitsOption.Culture).Replace('\u00A0', ' ') : "?";
        foreach (StartInTime start in starts)
        {
            output.WriteLine($"{start.Starter.Title}, {start.Condition.Title}");
            if (start.WhyNone is { } why)
            {
                output.WriteLine($"  {why}{(start.Missing.IsEmpty ? "" : $": {string.Join("; ", start.Missing.Select(missing => MissingWords.Of(missing, boat)))}")}");
                output.WriteLine();
                continue;
            }

            output.WriteLine($"  taken as {start.Taken}");
            output.WriteLine($"  {"before",10}{"lowest",10}{"after",10}{"least",10}{"below for",12}");
            foreach (StartTaker taker in start.Takers)
            {
                DropOut? at = taker.Voltage;
                string verdict = taker.DropsOut switch { true => "drops out", false => "stays", _ => "cannot be told" };
                output.WriteLine($"  {Text(taker.BeforeV, "V"),10}{Text(at?.LowestV, "V"),10}{Text(at?.LowestAtS, "S"),10}{Text(taker.LeastV, "V"),10}{Text(taker.LeastV is null ? null : at?.BelowS, "S"),12}  {taker.Part.Title}: {verdict}");
            }

            foreach (StartDevice device in start.Devices)
            {
                output.WriteLine($"  {Text(device.MostA, "A")} at most through {device.Device.Title} of {Text(device.Device.RatedA.Value, "A")}, above it for {Text(device.AboveRatingS, "S")}");
            }

            output.WriteLine();
        }

        output.WriteLine(starts.Count == 0 ? "Nothing that is on has a start." : Note);
    }

    private const string Note = "Battery at the lowest charge, no charger helping, everything on that the condition has on. Below for: the longest stretch below the least voltage. ?: cannot be told. Measure while it starts before you rely on it.";

    private static void WriteCsv(TextWriter output, IEnumerable<StartInTime> starts)
    {
        output.WriteLine("condition,starts,time_s,thing,voltage_v,current_a");
        foreach (StartInTime start in starts.Where(start => start.Start is not null))
        {
            foreach (StartTaker taker in start.Takers.Where(taker => taker.Voltage is not null))
            {
                for (int k = 0; k < start.Start!.Moments.Length; k++)
                {
                    output.WriteLine(string.Join(',', new[]
                    {
                        start.Condition.Id, start.Starter.Id, R(start.Start.Moments[k].TimeS), taker.Part.Id, R(start.Start.VoltageOf(taker.Part.Id)?[k]), R(start.Start.CurrentOf(taker.Part.Id)?[k]),
                    }.Select(Csv.Cell)));
                }
            }
        }
    }

    private static string Json(LoadedInput input, IEnumerable<StartInTime> starts) => new JsonObject
    {
        ["startFormat"] = FormatVersion,
        ["boat"] = input.View.Boat.Particulars?.Title ?? "",
        ["alteration"] = input.AlterationId,
        ["starts"] = new JsonArray([.. starts.Select(Start)]),
    }.ToJsonString(JsonOutput.Options);

    private static JsonObject Start(StartInTime start) => new()
    {
        ["condition"] = start.Condition.Id,
        ["starts"] = start.Starter.Id,
        ["whyNone"] = start.WhyNone,
        ["missing"] = new JsonArray([.. start.Missing.Select(missing => new JsonObject { ["thing"] = missing.ThingId, ["field"] = missing.Field })]),
        ["takenAs"] = start.Taken,
        ["timesS"] = new JsonArray([.. (start.Start?.Moments ?? []).Select(moment => (JsonNode)moment.TimeS)]),
        ["takers"] = new JsonArray([.. start.Takers.Select(taker => Taker(start, taker))]),
        ["devices"] = new JsonArray([.. start.Devices.Select(device => new JsonObject
        {
            ["device"] = device.Device.Id,
            ["mostA"] = device.MostA,
            ["ratedA"] = device.Device.RatedA.Value,
            ["aboveRatingS"] = device.AboveRatingS,
        })]),
    };

    private static JsonObject Taker(StartInTime start, StartTaker taker) => new()
    {
        ["thing"] = taker.Part.Id,
        ["beforeV"] = taker.BeforeV,
        ["leastV"] = taker.LeastV,
        ["lowestV"] = taker.Voltage?.LowestV,
        ["lowestAtS"] = taker.Voltage?.LowestAtS,
        ["belowS"] = taker.LeastV is null ? null : taker.Voltage?.BelowS,
        ["isBelowAtEnd"] = taker.LeastV is null ? null : taker.Voltage?.IsBelowAtEnd,
        ["dropsOut"] = taker.DropsOut,
        ["voltageV"] = new JsonArray([.. (taker.Voltage is null ? null : start.Start!.VoltageOf(taker.Part.Id))?.Select(volts => (JsonNode)volts) ?? []]),
    };

    private static string R(double? value) => value is { } known && double.IsFinite(known) ? known.ToString("R", CultureInfo.InvariantCulture) : "";
}
