import { barBlock, type Drawing, Figure, plain, type Row } from '../../drawing/index.js'
import { clampLoadAt } from '../clamp-load-at.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import { settledLoad } from '../parts/bolts/clamp.js'
import { preload } from '../parts/bolts/values.js'
import { days as seasonDays } from '../parts/load/fields.js'
import { boltSection, boltSizes, type Sizes, sum, threadName } from './bolt-section.js'
import { type Facts, resultSentence } from './facts.js'
import { amount, answerOf, checked, checkedOf, length, resultLines, word } from './words.js'

const checksOf = (group: string) =>
  ['tightening', 'headPressure', 'slip', 'nut', 'zone', 'separation', 'overload', 'strip', 'length'].map((mode) => `${group}Bolt.${mode}`)

/** One bolt of a group: section with sleeve, nut and clamp cone, and its clamp load. */
export function boltDrawing(facts: Facts, group: string, role: 'stack' | 'motor', joint?: DrivenJoint): Drawing {
  const s = boltSizes(facts, group)
  const worst = facts.worst(checksOf(role), joint)
  const name = `${role === 'motor' ? 'Motor' : 'Stack'} bolt${joint === undefined ? '' : ` of the ${jointWords(joint)}`}, one of ${s.count}`
  const figure = new Figure({
    id: `bolt-${role}${joint === undefined ? '' : `-${joint}`}`,
    title: `${name}, section through its axis`,
    ...answerOf(name, worst),
  })
  figure.view(boltSection(s))
  figure.text(
    [
      s.sleeves
        ? 'The sleeve alone carries the clamp load; what is beside it is held, not pressed.'
        : 'Dash-two-dots: cone of the clamp pressure.',
      ...(s.metal.every(Boolean) ? [] : ['Layers of prints are assumed to lie flat.']),
    ].join(' '),
  )
  ledger(figure, facts, group)
  figure.results(resultLines(facts, checksOf(role), joint))
  figure
    .say(
      `An ${threadName(s)} screw clamps ${s.thick.map((t, i) => `${plain(t)} mm of ${s.materials[i]}`).join(' and ')}, ${NUTS[s.nut] ?? s.nut}${s.sleeves ? ', through a metal sleeve' : ''}.`,
      ...new Set(facts.checks(checksOf(role), joint).slice(0, 3).map(resultSentence)),
    )
    .rows(...rowsOf(s), ...facts.checks(checksOf(role), joint).map(joint === undefined ? checkedOf : checked))
  return figure.done()
}

const NUTS: Readonly<Record<string, string>> = {
  pocket: 'with a nut in a six-sided pocket',
  openSlot: 'with a nut between two flats',
  onWasher: 'with a nut on a washer',
  tappedMetal: 'screwed into metal',
}

function rowsOf(s: Sizes): Row[] {
  return [
    word('thread', threadName(s)),
    amount('bolts in the group', s.count, '', 'document'),
    amount('tightening torque', s.torque, 'N m', 'document'),
    ...s.thick.map((t, i) => length(`layer ${i + 1}, ${s.materials[i]}`, t)),
    length('grip', sum(s.thick), 'geometry'),
    length('clearance hole', s.hole, 'standard'),
    length('head diameter', s.head.headDiameter, 'standard'),
    length('head height', s.head.headHeight, 'standard'),
    length('key size', s.head.keySize, 'standard'),
    ...(s.washers
      ? [length('washer diameter', s.ring.outerDiameter, 'standard'), length('washer thickness', s.ring.thickness, 'standard')]
      : []),
    ...(s.sleeves ? [length('outer diameter of the sleeve', s.ring.outerDiameter, 'assumed')] : []),
    ...(s.nut === 'tappedMetal'
      ? []
      : [length('nut across flats', s.nutSizes.acrossFlats, 'standard'), length('nut height', s.nutSizes.height, 'standard')]),
    word('nut', (NUTS[s.nut] ?? s.nut).replace(/^with a nut /, '')),
  ]
}

function ledger(figure: Figure, facts: Facts, group: string): void {
  const tight = facts.get(preload, { boltGroup: group })
  const settled = facts.get(settledLoad, { boltGroup: group })
  const { assemblyTemperature: room } = facts.leg.x.environment
  const days = facts.get(seasonDays)
  const { walkingTime } = facts.leg.x.usage
  const left = clampLoadAt(facts.leg, group).after(days, room, walkingTime)
  const rows: [string, number][] = [
    ['tightened', tight],
    ['after embedding', settled],
    [`after ${plain(days)} days at room temperature`, left],
  ]
  figure.block('Clamp load of one bolt, N', (y) =>
    barBlock({ to: 1.02 * tight, bars: rows.map(([name, to]) => ({ name, to, text: plain(to, 3) })) }, y),
  )
  figure.rows(...rows.map(([name, to]) => amount(`clamp load ${name}`, to, 'N')))
}
