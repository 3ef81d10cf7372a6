using System.Globalization;

namespace Orlop.Drawings.Svg;

/// <summary>The outermost element of every drawing: size, accessible name, style.</summary>
internal static class DrawingFrame
{
    /// <summary>Drawing units in a millimetre: a drawing unit is 1/96 in. CSS Values 4, 6.2.</summary>
    internal const double UnitsPerMm = 96 / 25.4;

    private static readonly string Style = string.Create(CultureInfo.InvariantCulture, $$"""
        .drawing{font-family:"Source Sans 3","Segoe UI",system-ui,sans-serif;font-variant-numeric:tabular-nums}
        .drawing text{fill:var(--ink,{{Palette.Ink}});stroke:none}
        .drawing .outline{fill:none;stroke:var(--ink,{{Palette.Ink}});stroke-width:2;stroke-linejoin:round}
        .drawing .fine{fill:none;stroke:var(--ink,{{Palette.Ink}});stroke-width:1}
        .drawing .house{fill:none;stroke:var(--ink,{{Palette.Ink}});stroke-width:1.4;stroke-linejoin:round}
        .drawing .grid{stroke:var(--line,{{Palette.Line}});stroke-width:.8;fill:none}
        .drawing .axis{stroke:var(--soft,{{Palette.Soft}});stroke-width:1;fill:none}
        .drawing .centre{stroke:var(--soft,{{Palette.Soft}});stroke-width:.8;stroke-dasharray:12 4 3 4;fill:none}
        .drawing .water{fill:var(--water,{{Palette.Water}});opacity:{{Palette.WaterOpacityFraction}}}
        .drawing .water-line{stroke:var(--water-line,{{Palette.WaterLine}});stroke-width:1.5;fill:none}
        .drawing .leader{stroke:var(--soft,{{Palette.Soft}});stroke-width:.7;fill:none}
        .drawing .dot{fill:var(--soft,{{Palette.Soft}});stroke:none}
        .drawing .space{fill:none;stroke:var(--soft,{{Palette.Soft}});stroke-width:1;stroke-dasharray:2 3}
        .drawing .way{fill:none;stroke:var(--way,{{Palette.Way}});stroke-width:2.6;stroke-linejoin:round;stroke-linecap:round}
        .drawing .run{fill:none;stroke:var(--ink,{{Palette.Ink}});stroke-width:1.2;stroke-linejoin:round}
        .drawing .route{fill:none;stroke:var(--draft,{{Palette.Draft}});stroke-width:3.2;stroke-linejoin:round;stroke-linecap:round}
        .drawing .route.next{stroke-width:2.6;stroke-dasharray:10 6}
        .drawing .route.third{stroke-width:2.6;stroke-dasharray:1.5 6}
        .drawing .kept{fill:var(--sheet,{{Palette.Sheet}});fill-opacity:.8;stroke:var(--ink,{{Palette.Ink}});stroke-width:1.1}
        .drawing .kept.gear{fill:var(--gear,{{Palette.Gear}})}
        .drawing .view .run{stroke:var(--soft,{{Palette.Soft}});stroke-width:.9}
        .drawing .compared .kept{stroke:var(--soft,{{Palette.Soft}});stroke-width:.9}
        .drawing .added,.drawing .view .added{stroke:var(--draft,{{Palette.Draft}});stroke-width:2.4}
        .drawing .kept.added{fill:var(--draft-fill,{{Palette.DraftFill}})}
        .drawing .gone,.drawing .view .gone{stroke:var(--gone,{{Palette.Gone}});stroke-width:1.4;stroke-dasharray:5 4}
        .drawing .kept.gone{fill:none}
        .drawing .kept.opening{fill:none;stroke-width:1.5;stroke-linejoin:round;stroke-linecap:round}
        .drawing .kept.ashore{fill-opacity:.15;stroke-opacity:.45;stroke-dasharray:1.5 3}
        .drawing .weight{fill-opacity:.55}
        .drawing .disc{fill:var(--sheet,{{Palette.Sheet}});stroke:var(--ink,{{Palette.Ink}});stroke-width:1.2}
        .drawing .arrow{fill:var(--draft,{{Palette.Draft}});stroke:none}
        .drawing .solid{fill:var(--ink,{{Palette.Ink}});stroke:none}
        .drawing .solid.added{fill:var(--draft,{{Palette.Draft}})}
        .drawing .solid.gone{fill:var(--gone,{{Palette.Gone}})}
        .drawing .bar{stroke:var(--ink,{{Palette.Ink}});stroke-width:5;stroke-linecap:round}
        .drawing .bar.added{stroke:var(--draft,{{Palette.Draft}});stroke-width:5}
        .drawing .bar.gone{stroke:var(--gone,{{Palette.Gone}});stroke-width:5}
        .drawing .limit{stroke:var(--fails,{{Palette.Fails}});stroke-width:1.4;stroke-dasharray:4 4;fill:none}
        .drawing .limit.dots,.drawing .outline.dots{stroke-dasharray:1.5 3}
        .drawing .limit.long,.drawing .outline.long{stroke-dasharray:11 4}
        .drawing .outline.faint{stroke:var(--soft,{{Palette.Soft}})}
        .drawing .cross{stroke:var(--fails,{{Palette.Fails}});stroke-width:2.4;fill:none}
        .drawing .band{fill:var(--band,{{Palette.Band}});opacity:.7;stroke:none}
        .drawing .dashed{stroke-dasharray:7 3}
        .drawing .hit{fill:transparent;stroke:none}
        .drawing .thing[tabindex],.drawing text[data-names]{cursor:pointer}
        .drawing .thing:focus-visible{outline:3px solid var(--focus,{{Palette.Draft}});outline-offset:2px}
        .drawing .selected .kept,.drawing .selected .run{stroke:var(--ink,{{Palette.Ink}});stroke-width:3}
        .drawing text.soft{fill:var(--soft,{{Palette.Soft}});stroke:none}
        .drawing text.strong{font-weight:600}
        .drawing text.added,.drawing .view text.added{fill:var(--draft,{{Palette.Draft}});font-weight:600;stroke:none;stroke-dasharray:none}
        .drawing text.gone,.drawing .view text.gone{fill:var(--gone-text,{{Palette.GoneText}});stroke:none;stroke-dasharray:none}
        .drawing text.limit{fill:var(--fails,{{Palette.Fails}});stroke:none;stroke-dasharray:none}
        .drawing text.halo,.drawing .view text.halo{paint-order:stroke;stroke:var(--sheet,{{Palette.Sheet}});stroke-width:4.5px;stroke-linejoin:round}
        """);

    /// <summary>Opens a drawing; <see cref="SvgWriter.End"/> closes it. An interactive drawing is a group of buttons, any other one image.</summary>
    internal static SvgWriter Start(SvgWriter svg, Frame frame)
    {
        string titleId = $"{frame.Id}-title", descriptionId = $"{frame.Id}-desc";
        string width = frame.IsTrueSize ? $"{SvgValue.Number(frame.Width / UnitsPerMm)}mm" : SvgValue.Number(frame.Width * frame.ScaleFactor);
        string height = frame.IsTrueSize ? $"{SvgValue.Number(frame.Height / UnitsPerMm)}mm" : SvgValue.Number(frame.Height * frame.ScaleFactor);
        svg.Start("svg",
            ("xmlns", "http://www.w3.org/2000/svg"),
            ("id", frame.Id),
            ("class", "drawing"),
            ("role", frame.IsInteractive ? "group" : "img"),
            ("aria-labelledby", titleId),
            ("aria-describedby", descriptionId),
            ("viewBox", $"0 0 {SvgValue.Number(frame.Width)} {SvgValue.Number(frame.Height)}"),
            ("width", width),
            ("height", height));
        svg.Start("title", ("id", titleId)).Content(frame.Title).End();
        svg.Start("desc", ("id", descriptionId)).Content(frame.Description).End();
        return svg.Start("style").Content(Style).End();
    }
}

/// <summary>What the outermost element says.</summary>
internal sealed record Frame(string Id, string Title, string Description, double Width, double Height, bool IsInteractive = false, bool IsTrueSize = false, double ScaleFactor = 1);
