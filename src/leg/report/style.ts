/** The look of the report: system fonts, light and dark, fit for printing; words carry the standing, and colour only repeats it. */
export const STYLE = `
:root { color-scheme: light dark; --ink: #1a1a1a; --paper: #ffffff; --soft: #f2f2f2; --line: #c8c8c8; --bad: #a33b00; --mid: #7a5a00; --good: #00614a; --link: #00508a; }
@media (prefers-color-scheme: dark) { :root { --ink: #ececec; --paper: #161616; --soft: #232323; --line: #484848; --bad: #ff9a66; --mid: #f0c75e; --good: #5fd3b0; --link: #7cc0f0; } }
body { margin: 0 auto; max-width: 72rem; padding: 1rem 1.5rem 4rem; font: 1rem/1.5 system-ui, sans-serif; color: var(--ink); background: var(--paper); }
h1 { font-size: 1.7rem; line-height: 1.2; } h2 { margin-top: 2.2rem; border-bottom: 1px solid var(--line); } h3 { margin-bottom: 0.3rem; font-size: 1.05rem; }
a { color: var(--link); } a:focus-visible, summary:focus-visible, .wide:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
.verdict { padding: 0.8rem 1rem; font-weight: 600; border-left: 0.4rem solid; background: var(--soft); }
.fails { color: var(--bad); font-weight: 700; } .short { color: var(--mid); font-weight: 600; } .holds { color: var(--good); }
.remark { font-style: italic; } .cautions { padding: 0.8rem 1rem 0.8rem 2rem; border: 1px solid var(--line); }
.wide { overflow-x: auto; } table { border-collapse: collapse; font-size: 0.86rem; } caption { text-align: left; font-style: italic; padding: 0.3rem 0; }
th, td { padding: 0.25rem 0.55rem; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); } th { background: var(--soft); }
.charts { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 32rem), 1fr)); gap: 0 2rem; } figure { margin: 1rem 0; min-width: 0; break-inside: avoid; } figcaption { font-size: 0.9rem; } .picture svg { max-width: 100%; height: auto; }
article { margin-top: 1.4rem; } details { margin: 0.4rem 0; } summary { cursor: pointer; color: var(--link); }
.steps li { margin: 0.4rem 0; } .field { margin-right: 0.6rem; } code { font-size: 0.85em; } .sources, .notes { font-size: 0.9rem; }
@media print { body { max-width: none; font-size: 9.5pt; } .wide { overflow: visible; } table { font-size: 7pt; } a { color: inherit; text-decoration: none; } article, tr { break-inside: avoid; } }
`
