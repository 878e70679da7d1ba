import { bandText, type In, InputError, type Issue, issue, type Kind, type Note, Quantity, readAt, show } from '../units/index.js'
import { onlyKeys } from './known-keys.js'

/**
 * Kinds of evidence, the strongest first:
 *
 * - `measured`: measured by the user on parts of this robot;
 * - `published` and `standard`: read in a publication or in a standard;
 * - `referenceLibrary`: the answer of a general-purpose library;
 * - `computed`: computed from a published formula by an independent method;
 * - `commonPractice`: common practice of the trade, no source;
 * - `unverified`: cited, original not checked;
 * - `arithmetic`: a closed form worked again, which finds slips and is no evidence for the formula;
 * - `assumption`: an assumption of this library, with its reason.
 */
export const EVIDENCE_LEVELS = [
  'measured',
  'published',
  'standard',
  'referenceLibrary',
  'computed',
  'commonPractice',
  'unverified',
  'arithmetic',
  'assumption',
] as const

/** The evidence for a number or a formula; see `EVIDENCE_LEVELS`. */
export type EvidenceLevel = (typeof EVIDENCE_LEVELS)[number]

/** Where a number or a formula comes from. */
export interface Source {
  /** How good the evidence is; see `EVIDENCE_LEVELS`. */
  readonly level: EvidenceLevel
  /** The work, clause, table or example; for an assumption, the reasoning. */
  readonly where: string
}

/** Whether a measurement of one's own should replace the evidence: common practice and every weaker level. */
export const isPrior = (source: Source): boolean => EVIDENCE_LEVELS.indexOf(source.level) >= EVIDENCE_LEVELS.indexOf('commonPractice')

/**
 * A quantity with its range, conditions and source. Formulas take it as the quantity of its typical value; `uncertainty` and the
 * recorder see its range.
 */
export class Property<K extends Kind = Kind> extends Quantity<K> {
  constructor(
    typical: number,
    kind: K,
    /** Low end of the plausible range, SI. */
    readonly low: number,
    /** High end of the plausible range, SI. */
    readonly high: number,
    /** Where the range comes from. */
    readonly source: Source,
    /** Conditions of the value: temperature, direction, moisture, surface. */
    readonly conditions: string,
    notes?: readonly Note[],
  ) {
    super(typical, kind, undefined, notes)
  }

  /** The low end as a quantity. */
  get lowest(): Quantity<K> {
    return new Quantity(this.low, this.kind, this.dim, this.notes)
  }

  /** The high end as a quantity. */
  get highest(): Quantity<K> {
    return new Quantity(this.high, this.kind, this.dim, this.notes)
  }

  /** The typical value and its range, such as `65 (50 to 80) MPa`; a range of no width is left out. */
  override toString(): string {
    return this.low === this.high ? super.toString() : bandText(this.kind, this.si, this.low, this.high)
  }
}

/** How a property is written down. */
export interface PropertyRecord<K extends Kind> {
  /** The usual value. */
  readonly typical: In<K>
  /** Low end of the plausible range. */
  readonly low: In<K>
  /** High end of the plausible range. */
  readonly high: In<K>
  /** Where the range comes from. */
  readonly source: Source
  /** Conditions of the value: temperature, direction, moisture, surface. */
  readonly conditions?: string
}

/** Whether a value carries a range and a source. */
export const isProperty = (given: unknown): given is Property =>
  given instanceof Quantity
    ? (given as Partial<Property>).source !== undefined
    : typeof given === 'object' && given !== null && 'low' in given && 'source' in given && 'kind' in given

const FIELDS = ['typical', 'low', 'high', 'source', 'conditions'] as const satisfies readonly (keyof PropertyRecord<Kind>)[]

/**
 * Makes a property from its record.
 * Throws an `InputError` when a value cannot be read or the typical value lies outside its own range.
 */
export function property<K extends Kind>(kind: K, record: PropertyRecord<NoInfer<K>>): Property<K> {
  const issues: Issue[] = []
  if (!onlyKeys('', record, FIELDS, issues)) throw new InputError(`property of kind ${kind}`, issues)
  const si = (path: 'typical' | 'low' | 'high') => readAt(path, kind, record[path], issues)
  const typical = si('typical')
  const low = si('low')
  const high = si('high')
  if (issues.length === 0 && !(low <= typical && typical <= high)) {
    issues.push(issue('typical', record.typical, `must lie within its range, ${show(record.low)} to ${show(record.high)}`))
  }
  if (typeof record.source?.where !== 'string' || record.source.where === '') {
    issues.push(issue('source', record.source, 'must say where the value comes from'))
  } else onlyKeys('source', record.source, ['level', 'where'], issues)
  if (issues.length > 0) throw new InputError(`property of kind ${kind}`, issues)
  return new Property(typical, kind, low, high, record.source, record.conditions ?? '')
}
