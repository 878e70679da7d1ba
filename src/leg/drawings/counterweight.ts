import { bar, type Drawing, Figure, type Point, plain, rectangle, View } from '../../drawing/index.js'
import { requireProperty, steel88 } from '../../materials/index.js'
import * as link from '../parts/links/fields.js'
import { body } from '../parts/links/values.js'
import type { Facts } from './facts.js'
import type { LegValues } from './leg-values.js'
import { linkSizes } from './pose.js'
import { amount, length, METAL } from './words.js'

/** A counterweight of a link: its mass, how far beyond the upper joint it is, and a steel disc of that mass as wide as the link, mm. */
export interface Counterweight {
  readonly mass: number
  readonly beyond: number
  readonly radius: number
  readonly width: number
}

/** The counterweight of a link; absent where it has none. */
export function counterweightOf(facts: LegValues, of: 'upper' | 'lower'): Counterweight | undefined {
  const [mass, beyond] = [facts.get(link.counterweight, { link: of }), facts.get(link.counterweightBeyond, { link: of })]
  if (mass === undefined || beyond === undefined) return undefined
  const { tube } = facts.leg.x.links[of].section
  const width = tube ?? facts.get(link.width, { link: of })
  // The document gives no shape: a disc of steel.
  const density = requireProperty('leg', steel88, 'density').si
  return { mass, beyond: 1000 * beyond, radius: 1000 * Math.sqrt(mass / (Math.PI * density * width)), width: 1000 * width }
}

/** A link with its counterweight, from the side and from the front. */
export function counterweightDrawing(facts: Facts, of: 'upper' | 'lower'): Drawing | undefined {
  const s = counterweightOf(facts, of)
  if (s === undefined) return undefined
  const sizes = linkSizes(facts)
  const [long, depth] = of === 'upper' ? [sizes.upper, sizes.upperDepth] : [sizes.lower, sizes.lowerDepth]
  const centre = 1000 * facts.get(body, { link: of }).centre
  const name = `Counterweight of the ${of} link`
  const figure = new Figure({ id: `counterweight-${of}`, title: `${name}, seen from the robot’s left`, answer: name })
  figure.view(side(s, long, depth, centre))
  figure.view(across(s))
  const disc = `Only mass and distance are given. A steel disc of ${plain(s.width, 3)} mm, as wide as the link, would have Ø${plain(2 * s.radius, 3)} mm.`
  figure.text(`Thin outline: assumed. ${disc}`)
  figure
    .say(
      `${plain(s.mass, 4)} kg stand ${plain(s.beyond, 4)} mm beyond the upper joint, on the side away from the link.`,
      disc,
      `Together they have their centre of mass ${plain(Math.abs(centre), 4)} mm ${centre < 0 ? 'beyond' : 'below'} the joint.`,
    )
    .rows(
      amount('mass of the counterweight', s.mass, 'kg', 'document'),
      length('centre of the counterweight beyond the joint', s.beyond),
      length('link, from joint to joint or foot', long),
      length('diameter of a steel disc of that mass', 2 * s.radius, 'assumed'),
      length('width of that disc', s.width, 'assumed'),
      length('centre of mass of link and counterweight below the joint', centre, 'result'),
    )
  return figure.done()
}

function side({ beyond, radius }: Counterweight, long: number, depth: number, centre: number): View {
  const view = new View('From the robot’s left, the link straight down', { height: 330 })
  const [joint, weight, far]: Point[] = [
    [0, 0],
    [0, beyond],
    [0, -long],
  ] as [Point, Point, Point]
  view.circle({ centre: weight!, radius }, 'thin', 'tone')
  view.area(bar({ centre: joint!, radius: depth / 2 }, { centre: far!, radius: depth / 3 }), { fill: 'tone' })
  view.area(rectangle(-depth / 4, 0, depth / 4, beyond), { line: 'thin' })
  view.circle({ centre: joint!, radius: depth / 7 }, 'thick', 'paper').circle({ centre: far!, radius: depth / 7 }, 'thick', 'paper')
  view.centre({ centre: weight!, radius }, 1.15).circle({ centre: [0, -centre], radius: depth / 10 }, 'thin', 'solid')
  return view
    .dimension(joint!, weight!, 'left')
    .dimension(joint!, far!, 'left')
    .label([radius * 0.7, beyond + radius * 0.7], 'counterweight')
    .label(joint!, 'upper joint')
    .label([0, -centre], 'centre of mass of both', { end: 'dot' })
}

function across({ radius, width }: Counterweight): View {
  const view = new View('The disc in section through its axis', { height: 150 })
  view.area(rectangle(-width / 2, -radius, width / 2, radius), { line: 'thin', hatch: METAL })
  view.line(
    [
      [-width / 2 - 3, 0],
      [width / 2 + 3, 0],
    ],
    'axis',
  )
  return view
    .dimension([-width / 2, -radius], [-width / 2, radius], 'left', undefined, 'Ø')
    .dimension([-width / 2, -radius], [width / 2, -radius], 'below')
    .label([width / 4, radius / 2], 'steel, assumed', { end: 'dot' })
}
