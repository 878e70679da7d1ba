import { Quantity, significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, driveOf, jointOf, jointWords, motorOf } from '../numbers.js'
import { carrierOf } from '../parts/transmission/output-bearing/fields.js'
import { playAtArm } from '../workshop-lines.js'
import { angle, byCalliper, force, inMillimetres, length, torque } from './bench.js'
import type { DriveSize, DriveWork } from './drive-work-plan.js'
import { phrase, shown } from './sheet-units.js'
import type { Trouble } from './workshop-checks.js'

/** A pin or shaft next to the output must be in line with it within this, m: common practice of coupled bearings in printed frames. */
const IN_LINE = 5e-5

/** Part that the output turns on the hip axis where the knee is driven from there; absent where it turns its joint. */
function onHipAxis({ joints: { knee } }: LegNumbers, joint: DrivenJoint): 'crank' | 'pulley' | 'drum' | undefined {
  if (joint !== 'knee' || knee.through === undefined) return undefined
  return { rod: 'crank', belt: 'pulley', cord: 'drum' }[knee.through.kind] as 'crank' | 'pulley' | 'drum'
}

/** Bearings that carry the leg, or the drum on the hip axis: those of the output, or others next to them. */
function carrying(x: LegNumbers, joint: DrivenJoint, kind: 'direct' | 'gearbox') {
  const { radialLoad, tiltingMoment, overhang } = driveOf(x, joint, kind)
  const turned = onHipAxis(x, joint)
  // 'pin carries the joint': its first words name what must be in line.
  const carrier = carrierOf(x, joint)?.replace(/ carries .*/, '')
  const where = jointWords(joint)
  const what = turned === undefined ? 'leg' : `${turned} on the hip axis`
  const sizes: DriveSize[] = [
    { what: `plane of the ${what} beside the output bearings, at most`, value: shown(length(overhang)) },
    ...(radialLoad === undefined ? [] : [{ what: 'force that the output bearings carry', value: shown(force(radialLoad)) }]),
    ...(tiltingMoment === undefined ? [] : [{ what: 'tilting moment that they carry', value: shown(torque(tiltingMoment)) }]),
    {
      what: `the ${what} is carried by`,
      value: carrier === undefined ? 'the bearings of the output alone' : `a ${carrier} besides the output`,
    },
  ]
  const part = turned === undefined ? `link of the ${where}` : what
  const alone = phrase`Bolt the ${part} on the face of the output, its middle plane no farther than ${length(overhang)} from the output bearings: more tilts them. Centre it on the register of the face, not on its screws, and use thread lock.`
  const free =
    turned === undefined
      ? ''
      : ` It must not touch the shaft or pin of the hip, which turns apart from it. Its axis and that of the hip are one within ${inMillimetres(IN_LINE)}.`
  const step =
    carrier === undefined
      ? alone + free
      : `Line the ${carrier} of the ${turned === undefined ? where : what} up with the output: both share one axis within ${inMillimetres(IN_LINE)}. Bolt the ${turned ?? 'link'} on the output loosely, put the ${carrier} in, turn through the whole travel, and tighten the ${turned ?? 'link'} last. Two axes out of line bend the shaft in every turn, and cost current.`
  return { sizes, step, where, part, turned: turned ?? 'link' }
}

/** Lever on which the play of a drum on the hip axis is read, m. */
const LEVER = 0.1
/** Part that is moved to feel the play of the output, and where the play is read. */
const playAt = (x: LegNumbers, joint: DrivenJoint, part: string) => {
  if (onHipAxis(x, joint) !== undefined) return { arm: LEVER, moved: `the ${part}, before what runs to the knee is laid on it,` }
  return { arm: joint === 'knee' ? x.links.lower.length : x.links.upper.length, moved: 'the link' }
}

const runOut = (where: string): Trouble => ({
  reading: `${where}: the current of the slowly turning joint swings by more than a fifth over its travel`,
  means: 'the axes of the output and of what carries its load are not in line, or what it turns rubs',
  cure: 'loosen what it turns, turn through the travel, tighten it again; shim the seat if it comes back',
})

/** A bought gearbox: what to order, how to couple and line it up, and what to check by hand. @internal */
export function gearboxWork({ x }: LegModel, joint: DrivenJoint): DriveWork {
  const box = driveOf(x, joint, 'gearbox')
  const { sizes, step, where, part } = carrying(x, joint, 'gearbox')
  const { arm, moved } = playAt(x, joint, part)
  const turns = box.turns === 'with' ? 'the same way as' : 'against'
  const value = (x: number) => significant(x, 4)
  return {
    joint,
    kind: 'gearbox',
    sizes: [
      { what: 'turns of the motor for one of the output', value: `${value(box.ratio)}, the output turns ${turns} the motor` },
      { what: 'torque at all times, and for a moment', value: phrase`${torque(box.ratedTorque)}, ${torque(box.peakTorque)}` },
      { what: 'highest speed of the input', value: shown(new Quantity(box.highestSpeed, 'angularVelocity')) },
      {
        what: 'play of the output, input held',
        value: phrase`${angle(box.backlash)}, ${byCalliper(playAtArm.si({ play: box.backlash, arm }))} at ${length(arm)} from the axis`,
      },
      ...(box.stiffness === undefined
        ? []
        : [{ what: 'stiffness at the output', value: shown(new Quantity(box.stiffness, 'torsionalStiffness')) }]),
      ...sizes,
    ],
    parts: [
      {
        item: 'gearbox',
        size: phrase`ratio ${value(box.ratio)}, ${torque(box.ratedTorque)} at all times, ${torque(box.peakTorque)} for a moment, play of at most ${angle(box.backlash)}`,
        quantity: '1',
        remark: `${where}: input for the shaft of the motor ${jointOf(x, joint).motor}, flange for its plate`,
      },
    ],
    before: [
      `Before the motor of the ${where} goes on, turn the input of the gearbox by hand: ${value(box.ratio)} turns turn the output once, ${turns} it, with the same light drag everywhere. Grit, or a hard spot once a turn: send it back.`,
      `Join motor and gearbox of the ${where} standing upright, shaft up: clean shaft and hub of oil, tighten the clamp of the input only after the flange lies flat, and check that the rotor still has its axial play. A shaft that is pushed in wears its bearings at once.`,
    ],
    steps: [
      step,
      phrase`Hold the rotor of the ${where} and move ${moved} to and fro: ${byCalliper(playAtArm.si({ play: box.backlash, arm }))} at ${length(arm)} from the axis is the play of the sheet. Write it down for the test stand.`,
    ],
    followUps: [
      {
        when: 'after a week',
        what: `gearbox of the ${where}`,
        expect: `play of no more than ${byCalliper(playAtArm.si({ play: box.backlash, arm }))} at the same place, no oil at its seals`,
      },
    ],
    troubles: [
      runOut(where),
      {
        reading: phrase`${where}: more than half as much play again as ${angle(box.backlash)}`,
        means: 'the clamp of the input slips, or the teeth are worn or broken',
        cure: 'mark shaft and hub with a pen and load the joint: if the marks part, it is the clamp',
      },
    ],
    problems: [],
  }
}

/** A direct drive: how the link goes on the rotor and what carries it. @internal */
export function directWork({ x }: LegModel, joint: DrivenJoint): DriveWork {
  const { sizes, step, where, part, turned } = carrying(x, joint, 'direct')
  const motor = motorOf(x, joint)
  const name = jointOf(x, joint).motor
  return {
    joint,
    kind: 'direct',
    sizes: [
      { what: 'motor', value: phrase`${name}: can of ${length(motor.canDiameter)} by ${length(motor.canLength)}` },
      { what: `turns of the motor for one of the ${turned === 'link' ? 'joint' : turned}`, value: `1: the ${turned} turns with the rotor` },
      ...sizes,
    ],
    parts: [
      {
        item: 'screws of the rotor',
        size: 'thread and circle of its sheet, no longer than its threads are deep',
        quantity: '1 set',
        remark: `${where}: ${turned} on the rotor of the motor ${name}, with thread lock`,
      },
    ],
    before: [
      `Before the motor of the ${where} is bolted on, turn its rotor by hand: it must cog alike all round and run without a scrape. Measure how far its face runs out: a tenth of a millimetre at the rim is plenty.`,
    ],
    steps: [
      step,
      `Fix the magnet of the ${where} in the middle of the rotor's shaft and its sensor opposite: this encoder reads ${turned === 'link' ? 'the joint' : `the ${part}`} itself, and no reduction divides its error. The table of the control sheet says what a tenth of a millimetre costs.`,
      `Route the phase wires of the ${where} so that no loop is caught by what turns: the joint can turn on when the controller lets go.`,
    ],
    followUps: [
      {
        when: 'after a week',
        what: `screws of the rotor, ${where}`,
        expect: `none turns at its torque; marks of a pen across head and ${turned} still in line`,
      },
    ],
    troubles: [
      runOut(where),
      {
        reading: `${where}: the ${turned} rocks on the rotor`,
        means: 'loose screws of the rotor, or worn bearings of the motor',
        cure: 'tighten; if it still rocks, push and pull the rotor alone: a motor with play in its bearings is replaced',
      },
    ],
    problems: [],
  }
}
