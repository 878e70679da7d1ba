import {
  fitProbability,
  interferenceChange,
  isoTolerance,
  lugNetSection,
  lugTearOut,
  pressFit,
  pressFitHold,
} from '../../fasteners/index.js'
import type { Evaluator } from '../../formula/index.js'
import { relaxedModulus } from '../cases/creep.js'
import type { Scene } from '../state.js'
import { type Check, LOADED } from './check.js'
import { polymerRest } from './rests.js'

const SHEAR_SHARE = 0.577
/** Loose bosses that a builder accepts among those made. */
const LOOSE_ACCEPTED = 0.02

/** The printed bosses that the pins are pressed into. */
export const bossChecks: readonly Check[] = [
  {
    id: 'boss.tearOut',
    part: 'boss',
    mode: 'lets the pin tear out to the edge',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const boss = leg.x.bosses[joint]
      const { shearStress } = of(lugTearOut, {
        force: drive.pinForce / 2,
        edgeDistance: boss.edgeDistance,
        diameter: leg.pins[joint].diameter,
        thickness: boss.engagement,
        planes: 'front',
      })
      const { strength } = leg.bosses[joint]
      const capacity =
        boss.axis === 'alongLayers'
          ? strength.interlayerShear.at(of, state.air, state.duration)
          : SHEAR_SHARE * strength.alongLayers.at(of, state.air, state.duration)
      return { demand: shearStress, capacity }
    },
    demandIs: 'the shear stress on the two planes from pin to edge',
    capacityIs: 'the long-term shear strength of the print, between layers where the bore lies in them',
    remedy: 'more edge distance (twice the pin diameter is usual), or print the boss standing on its bore',
    rests: ({ leg, joint }) => polymerRest(leg.bosses[joint], 'boss'),
  },
  {
    id: 'boss.netSection',
    part: 'boss',
    mode: 'tears across its hole',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const boss = leg.x.bosses[joint]
      const { averageStress } = of(lugNetSection, {
        force: drive.pinForce / 2,
        width: boss.outerDiameter,
        diameter: leg.pins[joint].diameter,
        thickness: boss.engagement,
        stressConcentration: 1,
      })
      const { strength } = leg.bosses[joint]
      const across = boss.axis === 'alongLayers' ? strength.acrossLayers : strength.alongLayers
      return { demand: averageStress, capacity: across.at(of, state.air, state.duration) }
    },
    demandIs: 'the mean stress in the section beside the hole',
    capacityIs: 'the long-term strength of the print in that direction',
    remedy: 'a larger boss',
    rests: ({ leg, joint }) => polymerRest(leg.bosses[joint], 'boss'),
  },
  {
    id: 'boss.fatigue',
    part: 'boss',
    mode: 'cracks beside its hole by repeated load',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: ['season'],
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const boss = leg.x.bosses[joint]
      // Close pins concentrate stress two- to threefold; fatigue feels the peak.
      const { peakStress } = of(lugNetSection, {
        force: drive.pinForce / 2,
        width: boss.outerDiameter,
        diameter: leg.pins[joint].diameter,
        thickness: boss.engagement,
        stressConcentration: 2.5,
      })
      const { cyclic } = leg.bosses[joint]
      return {
        demand: peakStress,
        capacity: (boss.axis === 'alongLayers' ? cyclic.acrossLayers : cyclic.alongLayers).at(of, state.air, 1, state.cycles),
      }
    },
    demandIs: 'the peak stress beside the hole (two and a half times the mean, close pin)',
    capacityIs: 'the strength that is left after the strides of a season',
    remedy: 'a larger boss, or print it standing on its bore',
    rests: ({ leg, joint }) => polymerRest(leg.bosses[joint], 'boss'),
  },
  {
    id: 'boss.split',
    part: 'boss',
    mode: 'splits from the pressed-in pin',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: ['coldMorning'],
    after: [],
    run: (of, scene) => {
      const { leg, joint, state } = scene
      const boss = leg.x.bosses[joint]
      const tightest = interference(of, scene, 'tightest')
      const fit = press(of, scene, tightest, leg.bosses[joint].modulus)
      const { strength } = leg.bosses[joint]
      // A press fit holds its strain: stress relaxes faster than strength fades, so the first hour is the dangerous one.
      const capacity = (boss.axis === 'alongLayers' ? strength.acrossLayers : strength.alongLayers).at(of, state.air, 3600)
      return { demand: fit.boreHoopStress, capacity }
    },
    demandIs: 'the hoop stress at the bore with the largest pin in the smallest hole, on a cold morning',
    capacityIs: 'the strength of the print for an hour in the direction of the hoop',
    remedy: 'ream to a larger hole, make the boss thicker, or print it standing on its bore',
    rests: ({ leg, joint }) => polymerRest(leg.bosses[joint], 'boss'),
  },
  {
    id: 'boss.grip',
    part: 'pin in its bosses',
    mode: 'turns and walks out of its warm, relaxed bosses',
    stake: 'fails to work',
    kind: 'force',
    scope: 'joint',
    cases: ['hotAfternoon', 'season'],
    after: ['motion', 'drive'],
    run: (of, scene, { drive }) => {
      const { leg, joint, state } = scene
      const { diameter } = leg.pins[joint]
      const delta = interference(of, scene, 'mean')
      if (delta <= 0) return { demand: drive.pinForce, capacity: 0, remark: 'the pin is loose in its boss at this temperature' }
      const matter = leg.bosses[joint]
      const { pressure } = press(of, scene, delta, relaxedModulus(of, matter, state.air, Math.max(state.duration, 86_400)))
      // The eye that turns on the pin drags it along with its friction.
      const tongue = joint === 'hip' ? leg.links.upper : leg.links.lower
      const torque = tongue.frictionOnSteel * drive.pinForce * (diameter / 2)
      const hold = of(pressFitHold, {
        pressure,
        diameter,
        length: 2 * leg.x.bosses[joint].engagement,
        friction: matter.frictionOnSteel,
        axialForce: 0.05 * drive.pinForce,
        torque,
        requiredReserve: 2,
      })
      return { demand: hold.demand, capacity: hold.capacity }
    },
    demandIs: 'the force at the pin surface from the eye that drags it and a twentieth of the load along it (assumption)',
    capacityIs: 'the grip of both bosses with the pressure that temperature and relaxation leave',
    remedy: 'positive retention (a cap or a ring), a tighter hole, a longer engagement, or a bush in the eye',
    rests: ({ leg, joint }) => polymerRest(leg.bosses[joint], 'boss'),
  },
  {
    id: 'boss.fitScatter',
    part: 'boss',
    mode: 'comes out loose by chance',
    stake: 'fails to work',
    kind: 'ratio',
    scope: 'joint',
    cases: ['coldMorning'],
    after: [],
    run: (of, { leg, joint }) => {
      const boss = leg.x.bosses[joint]
      const pin = leg.pins[joint]
      const { upper, lower } = of(isoTolerance, { diameter: pin.diameter, zone: pin.zone })
      const chances = of(fitProbability, {
        pinDiameter: pin.diameter + (upper + lower) / 2,
        pinScatter: (upper - lower) / 6,
        holeDiameter: boss.hole,
        holeScatter: boss.holeScatter,
        neededInterference: 0.002 * pin.diameter,
        allowableInterference: pin.diameter * 0.03,
      })
      return { demand: Math.max(chances.looseProbability, 1e-6), capacity: LOOSE_ACCEPTED }
    },
    demandIs: 'the share of bosses with less interference than 0.2 % of the diameter',
    capacityIs: 'one in fifty (choice)',
    remedy: 'a smaller hole, or ream to less scatter; print and measure a coupon of ten holes',
  },
]

/** Interference at the temperature of the case: mean sizes, or the largest pin in a hole two deviations small. */
function interference(of: Evaluator, { leg, joint, state }: Scene, which: 'mean' | 'tightest'): number {
  const boss = leg.x.bosses[joint]
  const pin = leg.pins[joint]
  const { upper, lower } = of(isoTolerance, { diameter: pin.diameter, zone: pin.zone })
  const diametralInterference =
    which === 'mean' ? pin.diameter + (upper + lower) / 2 - boss.hole : pin.diameter + upper - (boss.hole - 2 * boss.holeScatter)
  const matter = leg.bosses[joint]
  return of(interferenceChange, {
    diametralInterference,
    diameter: pin.diameter,
    bossExpansion: matter.thermalExpansion,
    pinExpansion: leg.steel.thermalExpansion,
    temperatureChange: state.air - leg.x.environment.assemblyTemperature,
    swelling: which === 'mean' ? matter.swelling : 0,
  }).diametralInterference
}

const press = (of: Evaluator, { leg, joint }: Scene, diametralInterference: number, modulus: number) =>
  of(pressFit, {
    diameter: leg.pins[joint].diameter,
    diametralInterference: Math.max(diametralInterference, 0),
    bossDiameter: leg.x.bosses[joint].outerDiameter,
    pinBore: 0,
    boss: { modulus, poissonRatio: leg.bosses[joint].poissonRatio },
    pin: { modulus: leg.steel.modulus, poissonRatio: leg.steel.poissonRatio },
  })
