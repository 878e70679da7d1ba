import type { Kind } from '../../units/index.js'
import type { CheckFindings } from '../assess/findings.js'
import { keyOfResult, recordedOf } from '../assess/recorded.js'
import type { CheckResult } from '../check-result.js'
import { drivenBy, legNumbers } from '../numbers.js'
import { hasPrints } from '../printed.js'
import type { Assessment } from '../result.js'
import { type Calculation, type Cell, SheetMaker } from '../run/index.js'
import { beltOrCordOf } from '../second-stage.js'
import { capital } from './amounts.js'
import { type Block, type Piece, plainWords, points, section, table, type Words } from './blocks.js'
import { Numbering } from './numbering.js'
import { Origins, type ValueRow } from './origins.js'
import { Sources } from './sources.js'
import { specificationSection } from './specification-section.js'
import { References } from './step-cells.js'
import { stepsSection } from './steps-section.js'

/** The numbered calculation behind an assessment. */
export interface NumberedSheet {
  /** A side of a check with the reference of the step that made it. */
  side(check: CheckResult, side: 'demand' | 'capacity'): readonly Piece[]
  readonly steps: Block
  readonly specification: Block
  readonly values: Block
  readonly sources: Block
  /** Distinct steps. */
  readonly count: number
  /** Numbers whose origin is not on the sheet. */
  readonly gaps: number
}

/** Numbers the steps of some checks of an assessment, each distinct one once, and gives every value its reference. */
export function numberedSheet(assessment: Assessment, chosen: readonly CheckResult[]): NumberedSheet {
  const { calculation, checks } = recordedOf(assessment)
  const found = new Map(checks.map((each) => [each.key, each]))
  const ranked = chosen.flatMap((check) => found.get(keyOfResult(check)) ?? [])
  const maker = new SheetMaker(calculation as unknown as Calculation<never>)
  const numbering = new Numbering(maker, ranked.flatMap(sidesOf))
  const origins = new Origins(assessment.leg, numbering.sheet, maker)
  const references = new References(numbering, origins)
  const side = (check: CheckResult, which: 'demand' | 'capacity'): readonly Piece[] => {
    const { si, kind } = check[which]
    const cell = found.get(keyOfResult(check))?.findings[0]?.comparison[which]
    const link = cell === undefined ? undefined : maker.sheet([cell]).results[0]?.from
    return references.number(si, kind as Kind, link)
  }
  // References to fields, tables and constants are made while the steps are written.
  const sides = new Map(chosen.map((check) => [check, { demand: side(check, 'demand'), capacity: side(check, 'capacity') }]))
  const sources = new Sources()
  const steps = stepsSection(numbering.groups, references, sources, assessment.leg)
  return {
    side: (check, which) => (sides.get(check) as { readonly demand: readonly Piece[]; readonly capacity: readonly Piece[] })[which],
    steps,
    specification: specificationSection(origins.fields),
    values: valuesSection(origins, sources),
    sources: sources.section(),
    count: numbering.groups.reduce((sum, group) => sum + group.steps.length, 0),
    gaps: numbering.sheet.gaps.length,
  }
}

const sidesOf = ({ findings: [hardest] }: CheckFindings): Cell[] =>
  hardest === undefined ? [] : [hardest.comparison.demand, hardest.comparison.capacity]

/** Sources of a value and the fields that it follows from. */
const originOf = (sources: readonly Piece[], by: readonly string[]): readonly Piece[] => [
  ...sources,
  ...(by.length === 0
    ? []
    : [
        sources.length === 0 ? 'from ' : ', for ',
        ...by.flatMap((ref, i): Piece[] => [i === 0 ? '' : ', ', { text: `[${ref}]`, to: ref }]),
      ]),
]

/** Values of tables and materials, and constants of the model, which steps refer to. */
function valuesSection({ tables, constants }: Origins, sources: Sources): Block {
  const first = new Map<string, string>()
  // An origin of several references that several values have stands with the first of them.
  const originAt = (ref: string, origin: readonly Piece[]): Words => {
    const words = plainWords(origin)
    const known = first.get(words)
    if (known === undefined) first.set(words, ref)
    return known === undefined || !words.includes(', ') ? origin : ['as ', { text: known, to: known }]
  }
  const list = (caption: string, rows: readonly ValueRow[]) =>
    table(
      caption,
      ['no.', 'value of', 'value', 'source'],
      rows.map(({ ref, name, value, sources: from, by }): Words[] => [ref, name, value, originAt(ref, originOf(sources.of(from), by))]),
      rows.map(({ ref }) => ref),
    )
  return section('values', 'Values of tables, and constants', [
    section('tables', 'Materials, threads and other tables', [list('Values of tables that steps refer to', tables)]),
    section('constants', 'Constants of the model', [list('Constants that steps refer to', constants)]),
  ])
}

/** Parts that no check covers, by what drives the knee through the hip. */
function notChecked(through: Assessment['leg']['joints']['knee']['through']): readonly string[] {
  if (through === undefined) return []
  const { kind } = through
  if (kind === 'rod') {
    const known = through.pivots?.crank !== undefined && through.pivots.rocker !== undefined
    return [
      known
        ? 'Crank and rocker of the knee are not checked as levers, and nor are their seats on drum and lower link. Test them by hand under the force of the rod.'
        : 'Crank and rocker of the knee, and their seats on drum and lower link, are not checked. Test them by hand under the force of the rod.',
    ]
  }
  return [
    `The seats of both pulleys of the ${kind} along the upper link, ${kind === 'cord' ? 'the groove of the drum on the hip axis, ' : ''}and idlers are not checked. Test them by hand under the tension of the ${kind}.`,
    `Losses of the ${kind} along the upper link load both drums in every pose, whichever way it turns.`,
  ]
}

const BEARING_LIFE =
  'Bearing life counts every turn, those of the swing too, at the largest load of the stance. The cubic mean of the load over the turns, as in ISO 281, is smaller.'

const CREEP =
  'Creep of a walk counts the time that the foot stands, at the largest force of the stance. No order of loads and rests in that time creeps more.'

/** Assumptions of the model as a whole. Those of each formula stand with its steps. */
export const assumptionsSection = ({ requiredReserve, leg }: Assessment): Block => {
  const x = legNumbers(leg)
  const tensioned = (['cord', 'belt'] as const).filter((kind) => drivenBy(x, kind).length > 0 || beltOrCordOf(x)?.kind === kind)
  return section('assumptions', 'Assumptions', [
    points([
      `Reserve is capacity over demand. The required reserve is ${requiredReserve}, or less where a check lists a lower one.`,
      'Temperatures are compared as rises above the air.',
      'Every uncertain value is at its typical value. The range of a reserve has every uncertain value at the end that is unfavourable for this check, and at the end that is favourable.',
      'Links are rigid uniform rods, and the body moves at constant speed. In a hop and a drop only the weight of the links counts.',
      ...(tensioned.length === 0
        ? []
        : [`The frame that a ${tensioned.join(' or ')} pulls on is rigid, so that changes of tension with temperature are upper bounds.`]),
      'Each motor heats its own plate; the other motors do not warm it.',
      ...(hasPrints(x) ? [CREEP] : []),
      ...(leg.joints.hip.shaft === undefined ? [] : [BEARING_LIFE]),
      ...notChecked(leg.joints.knee.through),
      'What was filled in stands beside the given fields with its reason. What a formula assumes, and where it is valid, stands with its steps.',
    ]),
  ])
}

/** Checks that were not evaluated, in words; those of one reason and of one part together. */
export function notEvaluatedBlocks({ notEvaluated }: Assessment, namesOf: (ids: readonly string[]) => string): Block[] {
  if (notEvaluated.length === 0) return []
  const byReason = new Map<string, string[]>()
  for (const { id, why } of notEvaluated) byReason.set(why, [...(byReason.get(why) ?? []), id])
  return [
    section('not-evaluated', 'Checks not evaluated', [points([...byReason].map(([why, ids]) => `${capital(why)}: ${namesOf(ids)}.`))]),
  ]
}
