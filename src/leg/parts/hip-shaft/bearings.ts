import { bearingEquivalentLoad, bearingLife, bearingOscillation, bearingStaticSafety } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { line, value } from '../../run/index.js'
import { cycles, walkStanceTime } from '../load/durations.js'
import { walk } from '../load/fields.js'
import { interferenceAfter, riseSinceAssembly } from '../materials/interference.js'
import { interferenceLeft } from '../materials/since-assembly.js'
import { swelling } from '../materials/values.js'
import { hipOf } from '../motion/instances.js'
import { jointMotion } from '../motion/values.js'
import * as shaft from './fields.js'
import { nearerLoad, thrust } from './loads.js'
import { ringInSeat, seatCheck } from './seat.js'

export const borne = line(
  'static load that is borne',
  { load: 'force', safety: 'ratio', required: 'ratio' },
  'force',
  'load · safety / required',
  (x) => (x.load * x.safety) / x.required,
)
export const halfSwing = line('half of the swing', { lowest: 'angle', highest: 'angle' }, 'angle', 'min(π, (highest − lowest) / 2)', (x) =>
  Math.min(Math.PI, (x.highest - x.lowest) / 2),
)
export const period = line.quotient('time of a stride', { stance: 'time', dutyFactor: 'ratio' }, 'time')
export const meanSpeed = line(
  'mean speed of the bearing',
  { turns: 'count', period: 'time' },
  'angularVelocity',
  '2 · π · turns / period',
  (x) => (2 * Math.PI * x.turns) / x.period,
)
export const allTurns = line.product('turns of a season', { cycles: 'count', turns: 'count' }, 'count')
export const lostOf = line(
  'interference lost',
  { kept: 'length', now: 'length', least: 'length' },
  'length',
  'max(kept − now, least)',
  (x) => Math.max(x.kept - x.now, x.least),
)
export const keptOf = line('interference at assembly', { interference: 'length' }, 'length', 'max(interference, 0)', (x) =>
  Math.max(x.interference, 0),
)

const equivalent = value('bearing.equivalentLoad', ['leg', 'event', 'air', 'age'], (use) => {
  const { staticLoad, dynamicLoad } = use.run(bearingEquivalentLoad, {
    radialLoad: use(nearerLoad),
    axialLoad: use(thrust),
    staticRating: use(shaft.bearing.staticRating),
    axialFactor: use(shaft.axialFactor),
  })
  return { staticLoad, dynamicLoad }
})
const staticLoad = value('bearing.staticLoad', ['leg', 'event', 'air', 'age'], (use) => use(equivalent).staticLoad)
const staticBorne = value('bearing.staticBorne', ['leg', 'event', 'air', 'age'], (use) => {
  const load = use(staticLoad)
  const { safety, requiredSafety } = use.run(bearingStaticSafety, {
    staticRating: use(shaft.bearing.staticRating),
    staticLoad: load,
    duty: use(shaft.isShock) ? 'shock' : 'quiet',
  })
  return use.run(borne, { load, safety, required: requiredSafety })
})

/** Swing of the hip in its bearings. */
const swing = value('bearing.swing', ['leg', 'event'], (use, at) => {
  const { lowest, highest } = use.at(jointMotion, { joint: hipOf(use, at.leg) })
  const { turnsPerCycle, state } = use.run(bearingOscillation, {
    halfAmplitude: use.run(halfSwing, { lowest, highest }),
    balls: use(shaft.balls),
  })
  return { turnsPerCycle, state }
})
const turns = value('bearing.turns', ['leg', 'event'], (use) => use.run(allTurns, { cycles: use(cycles), turns: use(swing).turnsPerCycle }))
// Every turn is counted at the largest load of the stance: the cubic mean over the turns, ISO 281's load for a spectrum, is smaller.
const life = value('bearing.life', ['leg', 'event', 'air', 'age'], (use) => {
  const stride = use.run(period, { stance: use(walkStanceTime), dutyFactor: use(walk.dutyFactor) })
  return use.run(bearingLife, {
    dynamicRating: use(shaft.bearing.dynamicRating),
    load: use(equivalent).dynamicLoad,
    reliability: '95 %',
    speed: use.run(meanSpeed, { turns: use(swing).turnsPerCycle, period: stride }),
  }).turns
})

/** Interference that relaxation leaves of that at assembly. */
const interferenceKept = value('bearing.interferenceKept', ['event', 'air'], (use) =>
  interferenceLeft(use, use(shaft.seatMaterial), use.run(keptOf, { interference: use(shaft.seatInterference) }), 0),
)
/** The same after heat and water. */
const interferenceNow = value('bearing.interferenceNow', ['event', 'air'], (use) => {
  const material = use(shaft.seatMaterial)
  const assembled = interferenceAfter(use, ringInSeat(use, use(shaft.seatInterference)), 0, use.at(swelling, { material }))
  return interferenceLeft(use, material, assembled, interferenceAfter(use, ringInSeat(use, 0), riseSinceAssembly(use), 0))
})

/** Checks of the bearings of the hip shaft and of their seats. */
export const bearingChecks: readonly Check[] = [
  {
    id: 'bearing.static',
    part: 'hip bearing',
    mode: 'is dented by its load',
    consequence: 'fails to work',
    kind: 'force',
    scope: 'leg',
    when: ['oneMoment'],
    demand: staticLoad,
    capacity: staticBorne,
    demandIs: 'the equivalent static load of the nearer bearing, of ground and cords as if they pulled the same way',
    capacityIs: 'its static rating over the safety for its duty (1.5 for shocks, 2 for oscillation)',
    remedy: 'a larger bearing, bearings farther apart, or less overhang',
    requiredReserve: 1,
  },
  {
    id: 'bearing.life',
    part: 'hip bearing',
    mode: 'pits by the strides of a season',
    consequence: 'fails to work',
    kind: 'count',
    scope: 'leg',
    when: ['repeats'],
    demand: turns,
    capacity: life,
    unless: value('bearing.still', ['leg', 'event'], (use, at) => {
      const { lowest, highest } = use.at(jointMotion, { joint: hipOf(use, at.leg) })
      return highest > lowest ? undefined : 'the hip does not turn'
    }),
    remark: value('bearing.swingRemark', ['leg', 'event'], (use) =>
      use(swing).state === 'falseBrinelling'
        ? 'the hip swings less than from ball to ball, so balls may dig in place: turn the bearing by hand now and then, and grease it'
        : undefined,
    ),
    demandIs: 'the turns that the strides of a season add up to',
    capacityIs: 'the turns that 95 % of such bearings reach at the load of the stance',
    remedy: 'a larger bearing, bearings farther apart, or less overhang',
  },
  {
    id: 'bearing.seat',
    part: 'bearing seat',
    mode: 'loses its ring when warm',
    consequence: 'fails to work',
    kind: 'length',
    scope: 'leg',
    when: ['warms'],
    demand: value('bearing.interferenceLost', ['event', 'air'], (use) =>
      use.run(lostOf, { kept: use(interferenceKept), now: use(interferenceNow), least: use(shaft.leastLoss) }),
    ),
    capacity: interferenceKept,
    unless: value('bearing.held', [], (use) => (use(shaft.retained) ? 'shoulder and cap hold the ring' : undefined)),
    demandIs: 'the interference lost to heat and moisture',
    capacityIs: 'the interference that relaxation since assembly leaves',
    remedy: 'hold the ring by shoulder and cap as well as the press fit',
  },
  seatCheck,
]
