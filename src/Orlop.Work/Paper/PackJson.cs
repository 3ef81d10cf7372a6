using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Work.Bring;
using Orlop.Work.Ends;
using Orlop.Work.Labels;
using Orlop.Work.Loading;
using Orlop.Work.Readings;
using Orlop.Work.Steps;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>A pack as JSON, with its sentences in the reader's words and its numbers in the model's units; for the phone page and other programs.</summary>
public static class PackJson
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, Encoder = JavaScriptEncoder.Default };

    /// <summary>The pack.</summary>
    /// <param name="engine">Reviews what the alteration does to her, with every discipline; what it solved before is not solved again. Null for a new one.</param>
    public static string Write(WorkPack pack, PaperOptions options, ReviewEngine? engine = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(options);
        PackText text = new(options);
        PackTroubles troubles = PackTroubles.Of(pack, engine ?? WholeReview.NewEngine());
        IEnumerable<string> Fails(IEnumerable<PairedFinding> failing) => text.Failing(failing, troubles);
        return new JsonObject
        {
            ["boat"] = pack.BoatTitle,
            ["alteration"] = pack.Alteration.Id,
            ["title"] = pack.Alteration.Title,
            ["date"] = options.On.ToString("O", options.Culture),
            ["revision"] = options.Revision,
            ["status"] = troubles.Status,
            ["acceptedOn"] = pack.Alteration.AcceptedOn?.ToString("O", options.Culture),
            ["findings"] = List(text.Of(troubles).Groups.SelectMany(group => group.Rows), Of),
            ["clashes"] = Texts(pack.Clashes.Select(clash => clash.Id)),
            ["assumed"] = List(pack.Assumed, edit => Of(EditView.Of(edit, options.Units, options.Culture, pack.AsAltered))),
            ["bring"] = List(pack.Bring, item => Of(item, text, Fails(troubles.FailingFor(item)))),
            ["cuts"] = List(pack.Cuts, Of),
            ["reels"] = List(pack.Cutting.Reels, Of),
            ["isLeastWaste"] = pack.Cutting.IsLeastWaste,
            ["ways"] = List(pack.Ways, Of),
            ["mostPeopleCount"] = pack.People.MostCount,
            ["steps"] = List(pack.Steps, step => Of(step, text, options.On, Fails(troubles.FailingAt(step, pack)))),
            ["ends"] = List(pack.Ends, Of),
            ["stacks"] = List(pack.Stacks, Of),
            ["labels"] = List(pack.Labels, label => Of(label, text)),
            ["readings"] = List(pack.Readings, reading => Of(reading, text)),
            ["freeboards"] = List(pack.Weights.Freeboards(), mark => Of(mark, pack.Weights.Condition!.Id)),
        }.ToJsonString(Options);
    }

    private static JsonObject Of(FindingRow row) => new()
    {
        ["check"] = row.Pair.CheckId,
        ["subject"] = row.Pair.SubjectId,
        ["change"] = ChangeWords.Id(row.Pair.Change),
        ["verdict"] = Wording.Of(row.Verdict),
        ["text"] = row.Headline,
        ["condition"] = row.Pair.Shown.ConditionId,
    };

    private static JsonObject Of(EditView edit) => new()
    {
        ["thing"] = edit.Id,
        ["text"] = AssumedPages.Words(edit),
    };

    private static JsonObject Of(BringItem item, PackText text, IEnumerable<string> fails) => new()
    {
        ["key"] = item.Key,
        ["kind"] = Word(item.Kind),
        ["what"] = text.Of(item.What),
        ["needed"] = Of(item.Needed),
        ["toBuy"] = Of(item.ToBuy),
        ["state"] = PackText.Of(item.State),
        ["takes"] = List(item.Takes, take => new JsonObject { ["stock"] = take.StockId, ["title"] = take.Title, ["amount"] = Of(take.Amount), ["where"] = take.Where }),
        ["remarks"] = Texts(item.Remarks.Select(text.Of)),
        ["fails"] = Texts(fails),
    };

    private static JsonObject Of(CableCut cut) => new()
    {
        ["key"] = cut.Key,
        ["cable"] = cut.CableId,
        ["areaMm2"] = cut.AreaMm2,
        ["coreCount"] = cut.CoreCount,
        ["runM"] = cut.RunM,
        ["allowanceM"] = cut.AllowanceM,
        ["cutM"] = cut.CutM,
        ["stock"] = cut.StockId,
        ["core"] = cut.CoreId,
        ["markAs"] = cut.MarkAs,
    };

    private static JsonObject Of(ReelPlan reel) => new()
    {
        ["stock"] = reel.StockId,
        ["hadM"] = reel.HadM,
        ["pieces"] = List(reel.Pieces, piece => new JsonObject { ["cut"] = piece.Key, ["lengthM"] = piece.LengthM }),
        ["leftM"] = reel.LeftM,
        ["isKept"] = reel.IsKept,
    };

    private static JsonObject Of(CableWay way) => new()
    {
        ["cable"] = way.CableId,
        ["legs"] = List(way.Legs, leg => new JsonObject { ["where"] = leg.Where, ["lengthM"] = leg.LengthM }),
        ["holes"] = List(way.Holes, hole => new JsonObject { ["way"] = hole.Way.Id, ["where"] = hole.Hole.Where, ["guard"] = hole.Hole.Guard is { } guard ? Word(guard) : null, ["boreMm"] = hole.Hole.BoreMm?.Value, ["leastClampedMm"] = hole.Hole.LeastClampedMm?.Value, ["isMade"] = hole.Hole.IsMade }),
        ["toOpen"] = Texts(way.ToOpen),
    };

    private static JsonObject Of(WorkStep step, PackText text, DateOnly day, IEnumerable<string> fails) => new()
    {
        ["key"] = step.Key,
        ["kind"] = Word(step.Kind),
        ["text"] = text.Of(step.Text),
        ["fails"] = Texts(fails),
        ["details"] = Texts(step.Details.Select(text.Of)),
        ["cautions"] = List(step.Cautions, caution => new JsonObject { ["kind"] = Word(caution.Kind), ["text"] = caution.Text }),
        ["writeDown"] = step.WriteDown is { } write ? new JsonObject { ["unit"] = write.Unit, ["what"] = write.What, ["accepts"] = List(write.Accepts, Of), ["berthTest"] = write.Into is { } into ? Word(into) : null } : null,
        ["putOn"] = Texts(step.PutOn),
        ["ontoLive"] = step.IsOntoLive,
        ["about"] = Texts(step.About),
        ["builds"] = Texts(step.Builds),
        ["ends"] = Texts(step.Ends),
        ["readings"] = Texts(step.Readings),
        ["peopleCount"] = step.PeopleCount,
        ["byGear"] = step.IsByGear,
        ["done"] = step.IsDoneOn(day),
        ["leftOut"] = step.IsLeftOutOn(day),
        ["read"] = step.NoteOn(day),
        ["readCount"] = step.TestOn(day)?.ReadCount,
        ["failedTest"] = step.Failed is { } failed ? new JsonObject { ["standing"] = Word(failed.Standing), ["read"] = failed.Shown, ["words"] = failed.Words } : null,
        ["builtOn"] = step.BuiltOn is { } built ? built.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : null,
    };

    private static JsonObject Of(AcceptedReading accepted) => new()
    {
        ["name"] = accepted.Name,
        ["unit"] = accepted.Suffix,
        ["least"] = accepted.Least,
        ["most"] = accepted.Most,
        ["isEitherSign"] = accepted.IsEitherSign,
    };

    private static JsonObject Of(CableEnd end) => new()
    {
        ["key"] = end.Key,
        ["cable"] = end.CableId,
        ["core"] = end.CoreId,
        ["at"] = end.At.ToString(),
        ["where"] = end.Where,
        ["areaMm2"] = end.AreaMm2,
        ["means"] = end.Means is { } means ? Word(means) : null,
        ["studMm"] = end.StudMm,
        ["lugMm2"] = end.LugMm2,
        ["stripMm"] = end.StripMm,
        ["pullN"] = end.Pull?.ForceN,
        ["leastNm"] = end.Torque?.LeastNm,
        ["mostNm"] = end.Torque?.MostNm,
        ["kept"] = end.IsKept,
        ["forDevice"] = end.ForDevice,
    };

    private static JsonObject Of(EndStack stack) => new()
    {
        ["at"] = stack.At.ToString(),
        ["where"] = stack.Where,
        ["threadMm"] = stack.ThreadMm,
        ["layers"] = Texts(stack.Layers),
        ["leastNm"] = stack.Torque?.LeastNm,
        ["mostNm"] = stack.Torque?.MostNm,
        ["torqueSource"] = stack.Torque?.Source,
    };

    private static JsonObject Of(WorkLabel label, PackText text) => new() { ["key"] = label.Key, ["name"] = label.Name, ["from"] = label.From, ["to"] = label.To, ["facts"] = text.Of(label.Facts) };

    private static JsonObject Of(PredictedReading reading, PackText text) => new()
    {
        ["key"] = reading.Key,
        ["condition"] = reading.ConditionId,
        ["what"] = text.Of(reading.What),
        ["where"] = reading.Where,
        ["plus"] = reading.Plus?.ToString(),
        ["minus"] = reading.Minus?.ToString(),
        ["through"] = reading.Through,
        ["unit"] = reading.Expected?.Suffix,
        ["nominal"] = reading.Expected?.Nominal.Value,
        ["least"] = reading.Expected?.Least.Value,
        ["most"] = reading.Expected?.Most.Value,
        ["whyNot"] = reading.WhyNot,
    };

    private static JsonObject Of(PredictedFreeboard mark, string conditionId) => new()
    {
        ["mark"] = mark.Name,
        ["condition"] = conditionId,
        ["xM"] = mark.Mark.XM,
        ["yM"] = mark.Mark.YM,
        ["zM"] = mark.Mark.ZM,
        ["nominalM"] = mark.NominalM,
        ["leastM"] = mark.LeastM,
        ["mostM"] = mark.MostM,
    };

    private static JsonObject? Of(Amount? amount) => amount is null ? null : new JsonObject { ["value"] = amount.Value, ["suffix"] = amount.Suffix };

    private static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    private static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(text => (JsonNode)text)];

    private static JsonArray List<T>(IEnumerable<T> items, Func<T, JsonNode> of) => [.. items.Select(of)];
}
