import { barBlock, type Figure, plain } from '../../drawing/index.js'
import type { Joint } from '../numbers.js'
import { boss, eyeMaterial, pin } from '../parts/pins-and-bosses/fields.js'
import { pinTolerance } from '../parts/pins-and-bosses/fit.js'
import type { Facts } from './facts.js'
import { seatSizes } from './seat-sizes.js'

/** Sizes of a pin in its bosses, mm. */
export const pinSizes = (facts: Facts, joint: Joint) => {
  const at = { joint }
  const [bossMaterial, eye] = [facts.named('material', boss.material, at), facts.named('material', eyeMaterial, at)]
  return {
    diameter: facts.mm(pin.diameter, at),
    zone: facts.get(pin.zone, at),
    lug: facts.mm(pin.lugThickness, at),
    gap: facts.mm(pin.gap, at),
    cheek: facts.mm(pin.cheekThickness, at),
    depth: facts.mm(boss.engagement, at),
    outer: facts.mm(boss.outerDiameter, at),
    hole: facts.mm(boss.hole, at),
    scatter: facts.mm(boss.holeScatter, at),
    edge: facts.mm(boss.edgeDistance, at),
    axis: facts.get(boss.axis, at),
    bossMaterial,
    bossPrinted: !facts.isMetal(bossMaterial),
    eyeMaterial: eye,
    eyePrinted: !facts.isMetal(eye),
    /** Ball bearings in the eye; absent where it turns on the plain pin. */
    bearing: seatSizes(facts, joint),
  }
}
export type PinSizes = ReturnType<typeof pinSizes>

/** The fit as deviations from the nominal size. */
export function fitBars(
  figure: Figure,
  facts: Facts,
  joint: Joint,
  { diameter, hole, scatter, zone, bossPrinted }: PinSizes,
  interference: number | undefined,
): void {
  const { upper, lower } = facts.get(pinTolerance, { joint })
  const micro = (mm: number) => 1000 * mm
  const ends = { pin: [1e6 * lower, 1e6 * upper], hole: [micro(hole - scatter - diameter), micro(hole + scatter - diameter)] } as const
  const reach = Math.max(5, ...[...ends.pin, ...ends.hole].map(Math.abs)) * 1.15
  const signed = (x: number) => (x > 0 ? `+${plain(x, 3)}` : plain(x, 3))
  figure.block(`Fit: deviations from ${plain(diameter)} mm in µm`, (y) =>
    barBlock(
      {
        from: -reach,
        to: reach,
        rules: [{ at: 0, name: '0' }],
        bars: [
          {
            name: `pin ${zone}`,
            from: ends.pin[0],
            to: ends.pin[1],
            text: `${signed(ends.pin[0])} to ${signed(ends.pin[1])}`,
            line: 'thick',
          },
          {
            name: 'hole, one standard deviation',
            from: ends.hole[0],
            to: ends.hole[1],
            text: `${signed(ends.hole[0])} to ${signed(ends.hole[1])}`,
          },
        ],
      },
      y,
    ),
  )
  if (interference !== undefined)
    figure.text(
      `Mean interference in ordinary air${bossPrinted ? ', with the water that the print holds' : ''}: ${plain(1e6 * interference, 3)} µm.`,
    )
}
