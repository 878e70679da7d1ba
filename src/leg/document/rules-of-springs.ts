import { millimetres, type PartlyLeg, type Report } from './partly.js'

type Spring = NonNullable<NonNullable<NonNullable<PartlyLeg['joints']>['hip']>['spring']>

/** Contradictions within each spring in parallel with a drive. */
export function springRules({ joints }: PartlyLeg, report: Report): void {
  for (const name of ['hip', 'knee'] as const) {
    const spring = joints?.[name]?.spring
    if (spring === undefined) continue
    const path = `joints.${name}.spring`
    const { wireDiameter, coilDiameter } = spring
    if (wireDiameter !== undefined && coilDiameter !== undefined && coilDiameter.si <= 1.5 * wireDiameter.si)
      report(`${path}.coilDiameter`, coilDiameter, `must be more than one and a half times the wire (${wireDiameter})`)
    if (spring.kind === 'torsion') torsionRules(path, spring as Extract<Spring, { readonly kind?: 'torsion' | undefined }>, report)
    if (spring.kind === 'extension') extensionRules(path, spring as Extension, report)
  }
}

function torsionRules(path: string, spring: Extract<Spring, { readonly kind?: 'torsion' | undefined }>, report: Report): void {
  const { mandrel, coilDiameter, wireDiameter } = spring
  if (mandrel === undefined || coilDiameter === undefined || wireDiameter === undefined) return
  const inner = coilDiameter.si - wireDiameter.si
  if (mandrel.si >= inner) report(`${path}.mandrel`, mandrel, `must be thinner than the inside of the coil (${millimetres(inner)})`)
}

type Extension = Extract<Spring, { readonly kind?: 'extension' | undefined }>

function extensionRules(path: string, spring: Extension, report: Report): void {
  const { wireDiameter: wire, fixedEnd, movingEnd, freeLength, coils } = spring
  for (const name of ['hookRadius', 'bendRadius'] as const) {
    const radius = spring[name]
    if (radius !== undefined && wire !== undefined && radius.si <= wire.si / 2)
      report(`${path}.${name}`, radius, `must be more than half the wire (${wire})`)
  }
  const { hookRadius, coilDiameter } = spring
  if (hookRadius !== undefined && coilDiameter !== undefined && hookRadius.si > (coilDiameter.si / 2) * (1 + 1e-9))
    report(
      `${path}.hookRadius`,
      hookRadius,
      `must be at most half the coil (${millimetres(coilDiameter.si / 2)}): its bending is calculated with the coil as its arm`,
    )
  if (freeLength !== undefined && wire !== undefined && coils !== undefined && freeLength.si < wire.si * (coils.si + 1))
    report(`${path}.freeLength`, freeLength, `must be at least that of its closed coils (${millimetres(wire.si * (coils.si + 1))})`)
  endRules(path, fixedEnd, movingEnd, report)
}

/** Both pins keep a distance from the axis and from each other. */
function endRules(path: string, fixedEnd: Extension['fixedEnd'], movingEnd: Extension['movingEnd'], report: Report): void {
  if (fixedEnd?.up === undefined || fixedEnd.forward === undefined || movingEnd?.down === undefined || movingEnd.forward === undefined)
    return
  const [fixed, moving] = [Math.hypot(fixedEnd.up.si, fixedEnd.forward.si), Math.hypot(movingEnd.down.si, movingEnd.forward.si)]
  for (const [end, distance] of [
    ['fixedEnd', fixed],
    ['movingEnd', moving],
  ] as const)
    if (distance < 1e-3)
      report(`${path}.${end}`, millimetres(distance), 'must be at least 1 mm from the axis: on it the spring turns nothing')
  if (Math.abs(fixed - moving) < 1e-3)
    report(
      `${path}.movingEnd`,
      millimetres(moving),
      'must differ from fixedEnd by at least 1 mm in its distance from the axis: both pins could meet',
    )
}
