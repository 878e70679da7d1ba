import { significant } from '../../units/index.js'
import { type DriveKind, jointWords } from '../numbers.js'
import { one as oneName } from '../report/amounts.js'
import { type Block, heading, text } from '../report/blocks.js'
import { boltsName } from '../report/instance-words.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { benchLeg, byCalliper, whole } from './bench.js'
import { wordsOfKind } from './drive-facts.js'
import { phrase, shown, table } from './sheet-units.js'
import { windingPicture } from './winding-picture.js'

const rodBlocks = (rod: AssemblyPlan['rod']): Block[] =>
  rod === undefined
    ? []
    : [
        table(
          'Rod of the knee to make',
          ['rod', 'pin to pin', 'within', 'crank', 'rocker', 'pin at each end', 'angle of rod and rocker at the limits of the knee'],
          [
            [
              phrase`${rod.material}, ${rod.diameter}`,
              rod.betweenPins,
              rod.tolerance,
              rod.crank,
              rod.rocker,
              rod.pin === undefined ? 'none given' : phrase`${rod.pin.size} x ${rod.pin.catalogue ?? rod.pin.length}: ${rod.pin.fit}`,
              rod.transmissionAngles.map(shown).join(' and '),
            ],
          ],
        ),
      ]

const ALONG = {
  counterweight: 'counterweight',
  spring: 'spring',
  beltAlongLink: 'belt along the upper link',
  cordAlongLink: 'cord along the upper link',
} as const
const wordsOfWork = (kind: AssemblyPlan['drives'][number]['kind']): string =>
  kind in ALONG ? ALONG[kind as keyof typeof ALONG] : wordsOfKind(kind as DriveKind).drive

/** Belts, gears, gearboxes, direct drives, springs and counterweights: what to buy, cut and set. */
const driveBlocks = (drives: AssemblyPlan['drives']): Block[] =>
  drives.map(({ joint, kind, sizes }) =>
    table(
      `Sizes and settings: ${wordsOfWork(kind)} of the ${jointWords(joint)}`,
      [`${wordsOfWork(kind)} of the ${jointWords(joint)}`, 'size'],
      sizes.map(({ what, value }) => [what, value]),
    ),
  )

/** Parts to cut and buy for one leg: cords, pins, shaft, rod, drives, bolts. @internal */
export function cutBlocks(plan: AssemblyPlan): readonly (Block | undefined)[] {
  const { cuts } = plan
  const noCords = plan.windings.length === 0
  return [
    heading('Cut list'),
    noCords
      ? undefined
      : table(
          'Cords to cut',
          ['cord', 'joint', 'cut', 'end to end, laid loose', 'tail, each end', 'inside each end', 'clamp on the pinion at'],
          cuts.cords.map((cord) => [
            cord.cord,
            jointWords(cord.joint),
            whole(cord.cutLength, Math.ceil),
            whole(cord.betweenEnds, Math.round),
            cord.tail,
            phrase`${cord.endLength} (${oneName(cord.ends)})`,
            cord.clampAt === undefined ? 'not clamped' : `${whole(cord.clampAt, Math.round)} from an end`,
          ]),
        ),
    table(
      'Pins to buy',
      ['pin', 'joint', 'length needed', 'buy', 'fit'],
      cuts.pins.map((pin) => [pin.size, pin.joint, pin.length, pin.catalogue ?? 'cut it', pin.fit]),
    ),
    cuts.shaft === undefined
      ? undefined
      : text(
          phrase`Hip shaft: ${cuts.shaft.thread} bolt of class ${cuts.shaft.propertyClass}, at least ${cuts.shaft.leastLength} from the outer face of the far bearing to the plane of the leg; drill its end ${cuts.shaft.tapDrill} by ${cuts.shaft.drillDepth} deep and tap ${cuts.shaft.innerThread} for ${cuts.shaft.threadDepth} of full thread. Clamp it; chips and cutting oil: eye protection.`,
        ),
    ...rodBlocks(plan.rod),
    ...driveBlocks(plan.drives),
    table(
      'Bolts to buy',
      ['bolts', 'count', 'at least', 'never longer than', 'buy'],
      cuts.bolts.map((bolt) => [
        `${bolt.thread} class ${bolt.propertyClass}, ${boltsName(bolt.group)}`,
        bolt.count,
        bolt.leastLength,
        bolt.mostLength ?? 'no limit',
        bolt.catalogue ?? 'none fits',
      ]),
    ),
    text('A screw that is too long shorts the winding of the motor: measure the depth of its threads first.'),
    noCords
      ? undefined
      : table(
          'Finished cords, before they are tensioned',
          ['joint', 'end to end, at least', 'at most', 'bed in with', 'proof-pull with'],
          plan.checks.map((check) => [
            jointWords(check.joint),
            whole(check.shortest, Math.ceil),
            whole(check.longest, Math.floor),
            check.beddingLoad,
            check.proofLoad,
          ]),
        ),
  ]
}

/** How the cords lie, and how far their tensioners are turned; empty without cords. @internal */
export function cordBlocks({ leg, windings, tensioners }: AssemblyPlan): readonly Block[] {
  if (windings.length === 0) return []
  const bench = benchLeg(leg)
  return [
    heading('Windings'),
    table(
      'How each cord lies',
      ['joint', 'spans', 'lay at', 'turns on the pinion', 'wrap of each branch on the drum', 'least wrap left'],
      windings.map((winding) => [
        jointWords(winding.joint),
        winding.arrangement,
        winding.hipHeldAt === undefined ? winding.layAt : phrase`${winding.layAt}, hip at ${winding.hipHeldAt}`,
        significant(winding.pinionTurns.si, 3),
        winding.drumWrap,
        winding.leastDrumWrap,
      ]),
    ),
    { kind: 'pictures' as const, pictures: windings.map((winding) => windingPicture(bench, winding)) },
    heading('Tensioners'),
    table(
      'How far each tensioner is turned',
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
      tensioners.map((tensioner) => [
        jointWords(tensioner.joint),
        tensioner.thread,
        tensioner.pretension,
        byCalliper(tensioner.start.si),
        byCalliper(tensioner.set.si),
        byCalliper(tensioner.end.si),
        tensioner.travel,
        significant(tensioner.turnsToStart.si, 2),
        significant(tensioner.turnsToSet.si, 2),
        tensioner.tensionPerTurn,
      ]),
    ),
  ]
}
