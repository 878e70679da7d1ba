import { type AnyFormula, bare, type Evaluator, type Step, stepOf } from '../formula/index.js'

/**
 * Where a chain of formulas is evaluated: `open` says which stage the next formulas belong to, `of` runs them.
 * The bare sheet keeps nothing; a recording sheet keeps every step by stage, and that is the calculation sheet of the report.
 */
export interface Sheet {
  readonly of: Evaluator
  /** Whether steps are kept; where not, stage names need not be made. */
  readonly recording: boolean
  /** Starts a stage anew: what an earlier run of it left (a round of an iteration) is dropped. */
  open(stage: string): void
  /** Keeps a step that is not one formula, such as a solver's; made only when recording. */
  keep(step: () => Step): void
}

/** The sheet that keeps nothing. */
export const bareSheet: Sheet = { of: bare, recording: false, open: () => {}, keep: () => {} }

/** A sheet that keeps every step. */
export interface RecordingSheet extends Sheet {
  /** The steps of some stages, in the order of the stages given; each stage once. */
  steps(stages: readonly string[]): Step[]
}

/** Makes a recording sheet. Texts of steps are made when asked for. */
export function recordingSheet(): RecordingSheet {
  const stages = new Map<string, (() => Step)[]>()
  let current: (() => Step)[] = []
  stages.set('', current)
  return {
    recording: true,
    of: (formula, x) => {
      const y = formula.si(x)
      current.push(once(() => stepOf(formula as unknown as AnyFormula, x, y)))
      return y
    },
    open: (stage) => {
      current = []
      stages.set(stage, current)
    },
    keep: (step) => void current.push(once(step)),
    steps: (names) => [...new Set(names)].flatMap((name) => (stages.get(name) ?? []).map((step) => step())),
  }
}

/** A step whose texts are made when first asked for, and once: many checks start from the same stages. */
function once(make: () => Step): () => Step {
  let made: Step | undefined
  return () => {
    made ??= make()
    return made
  }
}
