/**
 * Charts as Vega-Lite specifications: plain JSON that notebooks show natively and that the report renders to SVG.
 *
 * Colours are the eight of Okabe and Ito, "Color Universal Design" (2008), chosen so that colour-blind readers can distinguish them; line
 * dashes, marker shapes and direct text repeat what colour says.
 *
 * @module
 */

export { type Bar, barChart } from './bar-chart.js'
export type { Chart } from './chart.js'
export { lineChart } from './line-chart.js'
export { pointChart } from './point-chart.js'
export { type Axis, type Band, type ChartText, PALETTE, type Rule, type Series } from './specification.js'
export { type Renderer, svgOf } from './svg.js'
