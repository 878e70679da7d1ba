import { pressFit, pressFitHold, tiltedSeat } from '../../../fasteners/index.js'
import { line, type Use, value } from '../../run/index.js'
import { keptOf, lostOf } from '../hip-shaft/bearings.js'
import { leastLoss } from '../hip-shaft/fields.js'
import { housingRatio, presses, raceway, racewayShare, splitTime, wide } from '../hip-shaft/seat.js'
import { airTemperature } from '../load/fields.js'
import { steel } from '../materials/fields.js'
import { strengthInAir } from '../materials/in-air.js'
import { interferenceAfter, riseSinceAssembly } from '../materials/interference.js'
import { interferenceLeft, modulusWithinAnHour } from '../materials/since-assembly.js'
import { allowableStress, frictionOnSteel, modulus, poissonRatio, swelling } from '../materials/values.js'
import { gripReserve } from '../pins-and-bosses/fields.js'
import * as seated from './fields.js'
import { axialLoad, moment, ownLoad, pitchDiameter } from './loads.js'

/** An interference after a change of temperature, in a dry seat or one that water has widened. */
const changed = (use: Use<'pivot'>, interference: number, temperatureChange: number, growth: number): number =>
  interferenceAfter(
    use,
    { material: use(seated.seatMaterial), diameter: use(seated.bearing.outerDiameter), interference },
    temperatureChange,
    growth,
  )
const interferenceAt = (use: Use<'pivot' | 'air'>, growth: number): number =>
  changed(use, use(seated.seatInterference), riseSinceAssembly(use), growth)
/** Interference as assembled, at the temperature of the air. */
export const interferenceNow = value('pivot.interferenceNow', ['pivot', 'air'], (use) =>
  interferenceAt(use, use.at(swelling, { material: use(seated.seatMaterial) })),
)
const dryInterference = value('pivot.dryInterference', ['pivot', 'air'], (use) => interferenceAt(use, 0))
/** The same after the seat has relaxed since assembly. */
export const relaxedInterference = value('pivot.relaxedInterference', ['pivot', 'event', 'air'], (use) => {
  const material = use(seated.seatMaterial)
  const assembled = changed(use, use(seated.seatInterference), 0, use.at(swelling, { material }))
  return interferenceLeft(use, material, assembled, changed(use, 0, riseSinceAssembly(use), 0))
})

/** Diameter of the part round the seat; of the sideways hip, whose document does not give it, a share of the ring. */
export const housing = value('pivot.housing', ['pivot'], (use) =>
  use(seated.isSideways)
    ? use.run(wide, { ratio: use(housingRatio), outer: use(seated.bearing.outerDiameter) })
    : use(seated.housingDiameter),
)

const press = (use: Use<'pivot'>, interference: number, seatModulus: number) => {
  const [material, ring] = [use(seated.seatMaterial), use(steel)]
  const { bore, outerDiameter } = seated.bearing
  const outer = use(outerDiameter)
  return use.run(pressFit, {
    diameter: outer,
    diametralInterference: use.run(presses, { interference }),
    bossDiameter: use(housing),
    pinBore: use.run(raceway, { bore: use(bore), outer, share: use(racewayShare) }),
    boss: { modulus: seatModulus, poissonRatio: use.at(poissonRatio, { material }) },
    pin: { modulus: use.at(modulus, { material: ring }), poissonRatio: use.at(poissonRatio, { material: ring }) },
  })
}
/** Hoop stress of the dry seat. */
export const hoop = value(
  'pivot.seatHoop',
  ['pivot', 'air'],
  (use) => press(use, use(dryInterference), use.at(modulus, { material: use(seated.seatMaterial) })).boreHoopStress,
)
/** Stress at which the seat splits. */
export const splitStrength = value('pivot.splitStrength', ['pivot', 'air'], (use) =>
  allowableStress(use, use(seated.seatMaterial), {
    direction: 'acrossLayers',
    temperature: use(airTemperature),
    duration: use(splitTime),
    held: true,
  }),
)
export const slides = value('pivot.slides', ['pivot', 'air'], (use) =>
  use(dryInterference) <= 0 ? 'the ring has clearance in its seat, in the cold too' : undefined,
)

/** Interference that relaxation leaves of that at assembly. */
export const interferenceKept = value('pivot.interferenceKept', ['pivot', 'event', 'air'], (use) =>
  interferenceLeft(use, use(seated.seatMaterial), use.run(keptOf, { interference: use(seated.seatInterference) }), 0),
)
/** What heat and water take of it. */
export const interferenceLost = value('pivot.interferenceLost', ['pivot', 'event', 'air'], (use) =>
  use.run(lostOf, { kept: use(interferenceKept), now: use(relaxedInterference), least: use(leastLoss) }),
)
/** Why the press fit need not hold the ring. */
export const held = value('pivot.held', ['pivot'], (use) =>
  use(seated.retainedBy) === 'press'
    ? undefined
    : use(seated.retainedBy) === 'bond'
      ? 'adhesive holds the ring'
      : 'shoulder and cap hold the ring',
)

const hold = value('pivot.hold', ['pivot', 'event', 'air'], (use) => {
  const { outerDiameter, width } = seated.bearing
  const material = use(seated.seatMaterial)
  const { demand, capacity } = use.run(pressFitHold, {
    pressure: press(use, use(relaxedInterference), use.at(modulusWithinAnHour, { material })).pressure,
    diameter: use(outerDiameter),
    length: use(width),
    friction: use.at(frictionOnSteel, { material }),
    axialForce: use(axialLoad),
    torque: 0,
    requiredReserve: use(gripReserve),
  })
  return { demand, capacity }
})
export const gripDemand = value('pivot.gripDemand', ['pivot', 'event', 'air'], (use) => use(hold).demand)
export const gripCapacity = value('pivot.gripCapacity', ['pivot', 'event', 'air'], (use) => use(hold).capacity)
export const nothingPulls = value('pivot.nothingPulls', ['pivot', 'event', 'air'], (use) =>
  use(axialLoad) === 0 ? 'nothing pulls along the axis' : use(held),
)

const clampedMoment = value('pivot.seatMoment', ['pivot', 'event'], (use): number =>
  // A pair shares the moment by forces across the axis, and a shoulder with its cap takes that of one bearing.
  use(seated.pairSpacing) !== undefined || use(seated.retainedBy) === 'cap' ? 0 : use(moment),
)
/** Pressure of the outer ring at the harder end of its seat. */
export const seatPressure = value('pivot.seatPressure', ['pivot', 'event', 'air', 'age'], (use) => {
  const { outerDiameter, width } = seated.bearing
  return use.run(tiltedSeat, { force: use(ownLoad), moment: use(clampedMoment), diameter: use(outerDiameter), length: use(width) })
    .peakPressure
})
/** Pressure that the seat bears for the time under load. */
export const seatStrength = value('pivot.seatStrength', ['pivot', 'event', 'air'], (use) =>
  use.at(strengthInAir.alongLayers, { material: use(seated.seatMaterial) }),
)

const looseBy = line('clearance of a ring in its seat', { interference: 'length' }, 'length', 'max(−interference, 0)', (x) =>
  Math.max(-x.interference, 0),
)
const tiltOfPair = line(
  'tilt by the play of a pair',
  { clearance: 'length', loose: 'length', spacing: 'length' },
  'angle',
  '(clearance + loose) / spacing',
  (x) => (x.clearance + x.loose) / x.spacing,
)
const tiltOfOne = line(
  'tilt by the play of one bearing',
  { clearance: 'length', contactAngle: 'angle', pitchDiameter: 'length', loose: 'length', width: 'length' },
  'angle',
  'clearance / tan(contactAngle / 2) / pitchDiameter + loose / width',
  (x) => x.clearance / Math.tan(x.contactAngle / 2) / x.pitchDiameter + x.loose / x.width,
)
/** Angle either way by which play lets a leg tilt on the bearings of a joint. */
export const playTilt = value('pivot.playTilt', ['pivot', 'event', 'air'], (use): number => {
  const loose = use.run(looseBy, { interference: use(relaxedInterference) })
  const clearance = use(seated.clearance)
  const spacing = use(seated.pairSpacing)
  if (spacing !== undefined) return use.run(tiltOfPair, { clearance, loose, spacing })
  return use.run(tiltOfOne, {
    clearance,
    contactAngle: use(seated.contactAngle),
    pitchDiameter: use(pitchDiameter),
    loose,
    width: use(seated.bearing.width),
  })
})
