using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Views;
using Orlop.Review.Mending;
using Orlop.Review.Ways;
using Orlop.Work.Tables;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop mend</c>: the least set of changes that clears what fails of the electrics.</summary>
internal static class MendCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Option<string?> alteration = new("--alteration", "-a") { Description = "Id or name of the alteration to mend; the boat as built without one." };
        Option<string> aim = new("--for") { Description = "What the set has least of: cost or mass.", DefaultValueFactory = _ => "cost" };
        aim.AcceptOnlyFromAmong("cost", "mass");
        Option<bool> tight = new("--tight") { Description = "Clear what is tight too: it must hold then, and nothing may become tight that held." };
        Option<bool> json = new("--json") { Description = "Write JSON, as docs/mend.schema.json says." };
        Option<string?> apply = new("--apply") { Description = "Name of a new draft that takes the changes; it goes into the boat file that --output names, and nowhere else." };
        Option<string?> output = new("--output", "-o") { Description = "Boat file to write the new draft into; only with --apply." };
        Option<string> units = UnitsOption.Make();
        Command command = new("mend", "Find the cheapest or lightest changes that clear what fails of the electrics. Exit status: 0 all of it can be cleared, 1 not all, 2 bad input.")
        {
            boat, alteration, aim, tight, json, apply, output, units,
        };
        command.Validators.Add(result =>
        {
            if (result.IsGiven("--apply") != result.IsGiven("--output"))
            {
                result.AddError("Give --apply and --output together: the name of the new draft, and the boat file to write it into.");
            }

            if (result.IsGiven("--json") && result.GetResult(output) is { Tokens: [{ Value: BoatInput.StandardStream }] })
            {
                result.AddError("Both --json and the boat cannot go to standard output. Name a file after --output.");
            }
        });
        command.SetAction((parsed, token) =>
        {
            BoatModel asBuilt = BoatInput.Read(parsed.GetValue(boat)!, streams);
            Alteration? draft = parsed.GetValue(alteration) is { } wanted ? BoatInput.Alteration(asBuilt, wanted) : null;
            BoatModel model = draft is null ? asBuilt : BoatInput.Altered(asBuilt, draft, streams.Error);
            MendResult result = Mender.Find(
                new MendRequest
                {
                    Draft = model,
                    Catalogue = Catalogue.Of(model),
                    Cut = Allowances.Cut(RouteRules.Of(model)),
                    Aim = parsed.GetValue(aim) == "mass" ? MendAim.Mass : MendAim.Cost,
                    IsTightToo = parsed.GetValue(tight),
                },
                new MendTold(streams.Error), token);
            bool isBoatWritten = parsed.GetValue(output) == BoatInput.StandardStream;
            if (parsed.GetValue(json))
            {
                streams.Out.WriteLine(MendJson.Write(asBuilt, draft?.Id, model, result));
            }
            else
            {
                Write(isBoatWritten ? streams.Error : streams.Out, MendView.Of(result, model, UnitsOption.Of(parsed.GetValue(units)), UnitsOption.Culture), model);
            }

            if (result.IsStopped)
            {
                streams.Error.WriteLine($"The search was stopped{(parsed.GetValue(apply) is null ? "" : "; no boat file was written")}.");
                return Task.FromResult(ExitCode.Stopped);
            }

            if (parsed.GetValue(apply) is { } name)
            {
                Keep(asBuilt, draft, result, name, parsed.GetValue(output)!, streams);
            }

            return Task.FromResult(result.Outcome == MendOutcome.NothingFails || result is { Outcome: MendOutcome.Cleared, Beyond.IsEmpty: true } ? ExitCode.Good : ExitCode.SomethingFails);
        });
        return command;
    }

    private static void Write(TextWriter output, MendView view, BoatModel boat)
    {
        void Line(string text) => output.WriteLine(text.Replace('\u00A0', ' '));
        Line(view.Headline);
        foreach (string finding in view.Beyond)
        {
            Line($"  not cleared: {finding}");
        }

        if (view.Set is { } set)
        {
            foreach (MendRow row in set.Rows)
            {
                Line($"  {row.What}");
                Line($"      {(row.From.Length == 0 ? "nothing from stock or catalogue" : row.From)}; {row.Price}, {row.Mass}");
            }

            Line($"  Together {set.Price}, {set.Mass} added. {view.Proof}");
            Line($"  {set.Verdicts}");
            foreach (string finding in set.NewlyTight)
            {
                Line($"  {MendSetView.TightWords} {finding}");
            }

            foreach (string remark in set.Remarks)
            {
                Line($"  {remark}");
            }
        }

        foreach ((string thing, string text) in MendView.Classes(view.Result.Targets.Select(finding => (finding.CheckId, finding.SubjectId)), boat))
        {
            Line($"  {text} (field “drop” of {thing})");
        }

        Line(view.Working);
        Line(MendView.EndsNotCounted);
        Line(MendView.Sizes);
        Line(MendView.Caution);
    }

    private static void Keep(BoatModel asBuilt, Alteration? draft, MendResult result, string name, string output, CommandStreams streams)
    {
        if (result.Set is not { } set)
        {
            throw new CommandException("There is no set to put into a draft: nothing was written.");
        }

        string id = ReadableId.Of(name, taken => asBuilt.Find(taken) is not null);
        Alteration kept = set.PutInto(asBuilt, MendDraft.Of(draft, id, name.Trim()));
        string text = BoatJson.Write(BoatEdits.Apply(asBuilt, [BoatEdits.Add(kept)]).Boat);
        if (output == BoatInput.StandardStream)
        {
            streams.Out.Write(text);
            return;
        }

        CommandFiles.WriteNew(output, text);
        streams.Error.WriteLine($"Wrote {output} with the draft '{id}'.");
    }
}
