import { isPrior, type Source, type Step } from '../../formula/index.js'
import { Quantity } from '../../units/index.js'
import { type LegCalculation, placeOf } from '../calculation.js'
import { type CaseId, EVENTS, LOAD_CASES } from '../cases/events.js'
import type { CheckResult, Reliance } from '../check-result.js'
import { type DrivenJoint, drivenJoints, ofDrivenJoints } from '../numbers.js'
import { airTemperature } from '../parts/load/fields.js'
import { footForce, jointMotion } from '../parts/motion/values.js'
import { heat } from '../parts/motors/heat.js'
import { type Tensions, tensions } from '../parts/transmission/questions.js'
import type { CaseResult, JointResult, Unsettled } from '../result.js'
import { closure, type SheetMaker } from '../run/index.js'
import { restsOn } from './evidence.js'
import type { CheckFindings } from './findings.js'
import { nameOf } from './names.js'
import { sentenceOf } from './sentence.js'
import type { Band } from './survey.js'

const eachOnce = (sources: readonly Source[]): Source[] => [
  ...new Map(sources.map((source) => [`${source.level} ${source.where}`, source])).values(),
]

/** What a check notes whose worst end need not be at an end of each value. */
export const NOT_MONOTONE =
  'an uncertain value may lower this reserve at either end, depending on the others; the unfavourable end of the range is the least that was found'

/** The result of one check: its hardest load case, with the whole calculation. */
export function checkResult(
  { findings, reserve, required }: CheckFindings,
  { worst, best, monotone, moves }: Band,
  calculation: LegCalculation,
  sheets: SheetMaker,
): CheckResult {
  const [finding, ...others] = findings as [CheckFindings['findings'][number], ...CheckFindings['findings'][number][]]
  const { comparison, demand, capacity, failure } = finding
  const { check, joint, id } = comparison
  const cells = closure([comparison.demand, comparison.capacity])
  const steps: readonly Step[] = sheets.steps(cells)
  const remark =
    comparison.remark === undefined || failure !== undefined ? undefined : (calculation.read(comparison.remark) as string | undefined)
  const ofMetal = comparison.metal !== undefined && calculation.read(comparison.metal) !== undefined
  const reliesOn = cells.flatMap((cell): Reliance[] => {
    const range = cell.of.leaf === undefined ? undefined : calculation.rangeOf(cell)
    return range === undefined ? [] : [{ what: nameOf(cell), source: range.source, test: range.measuredBy }]
  })
  const constants = cells.flatMap(({ of: { leaf } }) => (leaf?.source === undefined ? [] : [leaf.source]))
  return {
    id: check.id,
    part: check.part,
    mode: check.mode,
    consequence: check.consequence,
    ...(check.scope === 'joint' ? { joint: joint as DrivenJoint } : {}),
    case: id,
    caseTitle: LOAD_CASES[id].title,
    demand: new Quantity(demand, check.kind),
    capacity: new Quantity(capacity, check.kind),
    reserve,
    requiredReserve: required,
    range: { worst, best, monotone },
    sentence: sentenceOf(check, joint, LOAD_CASES[id].title, finding),
    demandIs: check.demandIs,
    capacityIs: check.capacityIs,
    remedy: (ofMetal ? check.ofMetal?.remedy : undefined) ?? check.remedy,
    steps,
    sources: eachOnce([
      ...(check.rule === undefined ? [] : [check.rule]),
      ...steps.flatMap(({ equation, source }) => (equation === undefined ? source : [])),
      ...constants,
    ]),
    notes: [
      ...new Set([
        ...(failure === undefined ? [] : [failure]),
        ...(remark === undefined ? [] : [remark]),
        ...(monotone ? [] : [NOT_MONOTONE]),
        ...steps.flatMap(({ title, notes }) => notes.map((note) => `${title} is outside its validity: valid for ${note}`)),
      ]),
    ],
    otherCases: others.map((other) => ({ case: other.comparison.id, reserve: other.reserve })),
    reliesOn,
    restsOn: restsOn(comparison.demand, comparison.capacity, moves),
  }
}

const amounts = (calculation: LegCalculation, id: CaseId, joint: DrivenJoint): JointResult => {
  const { event, air, age } = LOAD_CASES[id]
  const where = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint, event, air, age })) as never
  const read = <T, K extends ConstructorParameters<typeof Quantity>[1]>(kind: K, work: () => T & number) => {
    try {
      return new Quantity(work(), kind)
    } catch {
      // The checks that read a value report its failure.
      return new Quantity(Number.NaN, kind)
    }
  }
  const motion = () => calculation.get(jointMotion, where)
  const tension = (which: keyof Tensions) => {
    try {
      const found = calculation.get(tensions, where)
      return found === undefined ? undefined : new Quantity(found[which], 'force')
    } catch {
      return new Quantity(Number.NaN, 'force')
    }
  }
  const warm = () => calculation.get(heat, where)
  const steady = () => {
    try {
      return warm().unsettled === undefined
    } catch {
      return false
    }
  }
  return {
    torque: read('torque', () => motion().torque),
    speed: read('angularVelocity', () => motion().speed),
    motorTorque: read('torque', () => warm().motorTorque),
    peakPhaseCurrent: read('peakPhaseCurrent', () => warm().current),
    pretension: tension('pretension'),
    tautTension: tension('taut'),
    slackTension: tension('slack'),
    peakTension: tension('peak'),
    motorLoss: read('power', () => warm().loss),
    windingTemperature: steady() ? read('temperature', () => warm().winding) : undefined,
    mountTemperature: steady() ? read('temperature', () => warm().mount) : undefined,
  } as JointResult
}

/** One load case: loads, and what they mean for each joint. */
export function caseResult(calculation: LegCalculation, id: CaseId): CaseResult {
  const { title, story, event, air } = LOAD_CASES[id]
  const where = calculation.instances.implied(placeOf(calculation, { leg: 'leg', event, air })) as never
  return {
    id,
    title,
    story,
    footForce: new Quantity(calculation.get(footForce, where), 'force'),
    air: new Quantity(calculation.get(airTemperature, where), 'temperature'),
    joints: ofDrivenJoints(calculation.document, (joint) => amounts(calculation, id, joint)),
  }
}

/** Motors without a steady temperature. A landing warms none: the walk before it is listed. */
export const unsettledOf = (calculation: LegCalculation, cases: readonly CaseId[]): Unsettled[] =>
  cases.flatMap((id) =>
    drivenJoints(calculation.document).flatMap((joint): Unsettled[] => {
      const { event, air } = LOAD_CASES[id]
      if (EVENTS[event].heating === 'none') return []
      const cell = calculation.cell(heat, placeOf(calculation, { joint, event, air }) as never)
      try {
        const { unsettled } = calculation.read(cell) as typeof heat.holds
        return unsettled === undefined
          ? []
          : [{ case: id, joint, loop: 'copper loss and winding temperature', why: `${capital(unsettled)}.` }]
      } catch {
        return []
      }
    }),
  )
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

/** How much of a verdict rests on values that nobody measured or published. */
export function priorsOf(checks: readonly CheckResult[]) {
  const undecided = checks.filter(({ range }) => range.worst < 1 && range.best >= 1)
  const sources = checks.flatMap((check) => [...check.sources, ...check.reliesOn.map(({ source }) => source)])
  const tests = new Map<string, { what: string; test: string; checks: string[] }>()
  for (const check of undecided.length > 0 ? undecided : checks.slice(0, 5))
    for (const { what, test, source } of check.reliesOn) {
      if (!isPrior(source)) continue
      const name = check.joint === undefined ? check.id : `${check.id} (${check.joint})`
      const known = tests.get(what)
      if (known === undefined) tests.set(what, { what, test, checks: [name] })
      else known.checks.push(name)
    }
  return {
    undecided: undecided.length / checks.length,
    share: sources.length === 0 ? 0 : sources.filter(isPrior).length / sources.length,
    tests: [...tests.values()].sort((a, b) => b.checks.length - a.checks.length).slice(0, 5),
  }
}
