import { isPrior, type Source } from '../formula/index.js'
import { InputError, Quantity, show } from '../units/index.js'
import { CASE_IDS, CASES, type CaseId } from './cases/catalogue.js'
import { stageOf, workOut } from './cases/work-out.js'
import { type Check, type Finding, reserveOf } from './checks/check.js'
import { CHECKS } from './checks/index.js'
import { footResult } from './foot-result.js'
import { type End, JOINTS, type Joint, type LegNumbers, legNumbers, type Prepared, prepare } from './numbers.js'
import { caseList, knownOptions } from './options.js'
import { verdictText } from './report/content.js'
import { markdownReport } from './report/markdown.js'
import { rankedTable } from './report/text.js'
import type { Assessment, CaseResult, CheckResult, JointResult, Unsettled } from './result.js'
import { sentenceOf } from './sentence.js'
import { bareSheet, type RecordingSheet, recordingSheet, type Sheet } from './sheet.js'
import type { Leg } from './specification/describe.js'
import type { CaseState, JointState, Scene } from './state.js'

/** What `assess` may leave out. */
export interface AssessOptions {
  /** Load cases to run; all when silent. */
  readonly cases?: readonly CaseId[]
}

/** One finding with where it was found. */
interface Found {
  readonly check: Check
  readonly joint: Joint
  readonly id: CaseId
  readonly finding: Finding
  readonly reserve: number
}

const where = 'assess'

/**
 * Assesses a leg in its load cases: every way each part can fail, with demand, capacity, reserve and the whole calculation, the smallest
 * reserve first. Reserve is capacity over demand; temperatures are compared as rises above the air.
 *
 * Uncertain values (friction, strength of prints, relaxation) are taken at their typical value; beside each reserve stands the reserve with all of
 * them at their bad ends, and at their good ends. Results are estimates for trained judgement.
 *
 * Throws an `InputError` for an unknown load case, or when a material lacks a property that a check needs.
 */
export function assess(leg: Leg, options: AssessOptions = {}): Assessment {
  knownOptions(where, options, ['cases'])
  const cases = caseList(where, options.cases)
  const x = legNumbers(leg)
  const sheet = recordingSheet()
  const typical = survey(prepare(x), sheet, cases)
  const reserveAt = (end: End) => worstReserves(survey(prepare(x, end), bareSheet, cases).found)
  const [pessimistic, optimistic] = [reserveAt('pessimistic'), reserveAt('optimistic')]
  const checks = grouped(typical.found)
    .map((group) =>
      resultOf(group, typical, sheet, { pessimistic: pessimistic.get(keyOf(group[0]!)), optimistic: optimistic.get(keyOf(group[0]!)) }),
    )
    .sort((a, b) => a.reserve / a.enough - b.reserve / b.enough || (a.id < b.id ? -1 : 1))
  const governing = checks[0]
  if (governing === undefined)
    throw new InputError(where, [{ path: 'cases', given: show(cases), accepts: 'must include a load case that asks something of the leg' }])
  const wantedReserve = x.usage.wantedReserve
  return displayed({
    leg,
    holds: checks.every(({ reserve }) => reserve >= 1),
    comfortable: checks.every((check) => check.reserve >= check.enough),
    wantedReserve,
    governing,
    checks,
    cases: typical.states.map(caseResult),
    foot: footResult(typical.leg),
    coupling: typical.unsettled.length === 0 ? 'settled' : 'unsettled',
    unsettled: typical.unsettled,
    notMade: notMade(checks, cases),
    priors: priorsOf(checks),
  })
}

/** What notebooks show of an assessment: its report; plain data otherwise. */
function displayed(assessment: Assessment): Assessment {
  return Object.defineProperty(assessment, Symbol.for('Jupyter.display'), {
    value: () => ({
      'text/markdown': markdownReport(assessment),
      'text/plain': `${verdictText(assessment)}\n\n${rankedTable(assessment, 20)}`,
    }),
    enumerable: false,
  })
}

/** The governing check of a leg: the fast form of `assess` that explains nothing. */
export interface QuickVerdict {
  readonly reserve: number
  /** The reserve over the one wanted of that check: the smallest of all; at least 1 where every check has what is wanted. */
  readonly margin: number
  readonly id: string
  readonly joint: Joint
  readonly case: CaseId
}

/**
 * The governing check alone, the one with the least reserve over the reserve wanted, from a leg's numbers (`legNumbers`): for sweeps and
 * optimisers. Same chain as `assess`, nothing recorded.
 */
export function governingReserve(x: LegNumbers, cases: readonly CaseId[] = CASE_IDS, end: End = 'typical'): QuickVerdict {
  return governingOf(prepare(x, end), cases)
}

/** The same for a leg that is prepared already. @internal */
export function governingOf(leg: Prepared, cases: readonly CaseId[]): QuickVerdict {
  const states = cases.map((id) => workOut(leg, bareSheet, id))
  const { wantedReserve } = leg.x.usage
  let least: { check: Check; joint: Joint; id: CaseId } | undefined
  let margin = Number.POSITIVE_INFINITY
  let reserve = Number.POSITIVE_INFINITY
  made(leg, bareSheet, states, (check, joint, id, finding) => {
    const found = reserveOf(finding)
    const over = found / enoughFor(check, wantedReserve)
    if (over >= margin) return
    margin = over
    reserve = found
    least = { check, joint, id }
  })
  if (least === undefined)
    throw new InputError('governingReserve', [
      { path: 'cases', given: show(cases), accepts: 'must include a load case that asks something of the leg' },
    ])
  return { reserve, margin, id: least.check.id, joint: least.joint, case: least.id }
}

/** The worst reserve of every check over the load cases, by `id joint`, from a leg's numbers. */
export const checkReserves = (x: LegNumbers, cases: readonly CaseId[] = CASE_IDS, end: End = 'typical'): Map<string, number> =>
  worstReserves(survey(prepare(x, end), bareSheet, cases).found)

interface Survey {
  readonly leg: Prepared
  readonly states: readonly CaseState[]
  readonly found: readonly Found[]
  readonly unsettled: readonly Unsettled[]
  readonly walkTorque: (joint: Joint) => number
}

function survey(leg: Prepared, sheet: Sheet, cases: readonly CaseId[]): Survey {
  const states = cases.map((id) => workOut(leg, sheet, id))
  const found: Found[] = []
  const walkTorque = made(leg, sheet, states, (check, joint, id, finding) =>
    found.push({ check, joint, id, finding, reserve: reserveOf(finding) }),
  )
  const unsettled = states.flatMap((state) =>
    JOINTS.flatMap((joint): Unsettled[] => {
      const { heat } = state.joints[joint]
      return heat.unsettled === undefined ? [] : [{ case: state.case.id, joint, loop: heat.unsettled.loop, why: heat.unsettled.why }]
    }),
  )
  return { leg, states, found, unsettled, walkTorque }
}

/** Makes every check in every load case and hands on what it finds; returns the torque of walking that some of them ask for. */
function made(
  leg: Prepared,
  sheet: Sheet,
  states: readonly CaseState[],
  take: (check: Check, joint: Joint, id: CaseId, finding: Finding) => void,
): (joint: Joint) => number {
  const walk = states.find((one) => one.case.id === 'walk')?.motion
  const walkTorque = (joint: Joint) => Math.abs(walk?.[joint].torque ?? 0)
  for (const state of states) {
    const { id } = state.case
    const hip: Scene = { leg, state, joint: 'hip', walkTorque }
    const knee: Scene = { leg, state, joint: 'knee', walkTorque }
    for (const { check, joint, run } of runsOf(id)) {
      if (sheet.recording) sheet.open(checkStage(check, joint, id))
      const finding = run(sheet.of, joint === 'hip' ? hip : knee, state.joints[joint])
      if (finding !== undefined) take(check, joint, id, finding)
    }
  }
  return walkTorque
}

/** One check of one joint; `run` stands beside it since records of many shapes are slow to look into. */
interface CheckRun {
  readonly check: Check
  readonly joint: Joint
  readonly run: Check['run']
}

const byCase = new Map<CaseId, readonly CheckRun[]>()

/** What is checked in a load case; a check of the leg as a whole is made once, with the hip. */
function runsOf(id: CaseId): readonly CheckRun[] {
  let runs = byCase.get(id)
  if (runs === undefined) {
    runs = CHECKS.filter(({ cases }) => cases.includes(id)).flatMap((check) =>
      (check.scope === 'leg' ? (['hip'] as const) : JOINTS).map((joint) => ({ check, joint, run: check.run })),
    )
    byCase.set(id, runs)
  }
  return runs
}

const checkStage = (check: Check, joint: Joint, id: CaseId) => `check/${check.id}/${joint}/${id}`

/** The reserve that is enough for a check: the one wanted, or less where the check says so. */
const enoughFor = (check: Check, wanted: number) => Math.min(check.enough ?? wanted, wanted)

const keyOf = ({ check, joint }: Found) => (check.scope === 'leg' ? check.id : `${check.id} ${joint}`)

function worstReserves(found: readonly Found[]): Map<string, number> {
  const worst = new Map<string, number>()
  for (const one of found) {
    const key = keyOf(one)
    const known = worst.get(key)
    if (known === undefined || one.reserve < known) worst.set(key, one.reserve)
  }
  return worst
}

/** Findings of one check and joint together, the hardest load case first. */
function grouped(found: readonly Found[]): Found[][] {
  const groups = new Map<string, Found[]>()
  for (const one of found) {
    const key = keyOf(one)
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [one])
    else group.push(one)
  }
  return [...groups.values()].map((group) => group.sort((a, b) => a.reserve - b.reserve))
}

function resultOf(
  group: readonly Found[],
  { leg, states, walkTorque }: Survey,
  sheet: RecordingSheet,
  band: { pessimistic: number | undefined; optimistic: number | undefined },
): CheckResult {
  const [worst, ...others] = group as [Found, ...Found[]]
  const { check, joint, id, finding, reserve } = worst
  const state = states.find((one) => one.case.id === id) as CaseState
  const scene: Scene = { leg, state, joint, walkTorque }
  const stages = [...check.after.map((stage) => stageOf(stage, id, joint)), checkStage(check, joint, id)]
  const chain = sheet.steps(stages)
  const { demand, capacity, remark } = finding
  return {
    id: check.id,
    part: check.part,
    mode: check.mode,
    stake: check.stake,
    ...(check.scope === 'joint' ? { joint } : {}),
    case: id,
    caseTitle: CASES[id].title,
    demand: new Quantity(demand, check.kind),
    capacity: new Quantity(capacity, check.kind),
    reserve,
    enough: enoughFor(check, leg.x.usage.wantedReserve),
    reserveBand: {
      pessimistic: Math.min(reserve, band.pessimistic ?? reserve),
      optimistic: Math.max(reserve, band.optimistic ?? reserve),
    },
    sentence: sentenceOf(check, joint, CASES[id].title, demand, capacity, reserve),
    demandIs: check.demandIs,
    capacityIs: check.capacityIs,
    remedy: check.remedy,
    chain,
    sources: eachOnce([...(check.rule === undefined ? [] : [check.rule]), ...chain.flatMap(({ source }) => source)]),
    notes: [
      ...new Set([
        ...(remark === undefined ? [] : [remark]),
        ...chain.flatMap(({ title, notes }) => notes.map((note) => `${title}: outside ${note}`)),
      ]),
    ],
    otherCases: others.map((one) => ({ case: one.id, reserve: one.reserve })),
    rests: check.rests?.(scene) ?? [],
  }
}

function eachOnce(sources: readonly Source[]): Source[] {
  const seen = new Map(sources.map((source) => [`${source.level} ${source.where}`, source]))
  return [...seen.values()]
}

function notMade(checks: readonly CheckResult[], cases: readonly CaseId[]): Assessment['notMade'] {
  const made = new Set(checks.map(({ id }) => id))
  return CHECKS.filter(({ id }) => !made.has(id)).map((check) => ({
    id: check.id,
    why: check.cases.some((id) => cases.includes(id)) ? 'does not apply to this leg' : 'none of its load cases was run',
  }))
}

function priorsOf(checks: readonly CheckResult[]): Assessment['priors'] {
  const undecided = checks.filter(({ reserveBand }) => reserveBand.pessimistic < 1 && reserveBand.optimistic >= 1)
  const sources = checks.flatMap((check) => [...check.sources, ...check.rests.map(({ source }) => source)])
  const tests = new Map<string, { what: string; test: string; checks: string[] }>()
  for (const check of undecided.length > 0 ? undecided : checks.slice(0, 5)) {
    for (const { what, test } of check.rests) {
      const known = tests.get(what)
      const name = check.joint === undefined ? check.id : `${check.id} (${check.joint})`
      if (known === undefined) tests.set(what, { what, test, checks: [name] })
      else known.checks.push(name)
    }
  }
  return {
    undecided: undecided.length / checks.length,
    share: sources.length === 0 ? 0 : sources.filter(isPrior).length / sources.length,
    tests: [...tests.values()].sort((a, b) => b.checks.length - a.checks.length).slice(0, 5),
  }
}

function caseResult({ case: loadCase, motion, joints, air }: CaseState): CaseResult {
  return {
    id: loadCase.id,
    title: loadCase.title,
    story: loadCase.story,
    footForce: new Quantity(motion?.vertical ?? 0, 'force'),
    air: new Quantity(air, 'temperature'),
    joints: { hip: jointResult(joints.hip), knee: jointResult(joints.knee) },
  }
}

const jointResult = ({ motion, drive, heat }: JointState): JointResult => ({
  torque: new Quantity(motion.torque, 'torque'),
  speed: new Quantity(motion.speed, 'angularVelocity'),
  motorTorque: new Quantity(heat.motorTorque, 'torque'),
  peakPhaseCurrent: new Quantity(heat.current, 'peakPhaseCurrent'),
  pretension: new Quantity(drive.pretension, 'force'),
  tautTension: new Quantity(drive.taut, 'force'),
  slackTension: new Quantity(drive.slack, 'force'),
  peakTension: new Quantity(drive.peak, 'force'),
  motorLoss: new Quantity(heat.loss, 'power'),
  windingTemperature: heat.unsettled === undefined ? new Quantity(heat.winding, 'temperature') : undefined,
  mountTemperature: heat.unsettled === undefined ? new Quantity(heat.mount, 'temperature') : undefined,
})
