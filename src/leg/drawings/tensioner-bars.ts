import { barBlock, type Figure, plain } from '../../drawing/index.js'
import { beddingStrain } from '../parts/transmission/cord/tensioner.js'
import type { CordCut } from '../plans/cord-cut.js'
import { tensionerSetting } from '../plans/tensioning.js'
import type { Facts } from './facts.js'
import { length } from './words.js'

/** Where the tensioner of a cord stands: its slack gone, at the pretension, at the end of its life. */
export function tensionerBars(figure: Figure, facts: Facts, cut: CordCut): void {
  const { start, set, end, travel } = tensionerSetting(facts.leg, cut, facts.get(beddingStrain))
  const mm = (x: { readonly si: number }) => 1000 * x.si
  const rows = [
    ['slack gone', mm(start)],
    ['at the pretension', mm(set)],
    ['at the end of its life', mm(end)],
  ] as const
  figure.block('Tensioner, from backed right out, mm of travel', (y) =>
    barBlock(
      {
        to: Math.max(mm(travel), mm(end)) * 1.05,
        rules: [{ at: mm(travel), name: `travel ${plain(mm(travel))}` }],
        bars: rows.map(([name, to]) => ({ name, to, text: plain(to, 3), ...(to > mm(travel) ? { ink: 'bad' as const } : {}) })),
      },
      y,
    ),
  )
  figure.rows(...rows.map(([name, to]) => length(`tensioner, ${name}`, to, 'result')), length('tensioner travel', mm(travel)))
}
