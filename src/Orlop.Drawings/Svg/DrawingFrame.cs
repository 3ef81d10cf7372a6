namespace Orlop.Drawings.Svg;

/// <summary>The outermost element of every drawing: size, accessible name, style.</summary>
internal static class DrawingFrame
{
    /// <summary>Drawing units in a millimetre: a drawing unit is 1/96 in. CSS Values 4, 6.2.</summary>
    internal const double UnitsPerMm = 96 / 25.4;

    private const string Style = """
        .drawing{font-family:"Source Sans 3","Segoe UI",system-ui,sans-serif;font-variant-numeric:tabular-nums}
        .drawing text{fill:var(--ink,#16252f);stroke:none}
        .drawing .outline{fill:none;stroke:var(--ink,#16252f);stroke-width:2;stroke-linejoin:round}
        .drawing .fine{fill:none;stroke:var(--ink,#16252f);stroke-width:1}
        .drawing .house{fill:none;stroke:var(--ink,#16252f);stroke-width:1.4;stroke-linejoin:round}
        .drawing .grid{stroke:var(--line,#d8d3c6);stroke-width:.8;fill:none}
        .drawing .axis{stroke:var(--soft,#56646c);stroke-width:1;fill:none}
        .drawing .centre{stroke:var(--soft,#56646c);stroke-width:1;stroke-dasharray:12 4 3 4;fill:none}
        .drawing .water{fill:var(--water,#cfe3ea);opacity:.55}
        .drawing .water-line{stroke:var(--water-line,#3b7f99);stroke-width:1.5;fill:none}
        .drawing .leader{stroke:var(--soft,#56646c);stroke-width:.7;fill:none}
        .drawing .space{fill:none;stroke:var(--soft,#56646c);stroke-width:1;stroke-dasharray:2 3}
        .drawing .way{fill:none;stroke:var(--line-strong,#b9b2a0);stroke-width:5;stroke-linejoin:round;stroke-linecap:round;opacity:.7}
        .drawing .run{fill:none;stroke:var(--ink,#16252f);stroke-width:1.2;stroke-linejoin:round}
        .drawing .kept{fill:var(--sheet,#fffdf8);fill-opacity:.65;stroke:var(--ink,#16252f);stroke-width:1.2}
        .drawing .added{stroke:var(--draft,#0b5fa5);stroke-width:2.4}
        .drawing .kept.added{fill:var(--draft-fill,#dcebf7)}
        .drawing .gone{stroke:var(--gone,#8a8f94);stroke-width:1.4;stroke-dasharray:5 4}
        .drawing .kept.gone{fill:none}
        .drawing .arrow{fill:var(--draft,#0b5fa5);stroke:none}
        .drawing .solid{fill:var(--ink,#16252f);stroke:none}
        .drawing .solid.added{fill:var(--draft,#0b5fa5)}
        .drawing .solid.gone{fill:var(--gone,#8a8f94)}
        .drawing .bar{stroke:var(--ink,#16252f);stroke-width:5;stroke-linecap:round}
        .drawing .bar.added{stroke:var(--draft,#0b5fa5)}
        .drawing .bar.gone{stroke:var(--gone,#8a8f94);stroke-width:5}
        .drawing .limit{stroke:var(--fails,#b3261e);stroke-width:1.4;stroke-dasharray:4 4;fill:none}
        .drawing .band{fill:var(--band,#e7e2d4);opacity:.7;stroke:none}
        .drawing .dashed{stroke-dasharray:7 3}
        .drawing .hit{fill:transparent;stroke:none}
        .drawing .thing[tabindex]{cursor:pointer}
        .drawing .thing:focus-visible{outline:3px solid var(--focus,#0b5fa5);outline-offset:2px}
        .drawing .selected .kept,.drawing .selected .run{stroke-width:3.4}
        .drawing text.soft{fill:var(--soft,#56646c)}
        .drawing text.strong{font-weight:600}
        .drawing text.added{fill:var(--draft,#0b5fa5);font-weight:600;stroke:none;stroke-dasharray:none}
        .drawing text.gone{fill:var(--gone-text,#5f666b);stroke:none;stroke-dasharray:none}
        .drawing text.limit{fill:var(--fails,#b3261e);stroke:none;stroke-dasharray:none}
        .drawing text.halo{paint-order:stroke;stroke:var(--sheet,#fffdf8);stroke-width:3px;stroke-linejoin:round}
        """;

    /// <summary>Opens a drawing; <see cref="SvgWriter.End"/> closes it. An interactive drawing is a group of buttons, any other one image.</summary>
    internal static SvgWriter Start(SvgWriter svg, Frame frame)
    {
        string titleId = $"{frame.Id}-title", descriptionId = $"{frame.Id}-desc";
        string width = frame.IsTrueSize ? $"{SvgValue.Number(frame.Width / UnitsPerMm)}mm" : SvgValue.Number(frame.Width);
        string height = frame.IsTrueSize ? $"{SvgValue.Number(frame.Height / UnitsPerMm)}mm" : SvgValue.Number(frame.Height);
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
internal sealed record Frame(string Id, string Title, string Description, double Width, double Height, bool IsInteractive = false, bool IsTrueSize = false);
