/**
 * Technical drawings as SVG and DXF: views to scale with dimensions, hatching, leaders and labels that never overlap (ISO 128, ISO 129, ISO 5455).
 * Knows nothing of legs.
 *
 * @module
 */
export { forceArrow, motionHead } from './arrows.js'
export { type Bar, type Bars, barBlock } from './bars.js'
export type { Drawing, DrawingTable, Group, TitleBlock, TitleCell } from './drawing.js'
export { toDxf } from './dxf.js'
export { type Block, Figure, type FigureWords, type Row } from './figure.js'
export { textWidth, wrapped } from './font.js'
export * from './geometry.js'
export { hatchLines } from './hatch.js'
export { type Fill, type Ink, type Item, type LineClass, SMALL, type TextItem, textAt } from './items.js'
export { plain, roundBelow, ticksOf } from './numbers.js'
export { pathData } from './path.js'
export { type Curve, type Plot, plotBlock } from './plot.js'
export { DRAWING_STYLE } from './style.js'
export { drawingSvg, type SvgOptions } from './svg.js'
export { toTemplate } from './template.js'
export { SCALE, scalesOf, withTitleBlock } from './title-block.js'
export { type Place, View } from './view.js'
export { MARGIN, PAGE_WIDTH } from './view-layout.js'
