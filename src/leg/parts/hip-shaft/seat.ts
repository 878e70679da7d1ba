import { pressFit } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { constant, line, type Use, value } from '../../run/index.js'
import { airTemperature } from '../load/fields.js'
import { steel } from '../materials/fields.js'
import { interferenceAfter, riseSinceAssembly } from '../materials/interference.js'
import { allowableStress, modulus, poissonRatio } from '../materials/values.js'
import * as shaft from './fields.js'

export const raceway = line(
  'diameter of the outer raceway',
  { bore: 'length', outer: 'length', share: 'ratio' },
  'length',
  '(bore + outer) / 2 + share · (outer − bore)',
  (x) => (x.bore + x.outer) / 2 + x.share * (x.outer - x.bore),
)
export const wide = line.product('diameter of the housing round the seat', { ratio: 'ratio', outer: 'length' }, 'length')
export const presses = line('interference that presses', { interference: 'length' }, 'length', 'max(interference, 0)', (x) =>
  Math.max(x.interference, 0),
)

/** Half of the ring's section lies in the balls' grooves. */
export const racewayShare = constant('bearing.racewayShare', {
  title: 'diameter of the outer raceway beyond the mean one, over outer diameter less bore',
  kind: 'ratio',
  typical: 0.3,
  low: 0.25,
  high: 0.35,
  source: { level: 'commonPractice', where: 'raceways of small deep-groove bearings' },
  measuredBy: 'measure the outer ring of an open bearing',
})
/** Housing over ring where the document does not give the housing. */
export const housingRatio = constant('bearing.housingRatio', {
  title: 'outer diameter of a housing over that of its bearing',
  kind: 'ratio',
  typical: 1.5,
  low: 1.25,
  high: 1.8,
  source: { level: 'assumption', where: 'a printed housing that is half as wide again as its ring' },
  measuredBy: 'measure the shortest way from the axis of the seat to a free surface',
})
/** The press of a fit relaxes faster than strength fades. */
export const splitTime = constant('bearing.splitTime', {
  title: 'duration of the full press of a bearing seat',
  kind: 'time',
  typical: 3600,
  source: { level: 'assumption', where: 'stress of a press fit relaxes faster than strength fades' },
})

/** The outer ring in its seat. */
export const ringInSeat = (use: Use<never>, interference: number) => ({
  material: use(shaft.seatMaterial),
  diameter: use(shaft.bearing.outerDiameter),
  interference,
})
/** Interference in a dry housing at the temperature of the air: water would loosen it. */
const dryInterference = value('bearing.dryInterference', ['air'], (use) =>
  interferenceAfter(use, ringInSeat(use, use(shaft.seatInterference)), riseSinceAssembly(use), 0),
)
const hoop = value('bearing.seatHoop', ['air'], (use) => {
  const [seat, ring, outer] = [use(shaft.seatMaterial), use(steel), use(shaft.bearing.outerDiameter)]
  return use.run(pressFit, {
    diameter: outer,
    diametralInterference: use.run(presses, { interference: use(dryInterference) }),
    bossDiameter: use.run(wide, { ratio: use(housingRatio), outer }),
    pinBore: use.run(raceway, { bore: use(shaft.bearing.bore), outer, share: use(racewayShare) }),
    boss: { modulus: use.at(modulus, { material: seat }), poissonRatio: use.at(poissonRatio, { material: seat }) },
    pin: { modulus: use.at(modulus, { material: ring }), poissonRatio: use.at(poissonRatio, { material: ring }) },
  }).boreHoopStress
})
// A seat is printed with its axis upright or lying: the weaker way counts.
const strength = value('bearing.seatStrength', ['air'], (use) =>
  allowableStress(use, use(shaft.seatMaterial), {
    direction: 'acrossLayers',
    temperature: use(airTemperature),
    duration: use(splitTime),
    held: true,
  }),
)

/** Whether the seat of a bearing bears its press. */
export const seatCheck: Check = {
  id: 'bearing.seatSplit',
  part: 'bearing seat',
  mode: 'splits from the pressed-in ring',
  consequence: 'breaks',
  kind: 'stress',
  scope: 'leg',
  when: ['coldFit'],
  demand: hoop,
  capacity: strength,
  unless: value('bearing.slides', ['air'], (use) =>
    use(dryInterference) <= 0 ? 'the ring has clearance in its seat, in the cold too' : undefined,
  ),
  demandIs: 'the hoop stress of a dry seat on a cold morning, retained or not',
  capacityIs: 'the strength of the material round the seat for an hour, in its weaker direction',
  remedy: 'a larger seat with shoulder and cap, or a wider housing',
}
