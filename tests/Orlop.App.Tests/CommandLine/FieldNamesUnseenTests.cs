using System.Globalization;
using System.Text.RegularExpressions;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review;
using Orlop.Work;
using Orlop.Work.Paper;
using Xunit;
using TestContext = Xunit.TestContext;

namespace Orlop.App.Tests.CommandLine;

/// <summary>
/// What people read names a field by its words and never as the file does, whatever is missing: every optional number at once, and a third of them at a time,
/// for what hides behind one that is missing is seen in another.
/// </summary>
public sealed partial class FieldNamesUnseenTests : IDisposable
{
    private static readonly BoatModel Demo = BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!;
    private static readonly HashSet<string> FieldNames = AllFieldNames();
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");

    private readonly TemporaryFolder _folder = new();

    [Theory]
    [InlineData(null)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public async Task Commands(int? lot)
    {
        string path = _folder.At("boat.json");
        await File.WriteAllTextAsync(path, BoatJson.Write(Without(lot)), TestContext.Current.CancellationToken);
        foreach (string command in (string[])["review", "float", "weights", "faults", "start", "heat", "energy"])
        {
            CommandRun run = await CommandRun.Of(command, path);
            Assert.NotEmpty(run.Out);
            NamesNoField(command, run.Out);
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void FindingsAndTheirWorkings(int? lot)
    {
        BoatModel boat = Without(lot);
        ReviewEngine engine = WholeReview.NewEngine();
        FindingsView view = new(engine.Review(boat, TestContext.Current.CancellationToken), engine.Checks, DisplayUnits.Metric, English);
        FindingRow[] rows = [.. view.Groups.SelectMany(group => group.Rows)];
        Assert.NotEmpty(rows);
        foreach (FindingRow row in rows)
        {
            FindingWorking working = FindingWorking.Of(row, view);
            NamesNoField(row.Pair.CheckId, string.Join('\n', [row.Headline, .. working.Lines.Select(line => $"{line.What}: {line.Expression}"), .. working.Inputs.Select(input => $"{input.Title}: {input.Label}. {input.Ask}")]));
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Packs(int? lot)
    {
        BoatModel boat = Without(lot);
        foreach (Alteration alteration in boat.All<Alteration>())
        {
            NamesNoField(alteration.Id, Text(WorkPackHtml.Render(WorkPacks.Plan(boat, alteration, TestContext.Current.CancellationToken), new PaperOptions(new DateOnly(2026, 7, 1)))));
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void PanelsOfEnergyAndHeat(int? lot)
    {
        using OpenedBoat opened = new(Without(lot));
        using BunitContext page = new();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        page.Services.AddSingleton(opened.Session);
        Reader reader = new(DisplayUnits.Metric, English, _ => { });
        NamesNoField("energy", Text(page.Render<EnergyPanel>(parameters => parameters.AddCascadingValue(reader).Add(panel => panel.ThingHref, thing => $"/?thing={thing}")).Markup));
        NamesNoField("heat", Text(page.Render<HeatPanel>(parameters => parameters.AddCascadingValue(reader).Add(panel => panel.ThingHref, thing => $"/?thing={thing}")).Markup));
    }

    public void Dispose() => _folder.Dispose();

    private static void NamesNoField(string where, string text) =>
        Assert.Empty(Word().Matches(text).Select(match => match.Value).Where(FieldNames.Contains).Select(name => $"{where}: {name}").Distinct());

    private static string Text(string html) => Markup().Replace(html, " ");

    private static BoatModel Without(int? lot) => Demo.WithThings(Demo.Things.Select(thing => thing is Alteration or Reading ? thing : Without(thing, lot)));

    private static Thing Without(Thing thing, int? lot)
    {
        foreach ((int index, FieldSchema field) in ThingSchema.Of(thing.GetType()).Fields.Index())
        {
            bool isTaken = field is { IsNullable: true, IsRequired: false, Type: FieldType.Quantity or FieldType.Number or FieldType.Count } && (lot is null || index % 3 == lot);
            thing = isTaken ? ThingSchema.With(thing, field, null) : thing;
        }

        return thing;
    }

    private static HashSet<string> AllFieldNames()
    {
        Queue<RecordSchema> open = new(ThingKinds.ByName.Values.Select(RecordSchema.Of));
        HashSet<Type> seen = [];
        HashSet<string> names = new(StringComparer.Ordinal);
        while (open.TryDequeue(out RecordSchema? schema))
        {
            foreach (FieldSchema field in seen.Add(schema.Type) ? schema.Fields : [])
            {
                if (field.Name.Any(char.IsUpper))
                {
                    names.Add(field.Name);
                }

                if (field.Record is { } inner)
                {
                    open.Enqueue(inner);
                }
            }
        }

        return names;
    }

    [GeneratedRegex(@"\p{L}[\p{L}\p{N}]*")]
    private static partial Regex Word();

    [GeneratedRegex(@"<(style|script)\b.*?</\1>|<[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Markup();
}
