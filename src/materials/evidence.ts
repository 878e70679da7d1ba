import { EVIDENCE_LEVELS, type Source } from '../formula/index.js'

/** The weakest of several sources: what a result that rests on all of them is worth. */
export const weakest = (sources: readonly Source[]): Source =>
  sources.reduce((worst, source) => (EVIDENCE_LEVELS.indexOf(source.level) > EVIDENCE_LEVELS.indexOf(worst.level) ? source : worst))
