import type { Judge, Judged } from './judge.js'
import type { LegSizes } from './sizes.js'

/** Finished pieces of a search, by name, as plain data. */
export interface Kept {
  /** The wish, as text: pieces of another wish are not taken over. */
  readonly wish: string
  /** Legs judged at most by the search that left these pieces. */
  readonly evaluations: number
  /** Seed of that search. */
  readonly seed: number
  /** Finished pieces, each with the sizes that it ended with and the legs that it judged. */
  readonly pieces: {
    readonly [name: string]: {
      /** Sizes that the piece ended with. */
      readonly sizes: LegSizes
      /** Legs that it judged. */
      readonly used: number
    }
  }
}

interface WorkOptions {
  readonly seed?: number
  readonly resume?: Kept
  readonly onKept?: (kept: Kept) => void
  readonly onProgress?: (text: string, evaluations: number, of: number) => void
}

/** Work in pieces that are kept as they finish. Each piece depends on its name and on the pieces before it alone, so that a resumed search ends with the same legs. */
export class Work {
  used = 0
  readonly #pieces: Record<string, { sizes: LegSizes; used: number }>

  constructor(
    readonly wish: string,
    readonly evaluations: number,
    readonly options: WorkOptions,
  ) {
    const { resume, seed = 1 } = options
    const same = resume !== undefined && resume.wish === wish && resume.evaluations === evaluations && resume.seed === seed
    this.#pieces = same ? { ...resume.pieces } : {}
  }

  /** Does a piece of work, or takes its result where it is kept. */
  do(name: string, judge: Judge, piece: () => Judged): Judged {
    const kept = this.#pieces[name]
    if (kept !== undefined) {
      this.used += kept.used
      return judge.judge(kept.sizes)
    }
    const before = judge.evaluations
    const found = piece()
    const used = judge.evaluations - before
    this.used += used
    this.#pieces[name] = { sizes: found.sizes, used }
    this.options.onKept?.({ wish: this.wish, evaluations: this.evaluations, seed: this.options.seed ?? 1, pieces: { ...this.#pieces } })
    return found
  }

  tell(text: string): void {
    this.options.onProgress?.(text, this.used, this.evaluations)
  }
}
