import { pinBearing, pinShear, tiltedSeat } from '../../../../fasteners/index.js'
import { roundBendingStress } from '../../../../structures/index.js'
import type { Check } from '../../../cases/check.js'
import { harderOfTwo, shareOfStress } from '../../../lines.js'
import { line, type Use, value } from '../../../run/index.js'
import { offset } from '../../ball-bearings/fields.js'
import { shearShare } from '../../materials/fields.js'
import { strengthInAir } from '../../materials/in-air.js'
import { yieldShare } from '../../pins-and-bosses/fields.js'
import { force } from '../through-hip/checks.js'
import { pin } from '../through-hip/fields.js'
import { coupleOf } from './couple.js'
import { type Arm, armMaterial, cheeks, hasBearing, noArm } from './fields.js'

const apartOf = line(
  'distance of the cheeks of a clevis',
  { cheek: 'length', gap: 'length', lug: 'length' },
  'length',
  'lug + 2 · gap + cheek',
  (x) => x.lug + 2 * x.gap + x.cheek,
)
type Loaded = Use<'pivot' | 'event'>
/** Moment of the rod beside the middle of what holds its pin. */
const moment = value('rodEnd.moment', ['pivot', 'event'], (use) => use.run(coupleOf, { force: use(force), distance: use(offset) }))

const seatPressure = value('rodEnd.seatPressure', ['pivot', 'event'], (use): number => {
  const [diameter, cheek] = [use(pin.diameter), use(pin.cheekThickness)]
  if (use(cheeks) === 1) return use.run(tiltedSeat, { force: use(force), moment: use(moment), diameter, length: cheek }).peakPressure
  const distance = use.run(apartOf, { cheek, gap: use(pin.gap), lug: use(pin.lugThickness) })
  const harder = use.run(harderOfTwo, { force: use(force), moment: use(moment), distance })
  return use.run(pinBearing, { force: harder, diameter, thickness: cheek }).projectedPressure
})
const seatStrength = value('rodEnd.seatStrength', ['pivot', 'event', 'air'], (use) =>
  use.at(strengthInAir.alongLayers, { material: use(armMaterial) }),
)
const bending = value('rodEnd.pinBending', ['pivot', 'event'], (use) =>
  use.run(roundBendingStress, { moment: use(moment), diameter: use(pin.diameter), holeDiameter: 0 }),
)
const shear = value(
  'rodEnd.pinShear',
  ['pivot', 'event'],
  (use: Loaded) => use.run(pinShear, { force: use(force), diameter: use(pin.diameter), planes: 1 }).peakStress,
)
const ofTensile = (id: string, share: typeof yieldShare) =>
  value(id, [], (use) => use.run(shareOfStress, { share: use(share), strength: use(pin.strength) }))
const pinYield = ofTensile('rodEnd.pinYield', yieldShare)
const pinShearStrength = ofTensile('rodEnd.pinShearStrength', shearShare)

const heldByBearing = value('rodEnd.heldByBearing', ['pivot'], (use) =>
  use(hasBearing) ? 'a ball bearing in the arm holds the pin' : undefined,
)
const heldTwice = value('rodEnd.heldTwice', ['pivot'], (use) =>
  use(cheeks) === 2 && !use(hasBearing) ? 'two cheeks hold the pin' : undefined,
)

const checksOf = (arm: Arm): readonly Check[] => {
  const common = {
    part: `pin at the ${arm} of the rod`,
    kind: 'stress',
    scope: 'leg',
    of: (x) => noArm(x, arm) ?? { pivot: arm },
  } as const satisfies Partial<Check>
  return [
    {
      id: `${arm}Pin.seat`,
      ...common,
      mode: 'wears its seat in the arm oval',
      consequence: 'fails to work',
      when: ['bearsLoad'],
      demand: seatPressure,
      capacity: seatStrength,
      unless: heldByBearing,
      demandIs: 'the pressure of the pin on the projected area of the harder cheek, with the moment of a rod beside its middle',
      capacityIs: 'the strength of the arm for the time under load',
      remedy: 'the rod nearer to the middle of its pin, thicker cheeks, a thicker pin, or a metal arm',
    },
    {
      id: `${arm}Pin.bending`,
      ...common,
      mode: 'bends where it sticks out',
      consequence: 'breaks',
      when: ['oneMoment'],
      demand: bending,
      capacity: pinYield,
      unless: heldTwice,
      demandIs: 'the bending stress of the pin from the rod beside what holds it',
      capacityIs: 'its yield strength, assumed to be 0.85 of its tensile strength',
      remedy: 'a thicker pin, or the rod nearer to what holds it',
    },
    {
      id: `${arm}Pin.shear`,
      ...common,
      mode: 'is sheared off where it sticks out',
      consequence: 'breaks',
      when: ['oneMoment'],
      demand: shear,
      capacity: pinShearStrength,
      unless: heldTwice,
      demandIs: 'the peak shear stress in its one plane',
      capacityIs: 'its shear strength, 0.577 of its tensile strength',
      remedy: 'a thicker pin, or cheeks on both sides of the rod',
    },
  ]
}

/** Checks of the rod's pins in crank and rocker. */
export const armPinChecks: readonly Check[] = (['crank', 'rocker'] as const).flatMap(checksOf)
