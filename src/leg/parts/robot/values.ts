import { tipOverSlope } from '../../../kinematics/index.js'
import { line, type Use, value } from '../../run/index.js'
import { hipOffset } from '../links/fields.js'
import * as robot from './fields.js'

const evenShare = line('share of one leg', { legs: 'count' }, 'ratio', '1 / legs', ({ legs }) => 1 / legs)
const unevenness = line(
  'load of the most loaded leg over the mean',
  { forward: 'length', spacing: 'length', left: 'length', width: 'length' },
  'ratio',
  '1 + 2 · |forward| / spacing + 2 · |left| / width',
  (x) => 1 + (2 * Math.abs(x.forward)) / x.spacing + (2 * Math.abs(x.left)) / x.width,
)
const more = line.product('share of the most loaded leg', { share: 'ratio', over: 'ratio' }, 'ratio')
const half = line('half of a distance', { distance: 'length' }, 'length', 'distance / 2', ({ distance }) => distance / 2)
const nearer = line(
  'distance from the centre of mass to the nearer edge',
  { middle: 'length', off: 'length' },
  'length',
  'max(0, middle − |off|)',
  (x) => Math.max(0, x.middle - Math.abs(x.off)),
)
const across = line(
  'distance of left and right feet',
  { track: 'length', offset: 'length' },
  'length',
  'track + 2 · offset',
  (x) => x.track + 2 * x.offset,
)
const lesser = line.smallest('smaller slope', { along: 'angle', across: 'angle' }, 'angle')

/** Whether the centre of mass is off the middle of the feet. */
const isOff = value('robot.isOff', [], (use) => use(robot.centreOfMassForward) !== 0 || use(robot.centreOfMassLeft) !== 0)
/** Distance of left and right feet. */
export const feetAcross = value('robot.feetAcross', [], (use) => use.run(across, { track: use(robot.hipTrack), offset: use(hipOffset) }))

/**
 * Load of the most loaded leg over the mean, from where the centre of mass is between four feet: `1 + 2x/L + 2y/B`. Legs are calculated for the most
 * loaded one, since all are built alike.
 */
export const overMean = value('robot.overMean', [], (use) => {
  if (!use(isOff)) return 1
  return use.run(unevenness, {
    forward: use(robot.centreOfMassForward),
    spacing: use(robot.hipSpacing),
    left: use(robot.centreOfMassLeft),
    width: use(feetAcross),
  })
})
/** Part of the weight on the most loaded leg, all standing or averaged over a stride. */
export const legShare = value('robot.legShare', [], (use) => {
  const share = use.run(evenShare, { legs: use(robot.legs) })
  return use(isOff) ? use.run(more, { share, over: use(overMean) }) : share
})
/** Height of the centre of mass over the feet. */
export const centreHeight = value('robot.centreHeight', [], (use) => use(robot.centreOfMassHeight) ?? use(robot.standHeight))
const over = (use: Use<never>, distance: number, off: number) =>
  use.run(tipOverSlope, { marginToEdge: use.run(nearer, { middle: use.run(half, { distance }), off }), height: use(centreHeight) })
/** Slope at which the robot tips over its lower feet, straight up or down the slope. */
export const tipOverAlong = value('robot.tipOverAlong', [], (use) => over(use, use(robot.hipSpacing), use(robot.centreOfMassForward)))
/** Slope across which the robot tips over its lower feet. */
export const tipOverAcross = value('robot.tipOverAcross', [], (use) => over(use, use(feetAcross), use(robot.centreOfMassLeft)))
/** Slope at which the weight passes through the edge of the feet. Across, the feet stand outside the body by the sideways offset. */
export const tipOver = value('robot.tipOver', [], (use) => use.run(lesser, { along: use(tipOverAlong), across: use(tipOverAcross) }))
