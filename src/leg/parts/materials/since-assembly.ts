import { equivalentTime } from '../../../materials/index.js'
import { reference } from '../../leaves.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { airTemperature, hour, season, shelfTime } from '../load/fields.js'
import { creepReference } from './fields.js'
import { dayOrLonger } from './in-air.js'
import { creepCoefficient, creepShift, relaxedModulus } from './values.js'

const warmest = line.largest('temperature that a leg is kept at', { data: 'temperature', air: 'temperature' }, 'temperature')
const longest = line.largest('time that a press fit relaxes', { season: 'time', shelf: 'time' }, 'time')
const keptOf = line(
  'interference that relaxation and heat leave',
  { assembled: 'length', kept: 'modulus', warm: 'length', fresh: 'modulus' },
  'length',
  'assembled · kept / fresh + warm',
  (x) => (x.assembled * x.kept) / x.fresh + x.warm,
)

const ordinary = reference('air.ordinary', [], 'air', () => 'normal')
const onShelf = reference('air.onShelf', [], 'air', () => 'shelf')

/** What a time in an air counts for at the temperature of the creep data. Air that is cooler than the data slows nothing down. */
const countsIn = (use: Use<never>, material: Of<'material'>, time: number, air: Of<'air'>): number =>
  use.run(equivalentTime, {
    time,
    shift: creepShift(use, material, use.run(warmest, { data: use(creepReference), air: use.at(airTemperature, { air }) })),
  })
/** What a time in ordinary air counts for. */
export const timeKept = (use: Use<never>, material: Of<'material'>, time: number): number => countsIn(use, material, time, use(ordinary))

/** Time that a press fit relaxes before an event: nobody tightens it again, so that a season in ordinary air or the time on the shelf counts, whichever is more. */
const fitKept = value('material.fitKept', ['material'], (use, { material }) =>
  use.run(longest, { season: timeKept(use, material, use(season)), shelf: countsIn(use, material, use(shelfTime), use(onShelf)) }),
)
/** Modulus that is left of a strain held since assembly, and then for the time under load in the air, a day at least. */
export const modulusSinceAssembly = value('material.modulusSinceAssembly', ['material', 'event', 'air'], (use, { material }) => {
  const before = use.at(creepCoefficient, { material }) === 0 ? 0 : use(fitKept)
  return relaxedModulus(use, material, use(airTemperature), dayOrLonger(use), before)
})
/** Modulus of a strain that the air of an event brought within the hour. */
export const modulusWithinAnHour = value('material.modulusWithinAnHour', ['material', 'air'], (use, { material }) =>
  relaxedModulus(use, material, use(airTemperature), use(hour)),
)

/**
 * Interference of a fit that has relaxed since it was assembled, over the modulus of what the air changed within the hour: what presses since assembly has relaxed, what
 * heat takes away has hardly.
 */
export const interferenceLeft = (use: Use<'event' | 'air'>, material: Of<'material'>, assembled: number, warm: number): number =>
  use.run(keptOf, {
    assembled,
    kept: use.at(modulusSinceAssembly, { material }),
    warm,
    fresh: use.at(modulusWithinAnHour, { material }),
  })
