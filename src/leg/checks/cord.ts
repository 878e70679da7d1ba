import {
  activatedCreepFactor,
  bendEfficiency,
  bendRatio,
  cordFibre,
  creepDrift,
  endEfficiency,
  type FibreName,
  pretensionForTorque,
  slipArc,
  workingTension,
} from '../../capstan/index.js'
import type { Evaluator } from '../../formula/index.js'
import { JOINTS, type Joint, type Prepared } from '../numbers.js'
import { oncePerLegAnd } from '../once.js'
import type { Band } from '../specification/fields.js'
import type { Scene } from '../state.js'
import { type Check, LOADED, type Rest, WARM } from './check.js'
import { frictionRest } from './rests.js'

/** A load of a moment may come this near to the strength of the ended, bent cord. */
const ONCE_FACTOR = 2
/** Long tension that creeping (UHMWPE) and other fibres bear, as shares of breaking strength. */
const SUSTAINED = { activated: 0.15, logarithmic: 0.3 } as const
const YEAR = 31_557_600
const ROOM = 293.15

const fibreOf = ({ leg, joint }: Scene) => cordFibre(leg.drives[joint].cord.fibre as FibreName)

const retentionRest: Rest = {
  what: 'share of its strength that the cord end keeps',
  source: { level: 'assumption', where: 'ranges of break tests by others' },
  test: 'pull five ends of your own make to failure',
}
const relaxationRest: Rest = {
  what: 'pretension left after a year',
  source: { level: 'assumption', where: 'relaxation of a bedded braid' },
  test: 'pluck a span and log its pitch for a month; the pitch goes as the root of the tension',
}

/** Share of strength that the ends of a joint's cord keep: what the leg says, or the table's value of such an end. */
export function retentionOf(leg: Prepared, joint: Joint): Band {
  const { ends, endRetention } = leg.x.drives[joint]
  if (endRetention !== undefined) return endRetention
  const slippery = leg.drives[joint].cord.fibre.startsWith('UHMWPE')
  const table = endEfficiency(ends === 'knot' ? (slippery ? 'bowlineUHMWPE' : 'bowline') : ends)
  return { low: table.low, typical: table.si, high: table.high }
}

/** The same at the leg's end of the range. */
function endShare(leg: Prepared, joint: Joint): number {
  const band = retentionOf(leg, joint)
  return leg.end === 'typical' ? band.typical : leg.end === 'pessimistic' ? band.low : band.high
}

/** Tension that the cord of a joint may bear every day. */
const daily = /* @__PURE__ */ oncePerLegAnd(JOINTS, (of, leg, joint) => allowed(of, leg, joint, leg.drives[joint].cord.designFactor))
/** Tension that it may bear once in a while. */
const rare = /* @__PURE__ */ oncePerLegAnd(JOINTS, (of, leg, joint) => allowed(of, leg, joint, ONCE_FACTOR))

/** Tension that the cord may bear with its ends and over its pinion, divided by a factor. */
function allowed(of: Evaluator, leg: Prepared, joint: Joint, designFactor: number): number {
  const { cord, pinionRadius } = leg.drives[joint]
  const ratio = of(bendRatio, { centreLineRadius: pinionRadius, cordDiameter: cord.diameter })
  return of(workingTension, {
    breakingStrength: cord.breakingStrength,
    endEfficiency: endShare(leg, joint),
    bendEfficiency: of(bendEfficiency, { bendRatio: ratio, leastBendRatio: cord.leastBendRatio, exponent: 1 }),
    designFactor,
  })
}

/** Pretension that is left after some years at room temperature, each taking the same share. */
export const pretensionAfter = (pretension: number, leftAfterYear: number, years: number): number => pretension * leftAfterYear ** years

/** The cord of each drive. */
export const cordChecks: readonly Check[] = [
  {
    id: 'cord.slack',
    part: 'cord drive',
    mode: 'loses the tension of its slack span',
    stake: 'fails to work',
    kind: 'torque',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (_, __, { motion, drive }) => ({
      demand: Math.abs(motion.torque),
      capacity: drive.slackTorque,
      ...(drive.hangs ? { remark: 'temperature and age leave no pretension at all: the cord hangs' } : {}),
    }),
    demandIs: 'the joint torque',
    capacityIs: 'the torque at which the slack span carries nothing, with the pretension of this temperature and age',
    remedy: 'more pretension, a larger drum, or a cord and frame that change length alike when heated',
    rests: () => [relaxationRest],
  },
  {
    id: 'cord.slip',
    part: 'cord on the pinion',
    mode: 'slips',
    stake: 'fails to work',
    kind: 'torque',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (_, __, { motion, drive }) =>
      drive.slipTorque === Number.POSITIVE_INFINITY ? undefined : { demand: Math.abs(motion.torque), capacity: drive.slipTorque },
    demandIs: 'the joint torque',
    capacityIs: 'the torque at which the cord slips around its whole arc on the pinion',
    remedy: 'clamp the cord in the middle of the pinion, one more wrap, or more pretension',
    rests: () => [frictionRest, relaxationRest],
  },
  {
    id: 'cord.working',
    part: 'cord',
    mode: 'wears out or breaks at its end under daily tension',
    stake: 'breaks',
    kind: 'force',
    scope: 'joint',
    cases: ['stand', 'walk', 'trot', 'slope', 'hotAfternoon'],
    after: ['motion', 'drive'],
    run: (of, scene, { drive }) => ({ demand: drive.taut, capacity: daily(of, scene.leg, scene.joint) }),
    demandIs: 'the tension of the taut span',
    capacityIs: 'the working tension: breaking strength with its ends and bends, over the design factor',
    remedy: 'a better end than a knot, a thicker cord, a larger pinion, or a larger drum',
    rests: () => [retentionRest],
  },
  {
    id: 'cord.peak',
    part: 'cord',
    mode: 'breaks at its end in a rare hard load',
    stake: 'breaks',
    kind: 'force',
    scope: 'joint',
    cases: ['stall', 'hop', 'drop'],
    after: ['motion', 'drive'],
    run: (of, scene, { drive }) => ({ demand: drive.peak, capacity: rare(of, scene.leg, scene.joint) }),
    demandIs: 'the tension of the taut span after the joint has travelled under load',
    capacityIs: 'half the breaking strength with its ends and bends',
    remedy: 'a better end than a knot, a thicker cord, a larger drum, or a softer landing',
    rests: () => [retentionRest],
  },
  {
    id: 'cord.bend',
    part: 'cord on the pinion',
    mode: 'wears by sharp bending',
    stake: 'breaks',
    kind: 'ratio',
    scope: 'joint',
    cases: ['walk'],
    after: [],
    run: (of, { leg, joint }) => {
      const { cord, pinionRadius } = leg.drives[joint]
      return { demand: cord.leastBendRatio, capacity: of(bendRatio, { centreLineRadius: pinionRadius, cordDiameter: cord.diameter }) }
    },
    demandIs: 'the least ratio of pulley to cord diameter for a long life',
    capacityIs: 'the ratio of the pinion',
    remedy: 'a larger pinion or a thinner cord',
    enough: 1,
  },
  {
    id: 'cord.sustained',
    part: 'cord',
    mode: 'creeps away under its long tension',
    stake: 'fails to work',
    kind: 'force',
    scope: 'joint',
    cases: ['shelf', 'season'],
    after: ['drive'],
    run: (_, scene, { drive }) => ({
      demand: drive.pretension,
      capacity: SUSTAINED[fibreOf(scene).creep] * scene.leg.drives[scene.joint].cord.breakingStrength,
    }),
    demandIs: 'the pretension',
    capacityIs: 'the long tension that this fibre bears (15 % of breaking strength for UHMWPE, 30 % for others)',
    remedy: 'less pretension, a thicker cord, or a fibre that creeps less',
    enough: 1,
    rule: { level: 'commonPractice', where: 'long tension of UHMWPE at most 10 to 15 % of breaking strength; other fibres a third' },
    rests: () => [relaxationRest],
  },
  {
    id: 'cord.shelf',
    part: 'cord drive',
    mode: 'has lost the pretension that walking needs after a year on the shelf',
    stake: 'fails to work',
    kind: 'force',
    scope: 'joint',
    cases: ['shelf'],
    after: ['drive'],
    run: (of, scene, { drive }) => {
      const { leg, joint, state, walkTorque } = scene
      const { cord, pinionRadius, drumRadius, friction, pretensionLeft } = leg.drives[joint]
      const torque = walkTorque(joint)
      if (torque === 0) return undefined
      const { from, to } = leg.x.joints[joint]
      const needed = of(pretensionForTorque, {
        torque,
        pinionRadius,
        drumRadius,
        span: drive.span,
        pinionWrap: drive.pinionWrap,
        drumWrap: drive.drumWrapAngle / 2,
        travel: Math.min(to - from, drive.drumWrapAngle),
        friction,
        drumFriction: undefined,
        hold: leg.x.drives[joint].hold,
        requiredReserve: 1,
      }).pretension
      const stress = (leg.x.drives[joint].pretension / cord.breakingStrength) * fibreOf(scene).strength.si
      const hotter =
        fibreOf(scene).creep === 'activated'
          ? of(activatedCreepFactor, {
              fromTemperature: ROOM,
              toTemperature: state.air,
              fromStress: stress,
              toStress: stress,
              activationEnergy: 1.5 * 1.602176634e-19,
              activationVolume: 0.045e-27,
            })
          : 1
      // What a year at room temperature leaves, for as many years as this time and temperature amount to.
      const left = pretensionAfter(leg.x.drives[joint].pretension, pretensionLeft, Math.min(hotter * (state.duration / YEAR), 20))
      return { demand: needed, capacity: left }
    },
    demandIs: 'the pretension that the torque of walking needs',
    capacityIs: 'the pretension left after the time on the shelf at its temperature',
    remedy: 'release the tension for storage, tension again before use, or more pretension',
    rests: () => [relaxationRest, frictionRest],
  },
  {
    id: 'cord.heat',
    part: 'cord on the warm pinion',
    mode: 'softens and creeps',
    stake: 'fails to work',
    kind: 'temperatureDifference',
    scope: 'joint',
    cases: WARM,
    after: ['motion', 'heat'],
    run: (_, scene, { heat }) => {
      const { serviceTemperature } = fibreOf(scene)
      const { end } = scene.leg
      const limit = end === 'typical' ? serviceTemperature.si : end === 'pessimistic' ? serviceTemperature.low : serviceTemperature.high
      return { demand: heat.mount - scene.state.air, capacity: limit - scene.state.air }
    },
    demandIs: 'the rise of the pinion above the air, taken as that of the motor mount',
    capacityIs: 'the rise that reaches the temperature up to which the fibre may be kept under tension',
    remedy: 'a cooler motor, a pinion that insulates, or a fibre that bears heat',
    rests: (scene) => [
      {
        what: 'temperature that the fibre bears under tension',
        source: fibreOf(scene).serviceTemperature.source,
        test: 'keep a metre of cord under tension at that temperature for a day and measure its stretch',
      },
    ],
  },
  {
    id: 'cord.registry',
    part: 'cord on the pinion',
    mode: 'creeps along the pinion, so that motor and joint lose step',
    stake: 'fails to work',
    kind: 'angle',
    scope: 'joint',
    cases: ['walk'],
    after: ['motion', 'drive'],
    run: (of, { leg, joint }, { motion, drive }) => {
      if (drive.slipTorque === Number.POSITIVE_INFINITY) return undefined
      const { ratio, cord, friction } = leg.drives[joint]
      const stroke = motion.highest - motion.lowest
      const taut = of(slipArc, { tautTension: drive.taut, slackTension: drive.pretension, friction })
      const slack = of(slipArc, {
        tautTension: drive.pretension,
        slackTension: Math.max(drive.slack, 0.01 * drive.pretension),
        friction,
      })
      // Cord in the middle of long wraps never leaves the pinion, and then nothing drifts.
      if (ratio * stroke + taut + slack < drive.pinionWrap) return undefined
      const perStride = of(creepDrift, { ratio, stroke, tensionDifference: drive.taut - drive.slack, axialRigidity: cord.axialRigidity })
      return {
        demand: perStride * leg.x.usage.stridesPerDay,
        capacity: 2 * Math.PI,
        remark: 'the drift is a limit for short wraps that no experiment stands behind',
      }
    },
    demandIs: 'the turn of the pinion against the joint that a day of strides adds up to',
    capacityIs: 'one turn of spare groove',
    remedy: 'clamp the cord in the middle of the pinion, or more wraps than the travel uses; an encoder on the joint in any case',
  },
]
