import { type Drawing, plain, SCALE, scalesOf, type TitleBlock, type TitleCell } from '../../drawing/index.js'
import { refuse } from '../../units/index.js'
import { specificationHash } from '../report/hash.js'
import { LIBRARY_VERSION } from '../report/version.js'
import type { Facts } from './facts.js'

/** What the caller gives for the title block. */
export interface TitleBlockOptions {
  /** Date of the drawing, as it is to be printed. Default: room to write. */
  readonly date?: string
  /** Who drew. Default: room to write. */
  readonly by?: string
  /** Who checked. Default: room to write. */
  readonly checkedBy?: string
}

const NAMES = ['date', 'by', 'checkedBy'] as const
/** A longer text would not fit into its cell. */
const LONGEST = 60

/** Throws unless each text for the title block is a line. */
export function rejectTitles(where: string, options: TitleBlockOptions): void {
  for (const name of NAMES) {
    const given: unknown = options[name]
    if (given !== undefined && (typeof given !== 'string' || given.length > LONGEST || /[\n\r]/.test(given)))
      refuse(where, name, given, `must be text of one line, of at most ${LONGEST} letters, such as 2026-03-31`)
  }
}

/** Letters of the hash that name a specification on a drawing; the report has all of them. */
const SHOWN = 12

/** Title block of a drawing; a chart has none. */
export function titleBlockOf(
  { leg, assessment }: Facts,
  { title, groups }: Pick<Drawing, 'title' | 'groups'>,
  { date = '', by = '', checkedBy = '' }: TitleBlockOptions,
): TitleBlock | undefined {
  const scales = scalesOf(groups)
  if (scales.length === 0) return undefined
  const views = groups.filter(({ place }) => place !== undefined).length
  const ways = Object.entries(leg.x.prints)
  const prints = ways.map(
    ([name, { walls, lineWidth, infill }]) =>
      `${ways.length === 1 ? '' : `${name} `}${plain(walls)} ${walls === 1 ? 'wall' : 'walls'} of ${plain(1000 * lineWidth)} mm, infill ${plain(100 * infill)} % next to fasteners`,
  )
  const one = (name: string, value: string): readonly TitleCell[] => [[name, value]]
  return {
    rows: [
      one('Part', title),
      one('Leg', assessment.leg.name),
      one('Specification', `SHA-256 begins ${specificationHash(assessment.leg).slice(0, SHOWN)}`),
      [
        [SCALE, scales.join(', ')],
        ['Sizes', 'mm'],
      ],
      ...(views > 1 ? [one('Views', 'each seen from the side that its title names; no view is projected from another')] : []),
      one('General tolerance', 'none given; a size without its own is nominal'),
      ...(prints.length === 0 ? [] : [one('Printed parts', prints.join('; '))]),
      [
        ['Made with', `limbwright ${LIBRARY_VERSION}`],
        ['Date', date],
      ],
      [
        ['Drawn by', by],
        ['Checked by', checkedBy],
      ],
    ],
  }
}
