using System.Text.Json.Nodes;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Paper;
using Xunit;

namespace Orlop.Work.Tests.Scope;

/// <summary>What an alteration takes as said is told on the first page of its pack and in no step.</summary>
public sealed class AssumedTests
{
    private static readonly PaperOptions Options = new(Boats.Day, "7");

    private static readonly Alteration Mixed = Boats.Pump with
    {
        Edits =
        [
            .. Boats.Pump.Edits, BoatEdits.Add(new Climate { Id = "home", Name = "Home", LatitudeDeg = 60 }), BoatEdits.Replace(Boats.Small.Find("practice")!, Boats.Small.Find<PracticeChoice>("practice")! with { Basis = "motor-craft" }),
            BoatEdits.Remove(Boats.Small.Find("meter")!),
        ],
    };

    [Fact]
    public void Plan_NoStepIsAboutIt_AndAllElseIsAsWithoutIt()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Mixed);
        string[] assumed = ["at-anchor", "home", "practice", "meter"];
        Assert.Equal(assumed, pack.Assumed.Select(edit => edit.Id));
        Assert.DoesNotContain(pack.Steps, step => step.Builds.Concat(step.About).Any(assumed.Contains));
        Assert.Equal(Boats.PumpPack.Steps.Select(step => step.Key), pack.Steps.Select(step => step.Key));
        Assert.Equal(Mixed.Edits.Select(edit => edit.Id).Except(assumed).Order(), pack.Steps.SelectMany(step => step.Builds).Order());
    }

    [Fact]
    public void Render_FirstPageAndJson_TellItInWords()
    {
        WorkPack pack = Boats.Plan(Boats.Small, Mixed);
        string html = WorkPackHtml.Render(pack, Options), first = html[..html.IndexOf("id=\"bring\"", StringComparison.Ordinal)];
        Assert.Contains("What it takes as said", first, StringComparison.Ordinal);
        Assert.Contains("Home (climate), added", first, StringComparison.Ordinal);
        Assert.Contains("taken out", first, StringComparison.Ordinal);
        Assert.Matches(@"At anchor \(condition\), changed: Note [^<]* → calm", first);
        JsonNode json = JsonNode.Parse(PackJson.Write(pack, Options))!;
        Assert.Equal(pack.Assumed.Select(edit => edit.Id), json["assumed"]!.AsArray().Select(one => (string)one!["thing"]!));
        Assert.Contains(json["assumed"]!.AsArray(), one => (string)one!["text"]! == "Home (climate), added");
    }

    // A climate that is typed while a draft is open.
    [Fact]
    public void Plan_NothingElse_HasNoSteps() => Assert.Empty(Boats.Plan(Boats.Small, new Alteration { Id = "only", Edits = [Mixed.Edits.Single(edit => edit.Id == "home")] }).Steps);

    [Fact]
    public void Render_WithoutIt_SaysNothingOfIt() =>
        Assert.DoesNotContain("id=\"assumed\"", WorkPackHtml.Render(Boats.Plan(Boats.Small, Mixed with { Edits = [BoatEdits.Remove(Boats.Small.Find("old-shelf")!)] }), Options), StringComparison.Ordinal);

    // A weight that hangs in some conditions is nothing to build, and is weighed all the same.
    [Fact]
    public void Plan_LoadingOfUnknownMass_IsWeighedAndNotBuilt()
    {
        Deadweight sack = new() { Id = "sack", Name = "Sack", Use = DeadweightUse.Cargo };
        WorkPack pack = Boats.Plan(Boats.Small, new Alteration { Id = "cargo", Edits = [BoatEdits.Add(sack)] });
        Assert.Contains(pack.Weights.Weigh, line => line.ThingId == "sack");
        Assert.DoesNotContain(pack.Steps, step => step.Builds.Contains("sack"));
    }
}
