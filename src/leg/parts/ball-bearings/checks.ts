import type { Check } from '../../cases/check.js'
import type { LegNumbers } from '../../leg-numbers.js'
import type { Joint } from '../../numbers.js'
import { line, value } from '../../run/index.js'
import { type At, capChecks } from './cap-checks.js'
import { pairSpacing, seatedOf, sidePlayAccepted } from './fields.js'
import { life, still, swingRemark, turns } from './life.js'
import { ballBorne, ballLoad, legBelow, moment, radialLoad, staticBorne, staticLoad } from './loads.js'
import { PIVOT_WORDS, type Pivot } from './pivots.js'
import * as seat from './seat.js'

const sideways = line.product('sideways movement of the foot', { tilt: 'angle', arm: 'length' }, 'length')
/** Movement of the foot either way by the play of the bearings of a pin. */
export const footPlay = value('pivot.footPlay', ['pivot', 'event', 'air'], (use) =>
  use.run(sideways, { tilt: use(seat.playTilt), arm: use(legBelow) }),
)

const unloaded = value('pivot.unloaded', ['pivot', 'event', 'air', 'age'], (use) =>
  use(radialLoad) === 0 ? 'nothing loads it' : undefined,
)
const notCocked = value('pivot.notCocked', ['pivot', 'event', 'air', 'age'], (use) => {
  if (use(pairSpacing) !== undefined) return 'two bearings side by side share the moment'
  return use(moment) === 0 ? 'nothing tilts the bearing' : use(unloaded)
})

const LOAD_REMEDY = 'a larger bearing, two of them farther apart, or the rod nearer to the plane of its bearing'
const SEAT_REMEDY = 'a wider or larger bearing, two of them, or a stronger material round the seat'

const loadChecks = (at: At): readonly Check[] => [
  {
    ...at('static'),
    mode: 'is dented by its load',
    consequence: 'fails to work',
    kind: 'force',
    when: ['oneMoment'],
    demand: staticLoad,
    capacity: staticBorne,
    unless: unloaded,
    demandIs: 'the equivalent static load of the harder bearing',
    capacityIs: 'its static rating over the safety for its duty (1.5 for shocks, 2 for oscillation)',
    remedy: LOAD_REMEDY,
    requiredReserve: 1,
  },
  {
    ...at('cocking'),
    mode: 'is dented by the few balls that take the tilting moment',
    consequence: 'fails to work',
    kind: 'force',
    when: ['oneMoment'],
    demand: ballLoad,
    capacity: ballBorne,
    unless: notCocked,
    demandIs: 'the load across the axis that would press a ball as hard as load and tilting moment do together',
    capacityIs: 'its static rating over the safety for its duty (1.5 for shocks, 2 for oscillation)',
    remedy: 'two bearings side by side, the bearing in the eye of the rod, or the rod between two cheeks',
    requiredReserve: 1,
  },
  {
    ...at('life'),
    mode: 'pits by the strides of a season',
    consequence: 'fails to work',
    kind: 'count',
    when: ['repeats'],
    demand: turns,
    capacity: life,
    unless: still,
    remark: swingRemark,
    demandIs: 'the turns that the strides of a season add up to',
    capacityIs: 'the turns that 95 % of such bearings reach at the load of the stance',
    remedy: LOAD_REMEDY,
  },
]

const seatChecks = (at: At): readonly Check[] => [
  {
    ...at('seatPressure'),
    mode: 'presses its seat oval',
    consequence: 'fails to work',
    kind: 'stress',
    when: ['bearsLoad'],
    demand: seat.seatPressure,
    capacity: seat.seatStrength,
    demandIs: 'the pressure at the harder end of the seat, on its projected area',
    capacityIs: 'the strength of the material round the seat for the time under load',
    remedy: SEAT_REMEDY,
  },
  {
    ...at('seatSplit'),
    mode: 'splits its seat by the press fit',
    consequence: 'breaks',
    kind: 'stress',
    when: ['coldFit'],
    demand: seat.hoop,
    capacity: seat.splitStrength,
    unless: seat.slides,
    demandIs: 'the hoop stress of a dry seat on a cold morning',
    capacityIs: 'the strength of the material round the seat for an hour, in its weaker direction',
    remedy: 'less interference with shoulder and cap, or a wider part round the seat',
  },
  {
    ...at('seatLoose'),
    mode: 'loosens in its seat when warm',
    consequence: 'fails to work',
    kind: 'length',
    when: ['warms'],
    demand: seat.interferenceLost,
    capacity: seat.interferenceKept,
    unless: seat.held,
    demandIs: 'the interference lost to heat and moisture',
    capacityIs: 'the interference that relaxation since assembly leaves',
    remedy: 'shoulder and cap, or adhesive as well as the press fit',
  },
  {
    ...at('seatGrip'),
    mode: 'moves out of its relaxed seat',
    consequence: 'fails to work',
    kind: 'force',
    when: ['bearsLoad'],
    demand: seat.gripDemand,
    capacity: seat.gripCapacity,
    unless: seat.nothingPulls,
    demandIs: 'the force along the axis',
    capacityIs: 'the grip of the press fit with the pressure that relaxation since assembly and then the temperature leave',
    remedy: 'shoulder and cap, or adhesive',
  },
]

const playCheck = (at: At): Check => ({
  ...at('sidePlay'),
  mode: 'lets the foot move sideways by its play',
  consequence: 'fails to work',
  kind: 'length',
  when: ['warms'],
  demand: footPlay,
  capacity: sidePlayAccepted,
  demandIs: 'the sideways movement of the foot either way, from the clearance of the bearings and of a ring that is loose in its warm seat',
  capacityIs: 'two millimetres (choice)',
  remedy: 'bearings farther apart, or a seat that keeps its interference when warm',
  requiredReserve: 1,
})

const lacking = (x: LegNumbers, pivot: Pivot) =>
  seatedOf(x, pivot) === undefined ? `no ball bearing is given at the ${PIVOT_WORDS[pivot]}` : { pivot }

const atEnd =
  (pivot: 'crank' | 'rocker' | 'drum'): At =>
  (mode) => ({ id: `${pivot}Bearing.${mode}`, part: `bearing at the ${PIVOT_WORDS[pivot]}`, scope: 'leg', of: (x) => lacking(x, pivot) })
const atPin: At = (mode) => ({
  id: `pinBearing.${mode}`,
  part: 'bearing on the joint pin',
  scope: 'joint',
  of: (x, joint: Joint) => ((joint as string) === 'sidewaysHip' ? 'the sideways hip has no pin' : lacking(x, joint)),
})

const atSideways: At = (mode) => ({
  id: `sidewaysBearing.${mode}`,
  part: 'bearing of the sideways hip',
  scope: 'leg',
  of: (x) => lacking(x, 'sidewaysHip'),
})
const OF_THE_PAIR: Readonly<Record<string, Partial<Check>>> = {
  'sidewaysBearing.static': {
    demandIs: 'the equivalent static load of the nearer bearing',
    remedy: 'a larger bearing, bearings farther apart, or less overhang',
  },
  'sidewaysBearing.seatPressure': { remedy: 'a wider or larger bearing, bearings farther apart, or a stronger material round the seat' },
  'sidewaysBearing.seatSplit': {},
  'sidewaysBearing.seatLoose': {},
  'sidewaysBearing.seatGrip': {},
}
/** A pair that no stride turns: neither a moment on one bearing, nor life. */
const sidewaysChecks = [...loadChecks(atSideways), ...seatChecks(atSideways)].flatMap((check): Check[] => {
  const own = OF_THE_PAIR[check.id]
  return own === undefined ? [] : [{ ...check, ...own }]
})

/** Checks of ball bearings at both ends of a rod, under its drum, on the pins of hip and knee, and at the sideways hip. */
export const pivotChecks: readonly Check[] = [
  ...(['crank', 'rocker', 'drum'] as const).flatMap((pivot) => [
    ...loadChecks(atEnd(pivot)),
    ...seatChecks(atEnd(pivot)),
    ...capChecks(atEnd(pivot)),
  ]),
  ...loadChecks(atPin),
  ...seatChecks(atPin),
  ...capChecks(atPin),
  playCheck(atPin),
  ...sidewaysChecks,
]
