import { type In, type Kind, Quantity, quantity } from '../../src/units/index.js'

/** A value with its scatter, as the source states it. */
export interface Measured<K extends Kind> {
  readonly value: In<K>
  /** Lowest and highest reading, or the value less and plus one standard deviation. */
  readonly low: In<K>
  readonly high: In<K>
  /** How many readings, and what low and high are. */
  readonly scatter: string
}

/** What the library predicts from the conditions alone. */
export interface Predicted {
  readonly low: number
  readonly typical: number
  readonly high: number
}

/** One published experiment beside the library's prediction. */
export interface Experiment {
  readonly subject: 'cord' | 'print' | 'motor' | 'fastener'
  readonly what: string
  readonly kind: Kind
  readonly conditions: string
  readonly measured: Measured<Kind>
  readonly source: string
  readonly predict: () => Predicted
  /** `model`: several formulas together; `property`: one value of a table. */
  readonly judges: 'model' | 'property'
  /** Why the measured value lies outside the band; only and always where it does. */
  readonly outside?: string
  /** What was changed in the library because of it, or that the experiment itself set the range. */
  readonly changed?: string
}

/** Makes an experiment; the kind ties its values together. */
export const experiment = <K extends Kind>(one: Omit<Experiment, 'kind' | 'measured'> & { kind: K; measured: Measured<K> }): Experiment =>
  one as unknown as Experiment

/** Measured value and prediction in SI, and whether the one lies within the band of the other. */
export function outcome({ kind, measured, predict }: Experiment) {
  const si = (x: In<Kind>) => quantity(kind, x).si
  const [value, low, high] = [si(measured.value), si(measured.low), si(measured.high)]
  const predicted = predict()
  return { value, low, high, predicted, inside: value >= predicted.low && value <= predicted.high }
}

/** A property as a prediction. */
export const rangeOf = ({ low, si, high }: { readonly low: number; readonly si: number; readonly high: number }): Predicted => ({
  low,
  typical: si,
  high,
})

/** A number of a kind as text. */
export const textOf = (kind: Kind, x: number): string => String(new Quantity(x, kind))

/** What a row lacks of the form that the table demands; an empty list for a complete one. */
export function problemsOf(one: Experiment): string[] {
  const { measured, predict } = one
  const si = (x: In<Kind>) => quantity(one.kind, x).si
  const [value, low, high] = [si(measured.value), si(measured.low), si(measured.high)]
  const predicted = predict()
  const inside = value >= predicted.low && value <= predicted.high
  return Object.entries({
    'conditions of the experiment': one.conditions.trim().length > 20,
    'scatter: how many readings, and what low and high are':
      measured.scatter.trim().length > 5 && !/^not stated|assumed/.test(measured.scatter),
    'a source that can be found': one.source.trim().length > 15,
    'a range that holds the measured value': low <= value && value <= high,
    'a finite prediction in order': [predicted.low, predicted.typical, predicted.high].every(
      (x, i, all) => Number.isFinite(x) && (i === 0 || x >= (all[i - 1] as number)),
    ),
    'a reason why it lies outside': inside || (one.outside ?? '').trim().length > 10,
    'inside, without a reason why it would not be': !inside || one.outside === undefined,
  }).flatMap(([what, met]) => (met ? [] : [what]))
}
