import { unitSigns } from '../assess/sentence.js'
import type { Assessment } from '../result.js'
import { listed } from './amounts.js'
import { type Block, led, type Piece, plainWords, points, section, text, type Words } from './blocks.js'
import type { Change, Changes } from './changes.js'
import { rankOf } from './checks-section.js'
import { placeOf, reserveText, standing } from './content.js'
import type { SideEffect } from './side-effects.js'
import { pieces } from './step-lines.js'

/** Checks that lose their reserve are named up to this many. */
const MAX_NAMED = 2

/** Checks by part and rank; one that applies only after the change has no rank yet. */
function namesOf(assessment: Assessment, harms: readonly SideEffect[]): string {
  const ranks = new Map<string, string[]>()
  for (const harm of harms.slice(0, MAX_NAMED))
    ranks.set(placeOf(harm), [
      ...(ranks.get(placeOf(harm)) ?? []),
      harm.check === undefined ? 'a check that applies then' : rankOf(assessment, harm.check),
    ])
  const named = [...ranks].map(([place, own]) => `${place} (${listed(own)})`)
  const rest = harms.length - Math.min(harms.length, MAX_NAMED)
  return listed([...named, ...(rest > 0 ? [`${rest} more`] : [])])
}

/** Ranks of checks that were short already: the page has them above. */
const ranksOf = (assessment: Assessment, harms: readonly SideEffect[]): string => {
  const ranks = harms.slice(0, MAX_NAMED).flatMap(({ check }) => (check === undefined ? [] : [rankOf(assessment, check)]))
  return listed([...ranks, ...(harms.length > ranks.length ? [`${harms.length - ranks.length} more`] : [])])
}

/** A change as words: the field, from what to what, and what else it moves. */
function changeWords(
  assessment: Assessment,
  { name, from, to, harms }: Change,
  alone = ', and every other check keeps its reserve',
): Piece[] {
  const [further, lost] = [harms.filter((harm) => harm.further), harms.filter((harm) => !harm.further)]
  const others = [
    ...(lost.length === 0 ? [] : [`, but then short: ${namesOf(assessment, lost)}`]),
    ...(further.length === 0 ? [] : [`, ${lost.length === 0 ? 'but' : 'and'} further below: ${ranksOf(assessment, further)}`]),
  ]
  return [{ text: unitSigns(to), strong: true }, ` instead of ${from} (${name})${others.length === 0 ? alone : others.join('')}`]
}

/** Changes that mend the check that fails first, for the first screen. */
export function firstChange(assessment: Assessment, changes: readonly Changes[]): Block[] {
  const { governing } = assessment
  const own = changes.find(({ check }) => check === governing)
  if (own === undefined) return [led('What to change:', `${governing.remedy}.`)]
  if (own.changes.length === 0) return [led('What to change:', `${governing.remedy}. ${noneWords(own)}`)]
  return [
    led(
      'What to change:',
      `${own.changes.length === 1 ? 'this change' : 'each of these changes'} alone gives the check its required reserve of ${governing.requiredReserve}.`,
    ),
    points(own.changes.map((change): Words => [...changeWords(assessment, change), '.'])),
    text(`In general: ${governing.remedy}.`),
  ]
}

const NONE = 'No single size, up to three times or down to a third, gives this check its required reserve'
const nearestText = ({ reserve, from, to, name }: NonNullable<Changes['nearest']>) =>
  `${reserveText(reserve)}, with ${to} instead of ${from} (${name})`
/** Best result of single changes where none suffices. */
const noneWords = ({ nearest }: Changes): string =>
  `${NONE}${nearest === undefined ? '' : `; the largest reserve is ${nearestText(nearest)}`}.`
/** The same in the list, which says once that no single size suffices. */
const nearestWords = (nearest: Changes['nearest']): string =>
  nearest === undefined ? '' : ` The largest reserve is ${nearestText(nearest)}.`

/** Changes that mend each check that falls short. */
export function changesSection(assessment: Assessment, changes: readonly Changes[]): Block[] {
  const short = assessment.checks.filter((check) => check.reserve < check.requiredReserve)
  if (short.length === 0) return []
  const rest = short.length - changes.length
  const known = new Map<string, string>()
  // What several checks have in common stands with the first of them.
  const once = <W extends Words>(words: W, rank: string): W | string => {
    const text = plainWords(words)
    const first = known.get(text)
    if (first === undefined) known.set(text, rank)
    return first === undefined ? words : `as for ${first}`
  }
  return [
    section('changes', 'What to change', [
      text(
        `Single changes that give a check its required reserve, each compared with every other check. Where no check is named, every other one keeps its required reserve, or loses at most a hundredth of a reserve that is below it. Sizes are tried up to three times and down to a third of what they are; where only a remedy is named, no single size is enough.${rest > 0 ? ` For ${rest} more checks of this leg none was calculated: make the changes below first.` : ''}`,
      ),
      points(
        changes.map(({ check, changes: own, nearest }): Words => {
          const rank = rankOf(assessment, check)
          const lead: Piece[] = [
            { text: rank, to: rank },
            ` ${placeOf(check)}${check.joint === undefined ? '' : ','} ${check.mode} (`,
            { text: standing(check), tone: standing(check) },
            '): ',
          ]
          return own.length === 0
            ? [...lead, `${once(check.remedy, rank)}.${nearestWords(nearest)}`]
            : [
                ...lead,
                ...pieces(
                  once(
                    own.flatMap((change, i): Piece[] => [...(i === 0 ? [] : ['; or ']), ...changeWords(assessment, change, '')]),
                    rank,
                  ),
                ),
                '.',
              ]
        }),
      ),
    ]),
  ]
}
