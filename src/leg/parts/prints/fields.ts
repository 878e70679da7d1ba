import { field } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { partOf } from '../../numbers.js'

const printIn = (x: LegNumbers, { print }: { readonly print: string }) => partOf(x.prints, print, 'way of printing')

export const lineWidth = field('print.lineWidth', ['print'], 'length', (x, at) => printIn(x, at).lineWidth)
export const walls = field('print.walls', ['print'], 'count', (x, at) => printIn(x, at).walls)
export const infill = field('print.infill', ['print'], 'ratio', (x, at) => printIn(x, at).infill)
