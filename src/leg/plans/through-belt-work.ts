import { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { DrivenJoint } from '../numbers.js'
import { SECOND_STAGE, type ThroughBelt } from '../second-stage.js'
import { beltMass, shareOfTension } from '../workshop-lines.js'
import { kilograms } from './assembly-steps.js'
import { type BeltSetting, beltSetting } from './belt-setting.js'
import { beltItem, pulleyItem } from './belt-work.js'
import { byRule, force, length } from './bench.js'
import type { DriveWork } from './drive-work-plan.js'
import { phrase, shown } from './sheet-units.js'

const hertz = (x: number) => shown(new Quantity(x, 'frequency'))
const percent = (x: number) => `${Math.round(100 * x)} %`

/** A belt along the upper link: what to buy, how to lay it on, tension it and look after it. @internal */
export function throughBeltWork(leg: LegModel, through: ThroughBelt): DriveWork {
  const s = beltSetting(leg, SECOND_STAGE as DrivenJoint)
  const { adjustment, pretension } = through
  const pitchLeft = (share: number) => s.pitchAt(shareOfTension.si({ tension: pretension, share }))
  const stated = leg.x.links.upper.length
  const off = Math.abs(s.set - stated)
  return {
    joint: 'knee',
    kind: 'beltAlongLink',
    sizes: sizesOf(s, through, stated),
    parts: partsOf(s, through),
    before: [
      'Lay the belt of the upper link around each of its pulleys by hand, half round: every tooth must seat without rocking.',
      'Join the pulley on the hip axis and what the motor of the knee turns there by key or clamp, and turn them: both must run true, and free on the hip axis.',
    ],
    steps: [
      phrase`Belt of the upper link: set the knee axis to ${length(stated - adjustment)} from the hip axis and lay the belt on by hand, both pulleys together. Key and clamp of the pulley on the hip axis stay loose.`,
      phrase`Tension it: set the knee axis to about ${length(s.set)}. Swing the knee through its travel three times, pluck a span: ${hertz(s.pitchAt(pretension))} is ${force(pretension)}. Without a tuner, ${force(s.sideForce)} (${kilograms(s.sideForce)}) across its middle deflect it by ${byRule(s.deflection)}. Lock the axis and pluck both spans again.`,
      'Hold upper link and knee where the drive of the knee stands in the middle of its travel, then tighten key or clamp on the hip axis. Swing hip and knee by hand through all their corners: the belt must stay between its flanges and not ride up. Keep fingers out of both pulleys.',
    ],
    followUps: (['after a day', 'after a week'] as const).map((when) => ({
      when,
      what: 'belt of the upper link',
      expect: `a pitch near ${hertz(s.pitchAt(pretension))}. A year leaves ${percent(s.belt.pretensionLeft.low)} to ${percent(s.belt.pretensionLeft.high)} of its tension, a pitch of ${hertz(pitchLeft(s.belt.pretensionLeft.low))} to ${hertz(pitchLeft(s.belt.pretensionLeft.high))}`,
    })),
    troubles: [
      {
        reading: 'the knee stands off its angle by one tooth or more, hip and motor where they were',
        means: 'the belt of the upper link has jumped',
        cure: 'tension it again, replace it, and home the knee anew',
      },
    ],
    problems:
      off > adjustment
        ? [
            phrase`knee: a belt of ${s.belt.teeth} teeth along the upper link has its tension with hip and knee at ${length(s.set)}, beyond the adjustment of ${length(adjustment)} about ${length(stated)}`,
          ]
        : [],
  }
}

const sizesOf = (
  s: BeltSetting,
  { hipTeeth, kneeTeeth, adjustment, pretension, material, pretensionScatter }: ThroughBelt,
  stated: number,
) => [
  { what: 'belt', value: phrase`${s.name}: pitch ${length(s.belt.pitch)}, ${s.belt.teeth} teeth, width ${length(s.belt.width)}, closed` },
  { what: 'length of the belt', value: shown(length(s.length)) },
  {
    what: 'mass of the whole belt',
    value: shown(new Quantity(beltMass.si({ length: s.length, massPerLength: s.belt.massPerLength }), 'mass')),
  },
  {
    what: 'pulley on the hip axis',
    value: phrase`${hipTeeth} teeth, pitch diameter ${length(hipTeeth > kneeTeeth ? s.large : s.small)}, of ${material}`,
  },
  {
    what: 'pulley on the knee',
    value: phrase`${kneeTeeth} teeth, pitch diameter ${length(hipTeeth > kneeTeeth ? s.small : s.large)}, of ${material}`,
  },
  { what: 'distance of hip and knee, belt straight without tension', value: shown(length(s.straight)) },
  { what: 'distance of hip and knee, tensioned', value: shown(length(s.set)) },
  { what: 'adjustment of hip and knee', value: phrase`${length(stated - adjustment)} to ${length(stated + adjustment)}` },
  { what: 'free span', value: shown(length(s.span)) },
  { what: 'tension of each span', value: phrase`${force(pretension)}, within ${percent(pretensionScatter)}` },
  { what: 'pitch of a plucked span', value: hertz(s.pitchAt(pretension)) },
  { what: 'force across the middle of a span that deflects it', value: phrase`${force(s.sideForce)} for ${byRule(s.deflection)}` },
  { what: 'force that presses the upper link together at rest', value: shown(force(s.axisForce)) },
]

const partsOf = ({ belt }: BeltSetting, { hipTeeth, kneeTeeth, material }: ThroughBelt) => [
  beltItem(belt, 'along the upper link: closed, the same profile as its pulleys; one spare'),
  pulleyItem(belt, hipTeeth, `belt of the upper link, on the hip axis: bought, or made of ${material}`),
  pulleyItem(belt, kneeTeeth, `belt of the upper link, on the lower link: bought, or made of ${material}`),
]
