using System.CommandLine;
using Orlop.Boat;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop review</c>: all checks on a boat, as built and as an alteration would make it.</summary>
internal static class ReviewCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for a boat file on standard input." };
        Option<string?> alteration = new("--alteration", "-a") { Description = "Id or name of the alteration to review." };
        Option<bool> json = new("--json") { Description = "Write JSON, as docs/review.schema.json says." };
        Option<string> units = UnitsOption.Make();
        Command command = new("review", "Run all checks. Exit status: 0 nothing fails, 1 something fails, 2 bad input.") { boat, alteration, json, units };
        command.SetAction((parsed, token) =>
        {
            BoatModel model = BoatInput.Read(parsed.GetValue(boat)!, streams);
            ReviewEngine engine = WholeReview.NewEngine();
            ReviewResult result = parsed.GetValue(alteration) is { } named
                ? engine.Review(model, BoatInput.Alteration(model, named), token)
                : engine.Review(model, token);
            if (parsed.GetValue(json))
            {
                streams.Out.WriteLine(ReviewJson.Write(result));
            }
            else
            {
                ReviewText.Write(streams.Out, new FindingsView(result, engine.Checks, UnitsOption.Of(parsed.GetValue(units)), UnitsOption.Culture));
            }

            return Task.FromResult(result.Count(Verdict.Fails) > 0 ? ExitCode.SomethingFails : ExitCode.Good);
        });
        return command;
    }
}
