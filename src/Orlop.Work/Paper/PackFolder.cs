using System.Globalization;
using Orlop.Review;
using Orlop.Work.Loading;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>A pack as a folder of files.</summary>
public static class PackFolder
{
    /// <summary>Writes pack.html, pack.json, cables.csv, shopping.csv, labels-1.svg and on, and where the alteration moves weights the loading and stability sheet, into a folder, which is made if needed. Gives back the names of the files.</summary>
    /// <param name="engine">Reviews what the alteration does to her, with every discipline; what it solved before is not solved again. Null for a new one.</param>
    public static IReadOnlyList<string> Write(WorkPack pack, PaperOptions options, string folder, ReviewEngine? engine = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        engine ??= WholeReview.NewEngine();
        PackTroubles troubles = PackTroubles.Of(pack, engine);
        (string Name, string Content)[] files =
        [
            ("pack.html", WorkPackHtml.Render(pack, options, engine)),
            ("pack.json", PackJson.Write(pack, options, engine)),
            ("cables.csv", PackTables.Cables(pack)),
            ("shopping.csv", PackTables.Shopping(pack, troubles, new PackText(options))),
            .. pack.Weights.IsFelt ? new[] { (LoadingSheetHtml.FileName, LoadingSheetHtml.Render(LoadingSheet.Make(engine, pack.AsBuilt, pack.Alteration), options)) } : [],
            .. LabelPages.Sheets(pack, options).Select((sheet, index) => (string.Create(CultureInfo.InvariantCulture, $"labels-{index + 1}.svg"), sheet)),
        ];
        Directory.CreateDirectory(folder);
        foreach ((string name, string content) in files)
        {
            File.WriteAllText(Path.Combine(folder, name), content);
        }

        return [.. files.Select(file => file.Name)];
    }
}
