import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { bearingsOf, drivenBy, drivenJoints, driveOf, JOINTS, type Joint, jointOf, jointWords, shaftOf } from '../numbers.js'
import { sheetMass } from '../parts/links/values.js'
import { ringMass } from '../parts/transmission/cord/drum-mass.js'
import { isPrinted } from '../printed.js'
import { listed } from '../report/amounts.js'
import { beltOrCordOf, SECOND_STAGE } from '../second-stage.js'
import { beltSetting } from './belt-setting.js'
import { inMillimetres as mm } from './bench.js'

/** A part that is made, not bought. @internal */
export interface MadePart {
  readonly material: string
  readonly part: string
  /** How many of it a leg has. */
  readonly count: number
  /** Mass of one, kg, a shape of known sizes counted as solid; absent where the leg does not know the shape. */
  readonly mass?: number | undefined
  /** Finished size of the metal that it is cut from; absent likewise. */
  readonly stock?: string | undefined
  /** The link that it turns with, whose mass in the document includes it; absent where there is none. */
  readonly inLink?: string | undefined
}

/** Density of a material by its name, kg/m³; absent where it is not known. */
type Densities = (material: string) => number | undefined

/** Material and process of the parts of a leg. */
interface Shop {
  readonly leg: LegModel
  readonly x: LegNumbers
  readonly of: Densities
}

const SHAPES = {
  sheet: ({ thickness, width, height }: Record<'thickness' | 'width' | 'height', number>) => ({
    mass: (density: number) => sheetMass.si({ width, height, thickness, density }),
    stock: `sheet of ${mm(thickness)}, ${mm(width)} by ${mm(height)}`,
  }),
  round: ({ radius, length, bore }: Record<'radius' | 'length' | 'bore', number>) => ({
    mass: (density: number) => ringMass.si({ density, length, radius, bore }),
    stock: `round bar of ${mm(2 * radius)}, ${mm(length)} long`,
  }),
}
type Shape = ReturnType<(typeof SHAPES)['sheet']>

function made({ of }: Shop, part: string, material: string, shape: Shape, count = 1): MadePart {
  const density = of(material)
  return { material, part, count, mass: density === undefined ? undefined : shape.mass(density), stock: shape.stock }
}

/** The links: their mass is that of the document. */
const links = ({ x }: Shop): MadePart[] =>
  (['upper', 'lower'] as const).map((name): MadePart => {
    const { material, mass, length, section } = x.links[name]
    const { box, wall } = section
    const stock = box && `tube of ${mm(box.width)} by ${mm(box.depth)}, wall ${mm(wall)}, ${mm(length)} and what both eyes take`
    return { material, part: `${name} link`, count: 1, mass, stock }
  })

/** Both bosses of each joint that has some. */
const bosses = (shop: Shop): MadePart[] =>
  JOINTS.flatMap((joint) => {
    const boss = shop.x.bosses[shop.x.joints[joint].boss ?? '']
    if (boss === undefined) return []
    const shape = SHAPES.round({ radius: boss.outerDiameter / 2, length: boss.engagement, bore: boss.hole })
    return [made(shop, `bosses of the ${joint}`, boss.material, shape, 2)]
  })

/** Each plate and its sink once, with the joints whose motors it carries. */
function plates(shop: Shop): MadePart[] {
  const { x } = shop
  const plateOf = (joint: (typeof all)[number]) => jointOf(x, joint).plate ?? ''
  const all = drivenJoints(x)
  return [...new Set(all.map(plateOf))].flatMap((name) => {
    const plate = x.plates[name]
    if (plate === undefined) return []
    const whose = listed(all.filter((joint) => plateOf(joint) === name).map(jointWords))
    const { sink } = plate
    return [
      made(shop, `motor plate of the ${whose}`, plate.material, SHAPES.sheet({ ...plate.size, thickness: plate.thickness })),
      ...(sink === undefined
        ? []
        : [
            made(shop, `sink of the motor plate of the ${whose}`, sink.material, SHAPES.sheet({ ...sink.size, thickness: sink.thickness })),
          ]),
    ]
  })
}

/** The link that the drum of a joint turns with: none at the sideways hip, nor of a knee that is driven through the hip. */
const linkOf = (x: LegNumbers, joint: Joint): string | undefined =>
  joint === 'hip' ? 'upper link' : joint === 'knee' && x.joints.knee.through === undefined ? 'lower link' : undefined

/** Drums of the cords, and pulleys that are printed: those of metal are bought. */
function turned(shop: Shop): MadePart[] {
  const { leg, x } = shop
  const drum = (joint: Joint, part: string, inLink?: string): MadePart => {
    const { material, length, bore } = driveOf(x, joint, 'cord').drum
    return { ...made(shop, part, material, SHAPES.round({ radius: leg.drives[joint].drumRadius, length, bore })), inLink }
  }
  const pulley = (part: string, material: string, radius: number, length: number) =>
    isPrinted(x, material) ? [made(shop, part, material, SHAPES.round({ radius, length, bore: 0 }))] : []
  const through = beltOrCordOf(x)
  const second = SECOND_STAGE as Joint
  const along = () => {
    if (through?.kind === 'cord') {
      const { hipDrum, kneeDrum } = through
      const onHip = SHAPES.round({ radius: leg.drives[second].pinionRadius, length: hipDrum.length, bore: 0 })
      return [
        drum(second, 'drum of the cord along the upper link'),
        made(shop, 'drum of that cord on the hip axis', hipDrum.material ?? kneeDrum.material, onHip),
      ]
    }
    if (through === undefined) return []
    const { belt, small, large } = beltSetting(leg, second)
    return [small, large].flatMap((diameter) => pulley('pulley along the upper link', through.material, diameter / 2, belt.width))
  }
  return [
    ...(drivenBy(x, 'cord') as Joint[]).map((joint) => drum(joint, `drum of the ${jointWords(joint)}`, linkOf(x, joint))),
    ...drivenBy(x, 'belt').flatMap((joint) => {
      const { belt, large } = beltSetting(leg, joint)
      return pulley(`large pulley of the ${jointWords(joint)}`, driveOf(x, joint, 'belt').material, large / 2, belt.width)
    }),
    ...along(),
  ]
}

/** End cap and housing of the hip shaft. */
function shaft(shop: Shop): MadePart[] {
  const { x } = shop
  if (x.joints.hip.shaft === undefined) return []
  const { capMaterial, capThickness, capSpan } = shaftOf(x)
  const cap = SHAPES.sheet({ width: capSpan, height: capSpan, thickness: capThickness })
  return [made(shop, 'end cap of the hip shaft', capMaterial, cap), { material: bearingsOf(x).seatMaterial, part: 'hip housing', count: 1 }]
}

/** Toes or pad of the foot. */
function foot(shop: Shop): MadePart[] {
  const { foot: one } = shop.x
  if (one?.kind !== 'toes') return []
  return [made(shop, 'toes', one.material, SHAPES.sheet({ width: one.width, height: one.length, thickness: one.thickness }), one.count)]
}

/** Parts that are made, not bought, each with its material; a rod, gears and pulleys of metal have lines of their own. @internal */
export const madeParts = (leg: LegModel, of: Densities): readonly MadePart[] => {
  const shop = { leg, x: leg.x, of }
  return [links, bosses, plates, turned, shaft, foot].flatMap((parts) => parts(shop))
}
