import { barBlock, type Drawing, Figure, plain, type Row } from '../../drawing/index.js'
import { pivotChecks } from '../parts/ball-bearings/checks.js'
import { moment, radialLoad } from '../parts/ball-bearings/loads.js'
import { PIVOT_WORDS, type Pivot } from '../parts/ball-bearings/pivots.js'
import { interferenceNow, relaxedInterference } from '../parts/ball-bearings/seat.js'
import { type Facts, resultSentence } from './facts.js'
import { seatSection } from './seat-section.js'
import { type SeatSizes, seatSizes } from './seat-sizes.js'
import { amount, answerOf, checked, length, resultLines, word } from './words.js'

/** Where the names of the checks of a bearing differ from the name of its pivot. */
const PREFIX: { readonly [P in Pivot]?: string } = { hip: 'pin', knee: 'pin', sidewaysHip: 'sideways' }
const idsOf = (pivot: Pivot): readonly string[] =>
  pivotChecks.map(({ id }) => id).filter((id) => id.startsWith(`${PREFIX[pivot] ?? pivot}Bearing.`))

const RETENTION_LABELS = {
  press: 'Its press fit alone holds the ring along the axis.',
  bond: 'Adhesive holds the rings along the axis.',
  cap: 'A shoulder and a cap hold the inner ring along the axis.',
} as const

/** The ball bearing of a pin, of an end of the rod, or of its drum: in its seat, with its fit and what keeps it there. */
export function bearingDrawing(facts: Facts, pivot: Pivot): Drawing | undefined {
  const s = seatSizes(facts, pivot)
  if (s === undefined) return undefined
  const joint = pivot === 'hip' || pivot === 'knee' ? pivot : undefined
  const ids = idsOf(pivot)
  const name = `Bearing of the ${PIVOT_WORDS[pivot]}`
  const figure = new Figure({
    id: `bearing-${pivot}`,
    title: `${name} in its seat, section along the axis`,
    ...answerOf(name, facts.worst(ids, joint)),
  })
  figure.view(seatSection(s))
  const held = `${RETENTION_LABELS[s.retainedBy]} ${s.isInEye ? 'It sits in the eye of the rod, in line with it.' : ''}`.trim()
  figure.text(`${held} Length of the housing as of the bearings; thin outlines are assumed.`)
  seatFit(figure, facts, pivot, s)
  figure.results(resultLines(facts, ids, joint))
  figure
    .say(
      `${s.spacing === undefined ? 'A bearing' : 'Two bearings'} of ${plain(s.bore)} × ${plain(s.outer)} × ${plain(s.width)} mm in a seat of Ø${plain(s.outer - s.interference, 6)} mm in ${s.material}.`,
      held,
      ...facts.checks(ids, joint).slice(0, 1).map(resultSentence),
    )
    .rows(...rowsOf(s), ...loadRows(facts, pivot, ids, joint), ...facts.checks(ids, joint).map(checked))
  return figure.done()
}

const AIRS = { cold: 'in the coldest air', normal: 'in ordinary air', hot: 'in the hottest air' } as const

function seatFit(figure: Figure, facts: Facts, pivot: Pivot, { interference }: SeatSizes): void {
  const found = (['cold', 'normal', 'hot'] as const).map((air) => [air, facts.tried(interferenceNow, { pivot, air })] as const)
  const relaxed = facts.tried(relaxedInterference, { pivot, event: 'walk', air: 'hot' })
  const bars = [
    { name: 'at assembly', um: 1000 * interference },
    ...found.flatMap(([air, at]) => (at === undefined ? [] : [{ name: AIRS[air], um: 1e6 * at }])),
    ...(relaxed === undefined ? [] : [{ name: 'relaxed, in the hottest air', um: 1e6 * relaxed }]),
  ]
  const reach = 1.15 * Math.max(1, ...bars.map(({ um }) => Math.abs(um)))
  figure.block('Interference of the seat, µm', (y) =>
    barBlock(
      {
        from: Math.min(0, ...bars.map(({ um }) => 1.15 * um)),
        to: Math.max(reach / 10, ...bars.map(({ um }) => 1.15 * um)),
        rules: [{ at: 0, name: '' }],
        bars: bars.map(({ name, um }) => ({
          name,
          from: Math.min(0, um),
          to: Math.max(0, um),
          text: plain(um, 3),
          ...(um < 0 ? { ink: 'bad' as const } : {}),
        })),
      },
      y,
    ),
  )
  figure.rows(
    ...bars.map(({ name, um }) => amount(`interference of the seat, ${name}`, um, 'µm', name === 'at assembly' ? 'document' : 'result')),
  )
}

const rowsOf = (s: SeatSizes): Row[] => [
  length('bearing bore', s.bore, 'standard'),
  length('bearing outer diameter', s.outer, 'standard'),
  length('bearing width', s.width, 'standard'),
  ...(s.spacing === undefined
    ? []
    : [length('distance between the middles of the pair', s.spacing), length('length of the spacers', s.spacing - s.width, 'geometry')]),
  length('seat', s.outer - s.interference, 'geometry'),
  length('outer diameter round the seat', s.housing, s.housingIs),
  word('material of the seat', s.material),
  word('held along the axis by', s.retainedBy === 'bond' ? 'adhesive' : s.retainedBy === 'press' ? 'its press fit' : 'shoulder and cap'),
  ...(s.beside === undefined
    ? []
    : [length('middle of the bearing to the middle plane of the rod or of what holds its pin', s.beside.offset)]),
  ...(s.cap === undefined
    ? []
    : [
        length('rim of the shoulder', s.cap.shoulder),
        length('rim of the cap', s.cap.rim),
        length('edge of the cap', s.cap.edge),
        word('screw of the cap', `M${plain(s.cap.thread)}`),
        amount('tightening torque of that screw', s.cap.torque, 'N m', 'document'),
      ]),
]

/** Load and tilting moment in the load case of the check nearest to its limit. */
function loadRows(facts: Facts, pivot: Pivot, ids: readonly string[], joint: string | undefined): Row[] {
  const worst = facts.worst(ids, joint)
  if (worst === undefined) return []
  const at = { pivot, ...facts.case(worst.case) }
  // Of the pair at the sideways hip the load of the nearer bearing has the moments in it.
  const [across, tilt] = [facts.tried(radialLoad, at), pivot === 'sidewaysHip' ? undefined : facts.tried(moment, at)]
  return [
    ...(across === undefined ? [] : [amount(`load across the axis, ${worst.caseTitle.toLowerCase()}`, across, 'N')]),
    ...(tilt === undefined ? [] : [amount(`tilting moment, ${worst.caseTitle.toLowerCase()}`, tilt, 'N m')]),
  ]
}
