import { DRAWING_STYLE } from '../../drawing/index.js'

/** Verdict, title block and cautions beside the drawing of the leg. */
const beside = (width: string): string =>
  `main { display: grid; grid-template-columns: minmax(0, 1fr) ${width}; column-gap: 2rem; } main > * { grid-column: 1 / -1; min-width: 0; } #verdict { display: contents; } main > p, #verdict > *, #title-block, #cautions { grid-column: 1; } #verdict > figure { grid-area: 1 / 2 / span 16; }`

/** The look of a page: system fonts, light and dark, fit for printing; words carry the standing, and colour only repeats it. */
export const STYLE = `${DRAWING_STYLE}
:root { color-scheme: light dark; --ink: #1a1a1a; --paper: #ffffff; --soft: #f2f2f2; --line: #c8c8c8; --bad: #8f3300; --mid: #644a00; --good: #005a44; --link: #00508a; --force: #00508a; --move: #00614a; }
@media (prefers-color-scheme: dark) { :root { --ink: #ececec; --paper: #161616; --soft: #232323; --line: #484848; --bad: #ff9a66; --mid: #f0c75e; --good: #5fd3b0; --link: #7cc0f0; --force: #7cc0f0; --move: #5fd3b0; } }
body { margin: 0 auto; max-width: 72rem; padding: 1rem 1.5rem 4rem; font: 1rem/1.5 system-ui, sans-serif; color: var(--ink); background: var(--paper); overflow-wrap: break-word; }
h1 { font-size: 1.6rem; line-height: 1.2; margin: 0.5rem 0; } h2 { margin: 2.2rem 0 0.6rem; border-bottom: 1px solid var(--line); } h3 { margin: 1.4rem 0 0.3rem; font-size: 1.05rem; } p, ul, ol { margin: 0.4rem 0; }
a { color: var(--link); } a:focus-visible, summary:focus-visible, .wide:focus-visible, select:focus-visible, button:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; } main:focus { outline: none; }
[hidden] { display: none !important; } :target { background: var(--soft); outline: 2px solid var(--link); }
.skip { position: absolute; left: -99rem; } .skip:focus { position: static; }
.contents ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0.2rem 1.1rem; font-size: 0.9rem; } .contents a { display: inline-block; padding: 0.15rem 0; }
.filter { display: flex; flex-wrap: wrap; gap: 0.4rem 1rem; align-items: center; padding: 0.6rem 0.8rem; margin-top: 2rem; background: var(--soft); font-size: 0.9rem; } .filter label { display: flex; gap: 0.4rem; align-items: center; max-width: 100%; } .filter select { min-width: 0; } .filter select, .filter button { font: inherit; max-width: 100%; min-height: 1.8rem; color: var(--ink); background: var(--paper); border: 1px solid var(--ink); }
.verdict { padding: 0.8rem 1rem; font-weight: 600; border-left: 0.4rem solid; background: var(--soft); }
.fails { color: var(--bad); font-weight: 700; } .short { color: var(--mid); font-weight: 600; } .holds { color: var(--good); }
#cautions ul { padding: 0.8rem 1rem 0.8rem 2rem; border: 1px solid var(--line); }
.small, .sources, figcaption { font-size: 0.9rem; } .answer { font-weight: 600; } code { font-size: 0.92em; } pre { margin: 0.4rem 0; }
.wide { overflow-x: auto; margin: 0.4rem 0; } table { border-collapse: collapse; font-size: 0.86rem; } caption { text-align: left; font-style: italic; padding: 0.3rem 0; }
th, td { padding: 0.2rem 0.5rem; text-align: left; vertical-align: top; } tr { border-bottom: 1px solid var(--line); } thead th { background: var(--soft); }
.facts { width: 100%; } .facts th { width: 9rem; font-weight: 600; } .facts td { overflow-wrap: anywhere; } .facts .blank { height: 2.2rem; border-bottom: 1px solid var(--ink); }
.charts { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 26rem), 1fr)); gap: 0 2rem; } figure { margin: 1rem 0; min-width: 0; } .picture { break-inside: avoid; } .picture h3 { margin-top: 0; } .wholeWidth { grid-column: 1 / -1; }
.picture svg { display: block; width: 100%; max-width: 480px; height: auto; } .wholeWidth .picture svg { max-width: 100%; }
details { margin: 0.4rem 0; } summary { cursor: pointer; color: var(--link); }
@media (min-width: 64rem) { ${beside('26rem')} }
@media (max-width: 40rem) { body { padding: 0.6rem 15px 3rem; } h1 { font-size: 1.3rem; } .contents ul { gap: 0 0.9rem; } ul, ol { padding-left: 1.2rem; } .picture svg { margin: 0 -15px; width: calc(100% + 30px); }
#checks table, #checks tbody, #checks caption { display: block; } #checks thead { position: absolute; left: -99rem; } #checks tbody tr { display: grid; grid-template-columns: 3rem 3.4rem 1fr auto; padding: 0.5rem 0; } #checks td { border: 0; padding: 0 0.3rem 0 0; } #checks td { grid-column: 1 / -1; } #checks td:nth-child(1) { grid-area: 1 / 1; } #checks td:nth-child(2) { grid-area: 1 / 2; } #checks td:nth-child(3) { font-weight: 600; } #checks td:nth-child(8) { grid-area: 1 / 3; font-weight: 600; } #checks td:nth-child(9) { grid-area: 1 / 4; } #checks td:nth-child(6)::before { content: "demand "; } #checks td:nth-child(7)::before { content: "capacity "; } #checks td:nth-child(8)::before { content: "reserve "; } #checks td:nth-child(9)::before { content: "required "; } #checks td:nth-child(10)::before { content: "range "; } }
@media print { :root { --ink: #000000; --paper: #ffffff; --soft: #f2f2f2; --line: #b0b0b0; --bad: #8f3300; --mid: #644a00; --good: #005a44; --link: #000000; --force: #00508a; --move: #00614a; } html { font-size: 9.5pt; } body { max-width: none; padding: 0; line-height: 1.35; } ${beside('90mm')} #title-block { break-inside: avoid; } #checks td:nth-child(n + 6) { white-space: nowrap; } #checks td:nth-child(3) { min-width: 22mm; } #checks td:nth-child(4) { min-width: 34mm; } #checks td:nth-child(5) { min-width: 28mm; } #checks td:nth-child(10) { white-space: normal; } h1 { font-size: 1.4rem; margin: 0; } #verdict svg { max-height: 205mm; } .contents, .filter, .skip, summary { display: none; } .wide { overflow: visible; } table { font-size: 7pt; } th, td { padding: 0.6mm 1.2mm; overflow-wrap: break-word; } #specification { break-before: page; } :is(#chains, #steps) { font-size: 8pt; line-height: 1.3; } :is(#chains, #steps) :is(h3, p, ul, .wide) { margin: 0 0 1mm; } :is(#chains, #steps) h3 { font-size: 8.5pt; margin-top: 2mm; } #cases table { font-size: 6.5pt; } #cases td, #cases th { padding: 0.5mm 0.8mm; overflow-wrap: normal; } #specification .wide, #values .wide { columns: 2; column-gap: 6mm; } #specification table, #values table { width: 100%; } thead, caption, tr:has(> th[colspan]) { break-after: avoid; } tbody tr:first-child { break-before: avoid; } .charts table { width: 100%; } a { color: inherit; text-decoration: none; } tr, li { break-inside: avoid; } h2, h3, h4 { break-after: avoid; break-inside: avoid; } :is(#chains, #steps) > p:not(:has(+ h3), :last-child) { break-after: avoid; } details::details-content { content-visibility: visible; display: block; height: auto; } .charts { display: block; columns: 2; column-gap: 6mm; } .wholeWidth { column-span: all; } .answer, summary { break-after: avoid; } thead { display: table-header-group; } p, li { orphans: 3; widows: 3; } .picture svg { width: 90mm; max-height: 236mm; } .wholeWidth .picture svg { width: 100%; } .facts .blank { height: 9mm; } }
`

/** The foot of each printed page: the title, and the number of the page. */
export const printFooter = (title: string): string =>
  `@page { size: A4; margin: 14mm 12mm 16mm; @bottom-left { content: ${cssText(title)}; font: 8pt system-ui, sans-serif; } @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8pt system-ui, sans-serif; } }\n`

/** Text as a string of a style sheet; nothing in it can end the string or the element. */
const cssText = (text: string): string =>
  `"${text.replaceAll(/[^\w .,:;()+-]/g, (c) => `\\${(c.codePointAt(0) as number).toString(16)} `)}"`
