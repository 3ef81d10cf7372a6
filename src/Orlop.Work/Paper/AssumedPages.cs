using Orlop.Boat.Things;
using Orlop.Presentation.Views;

namespace Orlop.Work.Paper;

/// <summary>What the alteration takes as said and nobody builds, on the first page.</summary>
internal static class AssumedPages
{
    public static void Write(HtmlText html, WorkPack pack, PaperOptions options)
    {
        if (pack.Assumed.IsEmpty)
        {
            return;
        }

        html.Open("section", ("class", "follows"), ("id", "assumed")).Put("h2", "What it takes as said")
            .Put("p", "Nothing of this is built. It goes into the boat as built with the last that is, or with what refers to it.", ("class", "small")).Open("ul");
        foreach (Edit edit in pack.Assumed)
        {
            html.Put("li", Words(EditView.Of(edit, options.Units, options.Culture, pack.AsAltered)));
        }

        html.Close().Close();
    }

    /// <summary>"Ytterskären (climate), changed: latitude 60.5° → 61°".</summary>
    public static string Words(EditView edit) =>
        $"{edit.Title} ({edit.Kind}), {edit.What}{(edit.IsAdded || edit.IsTakenOut || edit.Fields.Count == 0 ? "" : $": {string.Join("; ", edit.Fields.Select(field => $"{field.Label} {field.Was} → {field.Becomes}"))}")}";
}
