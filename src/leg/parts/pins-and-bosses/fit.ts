import { isoTolerance, pressFit } from '../../../fasteners/index.js'
import { line, type Use, value } from '../../run/index.js'
import { steel } from '../materials/fields.js'
import { modulusAfterADay } from '../materials/in-air.js'
import { interferenceAfter, riseSinceAssembly } from '../materials/interference.js'
import { interferenceLeft, modulusWithinAnHour } from '../materials/since-assembly.js'
import { modulus, poissonRatio, swelling } from '../materials/values.js'
import { boss, holeDeviations, pin } from './fields.js'

const meanSize = line(
  'mean diameter of the pin',
  { nominal: 'length', upper: 'length', lower: 'length' },
  'length',
  'nominal + (upper + lower) / 2',
  (x) => x.nominal + (x.upper + x.lower) / 2,
)
const largestSize = line.sum('largest diameter of the pin', { nominal: 'length', upper: 'length' }, 'length')
const smallestHole = line(
  'smallest hole',
  { hole: 'length', scatter: 'length', deviations: 'ratio' },
  'length',
  'hole − deviations · scatter',
  (x) => x.hole - x.deviations * x.scatter,
)
const over = line.difference('interference', { pin: 'length', hole: 'length' }, 'length')
const notNegative = line('interference that presses', { interference: 'length' }, 'length', 'max(interference, 0)', (x) =>
  Math.max(x.interference, 0),
)

/** Deviations of a pin of its tolerance zone. */
export const pinTolerance = value('pin.tolerance', ['joint'], (use) =>
  use.run(isoTolerance, { diameter: use(pin.diameter), zone: use(pin.zone) }),
)
/** Mean diameter of a pin of its tolerance zone. */
export const meanPin = value('pin.meanDiameter', ['joint'], (use) => {
  const { upper, lower } = use(pinTolerance)
  return use.run(meanSize, { nominal: use(pin.diameter), upper, lower })
})
const largestPin = value('pin.largestDiameter', ['joint'], (use) =>
  use.run(largestSize, { nominal: use(pin.diameter), upper: use(pinTolerance).upper }),
)

/** Interference after a change of temperature, and with the water that the boss holds. */
const changed = (use: Use<'joint' | 'air'>, interference: number, temperatureChange: number, growth: number): number =>
  interferenceAfter(use, { material: use(boss.material), diameter: use(pin.diameter), interference }, temperatureChange, growth)
/** Interference at the temperature of the air. */
const interferenceAt = (use: Use<'joint' | 'air'>, diametralInterference: number, growth: number): number =>
  changed(use, diametralInterference, riseSinceAssembly(use), growth)
/** Interference of mean sizes, with the water that the boss holds. */
export const meanInterference = value('boss.meanInterference', ['joint', 'air'], (use) =>
  interferenceAt(use, use.run(over, { pin: use(meanPin), hole: use(boss.hole) }), use.at(swelling, { material: use(boss.material) })),
)
/** Interference of the largest pin in a small hole of a dry boss. */
const tightestInterference = value('boss.tightestInterference', ['joint', 'air'], (use) => {
  const hole = use.run(smallestHole, { hole: use(boss.hole), scatter: use(boss.holeScatter), deviations: use(holeDeviations) })
  return interferenceAt(use, use.run(over, { pin: use(largestPin), hole }), 0)
})

const press = (use: Use<'joint'>, interference: number, bossModulus: number) => {
  const [material, pinMaterial] = [use(boss.material), use(steel)]
  return use.run(pressFit, {
    diameter: use(pin.diameter),
    diametralInterference: use.run(notNegative, { interference }),
    bossDiameter: use(boss.outerDiameter),
    pinBore: 0,
    boss: { modulus: bossModulus, poissonRatio: use.at(poissonRatio, { material }) },
    pin: { modulus: use.at(modulus, { material: pinMaterial }), poissonRatio: use.at(poissonRatio, { material: pinMaterial }) },
  })
}
/** Hoop stress at the bore with the largest pin in the smallest hole. */
export const splitStress = value(
  'boss.splitStress',
  ['joint', 'air'],
  (use) => press(use, use(tightestInterference), use.at(modulus, { material: use(boss.material) })).boreHoopStress,
)
/** Interference of a fit of mean sizes that has relaxed since assembly. */
export const relaxedInterference = value('boss.relaxedInterference', ['joint', 'event', 'air'], (use) => {
  const material = use(boss.material)
  const fitted = use.run(over, { pin: use(meanPin), hole: use(boss.hole) })
  return interferenceLeft(
    use,
    material,
    changed(use, fitted, 0, use.at(swelling, { material })),
    changed(use, 0, riseSinceAssembly(use), 0),
  )
})
/** Its pressure. */
export const holdingPressure = value(
  'boss.holdingPressure',
  ['joint', 'event', 'air'],
  (use) => press(use, use(relaxedInterference), use.at(modulusWithinAnHour, { material: use(boss.material) })).pressure,
)
/** Pressure of a fit of mean sizes after the time under load, a day at least. */
export const gripPressure = value(
  'boss.gripPressure',
  ['joint', 'event', 'air'],
  (use) => press(use, use(meanInterference), use.at(modulusAfterADay, { material: use(boss.material) })).pressure,
)
