import { groove } from '../../capstan/index.js'
import { clearanceHole, washer } from '../../fasteners/index.js'
import type { LegModel } from '../leg-model.js'
import { cordJoints, drivenBy, drivenJoints, driveOf, jointOf, jointWords, partOf } from '../numbers.js'
import { listed } from '../report/amounts.js'
import { boltsName } from '../report/instance-words.js'
import { length } from './bench.js'
import { MAGNET } from './control-magnet.js'
import type { BoltCut } from './cut-list.js'
import { phrase } from './sheet-units.js'
import type { ShoppingLine } from './shopping-line.js'

/** Sleeves of the bolts: as wide as a washer, with the clearance hole in them, as long as what is clamped. */
const sleeves = ({ x }: LegModel, cuts: readonly BoltCut[]): ShoppingLine[] =>
  cuts.flatMap(({ group, count }) => {
    const bolts = partOf(x.bolts, group, 'group of bolts')
    if (!bolts.sleeves) return []
    const grip = length(bolts.stack.reduce((sum, { thickness }) => sum + thickness, 0))
    const [hole, outside] = [length(clearanceHole.si(bolts.thread).medium), length(washer.si(bolts.thread).outerDiameter)]
    return [
      {
        item: 'sleeve',
        size: phrase`steel, ${hole} inside, ${outside} outside, ${grip} long`,
        quantity: String(count + 1),
        remark: `${boltsName(group)}: its outside, that of a washer, is assumed; one spare`,
      },
    ]
  })

/** Pinion and anchor post of each cord drive. */
const ofCords = ({ x, drives }: LegModel): ShoppingLine[] =>
  cordJoints(x).flatMap((joint) => {
    const { pinion, anchor, hold } = driveOf(x, joint, 'cord')
    const { pinionRadius, cord } = drives[joint]
    const bottom = 2 * pinionRadius - cord.diameter
    const outside = bottom + 2 * groove({ cordDiameter: length(cord.diameter) }).depth.si
    const clamp = hold === 'clampedMidPinion' ? ', with a clamp for the cord in its middle' : ''
    return [
      {
        item: 'pinion',
        size: phrase`metal, ${length(outside)} outside, ${length(bottom)} at the bottom of its grooves, ${length(pinion.length)} long${clamp}`,
        quantity: '1',
        remark: `${jointWords(joint)}: its grooves are on the drawing, its bore is that of the motor ${jointOf(x, joint).motor}`,
      },
      {
        item: 'anchor post',
        size: phrase`steel, ${length(anchor.postDiameter)}, at least ${length(anchor.postLength)} of it in the drum`,
        quantity: '1',
        remark: `${jointWords(joint)}: holds the end of the cord that has no tensioner`,
      },
    ]
  })

function magnets({ x }: LegModel): ShoppingLine {
  const joints = drivenJoints(x)
  return {
    item: 'encoder magnet',
    size: phrase`disc of ${length(2 * MAGNET.radius)} by ${length(MAGNET.length)}, magnetised across`,
    quantity: String(joints.length),
    remark: `${listed(joints.map(jointWords))}: assumed; the sheet of the encoder names the one that it needs`,
  }
}

/** Purchases that are small and easily forgotten: sleeves, pinions and posts of cords, magnets of encoders. @internal */
export const smallParts = (leg: LegModel, bolts: readonly BoltCut[]): ShoppingLine[] => [
  ...ofCords(leg),
  ...sleeves(leg, bolts),
  magnets(leg),
]

/** Work before a motor with a cord is bolted on. @internal */
export const pinionSteps = ({ x }: LegModel): string[] =>
  cordJoints(x).map(
    (joint) =>
      `Fix the pinion on the shaft of the motor of the ${jointWords(joint)}: a flat, a key or a press fit, and a set screw with thread lock. Glue alone must not hold it.`,
  )

/** Work behind the motors, once they are bolted on; the rotor of a direct drive has a step of its own. @internal */
export function encoderSteps({ x }: LegModel): string[] {
  const joints = drivenJoints(x).filter((joint) => !drivenBy(x, 'direct').includes(joint))
  if (joints.length === 0) return []
  return [
    `Put the encoder magnet in the middle of the rear of the motor shaft, its sensor opposite (${listed(joints.map(jointWords))}), and mount the controller. Leave the screws of the motor within reach of the key: they are tightened again after a day.`,
  ]
}
