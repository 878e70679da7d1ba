import type { Leg } from '../document/describe.js'
import { JOINTS } from '../numbers.js'
import { SECOND_STAGE } from '../second-stage.js'
import type { StepGroup } from './numbering.js'

/** Parts of a cord drive by which formulas of several drives name their inputs, and the parts of a belt drive, of gears, and of drives of several kinds. */
const WORDS: Readonly<Record<'belt' | 'gear' | 'output' | 'mixed', Readonly<Record<string, string>>>> = {
  belt: { drum: 'large pulley', pinion: 'small pulley', cord: 'belt' },
  gear: { drum: 'wheel' },
  output: { drum: 'output', cord: 'belt' },
  mixed: { drum: 'drum or large pulley', pinion: 'pinion or small pulley', cord: 'cord or belt' },
}

/** Rewrites the words of a formula in the parts of the drives that its steps belong to: a belt drive has pulleys, where a cord drive has drum and pinion. */
export function driveWords(leg: Leg, { formula, steps }: StepGroup): (words: string) => string {
  if (!/^(capstan|kinematics)\./.test(formula.id)) return (words) => words
  const named = new Set(steps.flatMap(({ places }) => places.flatMap(({ joint }) => joint ?? [])))
  const kinds = new Set((named.size === 0 ? JOINTS : [...named]).flatMap((joint) => kindOf(leg, joint) ?? []))
  const table = tableOf(kinds)
  return table === undefined ? (words) => words : (words) => words.replaceAll(/\b(?:drum|pinion|cord)\b/g, (word) => table[word] ?? word)
}

function tableOf(kinds: ReadonlySet<string>): Readonly<Record<string, string>> | undefined {
  if (kinds.has('belt')) return kinds.has('cord') ? WORDS.mixed : WORDS.belt
  if (kinds.has('cord') || kinds.size === 0) return undefined
  return kinds.has('gear') && kinds.size === 1 ? WORDS.gear : WORDS.output
}

const throughKind = (kind: string | undefined) => (kind === 'rod' ? undefined : kind)

/** How a joint is driven; belt or cord along the upper link where it is that stage. */
const kindOf = ({ joints }: Leg, joint: string): string | undefined =>
  joint === SECOND_STAGE
    ? throughKind(joints.knee.through?.kind)
    : (joints as Partial<Record<string, { readonly drive: { readonly kind: string } }>>)[joint]?.drive.kind
