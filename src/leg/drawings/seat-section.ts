import { plain, rectangle, View } from '../../drawing/index.js'
import { ballBearing } from './ball-bearing.js'
import { middlesOf, type SeatSizes } from './seat-sizes.js'
import { layers, METAL, OTHER_METAL } from './words.js'

type Beside = NonNullable<SeatSizes['beside']>
/** Between a bearing and what stands beside it where the document leaves no room. */
const CLEARANCE = 0.5

/** Half of the seat along the axis: to the outer faces of its bearings. */
const halfSeat = ({ spacing = 0, width }: SeatSizes): number => (spacing + width) / 2

/** The bearing in its seat, in section along the axis; what stands beside it at the right. */
export function seatSection(s: SeatSizes): View {
  const view = new View('Section along the axis', { height: 240 })
  const [half, r, R, H] = [halfSeat(s), s.bore / 2, s.outer / 2, s.housing / 2]
  const hatch = s.metal ? METAL : layers('upright', 6)
  const reach = half + Math.max(3, 0.4 * s.outer, (s.beside?.offset ?? 0) + (s.beside?.thickness ?? 0) / 2 - half + 2)
  for (const side of [1, -1] as const) {
    view.area(rectangle(-half, Math.min(side * R, side * H), half, Math.max(side * R, side * H)), { hatch })
    for (const x of middlesOf(s)) ballBearing(view, s, x, side)
  }
  between(view, s)
  const pinFrom = s.cap === undefined ? -half - (s.beside?.both === true ? reach - half : 2) : -half
  view.area(rectangle(pinFrom, -r, reach, r), { fill: 'paper' })
  if (s.cap !== undefined) capOf(view, s, s.cap, half)
  if (s.beside !== undefined) besideOf(view, s, s.beside, half)
  view.line(
    [
      [pinFrom - 3 - (s.cap === undefined ? 0 : 2 * s.cap.thread), 0],
      [reach + 3, 0],
    ],
    'axis',
  )
  labels(view, s, half)
  return view
}

/** Spacers between the rings of a pair; rings alone need none. */
function between(view: View, { spacing, width, bore, outer }: SeatSizes): void {
  if (spacing === undefined || spacing <= width) return
  const free = (spacing - width) / 2
  const ring = (outer - bore) * 0.14
  for (const side of [1, -1])
    for (const [low, high] of [
      [bore / 2, bore / 2 + ring],
      [outer / 2 - ring, outer / 2],
    ] as const)
      view.area(rectangle(-free, Math.min(side * low, side * high), free, Math.max(side * low, side * high)), {
        line: 'thin',
        hatch: OTHER_METAL,
      })
}

/** Shoulder at the right of the inner ring, cap and screw at its left. */
function capOf(view: View, s: SeatSizes, cap: NonNullable<SeatSizes['cap']>, half: number): void {
  const [rim, plate] = [0.15 * cap.thread + 0.4, 0.6 * cap.thread]
  view.area(rectangle(half, -cap.shoulder / 2, half + s.width / 2, cap.shoulder / 2), { fill: 'paper' })
  view.area(rectangle(-half - rim, -cap.rim / 2, -half, cap.rim / 2), { fill: 'paper' })
  view.area(rectangle(-half - rim - plate, -cap.edge / 2, -half - rim, cap.edge / 2), { hatch: OTHER_METAL })
  view.area(rectangle(-half - rim - plate - cap.thread, -cap.head / 2, -half - rim - plate, cap.head / 2), { fill: 'paper' })
  for (const side of [1, -1])
    view.line(
      [
        [-half - rim - plate, (side * cap.thread) / 2],
        [-half + 1.5 * cap.thread, (side * cap.thread) / 2],
      ],
      'hidden',
    )
}

/** The eye of the rod or the arm beside the bearing, its middle where the document has it. */
function besideOf(view: View, s: SeatSizes, { offset, thickness, both }: Beside, half: number): void {
  const [tall, w] = [Math.min(s.housing / 2, 1.6 * s.bore), (thickness ?? s.width) / 2]
  for (const sign of both ? [1, -1] : [1]) {
    const [near, far] = [Math.max(half + CLEARANCE, offset - w), Math.max(half + CLEARANCE + w, offset + w)]
    for (const side of [1, -1])
      view.area(
        rectangle(
          Math.min(sign * near, sign * far),
          Math.min((side * s.bore) / 2, side * tall),
          Math.max(sign * near, sign * far),
          Math.max((side * s.bore) / 2, side * tall),
        ),
        { line: 'thin', hatch: layers('upright', 9) },
      )
  }
  view.line(
    [
      [offset, -tall - 3],
      [offset, tall + 3],
    ],
    'axis',
  )
  if (offset > 0) view.dimension([0, tall], [offset, tall + 3], 'above')
}

function labels(view: View, s: SeatSizes, half: number): void {
  const first = middlesOf(s)[0]!
  const tight = s.interference >= 0 ? 'tight' : 'loose'
  view
    .dimension([first - s.width / 2, -s.housing / 2], [first + s.width / 2, -s.housing / 2], 'below')
    .dimension([-half, -s.outer / 2], [-half, s.outer / 2], 'left', undefined, 'Ø')
    .dimension([-half, -s.housing / 2], [-half, s.housing / 2], 'left', undefined, 'Ø')
    .label([half * 0.5, (s.housing + s.outer) / 4], s.material, { end: 'dot' })
    .label(
      [half, (s.outer / 2) * 0.97],
      [`seat Ø${plain(s.outer - s.interference, 6)}`, `${plain(Math.abs(1000 * s.interference), 3)} µm ${tight}`],
    )
    .label([half + 0.6, -s.bore / 2], `${s.axle} Ø${plain(s.bore)}`)
  if (s.spacing !== undefined) {
    view.dimension([-s.spacing / 2, -s.housing / 2], [s.spacing / 2, -s.housing / 2], 'below')
    if (s.spacing > s.width)
      view.label([0, -s.outer / 2 + 0.07 * (s.outer - s.bore)], `spacers, ${plain(s.spacing - s.width)} long`, { end: 'dot' })
  }
  if (s.beside !== undefined)
    view.label([Math.max(half + CLEARANCE, s.beside.offset), Math.min(s.housing / 2, 1.6 * s.bore) * 0.8], s.beside.words, { end: 'dot' })
  if (s.cap !== undefined) {
    view
      .label([half + s.width / 2, -s.cap.shoulder / 2], `shoulder Ø${plain(s.cap.shoulder)}`)
      .label(
        [-half - 0.4, -s.cap.rim / 2],
        [`cap, rim Ø${plain(s.cap.rim)}`, `edge Ø${plain(s.cap.edge)}`, `screw M${plain(s.cap.thread)}`, `${plain(s.cap.torque)} N m`],
        { end: 'arrow' },
      )
  }
}
