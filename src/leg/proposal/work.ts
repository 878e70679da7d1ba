import { LIBRARY_VERSION } from '../report/version.js'
import type { Judge, JudgedLeg } from './judge.js'
import type { LegSizes } from './sizes.js'

/** Finished pieces of a search, by name, as plain data. */
export interface Kept {
  /** Version of the library that left these pieces: those of another version are not taken over. */
  readonly version: string
  /** The wish, as text: pieces of another wish are not taken over. */
  readonly wish: string
  /** Legs judged at most by the search that left these pieces. */
  readonly evaluations: number
  /** Seed of that search. */
  readonly seed: number
  /** Finished pieces, each with the sizes that it ended with and the legs that it judged. */
  readonly pieces: { readonly [name: string]: KeptPiece }
}

interface KeptPiece {
  /** Sizes that the piece ended with. */
  readonly sizes: LegSizes
  /** Legs that it judged. */
  readonly used: number
  /** Deficit of its leg. Where the formulas give another figure now, neither this piece nor those that are left are taken over. */
  readonly deficit: number
  /** Smallest ratio of reserve to required reserve of its leg, compared in the same way. */
  readonly margin: number
}

interface WorkOptions {
  readonly seed?: number
  readonly resume?: Kept
  readonly onKept?: (kept: Kept) => void
  readonly onProgress?: (text: string, evaluations: number, of: number) => void
}

/** Work in pieces that are kept as they finish. Each piece depends on its name and on the pieces before it alone, so that a resumed search ends with the same legs. */
export class WorkPieces {
  used = 0
  /** Legs that all pieces together may judge. */
  #most: number
  /** Pieces of an earlier run that may be taken over. */
  #resumed: Kept['pieces']
  readonly #done: Record<string, KeptPiece> = {}

  constructor(
    readonly wish: string,
    readonly evaluations: number,
    readonly options: WorkOptions,
  ) {
    this.#most = evaluations
    const { resume, seed = 1 } = options
    const foreign = resume && foreignText(resume, { wish, evaluations, seed })
    if (foreign !== undefined) this.tell(`What was kept is of ${foreign}: nothing of it is taken over, the search starts afresh`)
    this.#resumed = foreign === undefined ? (resume?.pieces ?? {}) : {}
  }

  /** Legs that may still be judged. */
  get left(): number {
    return this.#most - this.used
  }

  /** Allows so many further legs, whatever was left. */
  allow(evaluations: number): void {
    this.#most = this.used + evaluations
  }

  /** Does a piece of work, or takes its result where it is kept. The piece gets as many legs to judge as it wants and are left, and none more. */
  do(name: string, judge: Judge, legs: number, piece: (max: number) => JudgedLeg): JudgedLeg {
    const kept = this.#resumed[name]
    const again = kept && judge.judge(kept.sizes)
    if (kept && again && alike(kept.deficit, again.deficit) && alike(kept.margin, again.margin)) return this.#keep(name, again, kept.used)
    if (kept) {
      this.tell(`The leg that was kept of "${name}" has other reserves with the formulas of today: the search goes on afresh from there`)
      this.#resumed = {}
    }
    const before = judge.evaluations
    const found = piece(Math.min(legs, this.left))
    this.#keep(name, found, judge.evaluations - before)
    const { wish, evaluations, options } = this
    const pieces = { ...this.#resumed, ...this.#done }
    options.onKept?.({ version: LIBRARY_VERSION, wish, evaluations, seed: options.seed ?? 1, pieces })
    return found
  }

  #keep(name: string, found: JudgedLeg, used: number): JudgedLeg {
    const { sizes, deficit, margin } = found
    this.used += used
    this.#done[name] = { sizes, used, deficit, margin }
    return found
  }

  tell(text: string): void {
    this.options.onProgress?.(text, this.used, this.evaluations)
  }
}

/** Another processor may round differently in the last digits. */
const alike = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b))

/** Of what other search kept pieces are; nothing where they are of this one. */
function foreignText(kept: Kept, { wish, evaluations, seed }: { wish: string; evaluations: number; seed: number }): string | undefined {
  if (kept.version !== LIBRARY_VERSION)
    return kept.version ? `limbwright ${kept.version}, not ${LIBRARY_VERSION}` : 'a limbwright that did not name its version'
  if (kept.wish !== wish) return 'another wish, or of other options'
  if (kept.evaluations !== evaluations) return `a search of ${kept.evaluations} evaluations, not ${evaluations}`
  if (kept.seed !== seed) return `the seed ${kept.seed}, not ${seed}`
  return undefined
}
