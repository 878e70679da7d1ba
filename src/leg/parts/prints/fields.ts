import { field } from '../../leaves.js'

export const lineWidth = field('print.lineWidth', [], 'length', (x) => x.print.lineWidth)
export const walls = field('print.walls', [], 'count', (x) => x.print.walls)
export const infill = field('print.infill', [], 'ratio', (x) => x.print.infill)
