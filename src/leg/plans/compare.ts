import { Quantity, significant } from '../../units/index.js'
import { type AssessOptions, assess } from '../assess/assess.js'
import type { CheckResult } from '../check-result.js'
import type { Leg } from '../document/describe.js'
import { knownOptions } from '../options.js'
import { type Page, points, table, text } from '../report/blocks.js'
import { placeOf, reserveText, standing, verdictText } from '../report/content.js'
import { markdownPage } from '../report/markdown-blocks.js'
import type { Assessment } from '../result.js'
import { displayed, valueText } from './show.js'
import { fieldAt, type LegChanges, withFields } from './with-fields.js'

/** One check in both designs; absent where it does not apply to one of them. */
export interface ComparedCheck {
  /** Part and mode of the check. */
  readonly id: string
  /** Joint and part of the check, for readers. */
  readonly place: string
  /** The check in the first design. */
  readonly before: CheckResult | undefined
  /** The check in the second design. */
  readonly after: CheckResult | undefined
  /** Reserve after over reserve before; absent where one is missing. */
  readonly factor: number | undefined
}

/** Two designs side by side. */
export interface Comparison {
  /** Fields that differ, with their values in both designs. */
  readonly changed: readonly {
    /** Path of the changed field. */
    readonly path: string
    /** Its value before, as text. */
    readonly before: string
    /** Its value after, as text. */
    readonly after: string
  }[]
  /** The changed leg. */
  readonly leg: Leg
  /** The verdict on the first design. */
  readonly before: Assessment
  /** The verdict on the changed design. */
  readonly after: Assessment
  /** Checks of both, smallest reserve after the change first. */
  readonly checks: readonly ComparedCheck[]
}

/**
 * Changes any fields of a leg and assesses both designs, check by check.
 *
 * Throws an `InputError` for a field that is not there, a value that the specification does not allow, or a contradiction between fields.
 */
export function compareLegs(
  /** The leg, from `describeLeg`. */
  leg: Leg,
  /** New values by path, such as `{ 'joints.knee.drive.pretension': '200 N' }`. */
  changes: LegChanges,
  /** The load cases; all of them where none is named. */
  options: AssessOptions = {},
): Comparison {
  knownOptions('compareLegs', options, ['cases'])
  const changedLeg = withFields(leg, changes)
  return compareAssessments(
    assess(leg, options),
    assess(changedLeg, options),
    Object.keys(changes).map((path) => ({
      path,
      before: valueText(fieldAt(leg, path)),
      after: valueText(fieldAt(changedLeg, path)),
    })),
  )
}

/**
 * Assesses two designs, described each by a document of its own, check by check. Every field that differs is listed.
 *
 * Throws an `InputError` for an unknown load case.
 */
export function compareDesigns(before: Leg, after: Leg, options: AssessOptions = {}): Comparison {
  knownOptions('compareDesigns', options, ['cases'])
  const { defaults: _, ...one } = before as unknown as Record<string, unknown>
  const { defaults: __, ...other } = after as unknown as Record<string, unknown>
  return compareAssessments(assess(before, options), assess(after, options), differences(one, other, ''))
}

/** Every field that two designs do not share. */
function differences(before: unknown, after: unknown, path: string): Comparison['changed'] {
  const [one, other] = [sectionOf(before), sectionOf(after)]
  if (one === undefined || other === undefined) {
    const same = JSON.stringify(before) === JSON.stringify(after)
    return same ? [] : [{ path, before: valueText(before), after: valueText(after) }]
  }
  const names = [...new Set([...Object.keys(one), ...Object.keys(other)])]
  return names.flatMap((name) => differences(one[name], other[name], path === '' ? name : `${path}.${name}`))
}

/** The fields of a section; nothing for a value, a list, or a band, which are one field each. */
const sectionOf = (value: unknown): Readonly<Record<string, unknown>> | undefined =>
  typeof value === 'object' && value !== null && !(value instanceof Quantity) && !Array.isArray(value) && !('typical' in value)
    ? (value as Readonly<Record<string, unknown>>)
    : undefined

/** The same of two verdicts that are there already. @internal */
export function compareAssessments(before: Assessment, after: Assessment, changed: Comparison['changed']): Comparison {
  const key = (check: CheckResult) => `${check.id} ${check.joint ?? ''}`
  const earlier = new Map(before.checks.map((check) => [key(check), check]))
  const later = new Map(after.checks.map((check) => [key(check), check]))
  const checks = [...new Set([...later.keys(), ...earlier.keys()])].map((name): ComparedCheck => {
    const [b, a] = [earlier.get(name), later.get(name)]
    const known = (a ?? b) as CheckResult
    return {
      id: known.id,
      place: placeOf(known),
      before: b,
      after: a,
      factor: a === undefined || b === undefined || b.reserve === 0 ? undefined : a.reserve / b.reserve,
    }
  })
  return displayed({ changed, leg: after.leg, before, after, checks }, comparisonPage)
}

/** Both verdicts side by side as Markdown: what was changed, what moved, what fails on either side. */
export const comparisonText = (comparison: Comparison): string => markdownPage(comparisonPage(comparison))

/** Both verdicts side by side as a page. @internal */
export function comparisonPage({ changed, before, after, checks }: Comparison): Page {
  const moved = checks.filter(({ factor }) => factor === undefined || Math.abs(factor - 1) > 0.005)
  const cellOf = (check: CheckResult | undefined) =>
    check === undefined ? 'not evaluated' : `${reserveText(check.reserve)}, ${standing(check)} (${check.caseTitle.toLowerCase()})`
  return {
    title: `${after.leg.name}: two designs side by side`,
    blocks: [
      table(
        'What was changed',
        ['field', 'before', 'after'],
        changed.map((field) => [field.path, field.before, field.after]),
      ),
      points([`Before: ${verdictText(before)}`, `After: ${verdictText(after)}`]),
      moved.length === 0
        ? text('No reserve changes.')
        : table(
            'Reserves that moved',
            ['part', 'how it fails', 'reserve before', 'reserve after', 'factor'],
            moved.map((check) => [
              check.place,
              ((check.after ?? check.before) as CheckResult).mode,
              cellOf(check.before),
              cellOf(check.after),
              check.factor === undefined ? '' : significant(check.factor, 3),
            ]),
          ),
      text(`${checks.length - moved.length} checks are the same in both. Estimates for trained judgement.`),
    ],
  }
}
