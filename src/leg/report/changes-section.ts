import { unitSigns } from '../assess/sentence.js'
import type { Assessment } from '../result.js'
import { listed } from './amounts.js'
import { type Block, led, type Piece, points, section, text, type Words } from './blocks.js'
import type { Change, Changes } from './changes.js'
import { rankOf } from './checks-section.js'
import { placeOf, reserveText, standing } from './content.js'

/** Checks that lose their reserve are named up to this many. */
const MOST_NAMED = 3

/** A change as words: the field, from what to what, and what else it moves. */
function changeWords(
  assessment: Assessment,
  { name, from, to, shortened }: Change,
  alone = ', and every other check keeps its reserve',
): Piece[] {
  const named = shortened.slice(0, MOST_NAMED).map((check) => `${placeOf(check)} (${rankOf(assessment, check)})`)
  const rest = shortened.length - named.length
  const others = shortened.length === 0 ? alone : `, but then short: ${listed([...named, ...(rest > 0 ? [`${rest} more`] : [])])}`
  return [{ text: unitSigns(to), strong: true }, ` instead of ${from} (${name})${others}`]
}

/** What to change for the check that fails first, on the first screen. */
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
/** What single changes reach where none suffices. */
const noneWords = ({ nearest }: Changes, none = NONE): string =>
  `${none}${nearest === undefined ? '' : `; the most is ${reserveText(nearest.reserve)}, with ${nearest.to} instead of ${nearest.from} (${nearest.name})`}.`

/** What to change for every check that is short. */
export function changesSection(assessment: Assessment, changes: readonly Changes[]): Block[] {
  const short = assessment.checks.filter((check) => check.reserve < check.requiredReserve)
  if (short.length === 0) return []
  const rest = short.length - changes.length
  return [
    section('changes', 'What to change', [
      text(
        `Single changes that give a check its required reserve, each compared with every other check. Where no check is named, every other one keeps its reserve. Sizes are tried up to three times and down to a third of what they are.${rest > 0 ? ` For ${rest} more checks of this leg none was calculated: change these first.` : ''}`,
      ),
      points(
        changes.map(({ check, changes: own }): Words => {
          const rank = rankOf(assessment, check)
          const lead: Piece[] = [
            { text: rank, to: rank },
            ` ${placeOf(check)}, ${check.mode}, `,
            { text: standing(check), tone: standing(check) },
            ': ',
          ]
          return own.length === 0
            ? [...lead, `${check.remedy}. ${noneWords(changes.find((one) => one.check === check) as Changes, 'No single size is enough')}`]
            : [
                ...lead,
                ...own.flatMap((change, i): Piece[] => [...(i === 0 ? [] : ['; or ']), ...changeWords(assessment, change, '')]),
                '.',
              ]
        }),
      ),
    ]),
  ]
}
