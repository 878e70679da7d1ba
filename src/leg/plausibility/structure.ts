import type { Quantity } from '../../units/index.js'
import { entriesOf, type PartlyLeg } from '../document/partly.js'
import { materialOf } from '../schema/tables.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

type Section = NonNullable<NonNullable<NonNullable<PartlyLeg['links']>['upper']>['section']>

// The ranges are common practice: proportions of small walking robots.

/** Links, plates and foot: masses against sizes, and sizes against each other. */
export const structureRelations: Relations = (leg, add) => {
  for (const one of linksOf(leg)) add(one)
  for (const one of platesOf(leg)) add(one)
  for (const one of footOf(leg)) add(one)
}

/** Cross-section of the wall. */
const areaOf = ({ box, tube, wall }: Section) =>
  tube === undefined ? 2 * si(wall) * (si(box?.width) + si(box?.depth) - 2 * si(wall)) : Math.PI * si(wall) * (si(tube) - si(wall))

function densityOf(name: string | undefined, own: PartlyLeg['materials']): number {
  try {
    return name === undefined ? Number.NaN : (materialOf(name, own as never).density?.si ?? Number.NaN)
  } catch {
    // The name is in the list of mistakes already.
    return Number.NaN
  }
}

function linksOf({ links, materials }: PartlyLeg): Relation[] {
  const legLength = si(links?.upper?.length) + si(links?.lower?.length)
  const relations: Relation[] = []
  if ((links?.hipOffset?.si ?? 0) > 0)
    relations.push(ratio(['links.hipOffset', links?.hipOffset], ['links', legLength], 'the offset of the hip over the leg', [0.02, 0.9]))
  for (const name of ['upper', 'lower'] as const) {
    const link = links?.[name]
    const { section = {}, length, mass, material } = link ?? {}
    const path = `links.${name}`
    const sides = section.tube === undefined ? [section.box?.width, section.box?.depth] : [section.tube]
    const field = section.tube === undefined ? 'box' : 'tube'
    relations.push(
      {
        path: `${path}.mass`,
        value: mass,
        others: [`${path}.length`, `${path}.section`, `${path}.material`],
        what: 'the mass of the link over that of its section along its length',
        is: si(mass) / (densityOf(material, materials) * areaOf(section) * si(length)),
        kind: 'ratio',
        usual: [0.5, 15],
        possible: [0.02, 1000],
      },
      ratio(
        [`${path}.section.wall`, section.wall],
        [`${path}.section.${field}`, Math.min(...sides.map(si))],
        'the wall over the shorter side of its section',
        [0.02, 0.5],
      ),
      ratio(
        [`${path}.section.${field}`, sides.at(-1)],
        [`${path}.length`, length],
        'the depth of the section over the length of the link',
        [0.03, 0.9],
      ),
    )
    if (sides.length === 2)
      relations.push(
        ratio(
          [`${path}.section.box.width`, sides[0]],
          [`${path}.section.box.depth`, sides[1]],
          'the width of the section over its depth',
          [0.15, 5],
        ),
      )
  }
  return relations
}

function platesOf({ plates, joints, motors, links }: PartlyLeg): Relation[] {
  const relations: Relation[] = []
  for (const [name, { size, thickness, sink, mountedOn, distance }] of entriesOf(plates)) {
    if (mountedOn === 'upper' || mountedOn === 'lower')
      relations.push({
        path: `plates.${name}.distance`,
        value: distance,
        others: [`links.${mountedOn}.length`],
        what: 'the distance of the plate from the joint over the length of its link, either way,',
        is: Math.abs(si(distance)) / si(links?.[mountedOn]?.length),
        kind: 'ratio',
        usual: [0, 1.5],
      })
    const joint = (['hip', 'knee', 'sidewaysHip'] as const).find((one) => joints?.[one]?.plate === name)
    const motor = joint === undefined ? undefined : joints?.[joint]?.motor
    const can = [`motors.${motor}.canDiameter`, motor === undefined ? undefined : motors?.[motor]?.canDiameter] as const
    for (const [path, sides, thick] of [
      [`plates.${name}`, size, thickness],
      [`plates.${name}.sink`, sink?.size, sink?.thickness],
    ] as const) {
      const least = Math.min(si(sides?.width), si(sides?.height))
      relations.push(ratio([`${path}.thickness`, thick], [`${path}.size`, least], 'the thickness over the shorter side', [0.008, 0.5]))
      for (const side of ['width', 'height'] as const)
        relations.push(ratio([`${path}.size.${side}`, sides?.[side]], can, `the ${side} over the diameter of its motor`, [0.5, 7]))
    }
  }
  return relations
}

function footOf({ foot, links }: PartlyLeg): Relation[] {
  if (foot?.kind !== 'toes') return []
  const { length, thickness, width } = foot as { readonly [name: string]: Quantity | undefined }
  return [
    ratio(['foot.thickness', thickness], ['foot.length', length], 'the thickness of a toe over its length', [0.06, 1.2]),
    ratio(['foot.width', width], ['foot.thickness', thickness], 'the width of a toe over its thickness', [0.25, 9]),
    ratio(['foot.length', length], ['links.lower.length', links?.lower?.length], 'the length of a toe over the lower link', [0.03, 0.9]),
  ]
}
