using System.Globalization;
using System.Text;
using Orlop.Drawings.Paper;

namespace Orlop.Work.Paper;

/// <summary>The style of a pack on paper: black on white, large enough for cold hands and bad light, nothing that needs colour.</summary>
internal static class PackStyle
{
    private const string Rules = """
        *{box-sizing:border-box}
        html{font:11.5pt/1.38 "Liberation Sans","Segoe UI",Arial,system-ui,sans-serif;color:#000;background:#fff;font-variant-numeric:tabular-nums}
        body{margin:0}
        h1{font-size:21pt;line-height:1.15;margin:0 0 2mm}
        h2{font-size:16pt;margin:0 0 3mm;padding-bottom:1mm;border-bottom:.7mm solid #000;break-after:avoid}
        h3{font-size:12.5pt;margin:5mm 0 1.5mm;break-after:avoid}
        p{margin:0 0 2mm}
        h2+p{break-inside:avoid;break-after:avoid}
        section{break-before:page;padding-top:1mm}
        section.follows{break-before:auto;margin-top:6mm}
        table{width:100%;border-collapse:collapse;margin:0 0 3mm}
        thead{display:table-header-group}
        tr{break-inside:avoid}
        tr.kind,tbody>tr:first-child:not(:last-child),tbody>tr:nth-last-child(2){break-after:avoid}
        th{font-size:9.5pt;text-align:left;vertical-align:bottom;border-bottom:.5mm solid #000;padding:1mm 1.5mm}
        td{vertical-align:top;border-bottom:.2mm solid #777;padding:1.1mm 1.5mm}
        td.tick,th.tick{width:10mm;padding-left:0}
        .bring th:nth-child(3),.bring th:nth-child(5){width:1%;white-space:nowrap}
        .bring th:nth-child(4){width:74mm}
        .cut th:nth-child(4){width:34mm}
        .cut th:nth-child(5){width:42mm}
        .ends .num,.ends .means{white-space:nowrap}
        .ends th:last-child{width:46mm}
        .ends th{white-space:nowrap}
        .readings th:nth-child(n+3){width:1%}
        .box{display:inline-block;width:7mm;height:7mm;border:.5mm solid #000;text-align:center;font-size:15pt;line-height:6mm}
        .num{font-size:14pt;font-weight:700;white-space:nowrap}
        b.amount{font-size:13pt;white-space:nowrap}
        .small{font-size:9.5pt;line-height:1.3;color:#222}
        .title{border:.6mm solid #000;margin:0 0 5mm}
        .title th{width:22mm;border:0;border-bottom:.2mm solid #777;font-size:10pt;vertical-align:top}
        .title td{border-bottom:.2mm solid #777}
        .title tr:last-child>*{border-bottom:0}
        .caution{border:.8mm solid #000;padding:1.6mm 2.5mm;margin:1.5mm 0;break-inside:avoid;font-size:11pt}
        .caution b:first-child{text-transform:uppercase;letter-spacing:.02em}
        .again{font-size:9.5pt;margin:.8mm 0;font-weight:700}
        .step{border-bottom:.2mm solid #777;padding:1.6mm 0 1.2mm}
        .step>*{margin-left:23mm}
        .step>.head{display:grid;grid-template-columns:10mm 9mm 1fr 34mm;gap:0 2mm;margin-left:0}
        .step:not(.long),.head{break-inside:avoid}
        .step>:not(:first-child){break-before:avoid}
        .caution.around{break-inside:auto;box-decoration-break:clone;-webkit-box-decoration-break:clone}
        .around>div{break-inside:avoid}
        .step .no{font-weight:700;font-size:13pt}
        .step .what{font-weight:600}
        .step ul{margin-top:.5mm;margin-bottom:0;padding-left:4mm}
        .step li{margin:.6mm 0;break-inside:avoid}
        .step li:last-child:nth-child(n+3){break-before:avoid}
        .reads{margin-top:.5mm}
        .room{display:inline-block;white-space:nowrap;margin-left:3mm;font-weight:700}
        .reads .room,.ends .room{margin-left:0}
        .room .blank{height:7mm;min-width:24mm;margin:0 1.5mm}
        .sign{border:.3mm solid #000;min-height:11mm;font-size:8pt;padding:.6mm 1mm;line-height:1.15;margin:0 .3mm .8mm 0;overflow-wrap:anywhere}
        .failed{border:.6mm solid #000;padding:.8mm 1.5mm;margin-top:.8mm}
        .done{background:#eee}
        .out .what{text-decoration:line-through;font-weight:400}
        .done .sign{min-height:0;border:0}
        .notes{break-inside:avoid}
        .notes .line{height:9mm;border-bottom:.3mm solid #000}
        .write{border:.4mm solid #000;height:10mm;width:25mm;display:block}
        .blank{border-bottom:.3mm solid #000;display:inline-block;min-width:18mm}
        .wide{page:wide}
        #drawing{--draft:#000;--draft-fill:#fff;--soft:#222;--gone:#555;--gone-text:#333;--sheet:#fff;--ink:#000}
        #drawing .row .drawing{width:100%;height:auto;max-height:150mm;display:block}
        th.kind{font-size:12.5pt;padding-top:2.5mm;border-bottom:.3mm solid #000}
        .accept{white-space:nowrap}
        .sheet{page:sheet;break-before:page;padding:0;line-height:0}
        .sheet>svg{max-width:none;display:block}
        .sheet.diagram{page:diagram}
        .sheet h2{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);border:0;margin:0;line-height:1}
        .troubles,.against{--fails:#000;--unknown:#000}
        .troubles ul{margin:0 0 2mm;padding-left:0;list-style:none}
        .troubles li{margin:.7mm 0;break-inside:avoid}
        .against{font-size:11pt;font-weight:400;border-left:1.2mm solid #000;padding-left:2mm;margin-top:1mm;margin-bottom:1mm}
        .troubles svg,.against svg{width:3.4mm;height:3.4mm;vertical-align:-.4mm}
        .verdicts{white-space:nowrap}
        .verdicts svg{width:3.4mm;height:3.4mm;vertical-align:-.4mm}
        .stability{--fails:#000;--tight:#000;--holds:#000;--unknown:#000;--draft:#000;--soft:#222;--gone:#555;--sheet:#fff;--ink:#000;--water:#9ab;--water-line:#456;--band:#ddd}
        .stability td,.stability tbody th{font-size:9.5pt;line-height:1.25;padding:.7mm 1.2mm}
        .stability th{font-size:9pt}
        .stability tbody th{font-weight:600;border-bottom:.2mm solid #777;vertical-align:top}
        .stability .floats tbody th{width:33mm}
        .stability .marks td{white-space:nowrap}
        .stability .criteria td:last-child{width:42mm}
        .stability .aboard td:nth-child(-n+6),.stability .glance td{white-space:nowrap}
        .stability .glance td:last-child{white-space:normal;min-width:24mm}
        .stability .aboard td:nth-child(n+2):nth-child(-n+6){text-align:right}
        .stability .aboard th:nth-child(n+2):nth-child(-n+6){text-align:right}
        .stability td.small{font-size:8.5pt}
        .basis{font-size:10pt;line-height:1.3;margin:0 0 3mm;padding-left:4.5mm}
        .basis li{margin:.7mm 0}
        .levers{break-inside:avoid}
        .levers .drawing{width:100%;height:auto;display:block}
        .electrical .hung{break-inside:avoid;border:.4mm solid #000;padding:1.5mm 3mm;margin:0 0 3mm;font-size:10pt;line-height:1.3}
        .electrical .hung h3{margin:0 0 1mm}
        .electrical .hung ol,.electrical .hung ul{margin:0 0 1mm;padding-left:5mm}
        .charts{display:grid;grid-template-columns:1fr 1fr;gap:2mm 5mm}
        .charts h3{margin:1mm 0 0}
        #sources li{break-inside:avoid}
        #sources ul{font-size:8.5pt;line-height:1.25;margin:0;padding-left:4mm}
        .parts a{display:inline-block;padding:2.5mm 3mm 2.5mm 0;color:#000}
        .row{break-inside:avoid;margin:0 0 1mm}
        .row h3{margin:1mm 0 0}
        .screen a{display:inline-block;padding:2.5mm 0;color:#000}
        @media print{.parts,.screen{display:none}}
        @media screen{.sign,#sources ul,.stability td.small{font-size:9pt}body{padding:6mm;margin:0 auto;max-width:200mm}#drawing,.sheet{overflow-x:auto}#drawing .drawing{min-width:150mm}}
        @media screen and (max-width:700px){
        body{padding:3mm;overflow-wrap:anywhere}
        h1{font-size:17pt}
        td,th{overflow-wrap:anywhere}
        table{display:block;max-width:100%;overflow-x:auto}
        td,th{overflow-wrap:normal}
        .step>*{margin-left:0}
        .step>.head{grid-template-columns:9mm 8mm minmax(0,1fr)}
        .step .sign{grid-column:3;margin-top:2mm}
        .room{white-space:normal;display:inline}
        main table:not(.title),main table:not(.title) tbody,main table:not(.title) tr.kind{display:block}
        main table:not(.title) thead{display:none}
        main table:not(.title) tr:not(.kind){display:grid;grid-template-columns:10mm minmax(0,1fr) auto;gap:0 2mm;padding:1.5mm 0;border-bottom:.2mm solid #777}
        main table:not(.title) tr.kind th,main table:not(.title) td{display:block;border:0;padding:.3mm 0}
        .bring td:nth-child(4){grid-column:2;grid-row:2}
        .bring td:nth-child(5){grid-column:3;grid-row:2}
        .bring td:nth-child(5):not(:empty)::before{content:"buy: ";font-size:9.5pt;font-weight:400}
        .bring td:nth-child(4):empty,.bring td:nth-child(5):empty{display:none}
        .cut td:nth-child(2){grid-column:3;grid-row:1}
        .cut td:nth-child(3){grid-column:2;grid-row:1}
        .cut td:nth-child(4),.cut td:nth-child(5){grid-column:2/4}
        .cut td:nth-child(4)::before{content:"run and allowance: "}
        .cut td:nth-child(5)::before{content:"from: "}
        .ends td:nth-child(2),.readings td:nth-child(2){grid-column:2/4}
        .ends td:nth-child(n+3),.readings td:nth-child(n+3){grid-column:2/4}
        .ends td:nth-child(4)::before{content:"strip "}
        .ends td:nth-child(5)::before{content:"test pull "}
        .ends td:nth-child(6)::before{content:"torque "}
        .readings td:nth-child(3)::before{content:"expect "}
        .readings td:nth-child(4)::before{content:"accept "}
        .ends td::before,.readings td::before{font-size:9.5pt;font-weight:400}
        .sheet{position:relative}
        main table.named:not(.title) tr:not(.kind){grid-template-columns:repeat(2,minmax(0,1fr));gap:1mm 3mm;padding:2mm 0}
        main table.named:not(.title) tbody th{display:block;width:auto;border:0;padding:0;font-size:11pt;font-weight:700}
        main table.named:not(.title) td{grid-row:auto;grid-column:auto;white-space:normal;text-align:left;width:auto;min-width:0;font-size:11pt}
        main table.named:not(.title) th,main table.named:not(.title) td:last-child,main table.named:not(.title) .found,main table.named:not(.title) .state{grid-column:1/-1}
        main table.named:not(.title) td[data-head]::before{content:attr(data-head);display:block;font-size:9pt;font-weight:400;color:#333}
        main table.named:not(.title) td:empty{display:none}
        main table.named:not(.title) .verdicts[data-head]::before{display:inline;margin-right:2mm}
        main .named .state{font-weight:600}
        #drawing::before,.sheet::before{content:"Wider than this window: scroll it sideways.";display:block;position:sticky;left:0;width:calc(100vw - 6mm);font-size:9.5pt;line-height:1.4;margin:0 0 2mm}
        }
        """;

    /// <summary>All rules, with the page's size and its running foot.</summary>
    public static string For(PaperOptions options, string foot)
    {
        string size = options.Size == PaperSize.Letter ? "letter" : "A4";
        (double narrowMm, double longMm) = PaperSizes.Of(options.DiagramSize ?? options.Size);
        string diagram = string.Create(CultureInfo.InvariantCulture, $"{longMm}mm {narrowMm}mm");
        return $$"""
            @page{size:{{size}} portrait;margin:13mm 11mm 17mm 14mm;
            @bottom-left{content:{{Quoted(foot)}};font:8.5pt "Liberation Sans",Arial,sans-serif}
            @bottom-right{content:"Page " counter(page) " of " counter(pages);font:8.5pt "Liberation Sans",Arial,sans-serif} }
            @page wide{size:{{size}} landscape}
            @page diagram{size:{{diagram}};margin:0;@bottom-left{content:none}@bottom-right{content:none} }
            @page sheet{margin:0;@bottom-left{content:none}@bottom-right{content:none} }
            {{Rules}}
            """;
    }

    // A CSS string: everything but letters, digits and a few marks is written by its number, so that no name can end the string or the style.
    private static string Quoted(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (Rune rune in text.EnumerateRunes())
        {
            _ = Rune.IsLetterOrDigit(rune) || rune.Value is ' ' or '.' or ',' or '-' or '·'
                ? quoted.Append(rune.ToString())
                : quoted.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x} ");
        }

        return quoted.Append('"').ToString();
    }
}
