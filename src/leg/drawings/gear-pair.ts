import { type Circle, type Drawing, Figure, type Point, plain, View } from '../../drawing/index.js'
import { type DrivenJoint, driveOf, jointWords } from '../numbers.js'
import { canDiameter } from '../parts/motors/fields.js'
import { pressureAngle } from '../parts/transmission/gear/fields.js'
import { type GearSetting, type GearSizes, gearSetting } from '../plans/gear-setting.js'
import { type Facts, resultSentence } from './facts.js'
import { toothOutline } from './gear-teeth.js'
import { isDriven } from './present.js'
import { amount, answerOf, checked, degrees, length, resultLines, word } from './words.js'

const CHECKS = [
  'gear.pinionBending',
  'gear.wheelBending',
  'gear.pinionFatigue',
  'gear.wheelFatigue',
  'gear.contact',
  'gear.contactRatio',
  'gear.undercut',
]

/** A pair of gears along its axes, to scale: pitch, tip and root circles, and the teeth in mesh. */
export function gearPairDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (!isDriven(facts, joint, 'gear')) return undefined
  const s = gearSetting(facts.leg, joint)
  const { module, faceWidth, backlash, pinionMaterial, wheelMaterial } = driveOf(facts.leg.x, joint, 'gear')
  const name = jointWords(joint)
  const pressure = degrees(facts.get(pressureAngle))
  const figure = new Figure({
    id: `gear-pair-${joint}`,
    title: `Pair of gears of the ${name}, along its axes`,
    ...answerOf(`Gears of the ${name}`, facts.worst(CHECKS, joint)),
  })
  figure.view(
    circles(s, facts.mm(canDiameter, { joint }), [
      `module ${plain(1000 * module)}, ${plain(pressure)}°`,
      `${plain(1000 * faceWidth)} wide`,
    ]),
  )
  figure.view(mesh(s, 1000 * module, 1000 * backlash))
  const axes = `Axes at ${plain(1000 * s.standard, 5)} mm for teeth that are thinned for the backlash, as drawn, and at ${plain(1000 * s.apart, 5)} mm for full teeth. A foil of ${plain(1000 * s.gap, 3)} mm fits between two flanks.`
  figure.text('Dash-dots: pitch circles. The place of the pinion above the wheel is assumed; fillets at the roots are left out.')
  figure.results([axes, ...resultLines(facts, CHECKS, joint)])
  const gear = (what: string, sizes: GearSizes) => [
    amount(`teeth of the ${what}`, sizes.teeth, '', 'document'),
    length(`pitch diameter of the ${what}`, 1000 * sizes.pitch, 'geometry'),
    length(`tip diameter of the ${what}`, 1000 * sizes.tip, 'geometry'),
    length(`root diameter of the ${what}`, 1000 * sizes.root, 'geometry'),
    length(`calliper over ${sizes.spanned} thinned teeth of the ${what}`, 1000 * sizes.thinned, 'geometry'),
  ]
  figure
    .say(axes, ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence))
    .rows(
      length('module', 1000 * module),
      length('face width', 1000 * faceWidth),
      amount('pressure angle', pressure, '°', 'standard'),
      word('profile shift', 'none', 'standard'),
      word('material of the pinion', pinionMaterial),
      ...gear('pinion', s.pinion),
      word('material of the wheel', wheelMaterial),
      ...gear('wheel', s.wheel),
      length('backlash along the pitch circle', 1000 * backlash),
      length('distance of the axes, thinned teeth', 1000 * s.standard, 'geometry'),
      length('distance of the axes, full teeth', 1000 * s.apart, 'geometry'),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

function circles(s: GearSetting, can: number, teeth: readonly string[]): View {
  const view = new View('Along the axes, wheel below, pinion above', { height: 330 })
  const distance = 1000 * s.standard
  for (const [gear, centre] of [
    [s.wheel, [0, 0]],
    [s.pinion, [0, distance]],
  ] as const) {
    const circle = (diameter: number): Circle => ({ centre, radius: 500 * diameter })
    view.circle(circle(gear.tip)).circle(circle(gear.pitch), 'axis').circle(circle(gear.root), 'thin').centre(circle(gear.tip), 1.06)
  }
  view.circle({ centre: [0, distance], radius: can / 2 }, 'hidden')
  const label = (gear: GearSizes, y: number, where: string) =>
    view.label([350 * gear.pitch, y + 350 * gear.pitch], [`${where}, ${gear.teeth} teeth`, `pitch Ø${plain(1000 * gear.pitch, 4)}`])
  label(s.wheel, 0, 'wheel')
  label(s.pinion, distance, 'pinion')
  return view
    .dimension([0, 0], [0, distance], 'left')
    .label([0, -350 * s.wheel.pitch], teeth, { end: 'none' })
    .label([can * 0.35, distance + can * 0.35], `motor Ø${plain(can)}`)
}

/** The teeth about the pitch point, larger: a tooth of the pinion in a gap of the wheel. */
function mesh(s: GearSetting, module: number, backlash: number): View {
  const view = new View('Teeth in mesh, larger', { height: 220 })
  // The pitch point is the origin.
  const of = (gear: GearSizes, side: 1 | -1) => ({
    centre: [0, side * 500 * gear.pitch] as Point,
    teeth: gear.teeth,
    module,
    thinning: backlash / 2,
  })
  view.line(toothOutline(of(s.wheel, -1), Math.PI / 2, 4), 'thick').line(toothOutline(of(s.pinion, 1), -Math.PI / 2, 3), 'move')
  const reach = 4 * module
  view.line(
    [
      [-reach * Math.cos(Math.PI / 9), -reach * Math.sin(Math.PI / 9)],
      [reach * Math.cos(Math.PI / 9), reach * Math.sin(Math.PI / 9)],
    ],
    'axis',
  )
  return view
    .label([reach * 0.9 * Math.cos(Math.PI / 9), reach * 0.9 * Math.sin(Math.PI / 9)], 'line of action, 20°')
    .label([module * 0.2, module * 0.4], 'tooth of the pinion', { ink: 'move', end: 'dot' })
    .label([module * 1.6, -module * 0.3], 'tooth of the wheel', { end: 'dot' })
}
