import { type Drawing, Figure, plain, type Row, View } from '../../drawing/index.js'
import { nearerLoad, shaftLoad, thrust } from '../parts/hip-shaft/loads.js'
import { type Facts, resultSentence } from './facts.js'
import { flatSection } from './flat-section.js'
import { hipWheel } from './hip-wheel.js'
import { hasShaft } from './present.js'
import { halfDrawn, keySection, shaftSection } from './shaft-section.js'
import { type ShaftSizes, shaftSizes } from './shaft-sizes.js'
import { amount, answerOf, checked, length, resultLines, word } from './words.js'

const CHECKS = [
  'shaft.bending',
  'shaft.rodCouple',
  'shaftStack.gape',
  'shaftStack.tip',
  'shaftStack.slip',
  'shaftStack.key',
  'shaftStack.flat',
  'shaftStack.tightening',
  'shaftStack.crush',
  'shaftStack.edge',
  'shaftStack.shaft',
  'bearing.static',
  'bearing.life',
  'bearing.seat',
  'bearing.seatSplit',
]

/** The hip shaft in its bearings: stack along the axis, and its loads. */
export function shaftDrawing(facts: Facts): Drawing | undefined {
  if (!hasShaft(facts)) return undefined
  const s = shaftSizes(facts)
  const wheel = hipWheel(facts, s)
  const narrow = 2 * halfDrawn(s, wheel) < wheel.length && !wheel.assumed
  const worst = facts.worst(CHECKS)
  const figure = new Figure({
    id: 'hip-shaft',
    title: 'Hip shaft in its bearings, section along the axis',
    ...answerOf('Hip shaft', worst),
  })
  figure.view(shaftSection(s, wheel))
  figure.text(
    `Thin outlines: sizes assumed. The ${wheel.kind} is broken off${narrow ? `; of its ${plain(wheel.length)} mm only what is beside the bearing is drawn` : ''}.`,
  )
  const key = keySection(s) ?? flatSection(s)
  if (key !== undefined) figure.view(key)
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
      length(`length of the ${wheel.kind}`, wheel.length, wheel.assumed ? 'assumed' : 'document'),
      length(`${wheel.circle} of the ${wheel.kind}`, wheel.outer, wheel.assumed ? 'assumed' : 'geometry'),
      length('end cap thickness', s.capThickness),
      word('bearing seat', s.seat),
      length('least length of the shaft to the plane of the leg', s.width / 2 + s.spacing + s.overhang, 'geometry'),
      length('spacer between the bearings', s.spacing - s.width, 'geometry'),
      length('bore of the seats', s.outer - s.interference, 'geometry'),
      ...stackRows(s),
      ...facts.checks(CHECKS).map(checked),
    )
  return figure.done()
}

function stackRows({ stack }: ShaftSizes): Row[] {
  if (stack === undefined) return []
  const { flat, key } = stack
  return [
    length('ring in which parts of the stack touch, outside', stack.outer),
    length('ring in which parts of the stack touch, inside', stack.inner),
    word('softest part of the stack', stack.material),
    amount('tightening torque of the stack', stack.torque, 'N m', 'document'),
    ...(flat === undefined ? [] : [length('flat of the shaft, depth', flat.depth), length('flat of the shaft, length', flat.length)]),
    ...(key === undefined
      ? []
      : [
          word('key', `${plain(key.width)} × ${plain(key.height)}`),
          length('straight length of the key', key.length),
          length('keyway in the shaft, depth', key.shaftDepth, 'standard'),
          length('keyway in the hub, depth', key.hubDepth, 'standard'),
          length('hub over the keyway', key.hub),
          word('material of the hub', key.hubMaterial),
        ]),
  ]
}

const MAX_LOAD_LENGTH = 70

function loads(s: ShaftSizes, load: number, near: number): View {
  const view = new View('Loads of the shaft', { height: 170 })
  const plane = s.spacing + s.overhang
  const perUnit = Math.max(load, near) / MAX_LOAD_LENGTH
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
