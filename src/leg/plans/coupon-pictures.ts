import { type Drawing, drawingSvg, Figure, plain, polar, rectangle, View } from '../../drawing/index.js'
import { length, word } from '../drawings/words.js'
import type { CouponOf } from '../learning/coupon-logs.js'
import type { LegModel } from '../leg-model.js'
import { bossAt, driveOf, type Joint, motorOf, partOf, plateOf } from '../numbers.js'
import type { Picture } from '../report/blocks.js'
import type { CouponSheet } from './coupon-kit.js'
import { BAR, HOLES } from './coupon-sizes.js'

const MM = 1000
/** A line along the middle. */
const plumb = (from: number, to: number): [number, number][] => [from, to].map((y) => [0, y])

/** A coupon as a dimensioned drawing. */
export function couponPicture(bench: LegModel, { coupon, what, how, expect }: CouponSheet): Picture {
  const id = coupon.log.replaceAll(/[^A-Za-z0-9]+/g, '-')
  const figure = new Figure({ id, title: `Coupon: ${what}`, answer: `For the log "${coupon.log}"` })
  drawInto(figure, bench, coupon)
  const drawing: Drawing = figure.text(`Expect: ${expect}.`).say(how).done()
  const { title, answer, description, table } = drawing
  return { id, title, answer, description, svg: drawingSvg(drawing, { style: 'page' }), table }
}

function drawInto(figure: Figure, bench: LegModel, { id, of }: CouponOf): Figure {
  switch (id) {
    case 'couponHoles':
      return holes(figure, bench, of as Joint)
    case 'couponBars':
      return bars(figure)
    case 'couponSplit':
      return boss(figure, bench, of as Joint)
    case 'couponDrum':
      return drum(figure, bench, of as Joint)
    case 'couponSandwich':
      return sandwich(figure, bench, of)
    case 'couponPlate':
      return plate(figure, bench, of as Joint)
  }
}

function holes(figure: Figure, bench: LegModel, joint: Joint): Figure {
  const { hole, outerDiameter, engagement } = bossAt(bench.x, joint)
  const [pitch, step] = [MM * outerDiameter, MM * HOLES.step]
  const diameter = (i: number) => MM * hole + (i - (HOLES.count - 1) / 2) * step
  const view = new View('From above, two rows of five', { height: 190, template: true })
  view.area(rectangle(0, 0, 5 * pitch, 2 * pitch), { fill: 'tone' })
  for (let i = 0; i < HOLES.count; i++) {
    const at = [((i % 5) + 0.5) * pitch, (i < 5 ? 1.5 : 0.5) * pitch] as const
    view.circle({ centre: at, radius: diameter(i) / 2 }, 'thick', 'paper')
  }
  view
    .dimension([0, 0], [5 * pitch, 0], 'below')
    .dimension([0, 0], [0, 2 * pitch], 'left')
    .dimension([0.5 * pitch, 2 * pitch], [1.5 * pitch, 2 * pitch], 'above')
    .label([4.5 * pitch, 1.5 * pitch], `upper row Ø${plain(diameter(0), 4)} to Ø${plain(diameter(4), 4)}`)
    .label([4.5 * pitch, 0.5 * pitch], `lower row Ø${plain(diameter(5), 4)} to Ø${plain(diameter(9), 4)}`)
  return figure
    .view(view)
    .text(`${plain(MM * engagement)} mm thick. Each hole is ${plain(step)} mm wider than the one to its left; the lower row goes on.`)
    .rows(
      length('first hole', diameter(0)),
      length('step', step),
      length('last hole', diameter(9)),
      length('distance of the holes', pitch),
      length('thickness', MM * engagement),
    )
}

function bars(figure: Figure): Figure {
  const [long, width, high, span] = [MM * BAR.length, MM * BAR.width, MM * BAR.height, MM * BAR.span]
  const side = new View('Flat bar over its rods, seen from the side; a hook with a bag of water in the middle', { height: 150 })
  side.area(rectangle(-long / 2, 0, long / 2, high), { hatch: { angle: 0, spacing: 4 } })
  for (const sign of [-1, 1]) side.circle({ centre: [(sign * span) / 2, -3], radius: 3 }, 'thick', 'solid')
  side.line(plumb(high, -14), 'force')
  side
    .dimension([-span / 2, -3], [span / 2, -3], 'below')
    .dimension([-long / 2, high], [long / 2, high], 'above')
    .dimension([-long / 2, 0], [-long / 2, high], 'left')
    .label([long / 2, high / 2], 'layers lie along it')
    .label([0, -12], 'hook and bag')
  const upright = new View('Upright bar as printed: standing, layers across it', { height: 200 })
  upright.area(rectangle(-width / 2, 0, width / 2, long), { hatch: { angle: 0, spacing: 4 } })
  upright
    .dimension([-width / 2, 0], [width / 2, 0], 'below')
    .dimension([-width / 2, 0], [-width / 2, long], 'left')
    .label([width / 2, long / 2], 'layers lie across it; with a brim')
  return figure.view(side).view(upright).rows(length('length', long), length('width', width), length('height', high), length('span', span))
}

function boss(figure: Figure, bench: LegModel, joint: Joint): Figure {
  const { hole, outerDiameter, engagement, axis } = bossAt(bench.x, joint)
  const [outer, inner, deep] = [(MM * outerDiameter) / 2, (MM * hole) / 2, MM * engagement]
  const view = new View('Section along the hole', { height: 190, template: true })
  for (const sign of [-1, 1] as const)
    view.area(rectangle(sign * inner, 0, sign * outer, deep), { hatch: { angle: axis === 'alongLayers' ? 90 : 0, spacing: 4 } })
  view
    .line(plumb(-3, deep + 3), 'axis')
    .dimension([-outer, deep], [outer, deep], 'above', undefined, 'Ø')
    .dimension([-inner, 0], [inner, 0], 'below', undefined, 'Ø')
    .dimension([-outer, 0], [-outer, deep], 'left')
    .label([outer, deep / 2], axis === 'alongLayers' ? 'layers along the hole: they split apart' : 'layers across the hole')
  const min = MM * (hole - 10 * HOLES.step)
  return figure
    .view(view)
    .text(`Six of them: holes of ${plain(2 * inner, 4)} mm and smaller, down to ${plain(min, 4)} mm.`)
    .rows(
      length('outer diameter', 2 * outer),
      length('largest hole', 2 * inner),
      length('smallest hole', min),
      length('depth', deep),
      word('layers', axis === 'alongLayers' ? 'along the hole' : 'across the hole'),
    )
}

function drum(figure: Figure, bench: LegModel, joint: Joint): Figure {
  const { drum: body } = driveOf(bench.x, joint, 'cord')
  const cord = MM * bench.drives[joint].cord.diameter
  const radius = MM * bench.drives[joint].drumRadius
  const view = new View('From the side, half a turn of wrap', { height: 250 })
  const arc = Array.from({ length: 61 }, (_, i) => polar([0, 0], radius - cord / 2, (Math.PI * i) / 60))
  view.area([...arc, [-radius + cord / 2, -12], [radius - cord / 2, -12]], { fill: 'tone' })
  const over = Array.from({ length: 61 }, (_, i) => polar([0, 0], radius, (Math.PI * i) / 60))
  view.line([[radius, -0.9 * radius], ...over, [-radius, -0.9 * radius]], 'move')
  view
    .dimension([-radius + cord / 2, -12], [radius - cord / 2, -12], 'below', undefined, 'Ø')
    .label([radius, -0.7 * radius], 'luggage scale, pull until it creeps')
    .label([-radius, -0.7 * radius], 'half a litre of water', { side: 'left' })
    .label([0, -8], 'clamp here')
  const wide = MM * body.length
  return figure
    .view(view)
    .text(`${plain(wide)} mm wide, groove as on the drum (pitch ${plain(MM * body.groovePitch)} mm), cord of ${plain(cord)} mm.`)
    .rows(
      length('groove diameter', 2 * radius - cord),
      length('width', wide),
      length('groove pitch', MM * body.groovePitch),
      length('cord', cord),
    )
}

function sandwich(figure: Figure, bench: LegModel, group: string): Figure {
  const { stack, thread } = partOf(bench.x.bolts, group, 'group of bolts')
  const half = 12.5
  const view = new View('Section through the bolt', { height: 210 })
  let y = 0
  for (const [i, { material, thickness }] of stack.entries()) {
    const top = y + MM * thickness
    view.area(rectangle(-half, y, half, top), { hatch: { angle: i % 2 === 0 ? 45 : -45, spacing: 5 } })
    view.dimension([-half, y], [-half, top], 'left').label([half, (y + top) / 2], material)
    y = top
  }
  const bolt = Number(/\d+(\.\d+)?/.exec(thread)?.[0] ?? 4) / 2
  view
    .area(rectangle(-bolt, -2.5 * bolt, bolt, y), { fill: 'paper' })
    .area(rectangle(-1.8 * bolt, y, 1.8 * bolt, y + 2 * bolt), { fill: 'tone' })
    .area(rectangle(-1.8 * bolt, -1.8 * bolt, 1.8 * bolt, 0), { fill: 'tone' })
    .dimension([-half, 0], [half, 0], 'below')
    .label([1.8 * bolt, y + bolt], `${thread}, washers and sleeves as in the leg`)
    .label([1.8 * bolt, -bolt], 'nut, held by a spanner')
  return figure
    .view(view)
    .rows(
      length('tile, square', 2 * half),
      ...stack.map(({ material, thickness }) => length(material, MM * thickness)),
      word('bolt', thread),
    )
}

function plate(figure: Figure, bench: LegModel, joint: Joint): Figure {
  const { size, thickness, material } = plateOf(bench.x, joint)
  const { mountInnerDiameter, mountOuterDiameter } = motorOf(bench.x, joint)
  const [width, height] = [MM * size.width, MM * size.height]
  const centre = [0, 0] as const
  const view = new View('From the motor’s side', { height: 260, template: true })
  view.area(rectangle(-width / 2, -height / 2, width / 2, height / 2), { fill: 'tone' })
  view
    .circle({ centre, radius: (MM * mountOuterDiameter) / 2 }, 'thick', 'paper')
    .circle({ centre, radius: (MM * mountInnerDiameter) / 2 }, 'thick', 'tone')
    .centre({ centre, radius: (MM * mountOuterDiameter) / 2 })
    .dimension([-width / 2, -height / 2], [width / 2, -height / 2], 'below')
    .dimension([-width / 2, -height / 2], [-width / 2, height / 2], 'left')
    .label(polar(centre, (MM * mountOuterDiameter) / 2, 0.6), `ring Ø${plain(MM * mountOuterDiameter)}, two power resistors on it`)
    .label(polar(centre, (MM * mountInnerDiameter) / 2, -0.4), `hole Ø${plain(MM * mountInnerDiameter)}`)
  return figure
    .view(view)
    .text(`${plain(MM * thickness)} mm of ${material}, walls and infill of the leg; its sink on the other side, if it has one.`)
    .rows(
      length('width', width),
      length('height', height),
      length('thickness', MM * thickness),
      length('outer diameter of the ring', MM * mountOuterDiameter),
      length('inner diameter of the ring', MM * mountInnerDiameter),
    )
}
