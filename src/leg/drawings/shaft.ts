import { type Drawing, Figure, plain, rectangle, View } from '../../drawing/index.js'
import * as shaft from '../parts/hip-shaft/fields.js'
import { nearerLoad, shaftLoad, thrust } from '../parts/hip-shaft/loads.js'
import { drum } from '../parts/transmission/cord/fields.js'
import { drumRadius } from '../parts/transmission/cord/radii.js'
import { type Facts, resultSentence } from './facts.js'
import { hasCordDrive, hasShaft } from './present.js'
import { amount, answerOf, checked, layers, length, METAL, OTHER_METAL, resultLines, word } from './words.js'

const CHECKS = ['shaft.bending', 'bearing.static', 'bearing.life', 'bearing.seat']

/** Sizes of the hip shaft and its bearings, mm. */
export const shaftSizes = (facts: Facts) => {
  const thread = facts.get(shaft.thread)
  const inner = facts.get(shaft.inner.thread)
  return {
    diameter: 1000 * thread.diameter,
    root: 1000 * thread.rootDiameter,
    pitch: 1000 * thread.pitch,
    inner: { diameter: 1000 * inner.diameter, pitch: 1000 * inner.pitch, minor: 1000 * inner.minorDiameter },
    engagement: facts.mm(shaft.inner.engagement),
    innerTorque: facts.get(shaft.inner.tighteningTorque),
    capThickness: facts.mm(shaft.cap.thickness),
    capSpan: facts.mm(shaft.cap.span),
    capMaterial: facts.named('material', shaft.cap.material),
    bore: facts.mm(shaft.bearing.bore),
    outer: facts.mm(shaft.bearing.outerDiameter),
    width: facts.mm(shaft.bearing.width),
    spacing: facts.mm(shaft.spacing),
    overhang: facts.mm(shaft.overhang),
    seat: facts.named('material', shaft.seatMaterial),
    retained: facts.get(shaft.retained),
  }
}
export type ShaftSizes = ReturnType<typeof shaftSizes>

/** The hip shaft in its bearings: stack along the axis, and its loads. */
export function shaftDrawing(facts: Facts): Drawing | undefined {
  if (!hasShaft(facts)) return undefined
  const s = shaftSizes(facts)
  const at = { joint: 'hip' }
  const cord = hasCordDrive(facts, 'hip')
  const drumLength = cord ? facts.mm(drum.length, at) : 1.5 * s.width
  const drumOuter = cord ? 2 * facts.mm(drumRadius, at) : 2 * s.outer
  const drumMaterial = cord ? facts.named('material', drum.material, at) : 'wheel, assumed'
  const worst = facts.worst(CHECKS)
  const figure = new Figure({
    id: 'hip-shaft',
    title: 'Hip shaft in its bearings, section along the axis',
    ...answerOf('Hip shaft', worst),
  })
  figure.view(section(s, drumLength, drumOuter, drumMaterial))
  figure.text('Thin outlines: hub, spacer and housing, sizes assumed. The drum is broken off.')
  if (worst !== undefined) {
    const here = facts.case(worst.case)
    const load = facts.tried(shaftLoad, here)
    const near = facts.tried(nearerLoad, here)
    if (load !== undefined && near !== undefined && load > 0) {
      figure.view(loads(s, load, near))
      figure.text(
        `${worst.caseTitle}: foot and drive ${plain(load, 3)} N in the plane of the leg, the nearer bearing ${plain(near, 3)} N, thrust along the shaft ${plain(facts.get(thrust, here), 3)} N.`,
      )
      figure.rows(amount('load in the plane of the leg', load, 'N'), amount('load of the nearer bearing', near, 'N'))
    }
  }
  figure.results(resultLines(facts, CHECKS))
  figure
    .say(
      `A shaft M${plain(s.diameter)} turns in two bearings of ${plain(s.bore)} × ${plain(s.outer)} × ${plain(s.width)} mm, ${plain(s.spacing)} mm apart; the plane of the leg is ${plain(s.overhang)} mm beyond the nearer one.`,
      ...facts.checks(CHECKS).slice(0, 1).map(resultSentence),
    )
    .rows(
      word('thread of the shaft', `M${plain(s.diameter)}`),
      length('bearing bore', s.bore, 'standard'),
      length('bearing outer diameter', s.outer, 'standard'),
      length('bearing width', s.width, 'standard'),
      length('distance between the bearings', s.spacing),
      length('overhang to the plane of the leg', s.overhang),
      length(cord ? 'length of the drum' : 'length of the wheel', drumLength, cord ? 'document' : 'assumed'),
      length(cord ? 'cord circle of the drum' : 'diameter of the wheel', drumOuter, cord ? 'geometry' : 'assumed'),
      length('end cap thickness', s.capThickness),
      word('bearing seat', s.seat),
      ...facts.checks(CHECKS).map(checked),
    )
  return figure.done()
}

/** The bearings' middles stand at 0 and at the spacing; the plane of the leg at spacing and overhang. */
function section(s: ShaftSizes, drumLength: number, drumOuter: number, drumMaterial: string): View {
  const view = new View('Section along the axis', { height: 260, numbered: true })
  const [r, R] = [s.diameter / 2, s.outer / 2]
  const plane = s.spacing + s.overhang
  const hubHalf = Math.min(drumLength / 2, Math.max(1, s.overhang - s.width / 2 - 1))
  const end = plane + hubHalf
  const hub = Math.min(drumOuter / 2, 1.6 * r + 4)
  const broken = Math.min(drumOuter / 2, R + 8)
  const head = s.diameter
  const upDown = (draw: (side: 1 | -1) => void) => [1 as const, -1 as const].forEach(draw)
  upDown((side) => {
    const band = (from: number, to: number, low: number, high: number) =>
      side === 1 ? rectangle(from, low, to, high) : rectangle(from, -high, to, -low)
    view.area(band(-s.width / 2 - 2, s.spacing + s.width / 2 + 2, R, R + 5), { hatch: layers('flat', 4), line: 'thin' })
    view.area(band(s.width / 2, s.spacing - s.width / 2, r, r + 1.5), { hatch: METAL, line: 'thin' })
    view.area(band(s.spacing + s.width / 2, plane - hubHalf, r, r + 1.5), { hatch: METAL, line: 'thin' })
    view.area(band(plane - hubHalf, end, hub, broken), { hatch: layers('upright', 6) })
    view.area(band(plane - hubHalf, end, r, hub), { hatch: layers('upright', 9), line: 'thin' })
    for (const x of [0, s.spacing]) bearing(view, s, x, side)
  })
  view.area(rectangle(-s.width / 2, -r, end, r), { fill: 'paper' })
  view.area(rectangle(-s.width / 2 - head * 0.64, -head * 0.8, -s.width / 2, head * 0.8), { line: 'thin', fill: 'paper' })
  view.area(rectangle(end, -s.capSpan / 2, end + s.capThickness, s.capSpan / 2), { hatch: OTHER_METAL })
  view.area(rectangle(end + s.capThickness, -s.inner.diameter * 0.85, end + s.capThickness + s.inner.diameter, s.inner.diameter * 0.85), {
    fill: 'paper',
  })
  view.line(
    [
      [end - s.engagement, -s.inner.diameter / 2],
      [end - s.engagement, s.inner.diameter / 2],
    ],
    'hidden',
  )
  upDown((side) =>
    view.line(
      [
        [end - s.engagement, (side * s.inner.diameter) / 2],
        [end, (side * s.inner.diameter) / 2],
      ],
      'hidden',
    ),
  )
  view.line(
    [
      [-s.width / 2 - head - 2, 0],
      [end + s.capThickness + s.inner.diameter + 3, 0],
    ],
    'axis',
  )
  view.line(
    [
      [plane, -broken - 3],
      [plane, broken + 3],
    ],
    'axis',
  )
  return view
    .dimension([0, -R], [s.spacing, -R], 'below')
    .dimension([s.spacing, -R], [plane, -broken], 'below')
    .label([s.spacing + s.width / 4, R * 0.9], `bearing ${plain(s.bore)} × ${plain(s.outer)} × ${plain(s.width)}`)
    .label([plane + hubHalf * 0.6, broken * 0.9], `drum, ${drumMaterial}`, { end: 'dot' })
    .label([end + s.capThickness / 2, s.capSpan * 0.4], `cap, ${s.capMaterial}`, { end: 'dot' })
    .label([end + s.capThickness + s.inner.diameter, 0], `screw M${plain(s.inner.diameter)}`)
    .label([plane - hubHalf * 0.5, -(hub + r) / 2], 'hub', { end: 'dot' })
    .label([s.spacing / 2, -R - 2.5], `housing, ${s.seat}`, { end: 'dot', side: 'right' })
}

function bearing(view: View, s: ShaftSizes, x: number, side: 1 | -1): void {
  const [r, R] = [s.bore / 2, s.outer / 2]
  const ring = (R - r) * 0.28
  const band = (low: number, high: number) =>
    side === 1 ? rectangle(x - s.width / 2, low, x + s.width / 2, high) : rectangle(x - s.width / 2, -high, x + s.width / 2, -low)
  view.area(band(r, r + ring), { hatch: OTHER_METAL }).area(band(R - ring, R), { hatch: METAL })
  view.circle({ centre: [x, (side * (r + R)) / 2], radius: Math.min((R - r) * 0.29, s.width * 0.4) }, 'thin', 'paper')
}

const LONGEST = 70

function loads(s: ShaftSizes, load: number, near: number): View {
  const view = new View('Loads of the shaft', { height: 170 })
  const plane = s.spacing + s.overhang
  const perUnit = Math.max(load, near) / LONGEST
  // The farther bearing takes the difference, so that all three are in balance.
  const far = near - load
  view.line(
    [
      [0, 0],
      [plane, 0],
    ],
    'thick',
  )
  for (const x of [0, s.spacing]) view.circle({ centre: [x, 0], radius: 0.8 }, 'thick', 'paper')
  view.arrow([plane, 0], -Math.PI / 2, load, perUnit)
  view.arrow([s.spacing, 0], Math.PI / 2, near, perUnit)
  if (far > 0) view.arrow([0, 0], -Math.PI / 2, far, perUnit)
  return view
    .dimension([0, 0], [s.spacing, 0], 'below')
    .dimension([s.spacing, 0], [plane, 0], 'below')
    .label([plane, 4], `leg ${plain(load, 3)} N`, { ink: 'force', end: 'none' })
    .label([plane, -6], `nearer bearing ${plain(near, 3)} N`, { ink: 'force', end: 'none' })
    .label([plane, -14], `farther bearing ${plain(far, 3)} N`, { ink: 'force', end: 'none' })
}
