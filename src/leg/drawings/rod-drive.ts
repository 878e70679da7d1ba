import { type Drawing, Figure, type Point, plain, polar, rectangle, View } from '../../drawing/index.js'
import { from, to } from '../parts/joints/fields.js'
import { stride } from '../parts/motion/values.js'
import * as fields from '../parts/transmission/through-hip/fields.js'
import { type Facts, resultSentence } from './facts.js'
import { momentLine } from './pin-moment.js'
import { linkSizes, pointsOf } from './pose.js'
import { hasRod } from './present.js'
import { rodPose } from './rod.js'
import { amount, angle, answerOf, checked, degrees, layers, length, resultLines, word } from './words.js'

const CHECKS = [
  'rod.deadPoint',
  'rod.buckling',
  'rod.strength',
  'rod.fatigue',
  'rod.stepped',
  'rod.steppedFatigue',
  'rodPin.shear',
  'rodPin.bending',
  'rodPin.bearing',
  ...(['crank', 'rocker'] as const).flatMap((arm) => [`${arm}Pin.shear`, `${arm}Pin.bending`, `${arm}Pin.seat`]),
]

/** Sizes of the linkage and of the pins of its rod, mm. */
function rodSizes(facts: Facts) {
  const linkage = fields.kneeLinkage(facts.leg.x)
  return {
    crank: 1000 * linkage.crank,
    rocker: 1000 * linkage.rocker,
    rod: 1000 * linkage.coupler,
    rockerAngle: linkage.rockerAngleAtStraightKnee,
    link: linkSizes(facts).upper,
    diameter: facts.mm(fields.diameter),
    material: facts.named('material', fields.material),
    pin: {
      diameter: facts.mm(fields.pin.diameter),
      cheek: facts.mm(fields.pin.cheekThickness),
      gap: facts.mm(fields.pin.gap),
      lug: facts.mm(fields.pin.lugThickness),
    },
  }
}

/** The rod that drives the knee from a drum on the hip axis: crank, rod and rocker at both ends of the knee, and a pin of the rod in section. */
export function rodDriveDrawing(facts: Facts): Drawing | undefined {
  if (!hasRod(facts)) return undefined
  const s = rodSizes(facts)
  const worst = facts.worst(CHECKS)
  const figure = new Figure({
    id: 'rod-drive',
    title: 'Rod that drives the knee, seen from the robot’s left',
    ...answerOf('Rod of the knee', worst),
  })
  const knee = { joint: 'knee' }
  const [low, high] = [facts.get(from, knee), facts.get(to, knee)]
  figure.view(linkageView(facts, [low, (low + high) / 2, high], s.link))
  figure.text('Hip straight down. Heavy: the knee in mid travel; dash-two-dots: its ends. Crank and drum turn together on the hip axis.')
  const plainEnds = endsOnPlainPins(facts)
  if (plainEnds.length > 0) {
    figure.view(pinSection(s.pin, s.diameter))
    figure.text(
      `${plainEnds.length === 2 ? 'Each end' : `The ${plainEnds[0]} end`} of the rod: an eye of ${s.material} between two cheeks. Cheeks, crank and rocker are drawn without their own sizes and are not checked.`,
    )
  }
  if (facts.get(fields.onBearings) !== undefined)
    figure.text('Both ends of the rod turn on ball bearings, which have drawings of their own.')
  figure.text(planeText(1000 * facts.get(fields.planeOffset)))
  const force = worst === undefined ? undefined : facts.tried(stride, { ...facts.case(worst.case) })
  const max = force === undefined ? 0 : Math.max(force.rodPull, force.rodPush)
  if (max > 0 && plainEnds.length > 0) momentLine(figure, { ...s.pin, force: max })
  if (force !== undefined && worst !== undefined)
    figure.text(`${worst.caseTitle}: the rod is pulled by ${plain(force.rodPull, 3)} N and pushed by ${plain(force.rodPush, 3)} N at most.`)
  figure.results(resultLines(facts, CHECKS))
  figure
    .say(
      `A crank of ${plain(s.crank)} mm on the hip axis moves a rocker of ${plain(s.rocker)} mm on the lower link through a rod of ${plain(s.rod)} mm.`,
      ...facts.checks(CHECKS).slice(0, 1).map(resultSentence),
    )
    .rows(
      length('crank', s.crank),
      length('rocker', s.rocker),
      length('rod between its pins', s.rod),
      length('upper link, from hip to knee', s.link),
      angle('rocker from the line hip to knee, knee straight', s.rockerAngle),
      length('diameter of the rod', s.diameter),
      word('material of the rod', s.material),
      length('pin diameter', s.pin.diameter, 'standard'),
      length('thickness of the eye', s.pin.lug),
      length('thickness of a cheek', s.pin.cheek),
      length('side gap', s.pin.gap),
      ...[low, high].flatMap((at) => poseRows(facts, at)),
      ...(force === undefined
        ? []
        : [amount('largest pull in the rod', force.rodPull, 'N'), amount('largest push in the rod', force.rodPush, 'N')]),
      ...facts.checks(CHECKS).map(checked),
    )
  return figure.done()
}

/** Angles of crank and rod at an angle of the knee; none where the linkage does not reach it. */
function poseRows(facts: Facts, at: number) {
  const pose = rodPose(facts, { hip: 0, knee: at })
  if (pose === undefined) return []
  const where = `knee at ${plain(degrees(at), 3)}°`
  return [
    angle(`crank from straight down, ${where}`, pose.crankAngle, 'geometry'),
    angle(`between rod and rocker, ${where}`, pose.transmissionAngle, 'geometry'),
  ]
}

/** Ends of the rod whose eye turns on a pin between two cheeks: the others have a ball bearing, which has its own drawing, or one cheek. */
function endsOnPlainPins({ leg: { x } }: Facts): string[] {
  const pivots = fields.rodOf(x)?.pivots
  return (['crank', 'rocker'] as const).filter((arm) => pivots?.[arm]?.bearing === undefined && pivots?.[arm]?.cheeks !== 1)
}

/** Where the rod runs beside the links, and what its couple loads. */
const planeText = (beside: number): string =>
  beside === 0
    ? 'Rod, crank and rocker lie in the plane of the links: the force of the rod makes no couple out of that plane.'
    : `The rod lies ${plain(Math.abs(beside))} mm beside the plane of the links: its force tilts the knee on its pin, bends the upper link to the side, and the hip shaft between crank and link.`

/** Crank, rod and rocker at several angles of the knee, the second in heavy lines. */
function linkageView(facts: Facts, angles: readonly number[], link: number): View {
  const view = new View('Crank, rod and rocker from the robot’s left', { height: 360 })
  const knee: Point = [0, -link]
  for (const [i, at] of angles.entries()) {
    const pose = rodPose(facts, { hip: 0, knee: at })
    if (pose === undefined) continue
    const { crankPin, rockerPin } = pose
    const now = i === 1
    view.line([[0, 0], crankPin, rockerPin, knee], now ? 'thick' : 'other')
    const { foot } = pointsOf(linkSizes(facts), { hip: 0, knee: at })
    const shank = Math.atan2(foot[1] - knee[1], foot[0] - knee[0])
    view.line([knee, polar(knee, link * 0.3, shank)], now ? 'thin' : 'other')
    if (!now) {
      view.label(crankPin, `knee at ${plain(degrees(at), 3)}°`)
      continue
    }
    for (const centre of [crankPin, rockerPin]) view.circle({ centre, radius: link / 50 }, 'thick', 'paper')
    const part = (share: number): Point => [
      crankPin[0] + share * (rockerPin[0] - crankPin[0]),
      crankPin[1] + share * (rockerPin[1] - crankPin[1]),
    ]
    view
      .label(part(0.4), `rod ${plain(1000 * fields.kneeLinkage(facts.leg.x).coupler)}`)
      .label([crankPin[0] / 2, crankPin[1] / 2], `crank ${plain(1000 * fields.kneeLinkage(facts.leg.x).crank)}`)
      .label([(rockerPin[0] + knee[0]) / 2, (rockerPin[1] + knee[1]) / 2], `rocker ${plain(1000 * fields.kneeLinkage(facts.leg.x).rocker)}`)
  }
  for (const centre of [[0, 0], knee] as const) view.circle({ centre, radius: link / 35 }, 'thick', 'paper')
  view.line([[0, 0], knee], 'axis')
  return view.dimension([0, 0], knee, 'left').label([0, 0], 'hip axis, drum').label(knee, 'knee')
}

/** A pin of the rod along its axis: eye between two cheeks. */
function pinSection({ diameter, cheek, gap, lug }: { diameter: number; cheek: number; gap: number; lug: number }, rod: number): View {
  const view = new View('Pin of the rod, section along the pin', { height: 190 })
  const [near, half] = [lug / 2 + gap, Math.max(1.2 * diameter, rod)]
  for (const [a, b, line] of [
    [-lug / 2, lug / 2, 'thin'],
    [near, near + cheek, 'thin'],
    [-near - cheek, -near, 'thin'],
  ] as const)
    for (const [low, high] of [
      [diameter / 2, half],
      [-half, -diameter / 2],
    ] as const)
      view.area(rectangle(a, low, b, high), { line, hatch: layers('upright', a === -lug / 2 ? 9 : 5) })
  view.area(rectangle(-near - cheek, -diameter / 2, near + cheek, diameter / 2), { fill: 'paper' })
  view.line(
    [
      [-near - cheek - 2, 0],
      [near + cheek + 2, 0],
    ],
    'axis',
  )
  return view
    .dimension([-near - cheek, half], [-near, half], 'above')
    .dimension([-lug / 2, half], [lug / 2, half], 'above')
    .dimension([near, half], [near + cheek, half], 'above')
    .dimension([-near - cheek, -half], [near + cheek, -half], 'below')
    .label([near + cheek * 0.6, diameter / 4], `pin Ø${plain(diameter)}`, { end: 'dot' })
    .label([lug / 4, half * 0.8], 'eye of the rod', { end: 'dot' })
    .label([near + cheek * 0.6, half * 0.6], 'cheek', { end: 'dot' })
    .label([near - gap / 2, -half * 0.9], `gap ${plain(gap)}`)
}
