import { type Drawing, Figure, plain, rectangle, View } from '../../drawing/index.js'
import type { Joint } from '../numbers.js'
import { meanInterference } from '../parts/pins-and-bosses/fit.js'
import { pinForce, prised } from '../parts/pins-and-bosses/loads.js'
import { ballBearing } from './ball-bearing.js'
import { type Facts, resultSentence } from './facts.js'
import { momentLine } from './pin-moment.js'
import { fitBars, type PinSizes, pinSizes } from './pin-sizes.js'
import { hasPin } from './present.js'
import { middlesOf } from './seat-sizes.js'
import { amount, answerOf, checked, layers, length, METAL, OTHER_METAL, resultLines, word } from './words.js'

/** Checks of a pin that bears something. */
const LOADED_PIN_CHECKS = [
  ...['pin.shear', 'pin.bending', 'pin.fatigue', 'pin.bearingTongue', 'pin.eyeEdge', 'boss.bearing', 'boss.mouth', 'boss.tearOut'],
  ...['boss.netSection', 'boss.grip', 'boss.prised', 'boss.fatigue'],
]
const CHECKS = [...LOADED_PIN_CHECKS, 'boss.split', 'boss.fitScatter', 'boss.zone']

/** The loads on a pin: those of the case that is hardest for them, whatever check of the pin is nearest to its limit. Returns the force from the eye. */
function drawLoads(figure: Figure, facts: Facts, joint: Joint, s: PinSizes): number | undefined {
  const hardest = facts.worst(LOADED_PIN_CHECKS, joint)
  const force = hardest === undefined ? undefined : facts.tried(pinForce, { joint, ...facts.case(hardest.case) })
  if (hardest !== undefined && force !== undefined) {
    figure.view(loads(s, force))
    momentLine(figure, { ...s, force })
    const { cheekForce } = facts.get(prised, { joint, ...facts.case(hardest.case) })
    const couple = cheekForce > 0 ? ` A push to the side adds ${plain(cheekForce, 3)} N to one boss and takes as much off the other.` : ''
    figure.text(`${hardest.caseTitle}: the eye is pressed on the pin with ${plain(force, 3)} N, half of it on each boss.${couple}`)
  }
  return force
}

/** The pin of a joint in its bosses: section, loads, fit. */
export function pinDrawing(facts: Facts, joint: Joint): Drawing | undefined {
  if (!hasPin(facts, joint)) return undefined
  const s = pinSizes(facts, joint)
  const worst = facts.worst(CHECKS, joint)
  const figure = new Figure({
    id: `pin-${joint}`,
    title: `Pin of the ${joint} in its bosses, section along the pin`,
    ...answerOf(`Pin of the ${joint}`, worst),
  })
  figure.view(section(s))
  figure.text(
    `${layerWords(s)}${s.bearing === undefined ? 'Thin outline: height of the eye, assumed.' : 'The eye turns on ball bearings, which have a drawing of their own.'}`,
  )
  const interference = facts.tried(meanInterference, { joint, air: 'normal' })
  fitBars(figure, facts, joint, s, interference)
  const force = drawLoads(figure, facts, joint, s)
  figure.results(resultLines(facts, CHECKS, joint))
  figure
    .say(
      `A pin of ${plain(s.diameter)} mm lies in two bosses of ${plain(s.outer)} mm with holes of ${plain(s.hole)} mm, ${plain(s.depth)} mm deep each, and in an eye of ${plain(s.lug)} mm with gaps of ${plain(s.gap)} mm.`,
      ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence),
    )
    .rows(
      length('pin diameter', s.diameter, 'standard'),
      word('tolerance zone', s.zone),
      length('length of the pin in the section', s.lug + 2 * (s.gap + s.depth), 'geometry'),
      length('thickness of the eye', s.lug),
      length('side gap', s.gap),
      length('thickness of a cheek', s.cheek),
      length('length in one boss', s.depth),
      length('outer diameter of the boss', s.outer),
      length('hole', s.hole),
      length('standard deviation of the hole', s.scatter),
      length('distance to the edge', s.edge),
      ...(s.bearing === undefined
        ? []
        : [
            length('outer diameter of the bearing in the eye', s.bearing.outer, 'standard'),
            length('outer diameter of the eye', s.bearing.housing),
          ]),
      ...(s.bossPrinted
        ? [word('bore and layers', s.axis === 'acrossLayers' ? 'the bore crosses the layers' : 'the bore lies in the layers')]
        : []),
      word('material of the boss', s.bossMaterial),
      word('material of the eye', s.eyeMaterial),
      ...(force === undefined ? [] : [amount('force on the pin', force, 'N')]),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

/** How the layers of the printed parts lie; nothing for parts of metal. */
function layerWords({ axis, bossPrinted, eyePrinted }: PinSizes): string {
  const boss = bossPrinted ? `Layers of the boss ${axis === 'acrossLayers' ? 'cross the pin' : 'lie along the pin'}` : undefined
  if (!eyePrinted) return boss === undefined ? '' : `${boss}. `
  return boss === undefined ? 'Layers of the eye are assumed to cross the pin. ' : `${boss}; those of the eye are assumed to cross it. `
}

function section(s: PinSizes): View {
  const { diameter, lug, gap, cheek, depth, outer, hole, zone, bossMaterial, eyeMaterial: eye } = s
  const [near, half] = [lug / 2 + gap, outer / 2]
  const end = near + depth
  const eyeHeight = eyeHeightOf(s)
  const view = new View('Section along the pin', { height: 230 })
  bossesAndEye(view, s)
  const bevel = Math.min(diameter / 8, depth / 4)
  view.area(
    [
      [-end + bevel, -diameter / 2],
      [end - bevel, -diameter / 2],
      [end, -diameter / 2 + bevel],
      [end, diameter / 2 - bevel],
      [end - bevel, diameter / 2],
      [-end + bevel, diameter / 2],
      [-end, diameter / 2 - bevel],
      [-end, -diameter / 2 + bevel],
    ],
    { fill: 'paper' },
  )
  view.line(
    [
      [-Math.max(end, near + cheek) - 2, 0],
      [Math.max(end, near + cheek) + 2, 0],
    ],
    'axis',
  )
  if (s.bearing !== undefined)
    view.label(
      [middlesOf(s.bearing).at(-1)! + s.bearing.width / 2, s.bearing.outer / 2 - 0.1],
      `bearing ${plain(s.bearing.bore)} × ${plain(s.bearing.outer)} × ${plain(s.bearing.width)}`,
    )
  return view
    .dimension([-near - cheek, half], [-near, half], 'above')
    .dimension([-lug / 2, eyeHeight], [lug / 2, eyeHeight], 'above')
    .dimension([near, half], [near + cheek, half], 'above')
    .dimension([-end, -diameter / 2], [end, -diameter / 2], 'below')
    .dimension([-near - cheek, -half], [-near - cheek, half], 'left', undefined, 'Ø')
    .label([near + cheek * 0.6, (half + hole / 2) / 2], `boss, ${bossMaterial}`, { end: 'dot' })
    .label([lug / 4, eyeHeight * 0.85], `eye, ${eye}`, { end: 'dot' })
    .label([end - bevel * 2, diameter / 4], `pin Ø${plain(diameter)} ${zone}`, { end: 'dot' })
    .label([near + cheek * 0.8, -hole / 2], `hole Ø${plain(hole)}`)
    .label([near - gap / 2, -half * 0.9], `gap ${plain(gap)}`)
}

/** Height of the eye above the axis: of one with bearings as the document has it, else assumed. */
const eyeHeightOf = ({ bearing, outer }: PinSizes): number => (bearing === undefined ? 0.8 * outer : bearing.housing / 2)

/** Bosses and eye above and below the pin. */
function bossesAndEye(view: View, s: PinSizes): void {
  const { diameter, lug, gap, cheek, outer, hole, axis, bossPrinted, eyePrinted, bearing } = s
  const [near, half, eyeHeight] = [lug / 2 + gap, outer / 2, eyeHeightOf(s)]
  const eyeHole = bearing?.outer ?? diameter
  const bossHatch = bossPrinted ? layers(axis === 'acrossLayers' ? 'upright' : 'flat', 4) : METAL
  for (const side of [1, -1]) {
    const [a, b] = side === 1 ? [near, near + cheek] : [-near - cheek, -near]
    for (const [low, high] of [
      [hole / 2, half],
      [-half, -hole / 2],
    ] as const)
      view.area(rectangle(a, low, b, high), { hatch: bossHatch })
  }
  for (const [low, high] of [
    [eyeHole / 2, eyeHeight],
    [-eyeHeight, -eyeHole / 2],
  ] as const)
    view.area(rectangle(-lug / 2, low, lug / 2, high), {
      hatch: eyePrinted ? layers('upright', 9) : OTHER_METAL,
      line: bearing === undefined ? 'thin' : 'thick',
    })
  if (bearing === undefined) return
  for (const x of middlesOf(bearing)) for (const side of [1, -1] as const) ballBearing(view, bearing, x, side)
}

const ARROWS = 4
const LOAD_LENGTH = 34

function loads({ lug, gap, depth, diameter }: PinSizes, force: number): View {
  const [near, onBoss] = [lug / 2 + gap, force / 2]
  const view = new View('Loads on the pin', { height: 160 })
  view.area(rectangle(-near - depth, -diameter / 2, near + depth, diameter / 2), { fill: 'tone' })
  // Each arrow stands for its share of the load; one scale for both.
  const perUnit = force / ARROWS / LOAD_LENGTH
  const spread = (from: number, to: number, count: number) =>
    Array.from({ length: count }, (_, i) => from + ((i + 0.5) / count) * (to - from))
  if (!(force > 0)) return view
  for (const x of spread(-lug / 2, lug / 2, ARROWS)) view.arrow([x, diameter / 2], -Math.PI / 2, force / ARROWS, perUnit)
  for (const side of [1, -1])
    for (const x of spread(near, near + depth, ARROWS / 2))
      view.arrow([side * x, -diameter / 2], Math.PI / 2, onBoss / (ARROWS / 2), perUnit)
  return view
    .label([lug / 2 - lug / 8, diameter / 2], `${plain(force, 3)} N from the eye`, { ink: 'force', end: 'none' })
    .label([near + depth, -diameter / 2], `${plain(onBoss, 3)} N on each boss`, { ink: 'force', end: 'none' })
}
