import { type Curve, type Drawing, Figure, type Point, plain, plotBlock } from '../../drawing/index.js'
import { clampLoadAt } from '../clamp-load-at.js'
import { cordJoints, type DrivenJoint, drivenBy, jointWords } from '../numbers.js'
import * as belt from '../parts/transmission/belt/fields.js'
import { pretensionLeft, pretensionSet } from '../parts/transmission/cord/fields.js'
import { pretensionNeeded } from '../parts/transmission/cord/holding-checks.js'
import { pretensionInMonth } from '../parts/transmission/pretension-left.js'
import { isPrinted } from '../printed.js'
import { beltOrCordOf } from '../second-stage.js'
import { SECOND } from './drive-sizes.js'
import { type Facts, resultSentence } from './facts.js'
import { amount, answerOf, boltWords, checkedOf } from './words.js'

const CHECKS = ['cord.slack', 'cord.shelf', 'kneeCord.slack', 'kneeCord.shelf', 'stackBolt.slip', 'stackBolt.separation', 'motorBolt.slip']
/** How the tension of each kind falls over years, as in the checks. */
const OF_KIND = {
  cord: 'Cords relax by the same share in every year, and within the first by as much in each tenfold time from an hour on.',
  belt: 'Belts bed in: the first hours and days take as much in each tenfold time from an hour on, until a year has taken the share of the document.',
} as const
const MONTHS = 12
const DAYS = 365

/** Name of a cord or belt: by its joint, or by the link that it runs along. */
const nameOf = (joint: DrivenJoint): string => (joint === SECOND ? 'upper link' : jointWords(joint))

/** Cords or belts whose tension falls. */
interface Relaxing {
  readonly joint: DrivenJoint
  readonly kind: 'cord' | 'belt'
  readonly set: number
  readonly left: number
}

/** Every cord and belt of a leg: of the joints, and along the upper link. */
function relaxing(facts: Facts): Relaxing[] {
  const { x } = facts.leg
  const along = beltOrCordOf(x)?.kind
  const cords = [...cordJoints(x), ...(along === 'cord' ? [SECOND] : [])]
  const belts = [...drivenBy(x, 'belt'), ...(along === 'belt' ? [SECOND] : [])]
  return [
    ...cords.map((joint) => {
      const at = { joint }
      return { joint, kind: 'cord' as const, set: facts.get(pretensionSet, at), left: facts.get(pretensionLeft, at) }
    }),
    ...belts.map((joint) => {
      const at = { joint }
      return { joint, kind: 'belt' as const, set: facts.get(belt.pretensionSet, at), left: facts.get(belt.pretensionLeft, at) }
    }),
  ]
}

/** Tension that walking in every direction and on the slope needs, as the check of the shelf has it; a line over the year. */
function neededLine(facts: Facts, figure: Figure, joint: DrivenJoint): Curve[] {
  const needed = facts.tried(pretensionNeeded, { joint })
  if (needed === undefined) return []
  figure.rows(amount(`pretension that the ${nameOf(joint)} needs to walk, also on the slope`, needed, 'N'))
  return [
    {
      points: [
        [0, needed],
        [MONTHS, needed],
      ],
      line: 'other',
      label: [`${nameOf(joint)} needs`, `${plain(needed, 3)} N to walk`],
    },
  ]
}

/** Whether bolts clamp prints. */
const creeps = ({ leg: { x } }: Facts): boolean =>
  Object.values(x.bolts).some(({ stack }) => stack.some(({ material }) => isPrinted(x, material)))

/** Tension of a cord or belt over the months of a year. */
function tensionCurve(figure: Figure, { joint, set, left }: Relaxing): Curve {
  const points = Array.from({ length: MONTHS + 1 }, (_, months): Point => [months, pretensionInMonth(set, left, months)])
  figure.rows(
    amount(`pretension of the ${nameOf(joint)}, set`, set, 'N', 'document'),
    amount(`pretension of the ${nameOf(joint)} after a year`, points.at(-1)![1], 'N'),
  )
  return {
    points,
    line: joint === 'hip' ? 'thick' : joint === SECOND ? 'thin' : 'moveSecond',
    label: [nameOf(joint), `${plain(set, 3)} to`, `${plain(points.at(-1)![1], 3)} N`],
    ink: joint === 'knee' ? 'move' : 'ink',
  }
}

/** Clamp load of a bolt over the days of a year, closest at first, when it falls fastest. */
function clampCurve(facts: Facts, figure: Figure, group: string, i: number): Curve {
  const room = facts.leg.x.environment.assemblyTemperature
  const { preload, after } = clampLoadAt(facts.leg, group)
  const points: Point[] = [
    [0, preload],
    ...Array.from({ length: 16 }, (_, k): Point => {
      const days = DAYS * ((k + 1) / 16) ** 3
      return [days, after(days, room)]
    }),
  ]
  figure.rows(
    amount(`preload of one of the ${boltWords(group)}`, preload, 'N'),
    amount(`clamp load of one of the ${boltWords(group)} after a year`, points.at(-1)![1], 'N'),
  )
  return {
    points,
    line: i === 0 ? 'thick' : 'moveSecond',
    label: [boltWords(group), `${plain(preload, 3)} to`, `${plain(points.at(-1)![1], 3)} N`],
    ink: i === 0 ? 'ink' : 'move',
  }
}

/** Pretension and clamp load over a year at room temperature. */
export function yearDrawing(facts: Facts): Drawing | undefined {
  const spans = relaxing(facts)
  if (spans.length + facts.all('boltGroup').length === 0) return undefined
  const kinds = [...new Set(spans.map(({ kind }) => kind))]
  const figure = new Figure({
    id: 'year',
    title: `${spans.length === 0 ? 'Clamp load of the bolts' : `Pretension of the ${kinds.join('s and ')}s and clamp load of the bolts`} over a year at room temperature`,
    ...answerOf(spans.length === 0 ? 'Clamp load over a year' : 'Pretension and clamp load over a year', facts.worst(CHECKS)),
  })
  const tension = spans.map((span) => tensionCurve(figure, span))
  const needs = tension.length === 0 ? [] : spans.flatMap(({ joint, kind }) => (kind === 'cord' ? neededLine(facts, figure, joint) : []))
  if (tension.length > 0)
    figure.block('Pretension of a span', (y) =>
      plotBlock(
        { x: { title: 'months', from: 0, to: MONTHS }, y: { title: 'N', from: 0 }, curves: [...tension, ...needs], height: 130 },
        y,
      ),
    )
  const clamp = facts.all('boltGroup').map((group, i) => clampCurve(facts, figure, group, i))
  if (clamp.length > 0)
    figure.block('Clamp load of a bolt, not tightened again', (y) =>
      plotBlock({ x: { title: 'days', from: 0, to: DAYS }, y: { title: 'N', from: 0 }, curves: clamp, height: 110 }, y),
    )
  figure
    .say(
      ...kinds.map((kind) => OF_KIND[kind]),
      `Bolts lose clamp load by embedding at once${creeps(facts) ? ', and by creep of the prints afterwards' : ''}.`,
      ...facts.checks(CHECKS).slice(0, 1).map(resultSentence),
    )
    .rows(...facts.checks(CHECKS).slice(0, 5).map(checkedOf))
  return figure.done()
}
