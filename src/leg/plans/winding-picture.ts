import { drawingSvg, Figure, plain } from '../../drawing/index.js'
import { driveSizes } from '../drawings/drive-sizes.js'
import { driveFront, grooveHands, pinionView, windingSense } from '../drawings/drive-views.js'
import { LegValues } from '../drawings/leg-values.js'
import { angle, degrees, length, word } from '../drawings/words.js'
import type { LegModel } from '../leg-model.js'
import { jointWords } from '../numbers.js'
import type { Picture } from '../report/blocks.js'
import { phrase } from './sheet-units.js'
import type { Winding } from './tensioning.js'

/** How the cord of one drive lies, as a picture to wind it by. */
export function windingPicture(leg: LegModel, { joint, layAt, hipHeldAt, leastTurns }: Winding): Picture {
  const s = driveSizes(new LegValues(leg), joint)
  const held = hipHeldAt === undefined ? phrase`${jointWords(joint)} held at ${layAt}` : phrase`hip held at ${hipHeldAt}, knee at ${layAt}`
  const figure = new Figure({
    id: `winding-${joint}`,
    title: `Winding of the ${jointWords(joint)}`,
    answer: `Lay the cord with the ${held}`,
  })
  const sense = windingSense(s)
  const ends = `The label of a span names the end of travel that it pulls to. Dash-two-dots: the anchors at the ends of travel.`
  const turns = `Start with the middle of the cord at the middle of the pinion, ${s.clamped ? 'under its clamp' : 'marked with a pen'}. Lay ${plain(s.turns / 2, 3)} turns to each side, groove by groove, away from the middle; no turn crosses another.`
  const last = `Then lead each branch over its span on to the drum, ${plain(degrees(s.branch), 4)}° round it, and to its anchor. Pull by hand: both branches must come tight together.`
  const hands = grooveHands(s)
  // A page has these sentences once, beside the picture.
  figure
    .view(driveFront(s))
    .text(ends)
    .view(pinionView(s))
    .results([`${hands} ${turns} ${last}`])
  figure
    .say(sense, hands, turns, last)
    .rows(
      word('arrangement', s.crossed ? 'crossed' : 'open'),
      length('cord diameter', s.cord),
      angle('lay the cord with the joint at', layAt.si, 'geometry'),
      ['turns on the pinion', plain(s.turns, 3), '', 'geometry'],
      ['turns to each side of its middle', plain(s.turns / 2, 3), '', 'geometry'],
      ...(leastTurns === undefined
        ? []
        : [['turns left before the clamp at an end of travel', plain(leastTurns.si, 3), '', 'geometry'] as const]),
      angle('wrap of each branch on the drum', s.branch, 'geometry'),
      angle('least wrap at an end of travel', s.branch - s.travel / 2, 'geometry'),
      length('walk along the pinion', s.walk, 'geometry'),
      length('groove pitch', s.pitch),
    )
  const { id, title, answer, description, table, ...drawing } = figure.done()
  const svg = drawingSvg({ id, title, answer, description, table, ...drawing }, { style: 'page' })
  return { id, title, answer, description, svg, table }
}
