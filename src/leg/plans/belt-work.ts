import { Quantity, significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, driveOf, jointWords } from '../numbers.js'
import { isPrinted } from '../printed.js'
import { beltMass, shareOfTension } from '../workshop-lines.js'
import { kilograms } from './assembly-steps.js'
import { type BeltSetting, beltSetting } from './belt-setting.js'
import { angle, byRule, force, length } from './bench.js'
import { driveFacts } from './drive-facts.js'
import type { DriveWork } from './drive-work-plan.js'
import { phrase, shown } from './sheet-units.js'

const hertz = (x: number) => shown(new Quantity(x, 'frequency'))
/** Pulleys out of line by more than this share of their distance lead the belt into a flange. Common practice: a third of a degree. */
const ALIGNED = (Math.PI / 180) * 0.33

/** A belt drive with what its plan is worked out from, SI. */
interface BeltPlan extends BeltSetting {
  readonly drive: BeltDrive
  readonly where: string
  readonly mass: number
  /** Pitch of a span with a share of the tension, and at both ends of the scatter. */
  readonly pitchLeft: (share: number) => number
  readonly low: number
  readonly high: number
  /** How much nearer the axes come than where the belt is straight. */
  readonly loose: number
}
type BeltDrive = ReturnType<typeof driveOf<'belt'>>

/** A belt drive: belt and pulleys to buy, how to lay it on, tension it and look after it. @internal */
export function beltWork(leg: LegModel, joint: DrivenJoint): DriveWork {
  const drive = driveOf(leg.x, joint, 'belt')
  const { centreDistance: stated, adjustment, pretensionScatter: scatter } = drive
  const s = beltSetting(leg, joint)
  const pitchLeft = (share: number) => s.pitchAt(shareOfTension.si({ tension: s.pretension, share }))
  const b: BeltPlan = {
    ...s,
    drive,
    where: jointWords(joint),
    mass: beltMass.si({ length: s.length, massPerLength: s.belt.massPerLength }),
    pitchLeft,
    low: pitchLeft(1 - scatter),
    high: pitchLeft(1 + scatter),
    loose: s.straight - (stated - adjustment),
  }
  return {
    joint,
    kind: 'belt',
    sizes: sizesOf(b),
    parts: partsOf(b),
    before: beforeOf(b, isPrinted(leg.x, drive.material)),
    steps: stepsOf(b, driveFacts(leg, joint).ownFreePlay),
    followUps: followUpsOf(b),
    troubles: troublesOf(b),
    problems: problemsOf(b),
  }
}

function sizesOf(s: BeltPlan) {
  const { belt, pretension, mass, low, high } = s
  const { smallTeeth, largeTeeth, material, adjustment, centreDistance: stated, pretensionScatter: scatter } = s.drive
  return [
    { what: 'belt', value: phrase`${s.name}: pitch ${length(belt.pitch)}, ${belt.teeth} teeth, width ${length(belt.width)}, closed` },
    { what: 'length of the belt', value: shown(length(s.length)) },
    { what: 'mass of the whole belt', value: shown(new Quantity(mass, 'mass')) },
    { what: 'small pulley, on the motor', value: phrase`${smallTeeth} teeth, pitch diameter ${length(s.small)}` },
    { what: 'large pulley, on the joint', value: phrase`${largeTeeth} teeth, pitch diameter ${length(s.large)}, of ${material}` },
    { what: 'distance of the axes, belt straight without tension', value: shown(length(s.straight)) },
    { what: 'distance of the axes, tensioned', value: shown(length(s.set)) },
    { what: 'adjustment of the axes', value: phrase`${length(stated - adjustment)} to ${length(stated + adjustment)}` },
    { what: 'free span', value: shown(length(s.span)) },
    { what: 'tension of each span', value: phrase`${force(pretension)}, within ${Math.round(100 * scatter)} %` },
    { what: 'pitch of a plucked span', value: `${hertz(s.pitchAt(pretension))} (${hertz(low)} to ${hertz(high)})` },
    {
      what: 'force across the middle of a span that deflects it',
      value: phrase`${force(s.sideForce)} for ${byRule(s.deflection)}`,
    },
    { what: 'force on each axis at rest', value: shown(force(s.axisForce)) },
  ]
}

function partsOf({ belt, where, drive: { smallTeeth, largeTeeth, material } }: BeltPlan) {
  return [
    beltItem(belt, `${where}: closed, the same profile as its pulleys; one spare`),
    pulleyItem(belt, smallTeeth, `${where}, on the motor: flanges on both sides, bore of its shaft, two set screws on flats`),
    pulleyItem(belt, largeTeeth, `${where}, on the joint: bought, or made of ${material}`),
  ]
}

/** A belt to buy, with a spare. @internal */
export const beltItem = ({ teeth, pitch, width }: BeltSetting['belt'], remark: string) => ({
  item: 'tooth belt',
  size: phrase`${teeth} teeth of ${length(pitch)}, ${length(width)} wide`,
  quantity: '2',
  remark,
})
/** A pulley for a belt. @internal */
export const pulleyItem = ({ pitch, width }: BeltSetting['belt'], teeth: number, remark: string) => ({
  item: 'pulley',
  size: phrase`${teeth} teeth of ${length(pitch)}, for ${length(width)}`,
  quantity: '1',
  remark,
})

function beforeOf(s: BeltPlan, printed: boolean) {
  const { where, mass } = s
  return [
    phrase`Weigh the belt of the ${where}: ${new Quantity(mass, 'mass')} are what the pitches of this plan count on. A belt half as heavy again sounds a fifth lower at the same tension: write its mass over its length into the document.`,
    `Lay the belt around each pulley of the ${where} by hand, half round: every tooth must seat without rocking. A pulley whose belt rides up over half a turn has a wrong pitch: ${printed ? 'print' : 'make or buy'} another one.`,
    `Fit the small pulley on the motor of the ${where}, set screws on flats with thread lock. Turn it and look at its rim: it must run true within a tenth of a millimetre.`,
  ]
}

function stepsOf(s: BeltPlan, play: number) {
  const { pretension, where, loose } = s
  const { adjustment, centreDistance: stated } = s.drive
  return [
    phrase`Belt of the ${where}: move the motor right in, to ${length(stated - adjustment)}${loose > 0 ? `, ${byRule(loose)} nearer than where the belt is straight` : ''}. Lay the belt on by hand, both pulleys together; never roll it over a flange or pry it with a blade.`,
    `Line both pulleys up with a straight edge across their faces: no gap wider than ${significant(1000 * s.set * Math.tan(ALIGNED), 2)} mm at its far end (a third of a degree), and both axes parallel within as much.`,
    phrase`Tension the belt: move the motor out to about ${length(s.set)}. Turn the joint through its travel three times, so that both spans share the tension. Pluck a span next to a telephone with a tuner: ${hertz(s.pitchAt(pretension))} is ${force(pretension)} (tension = 4 × mass per length × (span × pitch)²). Without a tuner, pull the middle of the span square to it with a luggage scale: ${force(s.sideForce)} (${kilograms(s.sideForce)}) deflect it by ${byRule(s.deflection)}. Tighten the motor crosswise, and pluck again: bolts pull it along.`,
    phrase`Turn the ${where} by hand through its whole travel and back. The belt must stay between the flanges, hum alike at both ends, and not ride up on a tooth. Play of about ${angle(play)} at the joint is the clearance of its teeth.`,
  ]
}

function followUpsOf(s: BeltPlan) {
  const { pretension, where, pitchLeft, low } = s
  const { low: least, high: most } = s.belt.pretensionLeft
  return (['after a day', 'after a week'] as const).map((when) => ({
    when,
    what: `belt of the ${where}`,
    expect: `a pitch near ${hertz(s.pitchAt(pretension))}; below ${hertz(low)}, tension it again. A year leaves ${Math.round(100 * least)} to ${Math.round(100 * most)} % of its tension, a pitch of ${hertz(pitchLeft(least))} to ${hertz(pitchLeft(most))}`,
  }))
}

function troublesOf(s: BeltPlan) {
  const { pretension, where } = s
  return [
    {
      reading: `${where}: the pitch of both spans differs by more than a tenth`,
      means: 'one span still carries the load of the joint, or the belt rides on a tooth',
      cure: 'support the link, turn the joint through its travel, and pluck again',
    },
    {
      reading: phrase`${where}: ${force(pretension)} is reached at other axes than ${length(s.set)}, by more than ${significant(Math.max(0.3, 1000 * Math.abs(s.set - s.straight)), 2)} mm`,
      means: 'another number of teeth, another pitch, or a pulley of wrong diameter',
      cure: 'count the teeth of belt and pulleys before you go on',
    },
    {
      reading: `${where}: dust under the belt, or a ticking sound once a turn`,
      means: 'pulleys out of line, a tooth of wrong shape, or too little tension',
      cure: 'line up and tension again; a belt that has jumped is replaced',
    },
  ]
}

function problemsOf(s: BeltPlan) {
  const { belt, where, loose } = s
  const { adjustment, centreDistance: stated } = s.drive
  return Math.abs(s.set - stated) > adjustment
    ? [
        phrase`${where}: a belt of ${belt.teeth} teeth has its tension with the axes at ${length(s.set)}, beyond the adjustment of ${length(adjustment)} about ${length(stated)}`,
      ]
    : loose <= 0
      ? [
          phrase`${where}: the axes cannot be brought near enough to lay a belt of ${belt.teeth} teeth on; it needs less than ${length(s.straight)}`,
        ]
      : []
}
