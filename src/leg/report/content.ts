import { type Quantity, significant } from '../../units/index.js'
import type { CheckResult, RestsOn } from '../check-result.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import type { Assessment } from '../result.js'
import { listed } from './amounts.js'

/** Cautions at the top of every report: the first where a leg has cords, the others always. */
export const CAUTIONS: readonly string[] = [
  'A tensioned cord or belt stores energy. Guard it, wear eye protection, never stand in line with it, and release the tension before you open a drive.',
  'Legs and drives pinch. Keep hands out of powered legs; cut the supply before you reach in.',
  'Motors, controllers and their mounts get hot enough to burn.',
  'Batteries can burn. Fuse them, charge them attended, and do not run the leg on a damaged pack.',
  'A robot can fall and drop its load. Hang it up for first runs; nothing here is for lifting or carrying people.',
  'Bonded or pressed parts must not be the only thing that keeps a part from falling or flying off.',
  'These are estimates for trained judgement. Local codes and licensed practice come first; measure before you rely on them.',
]

/** A reserve as the report prints it. */
export const reserveText = (reserve: number): string => (reserve >= 100 ? 'over 100' : significant(reserve, 3))

/** The band of a reserve. */
export const bandText = ({ range: { worst, best, monotone } }: CheckResult): string =>
  monotone && worst === best ? 'none' : `${reserveText(worst)}${monotone ? '' : ' (least found)'} to ${reserveText(best)}`

/** Whether a check fails, is short of its required reserve, or holds: in words, so that colour is never needed. */
export const standing = ({ reserve, requiredReserve }: CheckResult): 'fails' | 'short' | 'holds' =>
  reserve < 1 ? 'fails' : reserve < requiredReserve ? 'short' : 'holds'

/** Part and joint of a check. */
export const placeOf = ({ part, joint }: { readonly part: string; readonly joint?: DrivenJoint | undefined }): string =>
  joint === undefined ? part : `${part}, ${jointWords(joint)}`

/** A check by its id and joint, as `boss.split knee`, in words. */
export function checkWords(key: string): string {
  const [id, joint] = key.split(' ') as [string, DrivenJoint | undefined]
  const check = CHECKS.find((each) => each.id === id)
  return check === undefined ? key : `${placeOf({ part: check.part, joint })}: ${check.mode}`
}

/** The verdict in one or two sentences. */
export function verdictText({ passes, meetsTarget, governing, checks, requiredReserve, coupling }: Assessment): string {
  const failing = checks.filter(({ reserve }) => reserve < 1).length
  const short = checks.filter(({ reserve }) => reserve >= 1).filter((check) => check.reserve < check.requiredReserve).length
  // A check with a high required reserve may be nearest to its limit and still hold.
  const named = (passes ? undefined : checks.find(({ reserve }) => !(reserve >= 1))) ?? governing
  const first = `${named.part}${named.joint === undefined ? '' : ` (${jointWords(named.joint)})`} ${named.mode}, in the case "${named.caseTitle.toLowerCase()}"`
  const outcome = !passes
    ? `This leg fails: ${failing} of ${checks.length} checks ${are(failing)} below 1. First to fail: the ${first}, with a reserve of ${reserveText(named.reserve)}.`
    : meetsTarget
      ? `This leg passes: ${checks.length === 1 ? 'its one check has the' : `every one of ${checks.length} checks has its`} required reserve (${significant(requiredReserve)}, or less where the table lists a lower one). The nearest failure, with a reserve of ${reserveText(governing.reserve)} where ${significant(governing.requiredReserve)} is required: the ${first}.`
      : `This leg passes, but ${short} of ${checks.length} checks ${are(short)} short of ${short === 1 ? 'its' : 'their'} required reserve (${significant(requiredReserve)}, or less where the table lists a lower one). The nearest failure, with a reserve of ${reserveText(governing.reserve)} where ${significant(governing.requiredReserve)} is required: the ${first}.`
  return coupling === 'settled'
    ? outcome
    : `${outcome} In some load cases heat and resistance do not converge: see "Load cases without a thermal steady state".`
}

const are = (n: number) => (n === 1 ? 'is' : 'are')

/** Share of priors and of undecided checks, in words. */
export function priorsText({ priors }: Assessment): string {
  const percent = (x: number) => `${Math.round(100 * x)} %`
  return `${percent(priors.share)} of the sources behind these checks are priors (unverified values, common practice, assumptions); ${percent(priors.undecided)} of the checks pass at one end of the range of their uncertain values and fail at the other.`
}

const WORDS = { measured: 'measured here', published: 'published', unverified: 'unverified', assumed: 'assumed' } as const

/** A smaller share is not listed. */
const LISTED_SHARE = 0.05

/** Where the uncertain values of a check come from, side by side; nothing where no uncertain value moves its reserve. */
export function restsText({ restsOn }: CheckResult): string | undefined {
  const shares = (side: RestsOn) => {
    const large = (Object.keys(WORDS) as (keyof RestsOn)[]).filter((key) => side[key] >= LISTED_SHARE)
    const [only] = large
    return large.length === 1 && only !== undefined
      ? WORDS[only]
      : large.map((key) => `${Math.round(100 * side[key])} % ${WORDS[key]}`).join(', ')
  }
  const { demand, capacity } = restsOn
  const [one, other] = [demand, capacity].map((side) => (side === undefined ? undefined : shares(side)))
  if (one !== undefined && one === other) return `Uncertain: both sides ${one}.`
  const sides = [...(one === undefined ? [] : [`demand ${one}`]), ...(other === undefined ? [] : [`capacity ${other}`])]
  return sides.length === 0 ? undefined : `Uncertain: ${sides.join('; ')}.`
}

/** The measurement that narrows the governing reserve most, with the range that it can leave. */
export function measurementText({ bestMeasurement: found, checks }: Assessment): string | undefined {
  if (found === undefined) return undefined
  const check = checks.find(({ id, joint }) => found.check === (joint === undefined ? id : `${id} ${joint}`)) as CheckResult
  const range = ({ worst, best }: { readonly worst: number; readonly best: number }) => `${reserveText(worst)} to ${reserveText(best)}`
  const which = check === checks[0] ? 'The smallest reserve' : 'The smallest reserve that a measurement can narrow'
  const part = `${check.part}${check.joint === undefined ? '' : ` (${jointWords(check.joint)})`}`
  return `${which}: the ${part} ${check.mode}. The measurement that narrows it most: ${found.test}. The reserve is ${range(found.before)} now. An exact measurement of the typical value would leave ${range(found.after)}.`
}

/** Explanation of a kind of evidence, printed once beside the list of sources. */
export const UNVERIFIED_MEANS = '"Unverified": the source is cited, and its original was not checked.'

/** Words for the kinds of evidence. */
export const EVIDENCE: Readonly<Record<string, string>> = {
  measured: 'measured here',
  published: 'published',
  standard: 'standard',
  referenceLibrary: 'reference library',
  computed: 'computed',
  commonPractice: 'common practice',
  unverified: 'unverified',
  arithmetic: 'a closed form worked again',
  assumption: 'assumption',
}

/** The foot result in sentences. */
export function footText({ foot }: Assessment): readonly string[] {
  const { error, stiffness, deflection, sideways, resonance, usableBandwidth } = foot
  return [
    `Error of the foot: ${error.lines.map(({ name, worstCorner }) => `${name} up to ${worstCorner}`).join('; ')}; together up to ${error.together.worstCorner}, root sum of squares ${error.together.rss}.`,
    stiffness === undefined || deflection === undefined
      ? 'The drives slip, or are too soft to hold the standing load in this pose, so the stiffness of the foot cannot be calculated.'
      : `Stiffness of the free foot: forward ${stiffness.x}, sideways ${stiffness.y}, vertical ${stiffness.z}. The vertical deflection of the foot under the standing load is ${deflection.z}.`,
    ...sidewaysText(sideways),
    resonance.hip === undefined || resonance.knee === undefined || usableBandwidth === undefined
      ? rigidText(resonance.hip?.motorLocked ?? resonance.knee?.motorLocked, usableBandwidth)
      : `Resonance with the leg in the air and the motor locked: hip ${resonance.hip.motorLocked}, knee ${resonance.knee.motorLocked}. The bandwidth that a controller on the motor side can usually reach is ${usableBandwidth}.`,
  ]
}

/** How far the foot deflects to the side, where something pushes it. */
function sidewaysText({ push, deflection, ofLinks, play }: Assessment['foot']['sideways']): string[] {
  if (!(push.si > 0) || deflection === undefined) return []
  const loose = play === undefined ? '' : ` The knee has play on its pin: up to ${play} to either side at the foot.`
  return [
    `Under a push to the side of ${push}, as on a walk across the slope, the foot deflects by ${deflection}. The links account for ${ofLinks} of it.${loose}`,
  ]
}

/** Resonance of a leg of which one joint, or both, turn with their rotors. */
const rigidText = (locked: Quantity<'frequency'> | undefined, usable: Quantity<'frequency'> | undefined): string =>
  locked === undefined
    ? 'No elastic part between rotors and joints is calculated, so the drives have no resonance here. The loop rate and the links limit the bandwidth.'
    : `No elastic part of one joint's drive is calculated, so it has no resonance here. That of the other with the leg in the air and the motor locked is ${locked}. The bandwidth that a controller on the motor side can usually reach there is ${usable}.`

/** Checks that are named before the others are counted. */
const NAMED_CHECKS = 4

/** Checks by their ids and joints (`boss.split (knee)`) in words: joints of one check together, the first few named. */
export function checkList(keys: readonly string[]): string {
  const joints = new Map<string, string[]>()
  for (const key of keys) {
    const [id, joint] = key.split(' ') as [string, string | undefined]
    joints.set(id, [...(joints.get(id) ?? []), ...(joint === undefined ? [] : [jointWords(joint.replaceAll(/[()]/g, '') as DrivenJoint)])])
  }
  const all = [...joints].map(([id, of]) => {
    const check = CHECKS.find((each) => each.id === id)
    return `whether the ${check === undefined ? id : `${check.part} ${check.mode}`}${of.length === 0 ? '' : ` (${listed(of)})`}`
  })
  const rest = all.length - NAMED_CHECKS
  return rest > 1 ? `${all.slice(0, NAMED_CHECKS).join('; ')}; and ${rest} more` : all.join('; ')
}

/** A temperature of a motor in the table of load cases. */
export const temperatureText = (temperature: Quantity<'temperature'> | undefined): string =>
  temperature === undefined ? 'unsteady' : String(temperature)
