import {
  bearingEquivalentLoad,
  bearingLife,
  bearingOscillation,
  bearingStaticSafety,
  boltStrength,
  clearanceHole,
  drilledBolt,
  endCap,
  interferenceChange,
  metricThread,
  preloadFromTorque,
  propertyClass,
  socketHead,
  threadStrip,
  tighteningTorque,
} from '../../fasteners/index.js'
import type { Evaluator } from '../../formula/index.js'
import { roundBendingStress } from '../../structures/index.js'
import type { Prepared } from '../numbers.js'
import { oncePerLeg } from '../once.js'
import type { Scene } from '../state.js'
import { type Check, LOADED, ONCE } from './check.js'
import { polymerRest } from './rests.js'

/** Shear strength of steel threads over tensile strength. */
const THREAD_SHEAR = 0.6
const INNER_FRICTION = 0.14
/** Balls of a small deep-groove bearing, where its sheet is not at hand. */
const BALLS = 8

interface InnerScrew {
  readonly thread: ReturnType<typeof metricThread.si>
  readonly preload: number
  readonly threadTorque: number
}

/** Preload of the screw in the shaft's end, and the torque in its thread while it is tightened. */
const innerScrew = /* @__PURE__ */ oncePerLeg((of: Evaluator, leg: Prepared): InnerScrew => {
  const { shaft } = leg.x
  const thread = metricThread.si(shaft.innerThread)
  const ask = {
    thread,
    threadFriction: INNER_FRICTION,
    headFriction: INNER_FRICTION,
    bearingDiameter: socketHead.si(shaft.innerThread).bearingDiameter,
    holeDiameter: clearanceHole.si(shaft.innerThread).medium,
    prevailingTorque: 0,
  }
  const { preload } = of(preloadFromTorque, { ...ask, torque: shaft.innerTighteningTorque })
  const { threadTorque } = of(tighteningTorque, { ...ask, preload })
  return { thread, preload, threadTorque }
})

/** Thrust of the leg along the hip shaft: the foot force leaning by the farthest sideways turn. */
function thrust({ leg, state }: Scene): number {
  const { from, to } = leg.x.joints.sidewaysHip
  return (state.motion?.vertical ?? 0) * Math.sin(Math.min(Math.PI / 2, Math.max(Math.abs(from), Math.abs(to))))
}

/** Load of the nearer bearing: of an overhung leg it carries more than the whole load. */
function nearerLoad({ leg, state }: Scene, shaftForce: number): number {
  const { overhang, spacing } = leg.x.bearings
  return (shaftForce + (state.motion?.vertical ?? 0)) * (1 + overhang / spacing)
}

/** The hip shaft with its drilled end, its cap and the seats of its bearings. */
export const shaftChecks: readonly Check[] = [
  {
    id: 'shaft.bending',
    part: 'hip shaft',
    mode: 'bends',
    stake: 'breaks',
    kind: 'stress',
    scope: 'leg',
    cases: ONCE,
    after: ['motion', 'drive'],
    run: (of, { leg, state }, { drive }) => {
      const thread = metricThread.si(leg.x.shaft.thread)
      const moment = (drive.shaftForce + (state.motion?.vertical ?? 0)) * leg.x.bearings.overhang
      return {
        demand: of(roundBendingStress, { moment, diameter: thread.rootDiameter, holeDiameter: 0 }),
        capacity: propertyClass.si(leg.x.shaft.propertyClass).yieldStrength,
      }
    },
    demandIs: 'the bending stress at the nearer bearing, over the root of the thread',
    capacityIs: 'the yield strength of its property class',
    remedy: 'a thicker shaft or bearing nearer to the leg',
  },
  {
    id: 'shaft.drilledEnd',
    part: 'drilled end of the hip shaft',
    mode: 'bursts or strips when its screw is tightened',
    stake: 'breaks',
    kind: 'stress',
    scope: 'leg',
    cases: ['stand'],
    after: [],
    run: (of, scene) => {
      const { shaft } = scene.leg.x
      const { thread, preload, threadTorque } = innerScrew(of, scene.leg)
      const outer = propertyClass.si(shaft.propertyClass)
      const end = of(drilledBolt, {
        outer: metricThread.si(shaft.thread),
        inner: thread,
        outerYieldStrength: outer.yieldStrength,
        innerYieldStrength: propertyClass.si(shaft.innerPropertyClass).yieldStrength,
        tension: preload,
        torque: threadTorque,
      })
      return {
        demand: end.vonMises,
        capacity: outer.yieldStrength,
        ...(end.wallRule === 'met' ? {} : { remark: 'the wall round the inner thread is thinner than the rule of thumb asks' }),
      }
    },
    demandIs: 'the von Mises stress in the ring that drilling leaves',
    capacityIs: 'the yield strength of its property class',
    remedy: 'a thicker shaft, a thinner screw, or less tightening torque',
  },
  {
    id: 'shaft.strip',
    part: 'thread in the end of the hip shaft',
    mode: 'strips',
    stake: 'breaks',
    kind: 'force',
    scope: 'leg',
    cases: ['stand'],
    after: [],
    run: (of, scene) => {
      const { shaft } = scene.leg.x
      const { thread, preload } = innerScrew(of, scene.leg)
      const outer = propertyClass.si(shaft.propertyClass)
      const inner = propertyClass.si(shaft.innerPropertyClass)
      const strip = of(threadStrip, {
        thread,
        engagement: shaft.innerEngagement,
        threadLength: shaft.innerEngagement,
        partShearStrength: THREAD_SHEAR * outer.tensileStrength,
        screwShearStrength: THREAD_SHEAR * inner.tensileStrength,
        screwTensileStrength: inner.tensileStrength,
        limits: 'worst',
      })
      return { demand: preload, capacity: Math.min(strip.partStripForce, strip.screwStripForce) }
    },
    demandIs: 'the preload of the screw',
    capacityIs: 'the force that strips the loosest pair of threads',
    remedy: 'more engagement or less tightening torque',
  },
  {
    id: 'shaft.endCap',
    part: 'end cap',
    mode: 'breaks under the sideways thrust of the leg',
    stake: 'breaks',
    kind: 'stress',
    scope: 'leg',
    cases: LOADED,
    after: ['motion'],
    run: (of, scene) => {
      const { leg, state } = scene
      const { shaft } = leg.x
      const { diameter } = metricThread.si(shaft.thread)
      const cap = of(endCap, {
        thrust: thrust(scene),
        axleDiameter: diameter,
        capDiameter: shaft.capSpan,
        capThickness: shaft.capThickness,
        linkBore: leg.bearing.bore,
        linkWidth: leg.bearing.width,
        axleLength: leg.bearing.width + 0.1e-3,
      })
      return {
        demand: Math.max(cap.bendingStress, 1),
        capacity: leg.cap.strength.alongLayers.at(of, state.air, state.duration),
      }
    },
    demandIs: 'the bending stress of the cap at the edge of the shaft, with the foot force leaning by the farthest sideways turn',
    capacityIs: 'the strength of its material for the time under load',
    remedy: 'a thicker cap, or a metal one',
    rests: ({ leg }) => (leg.cap.material.family === 'metal' ? [] : polymerRest(leg.cap, 'end cap')),
  },
  {
    id: 'shaft.capScrew',
    part: 'screw of the end cap',
    mode: 'is pulled beyond its proof load by the thrust of the leg',
    stake: 'breaks',
    kind: 'force',
    scope: 'leg',
    cases: ONCE,
    after: ['motion'],
    run: (of, scene) => {
      const { shaft } = scene.leg.x
      const thread = metricThread.si(shaft.innerThread)
      return {
        demand: thrust(scene),
        capacity: of(boltStrength, { thread, bolt: propertyClass.si(shaft.innerPropertyClass), shearRatio: THREAD_SHEAR }).proofLoad,
      }
    },
    demandIs: 'the thrust along the shaft',
    capacityIs: 'the proof load of the screw',
    remedy: 'a thicker screw',
  },
  {
    id: 'bearing.static',
    part: 'hip bearing',
    mode: 'is dented by its load',
    stake: 'fails to work',
    kind: 'force',
    scope: 'leg',
    cases: ONCE,
    after: ['motion', 'drive'],
    run: (of, scene, { drive }) => {
      const { leg, state } = scene
      const radialLoad = nearerLoad(scene, drive.shaftForce)
      const { staticLoad } = of(bearingEquivalentLoad, {
        radialLoad,
        axialLoad: thrust(scene),
        staticRating: leg.bearing.staticRating,
        axialFactor: 14,
      })
      const hard = state.case.id === 'drop' || state.case.id === 'hop'
      const { safety, requiredSafety } = of(bearingStaticSafety, {
        staticRating: leg.bearing.staticRating,
        staticLoad,
        duty: hard ? 'shock' : 'quiet',
      })
      return { demand: staticLoad, capacity: (staticLoad * safety) / requiredSafety }
    },
    demandIs: 'the equivalent static load of the nearer bearing',
    capacityIs: 'its static rating over what the duty wants (1.5 for shocks, 2 for oscillation)',
    remedy: 'a larger bearing, bearings farther apart, or less overhang',
    enough: 1,
  },
  {
    id: 'bearing.life',
    part: 'hip bearing',
    mode: 'pits by the strides of a season',
    stake: 'fails to work',
    kind: 'count',
    scope: 'leg',
    cases: ['season'],
    after: ['motion', 'drive'],
    run: (of, scene, { drive, motion }) => {
      const { leg, state } = scene
      const { dynamicRating, staticRating } = leg.bearing
      if (motion.highest <= motion.lowest) return undefined
      const { dynamicLoad } = of(bearingEquivalentLoad, {
        radialLoad: nearerLoad(scene, drive.shaftForce),
        axialLoad: thrust(scene),
        staticRating,
        axialFactor: 14,
      })
      const swing = of(bearingOscillation, { halfAmplitude: Math.min(Math.PI, (motion.highest - motion.lowest) / 2), balls: BALLS })
      const { walk } = leg.x.usage
      const stride = walk.stepLength / walk.speed / walk.dutyFactor
      // Every turn counted at the load of the stance: the swing of the unloaded leg would only spare it.
      const life = of(bearingLife, {
        dynamicRating,
        load: dynamicLoad,
        reliability: '95 %',
        speed: (2 * Math.PI * swing.turnsPerCycle) / stride,
      })
      return {
        demand: state.cycles * swing.turnsPerCycle,
        capacity: life.turns,
        ...(swing.state === 'falseBrinelling'
          ? {
              remark:
                'the hip swings less than from ball to ball, so balls may dig in place: turn the bearing by hand now and then, grease it',
            }
          : {}),
      }
    },
    demandIs: 'the turns that the strides of a season add up to',
    capacityIs: 'the turns that 95 % of such bearings reach at the load of the stance',
    remedy: 'a larger bearing, bearings farther apart, or less overhang',
  },
  {
    id: 'bearing.seat',
    part: 'bearing seat',
    mode: 'lets go of its ring when warm',
    stake: 'fails to work',
    kind: 'length',
    scope: 'leg',
    cases: ['hotAfternoon', 'walk', 'stall'],
    after: [],
    run: (of, { leg, state }) => {
      const { bearings, environment } = leg.x
      if (bearings.retained) return undefined
      const change = of(interferenceChange, {
        diametralInterference: bearings.seatInterference,
        diameter: leg.bearing.outerDiameter,
        bossExpansion: leg.seat.thermalExpansion,
        pinExpansion: leg.steel.thermalExpansion,
        temperatureChange: state.air - environment.assemblyTemperature,
        swelling: leg.seat.swelling,
      })
      return {
        demand: Math.max(bearings.seatInterference - change.diametralInterference, 1e-9),
        capacity: Math.max(bearings.seatInterference, 0),
      }
    },
    demandIs: 'the interference that heat and moisture take away',
    capacityIs: 'the interference at assembly',
    remedy: 'hold the ring by shoulder and cap; a press fit in a print does not last',
    rests: ({ leg }) => polymerRest(leg.seat, 'bearing seat'),
  },
]
