import { clearanceHole, parallelKeySize, socketHead } from '../../../fasteners/index.js'
import { band, field, record, reference, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { NoValueError } from '../../no-value.js'
import { shaftOf } from '../../numbers.js'
import { constant } from '../../run/index.js'

const stackIn = (x: LegNumbers) => {
  const { stack } = shaftOf(x)
  if (stack === undefined) throw new NoValueError('nothing is given of the stack on the hip shaft')
  return stack
}
const keyIn = (x: LegNumbers) => {
  const { key } = stackIn(x)
  if (key === undefined) throw new NoValueError('the stack on the hip shaft has no key')
  return key
}
export const outerDiameter = field('stack.outerDiameter', [], 'length', (x) => stackIn(x).outerDiameter)
export const innerDiameter = field('stack.innerDiameter', [], 'length', (x) => stackIn(x).innerDiameter)
export const material = reference('stack.material', [], 'material', (x) => stackIn(x).material)
export const tighteningTorque = field('stack.tighteningTorque', [], 'torque', (x) => stackIn(x).tighteningTorque)
export const clampLeft = band(
  'stack.clampLeft',
  'share of the preload left in the stack on the hip shaft',
  [],
  'tighten the nut after a season and note by how much it turns',
  (x) => stackIn(x).clampLeft,
)
export const nut = {
  bearingDiameter: field('stack.nutBearing', [], 'length', (x) => socketHead.si(shaftOf(x).thread).bearingDiameter, {
    title: 'bearing diameter under the nut of the hip shaft',
    table: socketHead,
  }),
  holeDiameter: field('stack.nutHole', [], 'length', (x) => clearanceHole.si(shaftOf(x).thread).medium, {
    title: 'clearance hole of the stack on the hip shaft',
    table: clearanceHole,
  }),
}
export const key = {
  size: record('stack.keySize', [], (x) => parallelKeySize.si(keyIn(x).size), {
    title: 'key of the stack on the hip shaft',
    table: parallelKeySize,
  }),
  length: field('stack.keyLength', [], 'length', (x) => keyIn(x).length),
  hubDiameter: field('stack.hubDiameter', [], 'length', (x) => keyIn(x).hubDiameter),
  hubMaterial: reference('stack.hubMaterial', [], 'material', (x) => keyIn(x).hubMaterial),
}
const flatIn = (x: LegNumbers) => {
  const { flat } = stackIn(x)
  if (flat === undefined) throw new NoValueError('the shaft of the hip has no flat')
  return flat
}
export const flat = {
  depth: field('stack.flatDepth', [], 'length', (x) => flatIn(x).depth),
  length: field('stack.flatLength', [], 'length', (x) => flatIn(x).length),
  hubMaterial: reference('stack.flatHubMaterial', [], 'material', (x) => flatIn(x).hubMaterial),
}
/** Whether a key or flat passes the torque of the drive through the shaft. */
export const isTurnedByShaft = word('stack.isTurnedByShaft', [], (x) => stackIn(x).key !== undefined || stackIn(x).flat !== undefined)
/** Shear strength of a key of plain carbon steel, without permanent set. */
export const keyShear = constant('stack.keyShear', {
  title: 'shear strength of the key',
  kind: 'stress',
  typical: 190e6,
  low: 160e6,
  high: 220e6,
  source: { level: 'unverified', where: 'key steel of 600 MPa: yield in shear 0.577 of some 330 MPa' },
  measuredBy: 'read the grade from the packet of the key',
})
