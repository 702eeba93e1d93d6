namespace ProcedureRules.Testing.Covering;

/// <summary>How the coverage page looks; by day and by night, on paper too.</summary>
internal static class PageStyle
{
    /// <summary>The style sheet.</summary>
    public const string Css = """
        :root { color-scheme: light dark; --ground: #fff; --ink: #1b1f24; --quiet: #59636e; --line: #d5dae0; --panel: #f5f7f9;
          --fully: #1a6b32; --partly: #8a5300; --never: #b3202a; --partly-ground: #fff3d6; --never-ground: #ffe3e3; }
        @media (prefers-color-scheme: dark) { :root { --ground: #14181d; --ink: #e4e8ec; --quiet: #98a3ae; --line: #333b44; --panel: #1c2229;
          --fully: #6bd08a; --partly: #f0b35a; --never: #ff8f8f; --partly-ground: #3a2c10; --never-ground: #431d20; } }
        * { box-sizing: border-box }
        body { margin: 0 auto; max-width: 82rem; padding: 1rem 1.25rem 6rem; background: var(--ground); color: var(--ink); font: 15px/1.5 system-ui, sans-serif }
        h1 { font-size: 1.4rem; margin: .5rem 0 } h2 { font-size: 1.1rem; margin: 2.5rem 0 .5rem; overflow-wrap: anywhere }
        a { color: inherit } p { max-width: 60rem }
        table { border-collapse: collapse; font-variant-numeric: tabular-nums }
        th, td { text-align: right; padding: .25rem .75rem; border-bottom: 1px solid var(--line); white-space: nowrap } th:first-child, td:first-child { text-align: left; padding-left: 0 }
        thead th { color: var(--quiet); font-weight: 600 } tfoot td { font-weight: 600 }
        .scroll { overflow-x: auto }
        .bar { display: block; height: 3px; background: var(--line) } .bar span { display: block; height: 3px; background: var(--fully) }
        .legend { list-style: none; padding: .75rem 1rem; background: var(--panel); display: flex; flex-wrap: wrap; gap: .25rem 1.75rem }
        .fully { color: var(--fully) } .partly { color: var(--partly) } .never { color: var(--never) }
        .source { border: 1px solid var(--line); font: 13px/1.55 ui-monospace, Menlo, Consolas, monospace; padding: .5rem 0 }
        .source div { display: grid; grid-template-columns: 5ch 3ch 30ch minmax(0, 1fr) } .source div:hover { background: var(--panel) }
        .source i { text-align: right; color: var(--quiet); font-style: normal; user-select: none }
        .source b { text-align: center; user-select: none } .source b a { text-decoration: none }
        .source b:target { outline: 2px solid currentColor; outline-offset: -2px; scroll-margin-top: 40vh }
        .source em { font-style: normal; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; padding-right: 1ch; user-select: none } .source em.fully { color: var(--quiet) }
        .source code { font: inherit; white-space: pre-wrap; overflow-wrap: anywhere; padding-right: 1ch }
        mark { background: none; color: inherit; text-decoration: underline 2px var(--fully); text-underline-offset: 3px }
        mark.partly { background: var(--partly-ground); text-decoration: underline dashed 2px var(--partly) }
        mark.never { background: var(--never-ground); text-decoration: underline wavy 1px var(--never) }
        @media (max-width: 60rem) { .source div { grid-template-columns: 5ch 3ch minmax(0, 1fr) } .source em { display: none } }
        """;
}
