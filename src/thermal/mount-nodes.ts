import { Quantity } from '../units/index.js'
import type { MotorNumbers } from './motor-currents.js'
import type { MountNumbers } from './mount-specification.js'
import type { NetworkNode } from './network-parts.js'
import type { PlateModel } from './plate-model.js'
import type { SurroundingsNumbers } from './surface.js'

/** Specific heats of winding, stator and can, and motor base, J/(kg K). Source: Incropera, table A.1 (unverified). */
const COPPER = 385
const STEEL = 450
const ALUMINIUM = 896

/** Solid metal of a plate-fin sink, m³. */
const sinkVolume = (sink: NonNullable<MountNumbers['sink']>) =>
  sink.height * (sink.width * sink.baseThickness + sink.fins * sink.finLength * sink.finThickness)
export function massOf({ body, sink, controller }: MountNumbers, plate: PlateModel): number {
  return body.mass + plate.mass + (sink === undefined ? 0 : sink.density * sinkVolume(sink)) + (controller?.mass ?? 0)
}

export function nodesOf(x: MountNumbers, plate: PlateModel, where: SurroundingsNumbers, m: MotorNumbers): Record<string, NetworkNode> {
  const { body, sink, controller } = x
  // The motor's base is what is left of its mass; at least a tenth of the plate's store, so that the mount node is never without capacity.
  const base = Math.max(0, body.mass - body.windingMass - body.statorMass - body.canMass)
  const capacityScatter = x.capacityScatter
  const store = (joules: number) => ({ capacity: new Quantity(joules, 'heatCapacity'), capacityScatter })
  return {
    // Copper loss for a torque goes with the inverse square of the back-EMF constant; each load puts its own loss here and keeps the scatter.
    winding: { ...store(body.windingMass * COPPER), loss: '0 W', lossScatter: 2 * m.backEmfScatter },
    stator: store(body.statorMass * STEEL),
    can: store(body.canMass * STEEL),
    mount: store(base * ALUMINIUM + 0.1 * plate.capacity),
    plate: store(0.9 * plate.capacity),
    ...(sink !== undefined && { sink: store(sinkVolume(sink) * sink.density * sink.specificHeat) }),
    ...(controller !== undefined && { board: store(controller.mass * controller.specificHeat) }),
    air: { fixed: new Quantity(where.air, 'temperature') },
    radiant: { fixed: new Quantity(where.radiant, 'temperature') },
  }
}
