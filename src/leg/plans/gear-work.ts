import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, driveOf, jointWords } from '../numbers.js'
import { playAtArm } from '../workshop-lines.js'
import { angle, byCalliper, inMillimetres, length } from './bench.js'
import { driveFacts } from './drive-facts.js'
import type { DriveWork } from './drive-work-plan.js'
import { type GearSetting, type GearSizes, gearSetting } from './gear-setting.js'
import { phrase, shown } from './sheet-units.js'

const sizesOf = ({ teeth, pitch, tip, root }: GearSizes) =>
  `${teeth} teeth, pitch diameter ${byCalliper(pitch)}, tip ${byCalliper(tip)}, root ${byCalliper(root)}`
const widthOf = ({ spanned, full, thinned }: GearSizes) =>
  `${byCalliper(full)} over ${spanned} teeth; ${byCalliper(thinned)} with teeth thinned for the backlash`

/** A pair of spur gears: what to make or buy, the distance of the axes, and how to set and look after the backlash. @internal */
export function gearWork(leg: LegModel, joint: DrivenJoint): DriveWork {
  const { module, faceWidth, pinionMaterial, wheelMaterial, backlash, wheelTeeth } = driveOf(leg.x, joint, 'gear')
  const s = gearSetting(leg, joint)
  const where = jointWords(joint)
  const play = driveFacts(leg, joint).ownFreePlay
  const arm = joint === 'knee' ? leg.x.links.lower.length : leg.x.links.upper.length
  const moved = playAtArm.si({ play, arm })
  const gear = (what: string, sizes: GearSizes, material: string) => ({
    item: 'spur gear',
    size: phrase`module ${inMillimetres(module)}, ${sizes.teeth} teeth, face ${length(faceWidth)}, 20° of pressure angle`,
    quantity: '1',
    remark: `${where}, ${what}: of ${material}`,
  })
  return {
    joint,
    kind: 'gear',
    sizes: [
      { what: 'module and pressure angle', value: `${inMillimetres(module)}, 20°` },
      { what: 'face width in mesh', value: shown(length(faceWidth)) },
      { what: `pinion, on the motor, of ${pinionMaterial}`, value: sizesOf(s.pinion) },
      { what: `wheel, on the joint, of ${wheelMaterial}`, value: sizesOf(s.wheel) },
      { what: 'calliper over the pinion', value: widthOf(s.pinion) },
      { what: 'calliper over the wheel', value: widthOf(s.wheel) },
      { what: 'backlash along the pitch circle', value: inMillimetres(backlash) },
      { what: 'distance of the axes, teeth thinned for the backlash', value: byCalliper(s.standard) },
      { what: 'distance of the axes, full teeth', value: byCalliper(s.apart) },
      { what: 'gap between flanks, as a foil measures it', value: byCalliper(s.gap) },
      { what: 'play of the joint, motor held', value: phrase`${angle(play)}, ${byCalliper(moved)} at ${length(arm)} from its axis` },
    ],
    parts: [gear('pinion on the motor', s.pinion, pinionMaterial), gear('wheel on the joint', s.wheel, wheelMaterial)],
    before: [
      `Measure both gears of the ${where} over their teeth with a calliper: ${widthOf(s.pinion)} for the pinion, ${widthOf(s.wheel)} for the wheel. Which of both figures you find says at what distance their axes belong.`,
      `Fix the pinion on the shaft of the motor of the ${where}: a flat, a key or a press fit, and a set screw with thread lock. Glue alone must not hold it.`,
    ],
    steps: stepsOf(s, where, faceWidth, moved, arm),
    followUps: followUpsOf(where, moved),
    troubles: troublesOf(where, wheelTeeth),
    problems: [],
  }
}

const stepsOf = (s: GearSetting, where: string, faceWidth: number, moved: number, arm: number) => [
  `Gears of the ${where}: bolt the motor on loosely. Set the distance of the axes with a gauge plate of two pins: ${byCalliper(s.standard)} for teeth thinned for the backlash, ${byCalliper(s.apart)} for full teeth.`,
  `Set the backlash of the ${where}: lay a foil of ${byCalliper(s.gap)} between two flanks (paper is 0.1 mm), push the motor in until it is just held, and tighten crosswise. Draw the foil out. Turn the wheel by hand through its whole travel: it must turn freely everywhere, and nowhere more loosely than by a third of the backlash. A tight spot is a tooth or an axis that does not run true.`,
  phrase`Check that both faces overlap over the whole ${length(faceWidth)}, and that both axes are parallel: blacken some teeth with a pen, turn under a light brake, and look where they wear bright. The mark must lie over most of the face, not at one end.`,
  phrase`Hold the motor of the ${where} and move the link: ${byCalliper(moved)} at ${length(arm)} from the axis is the backlash of the specification.`,
  `Grease the teeth of the ${where} thinly, with a grease that the prints bear, and cover the pair.`,
]

const followUpsOf = (where: string, moved: number): DriveWork['followUps'] => [
  {
    when: 'after a day',
    what: `gears of the ${where}`,
    expect: `play of ${byCalliper(moved)} at the same place; more after the first walks means teeth that bed in: set the axes once again`,
  },
  {
    when: 'after a week',
    what: `gears of the ${where}`,
    expect: 'no whitened roots, no dust; the bright marks still over most of the face',
  },
]

const troublesOf = (where: string, wheelTeeth: number) => [
  {
    reading: `${where}: play varies over a turn by more than a third`,
    means: 'pinion or wheel does not run true',
    cure: 'turn the pinion on its seat by half a turn and look again; make the gear that runs out anew',
  },
  {
    reading: `${where}: the pair hums, or warms without load`,
    means: 'too little backlash, most of all once it is warm',
    cure: 'move the axes apart by a tenth of a millimetre; prints grow by heat and water',
  },
  {
    reading: `${where}: the wheel jumps a tooth under load`,
    means: `the axes part: ${wheelTeeth} teeth push them away from each other by a third of the force along the circle`,
    cure: 'stiffen what holds the motor; replace both gears',
  },
]
