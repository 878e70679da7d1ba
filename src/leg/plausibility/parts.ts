import { propertyClass } from '../../fasteners/index.js'
import type { Quantity } from '../../units/index.js'
import { entriesOf, type PartlyLeg } from '../document/partly.js'
import { bearingOf, pinOf, threadOf } from '../schema/tables.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

type Bolts = NonNullable<NonNullable<PartlyLeg['bolts']>[string]>

// The ranges are common practice: proportions of small machines.

/** Pins with their bosses, bolts and bearings: sizes against the standard part that they belong to. */
export const fastenerRelations: Relations = (leg, add) => {
  pinRelations(leg, add)
  bearingRelations(leg, add)
  for (const [name, group] of entriesOf(leg.bolts)) for (const one of boltOf(`bolts.${name}`, group, leg)) add(one)
  for (const [name, shaft] of entriesOf(leg.shafts)) {
    if (shaft.innerThread === undefined) continue
    if (shaft.innerPropertyClass !== undefined)
      add(
        tighteningOf(
          ['innerTighteningTorque', 'innerThread', 'innerPropertyClass'].map((field) => `shafts.${name}.${field}`),
          shaft.innerTighteningTorque,
          shaft.innerThread,
          shaft.innerPropertyClass,
        ),
      )
    add(
      ratio(
        [`shafts.${name}.innerEngagement`, shaft.innerEngagement],
        [`shafts.${name}.innerThread`, threadOf(shaft.innerThread).diameter],
        'the engaged length over the diameter of the thread',
        [0.6, 8],
      ),
    )
  }
}

/** A tightening torque against what its bolt bears; the paths are those of torque, thread and property class. */
const tighteningOf = ([path = '', ...others]: readonly string[], torque: Quantity | undefined, thread: string, of: string): Relation => ({
  path,
  value: torque,
  others,
  what: 'the tightening torque over cubed diameter and proof stress of the bolt',
  is: si(torque) / (threadOf(thread).diameter ** 3 * propertyClass.si(of as never).proofStress),
  kind: 'ratio',
  usual: [0.007, 0.12],
})

const pinRelations: Relations = ({ pins, bosses, joints }, add) => {
  for (const [name, { size, cheekThickness, lugThickness, gap }] of entriesOf(pins)) {
    if (size === undefined) continue
    const diameter = [`pins.${name}.size`, pinOf(size).diameter] as const
    const over = (field: string, x: Quantity | undefined, what: string, usual: Relation['usual']) =>
      add(ratio([`pins.${name}.${field}`, x], diameter, `${what} over the diameter of the pin`, usual))
    over('cheekThickness', cheekThickness, 'the cheek', [0.5, 10])
    over('lugThickness', lugThickness, 'the lug', [0.5, 12])
    over('gap', gap, 'the gap', [0, 0.4])
  }
  for (const joint of ['hip', 'knee'] as const) {
    const { pin = '', boss: name = '' } = joints?.[joint] ?? {}
    const [size, boss] = [pins?.[pin]?.size, bosses?.[name]]
    if (size === undefined || boss === undefined) continue
    const diameter = [`pins.${pin}.size`, pinOf(size).diameter] as const
    const over = (field: keyof typeof boss & string, what: string, usual: Relation['usual']) =>
      add(ratio([`bosses.${name}.${field}`, boss[field] as Quantity | undefined], diameter, `${what} over the diameter of the pin`, usual))
    over('outerDiameter', 'the boss', [1.2, 10])
    over('engagement', 'the engagement', [0.5, 10])
    over('edgeDistance', 'the edge distance', [0.55, 8])
    over('holeScatter', 'the scatter of the hole', [0, 0.018])
  }
}

function boltOf(path: string, group: Bolts, leg: PartlyLeg): Relation[] {
  const { thread, stack, tighteningTorque } = group
  if (thread === undefined) return []
  const { diameter } = threadOf(thread)
  const relations: Relation[] = [
    {
      path: `${path}.stack[0].thickness`,
      value: stack?.[0]?.thickness,
      others: [`${path}.thread`],
      what: 'the thickness of the stack over the diameter of its bolts',
      is: (stack ?? []).reduce((sum, layer) => sum + si(layer?.thickness), 0) / diameter,
      kind: 'ratio',
      usual: [0.5, 14],
    },
  ]
  if (group.propertyClass !== undefined)
    relations.push(
      tighteningOf(
        ['tighteningTorque', 'thread', 'propertyClass'].map((field) => `${path}.${field}`),
        tighteningTorque,
        thread,
        group.propertyClass,
      ),
    )
  return [...relations, ...patternOf(path, group, diameter, leg)]
}

/** Where the bolts sit, against the plate and the motor that they hold. */
function patternOf(path: string, { pattern }: Bolts, bolt: number, { plates, links, joints, motors }: PartlyLeg): Relation[] {
  const {
    distances,
    leverArm,
    diameter: circle,
  } = (pattern ?? {}) as {
    readonly distances?: readonly (Quantity | undefined)[]
    readonly leverArm?: Quantity
    readonly diameter?: Quantity
  }
  const relations: Relation[] = []
  for (const [i, distance] of (distances ?? []).entries())
    relations.push(
      ratio(
        [`${path}.pattern.distances[${i}]`, distance],
        [`${path}.thread`, bolt],
        'the distance from the edge over the diameter of the bolt',
        [1, 60],
      ),
    )
  relations.push(
    ratio(
      [`${path}.pattern.leverArm`, leverArm],
      ['links.hipOffset', links?.hipOffset],
      'the lever arm over the offset of the hip',
      [0.15, 7],
    ),
  )
  const [name] = entriesOf(plates).find(([, { bolts }]) => `bolts.${bolts}` === path) ?? []
  const { width, height } = (name === undefined ? undefined : plates?.[name]?.size) ?? {}
  if (distances !== undefined && name !== undefined)
    relations.push(
      ratio(
        [`${path}.pattern.distances[${distances.length - 1}]`, distances.at(-1)],
        [`plates.${name}.size`, Math.max(si(width), si(height))],
        'the farthest bolt from the edge over the longer side of the plate',
        [0.05, 1],
      ),
    )
  const joint = (['hip', 'knee', 'sidewaysHip'] as const).find((one) => `bolts.${joints?.[one]?.motorBolts}` === path)
  const motor = joint === undefined ? undefined : joints?.[joint]?.motor
  if (motor !== undefined && circle !== undefined)
    relations.push(
      ratio(
        [`${path}.pattern.diameter`, circle],
        [`motors.${motor}.canDiameter`, motors?.[motor]?.canDiameter],
        'the bolt circle over the diameter of the motor',
        [0.12, 1.6],
      ),
    )
  return relations
}

const bearingRelations: Relations = ({ bearings }, add) => {
  for (const [name, pair] of entriesOf(bearings)) {
    const path = `bearings.${name}`
    const { bore, outerDiameter, width, staticRating, dynamicRating } = pair.own ?? {}
    if (pair.own !== undefined) {
      const outer = [`${path}.own.outerDiameter`, outerDiameter] as const
      const section = si(width) * si(outerDiameter)
      const rating = (field: string, x: Quantity | undefined, what: string, usual: Relation['usual']) =>
        add({
          path: `${path}.own.${field}`,
          value: x,
          others: [`${path}.own.outerDiameter`, `${path}.own.width`],
          what: `the ${what} load rating over diameter and width of the bearing`,
          is: si(x) / section,
          kind: 'stress',
          usual,
        })
      rating('staticRating', staticRating, 'static', [2.5e6, 9e7])
      rating('dynamicRating', dynamicRating, 'dynamic', [4e6, 1e8])
      add(ratio(outer, [`${path}.own.bore`, bore], 'the outer diameter over the bore', [1.08, 6]))
      add(ratio([`${path}.own.width`, width], outer, 'the width over the outer diameter', [0.08, 1.3]))
    }
    const known = pair.size === undefined ? undefined : bearingOf(pair.size, undefined)
    const [ring, wide] = [known?.outerDiameter ?? si(outerDiameter), known?.width ?? si(width)]
    const of = `${path}.${pair.own === undefined ? 'size' : 'own'}`
    add(ratio([`${path}.spacing`, pair.spacing], [of, ring], 'the distance of the bearings over their outer diameter', [0.25, 8]))
    if ((pair.overhang?.si ?? 0) > 0)
      add(ratio([`${path}.overhang`, pair.overhang], [of, wide], 'the overhang over the width of a bearing', [0.3, 15]))
    add({
      path: `${path}.seatInterference`,
      value: pair.seatInterference,
      others: [of],
      what: 'the interference, or clearance, over the outer diameter',
      is: Math.abs(si(pair.seatInterference)) / ring,
      kind: 'ratio',
      usual: [0, 0.006],
      possible: [0, 0.06],
    })
  }
}
