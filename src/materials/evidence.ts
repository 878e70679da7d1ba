import type { EvidenceLevel, Source } from '../formula/index.js'

/** Kinds of evidence, the strongest first. */
export const EVIDENCE_LEVELS: readonly EvidenceLevel[] = [
  'published',
  'standard',
  'referenceLibrary',
  'computed',
  'commonPractice',
  'memory',
  'assumption',
]

/** The weakest of several sources: what a result that rests on all of them is worth. */
export const weakest = (sources: readonly Source[]): Source =>
  sources.reduce((worst, source) => (EVIDENCE_LEVELS.indexOf(source.level) > EVIDENCE_LEVELS.indexOf(worst.level) ? source : worst))
