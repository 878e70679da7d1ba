import {
  boltGroupTipping,
  headBearing,
  hexNut,
  jointReserves,
  jointSlip,
  nutInPocket,
  preloadAtUtilisation,
  propertyClass,
  tighteningTorque,
} from '../../fasteners/index.js'
import { bare, type Evaluator } from '../../formula/index.js'
import type { JointState, Scene } from '../state.js'
import { type BoltGroup, proofOf, softest, tightBolt } from './bolt-group.js'
import type { Check } from './check.js'
import { clampLeft } from './clamp.js'
import { polymerRest } from './rests.js'

const NAMES: { readonly [G in BoltGroup]: string } = { stack: 'stack bolts', motor: 'motor bolts' }
/** Clearance of a printed pocket around its nut. */
const POCKET_CLEARANCE = 0.15e-3

/** A plate this far beyond its softening is gone; hotter makes no difference, K. */
const BEYOND_SOFTENING = 60

/** Where the bolts are: the motor's own warm with their plate, the stack's share half of that; a motor that comes to no rest softens both. */
function temperature(group: BoltGroup, { leg, state }: Scene, { heat }: JointState): number {
  const mount = Math.min(heat.mount, leg.plate.softening + BEYOND_SOFTENING)
  return group === 'motor' ? mount : (mount + state.air) / 2
}

function checksOf(group: BoltGroup): readonly Check[] {
  const name = NAMES[group]
  const scope = group === 'motor' ? 'joint' : 'leg'
  return [
    {
      id: `${group}Bolt.tightening`,
      part: name,
      mode: 'yields when it is tightened',
      stake: 'breaks',
      kind: 'force',
      scope,
      cases: ['stand'],
      after: [],
      run: (of, scene) => {
        const bolts = scene.leg.x.bolts[group]
        const bolt = tightBolt(of, scene, group)
        const { yieldStrength } = propertyClass.si(bolts.propertyClass)
        // Low friction gives the highest preload for a torque; the hand's scatter is in the utilisation of 0.9.
        return {
          demand: bolt.preload,
          capacity: of(preloadAtUtilisation, {
            thread: bolt.thread,
            yieldStrength,
            threadFriction: bolts.friction,
            utilisation: 0.9,
            torsion: 'plastic',
          }),
        }
      },
      demandIs: 'the preload that the tightening torque gives',
      capacityIs: 'the preload at nine tenths of yield, torsion counted',
      remedy: 'less torque or a higher property class',
    },
    {
      id: `${group}Bolt.headPressure`,
      part: `print under the heads of the ${name}`,
      mode: 'is crushed',
      stake: 'fails to work',
      kind: 'stress',
      scope,
      cases: ['walk', 'hotAfternoon', 'season'],
      after: ['heat'],
      run: (of, scene, at) => {
        if (scene.leg.x.bolts[group].sleeves) return undefined
        const bolt = tightBolt(of, scene, group)
        const layer = softest(bolt.layers)
        // A print that has softened carries nothing; that is the plate's own check.
        if (temperature(group, scene, at) > layer.softening - 15) return undefined
        // Clamp load fades as the print creeps, so its first day decides, not its year.
        const allowablePressure = layer.strength.alongLayers.at(of, temperature(group, scene, at), 86_400)
        const { pressure } = of(headBearing, {
          force: bolt.preload,
          bearingDiameter: bolt.bearingDiameter,
          holeDiameter: bolt.holeDiameter,
          allowablePressure,
        })
        return { demand: pressure, capacity: allowablePressure }
      },
      demandIs: 'the pressure under head or washer at full preload',
      capacityIs: 'the strength of the print for a day at its temperature',
      remedy: 'large washers, metal sleeves, or less torque',
      rests: (scene) => polymerRest(softest(scene.leg.x.bolts[group].sleeves ? [] : tightLayers(scene, group)), 'clamped layers'),
    },
    {
      id: `${group}Bolt.separation`,
      part: name,
      mode: 'lets the clamped parts part',
      stake: 'fails to work',
      kind: 'force',
      scope,
      cases: group === 'stack' ? ['walk', 'trot', 'hop', 'drop', 'slope', 'season', 'hotAfternoon'] : [],
      after: ['motion'],
      run: (of, scene, at) => {
        const outside = stackTension(of, scene)
        const bolt = tightBolt(of, scene, group)
        const clampLoad = clampLeft(of, scene, group, bolt, temperature(group, scene, at))
        const { separationReserve } = of(jointReserves, {
          clampLoad,
          externalLoad: outside,
          loadFactor: bolt.loadFactor,
          proofLoad: proofOf(of, scene.leg, group),
        })
        return { demand: outside, capacity: outside * Math.min(separationReserve, 1e4) }
      },
      demandIs: 'the pull on the hardest loaded bolt from the bending moment of the foot force',
      capacityIs: 'the pull at which the clamp load that months leave is used up',
      remedy: 'metal sleeves that carry the clamp load, a wider bolt pattern, or tightening again after a week',
      rests: (scene) => polymerRest(softest(tightLayers(scene, group)), 'clamped layers'),
    },
    {
      id: `${group}Bolt.overload`,
      part: name,
      mode: 'is pulled beyond its proof load',
      stake: 'breaks',
      kind: 'force',
      scope,
      cases: group === 'stack' ? ['trot', 'hop', 'drop'] : [],
      after: ['motion'],
      run: (of, scene) => {
        const outside = stackTension(of, scene)
        const bolt = tightBolt(of, scene, group)
        const proofLoad = proofOf(of, scene.leg, group)
        const { overloadReserve } = of(jointReserves, {
          clampLoad: bolt.preload,
          externalLoad: outside,
          loadFactor: bolt.loadFactor,
          proofLoad,
        })
        return { demand: outside, capacity: outside * Math.max(0, Math.min(overloadReserve, 1e4)) }
      },
      demandIs: 'the pull on the hardest loaded bolt',
      capacityIs: 'the pull that takes the bolt from its preload to its proof load',
      remedy: 'thicker bolts, less preload, or a wider bolt pattern',
    },
    {
      id: `${group}Bolt.slip`,
      part: name,
      mode: 'lets the clamped parts slide',
      stake: 'fails to work',
      kind: 'force',
      scope,
      cases: ['walk', 'trot', 'hop', 'drop', 'hotAfternoon', 'season'],
      after: ['motion', 'heat'],
      run: (of, scene, at) => {
        const bolt = tightBolt(of, scene, group)
        const faceLoad = clampLeft(of, scene, group, bolt, temperature(group, scene, at))
        const { x } = scene.leg
        const shear =
          group === 'motor'
            ? at.heat.motorTorque / (x.bolts.motor.circleDiameter / 2) + at.drive.shaftForce
            : (scene.state.motion?.vertical ?? 0)
        const shearForce = shear / x.bolts[group].count
        const { slipForce } = of(jointSlip, { faceLoad, friction: softest(bolt.layers).frictionOnSteel, faces: 1, shearForce })
        return { demand: shearForce, capacity: slipForce }
      },
      demandIs: 'the force across each bolt',
      capacityIs: 'the friction of the clamp load that heat and months leave',
      remedy: 'metal sleeves, a dowel or a shoulder that takes the force across, or tightening again after a week',
      rests: (scene) => polymerRest(softest(tightLayers(scene, group)), 'clamped layers'),
    },
    {
      id: `${group}Bolt.nut`,
      part: `nut pockets of the ${name}`,
      mode: 'lets its nut round out',
      stake: 'fails to work',
      kind: 'torque',
      scope,
      cases: ['stand'],
      after: [],
      run: (of, scene) => {
        const bolts = scene.leg.x.bolts[group]
        if (bolts.nut === 'onWasher' || bolts.nut === 'tappedMetal') return undefined
        const bolt = tightBolt(of, scene, group)
        const nut = hexNut.si(bolts.thread)
        const { nutTorque } = of(tighteningTorque, {
          preload: bolt.preload,
          thread: bolt.thread,
          threadFriction: bolts.friction,
          headFriction: bolts.friction,
          bearingDiameter: bolt.bearingDiameter,
          holeDiameter: bolt.holeDiameter,
          prevailingTorque: 0,
        })
        const layer = bolt.layers.at(-1)!
        const compressiveStrength = layer.strength.alongLayers.at(of, scene.leg.x.environment.assemblyTemperature, 60)
        const { roundingTorque } = of(nutInPocket, {
          torque: nutTorque,
          acrossFlats: nut.acrossFlats,
          height: nut.leastHeight,
          flats: bolts.nut === 'pocket' ? 6 : 2,
          clearance: POCKET_CLEARANCE,
          compressiveStrength,
        })
        return { demand: nutTorque, capacity: roundingTorque }
      },
      demandIs: 'the torque that the thread puts on the nut',
      capacityIs: 'the torque at which the flats of the print give way',
      remedy: 'a six-sided pocket instead of a slot, a taller nut, a metal insert plate, or hold the nut with a spanner',
      rests: (scene) => polymerRest(softest(tightLayers(scene, group)), 'nut pocket'),
    },
  ]
}

const tightLayers = (scene: Scene, group: BoltGroup) => tightBolt(bare, scene, group).layers

/** Pull on the hardest loaded stack bolt: the foot force tips the bracket about its edge. */
function stackTension(of: Evaluator, { leg, state }: Scene): number {
  const { rows, leverArm } = leg.x.bolts.stack
  return of(boltGroupTipping, { distances: rows, moment: (state.motion?.vertical ?? 0) * leverArm, tension: 0 }).largest
}

/** The groups of bolts. */
export const boltChecks: readonly Check[] = [...checksOf('stack'), ...checksOf('motor')]
