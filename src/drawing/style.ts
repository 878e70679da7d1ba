/**
 * Style of the drawings. In a page they take its ink and paper (`--paper`); a page with its own switch sets `--force`, `--bad` and `--move` as well.
 * As a file of its own a drawing sets ink and paper itself.
 */
export const DRAWING_STYLE = `
svg:root.drawing { color: #1a1a1a; background: #fff; --paper: #fff; margin: 0 auto }
.drawing { --ink-force: var(--force, #00508a); --ink-bad: var(--bad, #8f3300); --ink-move: var(--move, #00614a); display: block; width: 100%; max-width: 480px; height: auto; font: 11px system-ui, sans-serif; fill: none; stroke: none; stroke-linecap: round; stroke-linejoin: round }
@media (prefers-color-scheme: dark) {
svg:root.drawing { color: #ececec; background: #161616; --paper: #161616 }
.drawing { --ink-force: var(--force, #7cc0f0); --ink-bad: var(--bad, #ff9a66); --ink-move: var(--move, #5fd3b0) }
}
@media print {
svg:root.drawing { color: #000; background: none; --paper: #fff }
.drawing { --ink-force: #00508a; --ink-bad: #8f3300; --ink-move: #00614a; width: 90mm; break-inside: avoid }
svg.drawing text { stroke: none }
}
.drawing .thick, .drawing .thin, .drawing .fine, .drawing .hidden, .drawing .axis, .drawing .other { stroke: currentColor; stroke-width: 1 }
.drawing .thick { stroke-width: 2 }
.drawing .fine { stroke-width: .7 }
.drawing .hidden { stroke-dasharray: 6 3 }
.drawing .axis { stroke-dasharray: 14 3 2 3; stroke-linecap: butt }
.drawing .other { stroke-dasharray: 12 3 2 3 2 3; stroke-linecap: butt }
.drawing .move, .drawing .moveSecond { stroke: var(--ink-move); stroke-width: 2 }
.drawing .moveSecond { stroke-dasharray: 8 4 }
.drawing .force { stroke: var(--ink-force); stroke-width: 2.5 }
.drawing .bad, .drawing .badSecond { stroke: var(--ink-bad); stroke-width: 3 }
.drawing .badSecond { stroke-dasharray: 7 5 }
.drawing .dots { stroke: currentColor; stroke-width: 3.6 }
.drawing .dots.fill-force { stroke: var(--ink-force) }
.drawing .dots.fill-bad { stroke: var(--ink-bad) }
.drawing .dots.fill-move { stroke: var(--ink-move) }
.drawing .fill-tone { fill: currentColor; fill-opacity: .07 }
.drawing .fill-paper { fill: var(--paper, Canvas) }
.drawing .fill-solid { fill: currentColor }
.drawing .fill-force { fill: var(--ink-force) }
.drawing .fill-bad { fill: var(--ink-bad) }
.drawing .fill-move { fill: var(--ink-move) }
.drawing text { fill: currentColor; stroke: var(--paper, Canvas); stroke-width: 3; paint-order: stroke }
.drawing .strong { font-weight: 600 }
.drawing .middle { text-anchor: middle }
.drawing .end { text-anchor: end }
.drawing .ink-force { fill: var(--ink-force) }
.drawing .ink-bad { fill: var(--ink-bad) }
.drawing .ink-move { fill: var(--ink-move) }
`
