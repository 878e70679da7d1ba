import { type Drawing, Figure, plain, rectangle, View } from '../../drawing/index.js'
import { type Facts, resultSentence } from './facts.js'
import { hasShaft } from './present.js'
import { type ShaftSizes, shaftSizes } from './shaft-sizes.js'
import { amount, answerOf, checked, layers, length, METAL, OTHER_METAL, resultLines, word } from './words.js'

/** The drilled end of the shaft with its screw and cap. */
export function shaftEndDrawing(facts: Facts): Drawing | undefined {
  if (!hasShaft(facts)) return undefined
  const s = shaftSizes(facts)
  const checks = ['shaft.drilledEnd', 'shaft.strip', 'shaft.endCap', 'shaft.capScrew']
  const worst = facts.worst(checks)
  const figure = new Figure({
    id: 'shaft-end',
    title: 'Drilled end of the hip shaft with its cap, section',
    ...answerOf('Drilled shaft end', worst),
  })
  figure.view(endSection(s))
  figure.text(`Cap of ${s.capMaterial}. Inner thread at its basic sizes. Three pitches of run-out below the full thread are assumed.`)
  figure.results(resultLines(facts, checks))
  figure
    .say(
      `An M${plain(s.diameter)} shaft is drilled and tapped M${plain(s.inner.diameter)}, ${plain(s.engagement)} mm of thread engaged; a cap of ${plain(s.capThickness)} mm rests on ${plain(s.capSpan)} mm.`,
      ...facts.checks(checks).slice(0, 1).map(resultSentence),
    )
    .rows(
      word('thread of the shaft', `M${plain(s.diameter)}`),
      word('inner thread', `M${plain(s.inner.diameter)}`),
      length('core hole of the inner thread', s.inner.diameter - s.inner.pitch, 'standard'),
      length('engaged thread', s.engagement),
      length('drilled depth', s.engagement + 3 * s.inner.pitch, 'assumed'),
      amount('tightening torque of the screw', s.innerTorque, 'N m', 'document'),
      length('cap thickness', s.capThickness),
      length('cap span', s.capSpan),
      length('hole of the cap', s.capHole, 'standard'),
      word('cap material', s.capMaterial),
      ...facts.checks(checks).map(checked),
    )
  return figure.done()
}

function endSection(s: ShaftSizes): View {
  const view = new View('Section along the axis', { height: 220 })
  const [r, core, major] = [s.diameter / 2, s.inner.minor / 2, s.inner.diameter / 2]
  const depth = s.engagement + 3 * s.inner.pitch
  const back = -depth - s.diameter * 0.7
  view.area(
    [
      [back, -r],
      [0, -r],
      [0, -core],
      [-depth, -core],
      [-depth - core * 0.6, 0],
      [-depth, core],
      [0, core],
      [0, r],
      [back, r],
    ],
    { hatch: METAL },
  )
  threads(view, s, back)
  for (const side of [1, -1] as const) {
    const [low, high] = [s.capHole / 2, s.capSpan / 2]
    view.area(side === 1 ? rectangle(0, low, s.capThickness, high) : rectangle(0, -high, s.capThickness, -low), {
      hatch: s.capMetal ? OTHER_METAL : layers('upright', 4),
    })
  }
  view.area(rectangle(-s.engagement * 0.95, -major, s.capThickness, major), { fill: 'paper' })
  view.area(rectangle(s.capThickness, -major * 1.7, s.capThickness + s.inner.diameter, major * 1.7), { fill: 'paper' })
  view.line(
    [
      [back - 2, 0],
      [s.capThickness + s.inner.diameter + 2, 0],
    ],
    'axis',
  )
  return view
    .dimension([-s.engagement, -r], [0, -r], 'below')
    .dimension([-depth, -r], [0, -r], 'below')
    .dimension([0, s.capSpan / 2], [s.capThickness, s.capSpan / 2], 'above')
    .dimension([back, -r], [back, r], 'left', undefined, 'M')
    .label([s.capThickness, s.capSpan * 0.42], `cap Ø${plain(s.capSpan)}`)
    .label([s.capThickness + s.inner.diameter, major], [`screw M${plain(s.inner.diameter)}`, `${plain(s.innerTorque)} N m`])
    .label([-s.engagement * 0.5, core], [`drill Ø${plain(s.inner.diameter - s.inner.pitch)}`, `tap M${plain(s.inner.diameter)}`])
    .label([s.capThickness * 0.5, -s.capHole / 2], `hole Ø${plain(s.capHole)}`)
    .label([-s.engagement * 0.5, -(core + r) / 2], `shaft M${plain(s.diameter)}`, { end: 'dot' })
}

/** Thin lines of both threads: the inner one to the end of its full length, the root of the outer one. */
function threads(view: View, s: ShaftSizes, back: number): void {
  const major = s.inner.diameter / 2
  for (const side of [1, -1]) {
    view.line(
      [
        [-s.engagement, side * major],
        [0, side * major],
      ],
      'thin',
    )
    view.line(
      [
        [back, (side * s.root) / 2],
        [0, (side * s.root) / 2],
      ],
      'thin',
    )
  }
  view.line(
    [
      [-s.engagement, -major],
      [-s.engagement, major],
    ],
    'thin',
  )
}
