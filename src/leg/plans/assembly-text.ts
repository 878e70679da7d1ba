import { significant } from '../../units/index.js'
import type { AssemblyPlan } from './assembly.js'
import { page, points, table } from './show.js'

/** The assembly plan as Markdown. */
export function assemblyText(plan: AssemblyPlan): string {
  const { leg, cuts, windings, tensioners } = plan
  return page([
    `# ${leg.name}: assembly plan`,
    plan.problems.length === 0 ? '' : `**This does not go together as specified:**\n\n${points(plan.problems)}`,
    '## Cautions',
    points(plan.cautions),
    '## Cut list',
    table(
      ['cord', 'joint', 'cut', 'end to end, laid loose', 'tail, each end', 'inside each end', 'clamp on the pinion at'],
      cuts.cords.map((one) => [
        one.cord,
        one.joint,
        one.cutLength,
        one.betweenEnds,
        one.tail,
        `${one.endLength} (${one.ends})`,
        one.clampAt === undefined ? 'not clamped' : `${one.clampAt} from an end`,
      ]),
    ),
    table(
      ['pin', 'joint', 'length'],
      cuts.pins.map((one) => [one.size, one.joint, one.length]),
    ),
    `Hip shaft: ${cuts.shaft.thread} bolt of class ${cuts.shaft.propertyClass}, at least ${cuts.shaft.leastLength} from the outer face of the far bearing to the plane of the leg; drill its end ${cuts.shaft.tapDrill} by ${cuts.shaft.drillDepth} deep and tap ${cuts.shaft.innerThread} for ${cuts.shaft.threadDepth} of full thread. Clamp it; chips and cutting oil: eye protection.`,
    table(
      ['bolts', 'count', 'at least'],
      cuts.bolts.map((one) => [`${one.thread} class ${one.propertyClass}, ${one.group}`, one.count, one.leastLength]),
    ),
    '## Presses',
    table(
      ['pin', 'joint', 'hole', 'interference', 'force into one boss, up to', 'hoop stress at the bore'],
      plan.presses.map((one) => [one.pin, one.joint, one.hole, one.interference, one.pressingForce, one.boreHoopStress]),
    ),
    plan.bonds.length === 0
      ? ''
      : `## Bonds\n\n${table(
          ['joint', 'adhesive', 'bonded length', 'gap around the cord', 'locked beside the bond'],
          plan.bonds.map((one) => [
            one.joint,
            one.adhesive,
            one.bondedLength,
            one.gap,
            one.mechanicalLock ? 'yes' : 'no: add a knot or cone',
          ]),
        )}`,
    '## Windings',
    table(
      ['joint', 'spans', 'lay at', 'turns on the pinion', 'wrap of each branch on the drum', 'least wrap left'],
      windings.map((one) => [one.joint, one.arrangement, one.layAt, significant(one.pinionTurns.si, 3), one.drumWrap, one.leastDrumWrap]),
    ),
    '## Tensioners',
    table(
      [
        'joint',
        'screw',
        'pretension',
        'slack gone at',
        'set at',
        'end of life at',
        'travel',
        'turns to slack gone',
        'turns to set',
        'per turn',
      ],
      tensioners.map((one) => [
        one.joint,
        one.thread,
        one.pretension,
        one.start,
        one.set,
        one.end,
        one.travel,
        significant(one.turnsToStart.si, 2),
        significant(one.turnsToSet.si, 2),
        one.tensionPerTurn,
      ]),
    ),
    '## Tightening, in order',
    table(
      ['', 'what', 'screws', 'passes', 'preload', 'remark'],
      plan.tightening.map((one, i) => [i + 1, one.what, `${one.count} × ${one.thread}`, one.passes.join(', '), one.preload, one.remark]),
    ),
    '## Order of work',
    plan.steps.map((step, i) => `${i + 1}. ${step}`).join('\n'),
    '## Again after a day and a week',
    table(
      ['when', 'what', 'expect'],
      plan.followUps.map((one) => [one.when, one.what, one.expect]),
    ),
    '## Taken because the specification does not say',
    table(
      ['what', 'taken', 'why'],
      plan.assumed.map((one) => [one.what, one.value, one.why]),
    ),
  ])
}
