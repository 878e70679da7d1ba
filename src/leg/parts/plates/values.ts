import { canLaw, mountLaw, plateLaw, plateStore, pressureAtAltitude, ringArea, surfaceResistance } from '../../../thermal/index.js'
import { halfLength } from '../../lines.js'
import { constant, line, type Use, value } from '../../run/index.js'
import { heldFor } from '../load/durations.js'
import { airTemperature, altitude, coolingFactor, surroundings, wind } from '../load/fields.js'
import { density, name, needed, specificHeat, thermalConductivity, thermalConductivityAcrossLayers } from '../materials/fields.js'
import * as motor from '../motors/fields.js'
import * as plate from './fields.js'

const covering = line(
  'resistance of the printed plate behind the sink',
  { thickness: 'length', conductivity: 'thermalConductivity', contact: 'heatTransferCoefficient' },
  'thermalContactResistance',
  'thickness / conductivity + 1 / contact',
  (x) => x.thickness / x.conductivity + 1 / x.contact,
)

/** The plate under the motor, or the sink on it: material and sizes. */
export const body = value('plate.body', ['plate'], (use) => {
  const sink = use(plate.hasSink)
  return {
    material: use(sink ? plate.sink.material : plate.material),
    width: sink ? (use(plate.sink.width) as number) : use(plate.width),
    height: sink ? (use(plate.sink.height) as number) : use(plate.height),
    thickness: sink ? (use(plate.sink.thickness) as number) : use(plate.thickness),
    emissivity: sink ? (use(plate.sink.emissivity) as number) : use(plate.emissivity),
  }
})
/** Conductivity of a material along its layers; needed. */
const along = (use: Use<'plate'>, material: ReturnType<typeof materialOf>) =>
  needed(use.at(name, { material }), 'thermalConductivity', use.at(thermalConductivity, { material }))
const across = (use: Use<'plate'>, material: ReturnType<typeof materialOf>) =>
  use.at(thermalConductivityAcrossLayers, { material }) ?? along(use, material)
const materialOf = (use: Use<'plate'>) => use(plate.material)

/** The ring of contact on the plate, and what the plate is to its heat. */
export const shape = (use: Use<'motor' | 'plate'>) => {
  const { material, width, height, thickness } = use(body)
  return {
    innerRadius: use.run(halfLength, { length: use(motor.mountInnerDiameter) }),
    outerRadius: use.run(halfLength, { length: use(motor.mountOuterDiameter) }),
    width,
    height,
    x: 0,
    y: 0,
    thickness,
    conductivity: along(use, material),
    conductivityAcross: across(use, material),
  }
}
/** Resistance of what covers the free face: heat crosses the layers of the printed plate behind a sink. */
export const behindFace = value('plate.behind', ['plate'], (use) =>
  use(plate.hasSink)
    ? use.run(covering, {
        thickness: use(plate.thickness),
        conductivity: across(use, materialOf(use)),
        contact: use(plate.contactConductance),
      })
    : 0,
)
/** Resistance of a plate under a motor, tabulated over the film on its faces. */
export const plateTable = value('plate.table', ['motor', 'plate'], (use) =>
  use.shared(plateLaw, { ...shape(use), behind: use(behindFace) }),
)
/** Resistance of the contact between a motor and its plate. */
export const contact = value('plate.contact', ['motor', 'plate'], (use) => {
  const area = use.run(ringArea, {
    innerRadius: use.run(halfLength, { length: use(motor.mountInnerDiameter) }),
    outerRadius: use.run(halfLength, { length: use(motor.mountOuterDiameter) }),
  })
  return use.run(surfaceResistance, { coefficient: use(plate.contactConductance), area })
})
const pressure = value('load.pressure', [], (use) => use.run(pressureAtAltitude, { altitude: use(altitude) }))

/** Air round a motor and what it sees. */
export const airAt = (use: Use<'air'>) => ({
  air: use(airTemperature),
  radiant: use(surroundings),
  airSpeed: use(wind),
  pressure: use(pressure),
  factor: use(coolingFactor),
})
/** Conductance from the mounting face through the plate to the air, over the rise of that face. */
const mountCooling = value('plate.mountLaw', ['motor', 'plate', 'air'], (use) => {
  const { ring, mean } = use(plateTable)
  const { height, emissivity } = use(body)
  return use.shared(mountLaw, { ring, mean, contact: use(contact), height, emissivity, ...airAt(use) })
})
/** The same through the can. */
const canCooling = value('motor.canLaw', ['motor', 'air'], (use) =>
  use.shared(canLaw, {
    diameter: use(motor.canDiameter),
    length: use(motor.canLength),
    emissivity: use(motor.canEmissivity),
    mountToCan: use(motor.mountToCan),
    ...airAt(use),
  }),
)
/** How a motor on its plate is cooled, as its balance takes it. */
export const coolingLaws = (use: Use<'motor' | 'plate' | 'air'>) => {
  const mount = use(mountCooling)
  const can = use(canCooling)
  return {
    air: use(airTemperature),
    radiant: use(surroundings),
    mountConductance: mount.conductance,
    mountRadiantShare: mount.radiantShare,
    canConductance: can.conductance,
    canShare: can.canShare,
    canRadiantShare: can.radiantShare,
  }
}

/** Film at which the store of a plate is calculated; it hardly depends on it. */
const storeFilm = constant('plate.storeFilm', {
  title: 'heat transfer coefficient for the heat stored in a plate',
  kind: 'heatTransferCoefficient',
  typical: 12,
  source: { level: 'assumption', where: 'a warm plate in still air' },
})
/** What the plate takes up while its motor is held. */
export const store = value('plate.store', ['motor', 'plate', 'event'], (use) => {
  const time = use(heldFor)
  const { material } = use(body)
  if (time === undefined) return { capacity: 0, conductance: 0 }
  const of = use.at(name, { material })
  return use.run(plateStore, {
    ...shape(use),
    density: needed(of, 'density', use.at(density, { material })),
    specificHeat: needed(of, 'specificHeat', use.at(specificHeat, { material })),
    behind: use(behindFace),
    contact: use(contact),
    film: use(storeFilm),
    time,
  })
})

/** How a motor on its plate is cooled, for heating runs on the test stand. */
export const cooling = value('plate.cooling', ['motor', 'plate', 'air'], (use) => coolingLaws(use))
