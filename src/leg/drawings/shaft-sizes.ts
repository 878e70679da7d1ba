import { shaftOf } from '../numbers.js'
import * as shaft from '../parts/hip-shaft/fields.js'
import * as stack from '../parts/hip-shaft/stack-fields.js'
import type { Facts } from './facts.js'

/** Parts clamped together on the shaft; absent where the document gives none. */
function stackSizes(facts: Facts) {
  const given = shaftOf(facts.leg.x).stack
  if (given === undefined) return undefined
  const { flat, key } = stack
  const material = facts.named('material', stack.material)
  return {
    outer: facts.mm(stack.outerDiameter),
    inner: facts.mm(stack.innerDiameter),
    torque: facts.get(stack.tighteningTorque),
    material,
    metal: facts.isMetal(material),
    flat: given.flat === undefined ? undefined : { depth: facts.mm(flat.depth), length: facts.mm(flat.length) },
    key:
      given.key === undefined
        ? undefined
        : {
            width: 1000 * facts.get(key.size).width,
            height: 1000 * facts.get(key.size).height,
            shaftDepth: 1000 * facts.get(key.size).shaftDepth,
            hubDepth: 1000 * facts.get(key.size).hubDepth,
            length: facts.mm(key.length),
            hub: facts.mm(key.hubDiameter),
            hubMaterial: facts.named('material', key.hubMaterial),
          },
  }
}

/** Sizes of the hip shaft and its bearings, mm. */
export const shaftSizes = (facts: Facts) => {
  const thread = facts.get(shaft.thread)
  const inner = facts.get(shaft.inner.thread)
  return {
    diameter: 1000 * thread.diameter,
    root: 1000 * thread.rootDiameter,
    pitch: 1000 * thread.pitch,
    inner: { diameter: 1000 * inner.diameter, pitch: 1000 * inner.pitch, minor: 1000 * inner.minorDiameter },
    engagement: facts.mm(shaft.inner.engagement),
    innerTorque: facts.get(shaft.inner.tighteningTorque),
    capHole: facts.mm(shaft.inner.holeDiameter),
    capThickness: facts.mm(shaft.cap.thickness),
    capSpan: facts.mm(shaft.cap.span),
    capMaterial: facts.named('material', shaft.cap.material),
    capMetal: facts.isMetal(facts.named('material', shaft.cap.material)),
    bore: facts.mm(shaft.bearing.bore),
    outer: facts.mm(shaft.bearing.outerDiameter),
    width: facts.mm(shaft.bearing.width),
    spacing: facts.mm(shaft.spacing),
    overhang: facts.mm(shaft.overhang),
    seat: facts.named('material', shaft.seatMaterial),
    seatMetal: facts.isMetal(facts.named('material', shaft.seatMaterial)),
    retained: facts.get(shaft.retained),
    interference: facts.mm(shaft.seatInterference),
    stack: stackSizes(facts),
  }
}
export type ShaftSizes = ReturnType<typeof shaftSizes>
