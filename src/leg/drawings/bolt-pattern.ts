import { type Drawing, Figure, plain, polar, rectangle, View } from '../../drawing/index.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import * as bolts from '../parts/bolts/fields.js'
import { motorShear, stackPulls, stackShear } from '../parts/bolts/loads.js'
import { footForce } from '../parts/motion/values.js'
import { listed } from '../report/amounts.js'
import { boltCircle, drawHoles, holeWords } from './bolt-circle.js'
import { type Facts, resultSentence } from './facts.js'
import { motorSizes } from './motor.js'
import { hasMotor, isPattern, motorGroup, stackGroup } from './present.js'
import { amount, answerOf, checked, length, resultLines, word } from './words.js'

const STACK = ['stackBolt.separation', 'stackBolt.overload', 'stackBolt.slip']
const MOTOR = ['motorBolt.slip', 'motorBolt.headPressure']
const MAX_LOAD_LENGTH = 60

/** The bolts of the stack from the side: distances from the tipping edge, and the pull on each. */
export function stackPatternDrawing(facts: Facts): Drawing | undefined {
  const group = stackGroup(facts)
  if (group === undefined || !isPattern(facts, group, 'rows')) return undefined
  const worst = facts.worst(STACK)
  const distances = facts.get(bolts.distances, { boltGroup: group }).map((x) => 1000 * x)
  const arm = facts.mm(bolts.leverArm, { boltGroup: group })
  const diameter = 1000 * facts.get(bolts.thread, { boltGroup: group }).diameter
  const at = worst === undefined ? undefined : facts.case(worst.case)
  const found = at === undefined ? undefined : facts.tried(stackPulls, { ...at, boltGroup: group })
  const force = at === undefined ? undefined : facts.tried(footForce, at)
  const figure = new Figure({
    id: 'bolt-pattern-stack',
    title: 'Bolts of the stack from the side, with the pull on each',
    ...answerOf('Bolt pattern of the stack', worst),
  })
  const rows = rowsOf(distances, found?.tensions ?? [])
  figure.view(bracketView({ rows, arm, diameter, force: force ?? 0 }))
  figure.text(
    `${worst === undefined ? '' : `${worst.caseTitle}. `}The bracket turns about its edge as a rigid body: the pull on a bolt grows with its distance. The side-by-side places of the bolts are not given.`,
  )
  const shear = at === undefined ? undefined : facts.tried(stackShear, { ...at, boltGroup: group })
  if (shear !== undefined) figure.text(`Across each bolt ${plain(shear, 3)} N, which friction has to hold.`)
  figure.results(resultLines(facts, STACK))
  figure
    .say(
      `The bolts carry ${listed(rows.map(({ count, pull, distance }) => `${count} × ${plain(pull, 3)} N at ${plain(distance)} mm`))} from the edge.`,
      ...facts.checks(STACK).slice(0, 1).map(resultSentence),
    )
    .rows(
      ...distances.map((d, i) => length(`bolt ${i + 1}, distance from the edge`, d)),
      ...(found?.tensions ?? []).map((pull, i) => amount(`bolt ${i + 1}, pull`, pull, 'N')),
      length('lever arm to the plane of the leg', arm),
      ...(shear === undefined ? [] : [amount('force across each bolt', shear, 'N')]),
      ...facts.checks(STACK).map(checked),
    )
  return figure.done()
}

interface BoltRow {
  readonly distance: number
  readonly count: number
  readonly pull: number
}

/** The bracket on its tipping edge from the side, mm: the pull on each row of bolts, and the force on the foot where there is one. */
function bracketView({
  rows,
  arm,
  diameter,
  force,
}: {
  readonly rows: readonly BoltRow[]
  readonly arm: number
  readonly diameter: number
  readonly force: number
}): View {
  const strongest = Math.max(0, force, ...rows.map(({ pull }) => pull))
  const perUnit = strongest > 0 ? strongest / MAX_LOAD_LENGTH : 1
  const top = Math.max(...rows.map(({ distance }) => distance))
  const [back, head] = [-Math.max(6, arm * 0.15), diameter * 0.7]
  const view = new View('Bracket from the side, its tipping edge below', { height: 230 })
  view.area(rectangle(back, 0, 0, top * 1.15), { fill: 'tone', line: 'thin' })
  view
    .line(
      [
        [0, 0],
        [arm, 0],
      ],
      'axis',
    )
    .line(
      [
        [arm, -top * 0.1],
        [arm, top * 1.1],
      ],
      'axis',
    )
  for (const { distance, count, pull } of rows) {
    view.area(rectangle(back, distance - diameter / 2, head, distance + diameter / 2), { fill: 'paper' })
    if (pull > 0) view.arrow([head, distance], Math.PI, pull, perUnit)
    view.label([head, distance + diameter / 2], `${count} × ${pull > 0 ? `${plain(pull, 3)} N` : 'bolt'}`, {
      ink: pull > 0 ? 'force' : 'ink',
    })
    view.dimension([back, 0], [back, distance], 'left')
  }
  if (force > 0) view.arrow([arm, 0], Math.PI / 2, force, perUnit).label([arm, 0], `foot ${plain(force, 3)} N`, { ink: 'force' })
  return view.dimension([0, 0], [arm, 0], 'below').label([0, 0], 'tipping edge')
}

/** Bolts at one distance. */
function rowsOf(distances: readonly number[], tensions: ArrayLike<number>): BoltRow[] {
  const rows = new Map<number, BoltRow>()
  distances.forEach((distance, i) => {
    const row = rows.get(distance) ?? { distance, count: 0, pull: tensions[i] ?? 0 }
    rows.set(distance, { ...row, count: row.count + 1 })
  })
  return [...rows.values()]
}

/** Holes of a plate on their circle, with the force across each bolt where it is known. */
function holesSentence({ count, hole, sleeve, circle }: NonNullable<ReturnType<typeof boltCircle>>, shear: number | undefined): string {
  const round = sleeve === undefined ? '' : `, for sleeves with a bore of ${plain(hole)} mm,`
  const force = shear === undefined ? '' : `; ${plain(shear, 3)} N across each bolt`
  return `${count} holes of ${plain(sleeve ?? hole)} mm${round} on a circle of ${plain(circle)} mm${force}.`
}

/** The bolt circle of a motor from the front, with the force across each bolt; a template for the holes. */
export function motorPatternDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  const group = motorGroup(facts, joint)
  const holes = boltCircle(facts, joint)
  if (group === undefined || holes === undefined || !hasMotor(facts, joint)) return undefined
  const at = { boltGroup: group }
  // The forces are those of the case that is hardest for them, whatever check of the bolts is nearest to its limit.
  const hardest = facts.worst(['motorBolt.slip'], joint)
  const { circle, count, hole, sleeve, place } = holes
  const s = motorSizes(facts, joint)
  const shear = hardest === undefined ? undefined : facts.tried(motorShear, { ...at, ...facts.case(hardest.case), joint })
  const figure = new Figure({
    id: `bolt-pattern-motor-${joint}`,
    title: `Bolt circle of the motor of the ${jointWords(joint)}, from the front`,
    ...answerOf(`Bolt circle of the ${jointWords(joint)}’s motor`, facts.worst(MOTOR, joint)),
  })
  const view = new View('From the side of the motor', { height: 260, template: true })
  view.circle({ centre: [0, 0], radius: s.ringOuter / 2 })
  if (s.ringInner > 0) view.circle({ centre: [0, 0], radius: s.ringInner / 2 })
  view.centre({ centre: [0, 0], radius: s.ringOuter / 2 }, 1.12)
  drawHoles(view, holes)
  if (shear !== undefined && shear > 0) {
    const perUnit = shear / 26
    for (let i = 0; i < count; i++) {
      const tip = place(i)
      view.arrow(tip, Math.atan2(tip[1], tip[0]) + Math.PI / 2, shear, perUnit)
    }
    // The arrow nearest to the labels, so that no leader crosses the circle.
    const nearest = Array.from({ length: count }, (_, i) => place(i)).reduce((best, one) => (one[0] > best[0] + 1e-6 ? one : best))
    view.label(nearest, `${plain(shear, 3)} N across each`, { ink: 'force' })
  }
  view
    .dimension([-circle / 2, 0], [circle / 2, 0], 'below', undefined, 'Ø')
    .label(polar(place(count > 1 ? 1 : 0), (sleeve ?? hole) / 2, -0.4), holeWords(holes, plain))
    .label(polar([0, 0], s.ringOuter / 2, 0.5), `ring Ø${plain(s.ringOuter)}`)
    .label(polar([0, 0], s.ringInner / 2, -0.5), `opening Ø${plain(s.ringInner)}`)
  figure.view(view)
  figure.text(
    `${hardest === undefined ? '' : `${hardest.caseTitle}. `}Torque and pull of the drive act together on every bolt; the hardest bolt is drawn along the circle. The turn of the circle is assumed.`,
  )
  figure.results(resultLines(facts, MOTOR, joint))
  figure
    .say(holesSentence(holes, shear), ...facts.checks(MOTOR, joint).slice(0, 1).map(resultSentence))
    .rows(
      length('bolt circle', circle),
      amount('bolts', count, '', 'document'),
      length('clearance hole', hole, 'standard'),
      ...(sleeve === undefined ? [] : [length('hole of plate and sink round a sleeve', sleeve, 'assumed')]),
      length('ring, outer diameter', s.ringOuter),
      length('ring, inner diameter', s.ringInner),
      ...(shear === undefined
        ? [word('force across each bolt', 'not calculated', 'result')]
        : [amount('force across each bolt', shear, 'N')]),
      ...facts.checks(MOTOR, joint).map(checked),
    )
  return figure.done()
}
