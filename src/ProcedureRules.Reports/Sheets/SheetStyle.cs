namespace ProcedureRules.Reports.Sheets;

/// <summary>
/// How the page looks. Nothing hangs on colour, nor on a background that a printer may leave out: the weight of its frame tells a danger from
/// a warning, a caution and a notice. Colours are the screen's.
/// </summary>
internal static class SheetStyle
{
    /// <summary>The safety alert symbol, drawn, since a font may lack it.</summary>
    public const string AlertSymbol =
        "<svg class=\"alert\" viewBox=\"0 0 24 22\" aria-hidden=\"true\"><path d=\"M12 1 L23 21 H1 Z\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"2\" stroke-linejoin=\"round\"/>"
        + "<path d=\"M12 8 V14\" stroke=\"currentColor\" stroke-width=\"2.4\"/><circle cx=\"12\" cy=\"17.5\" r=\"1.5\" fill=\"currentColor\"/></svg>";

    /// <summary>The style sheet.</summary>
    public const string Css = """
        * { box-sizing: border-box; }
        body { margin: 0 auto; padding: 12px; max-width: 52rem; font: 16px/1.4 system-ui, sans-serif; color: #000; background: #fff; overflow-wrap: break-word; }
        h1 { font-size: 1.5em; margin: 0 0 2px; }
        h2 { font-size: 1.15em; margin: 1.4em 0 .4em; padding-bottom: 2px; border-bottom: 2px solid #000; break-after: avoid; }
        h3 { display: grid; grid-template-columns: auto auto 1fr auto; gap: 0 .5em; align-items: start; font-size: 1em; margin: 0; break-after: avoid; }
        p { margin: .3em 0; }
        .vehicle { font-size: 1.1em; }
        .fields { display: flex; flex-wrap: wrap; gap: .6em 1.2em; }
        .field { display: flex; flex: 1 1 10em; align-items: end; gap: .4em; }
        .blank { display: block; border-bottom: 1px solid #000; min-height: 1.7em; }
        .field .blank { flex: 1; }
        .place { margin: .8em 0 .3em; font-style: italic; break-after: avoid; }
        .step { margin: .5em 0; padding-top: .5em; border-top: 1px solid #888; break-inside: avoid; }
        .box, .ticks li::before, .ask::before { display: inline-block; width: 1em; height: 1em; border: 1.5px solid #000; flex: none; }
        .box { margin-top: .2em; }
        .number { min-width: 1.6em; text-align: right; }
        .effort { font-weight: normal; font-size: .9em; white-space: nowrap; }
        .step > ul, .step > .ask, .step > .note { margin-left: 2em; }
        ul { margin: .3em 0; padding-left: 1.2em; }
        .ticks { list-style: none; padding-left: 0; columns: 17em; }
        .ticks li { padding-left: 1.6em; text-indent: -1.6em; margin: .25em 0; break-inside: avoid; }
        .ticks li::before { content: ""; margin-right: .6em; vertical-align: -.15em; }
        .ask { display: grid; grid-template-columns: 1fr 26%; gap: 0 1em; position: relative; padding-left: 1.6em; break-inside: avoid; }
        .ask::before { content: ""; position: absolute; left: 0; top: .2em; }
        .ask .note { display: block; grid-column: 1; }
        .ask .blank { grid-column: 2; grid-row: 1 / span 9; align-self: start; }
        .note { font-size: .875em; color: #333; }
        .condition { font-weight: bold; font-style: italic; }
        .signal, .halt { padding: .3em .6em; break-inside: avoid; break-after: avoid; border: 1px solid #000; }
        .word { letter-spacing: .04em; margin-right: .3em; }
        .alert { width: 1.25em; height: 1.15em; vertical-align: -.2em; margin-right: .25em; }
        .danger { border: 5px double #000; font-weight: bold; }
        .danger .word { font-size: 1.15em; }
        .warning { border: 3px solid #000; }
        .caution { border: 1.5px solid #000; }
        .notice { border: 1px dashed #000; font-style: italic; }
        .halt { border-width: 1px 0; }
        @media screen {
          .danger { border-color: #b00; } .danger .word { color: #b00; }
          .warning { border-color: #d75f00; } .warning .word { color: #a84a00; }
          .caution { border-color: #c8a000; } .notice { border-color: #0057a8; }
        }
        @media (max-width: 30rem) {
          h3 { grid-template-columns: auto auto 1fr; } .effort { grid-column: 3; white-space: normal; }
          .step > ul, .step > .ask, .step > .note { margin-left: 0; }
          .ask { display: block; }
        }
        @media print {
          @page { margin: 12mm; }
          body { max-width: none; padding: 0; font-size: 10pt; } .note { color: #000; }
        }

        """;
}
