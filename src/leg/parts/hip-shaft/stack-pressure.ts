import { ringEdgePressure } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { line, type Use, value } from '../../run/index.js'
import { airTemperature, day } from '../load/fields.js'
import { strengthInAir } from '../materials/in-air.js'
import { allowableStress } from '../materials/values.js'
import { stackClamp, stackClampNew } from './stack-clamp.js'
import { innerDiameter, material, outerDiameter } from './stack-fields.js'
import { bending } from './stack-shaft.js'

const larger = line.largest('larger pressure', { full: 'stress', left: 'stress' }, 'stress')

const under = (use: Use<'leg' | 'event' | 'air' | 'age'>, clampLoad: number) =>
  use.run(ringEdgePressure, {
    clampLoad,
    outerDiameter: use(outerDiameter),
    innerDiameter: use(innerDiameter),
    moment: use(bending),
  }).edgePressure

/** Pressure at the edge of the ring. A joint that gapes presses harder under the clamp load that is left than under all of it: the larger counts. */
const edgePressure = value('stack.edgePressure', ['leg', 'event', 'air', 'age'], (use) => {
  return use.run(larger, { full: under(use, use(stackClampNew)), left: under(use, use(stackClamp)) })
})
/** Pressure that the ring bears for a day: the clamp load fades as it creeps, so that its first day decides. */
const allowed = value('stack.pressureAllowed', ['event', 'air'], (use) =>
  allowableStress(use, use(material), { direction: 'alongLayers', temperature: use(airTemperature), duration: use(day) }),
)

const RING = {
  part: 'stack on the hip shaft',
  kind: 'stress',
  scope: 'leg',
  consequence: 'fails to work',
  demand: edgePressure,
  demandIs:
    'the pressure at the edge of the smallest ring in which two parts touch: clamp load, in warm air larger by what the stack grows, and bending together',
  remedy: 'a wider ring, a harder part, or the rod nearer to the plane of the links',
} as const

/** Checks of the pressure in the ring of the stack. */
export const stackPressureChecks: readonly Check[] = [
  {
    id: 'shaftStack.crush',
    ...RING,
    mode: 'is crushed under its clamp load',
    when: ['walks', 'repeats'],
    capacity: allowed,
    capacityIs: 'the strength of the softest part for a day at the temperature of the air',
  },
  {
    id: 'shaftStack.edge',
    ...RING,
    mode: 'is crushed at its edge',
    when: ['rare'],
    capacity: value('stack.edgeStrength', ['event', 'air'], (use) => use.at(strengthInAir.alongLayers, { material: use(material) })),
    capacityIs: 'the strength of the softest part for the time under load',
  },
]
