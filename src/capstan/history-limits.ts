import { InputError, issue, refuse, show } from '../units/index.js'
import type { CordDriveState } from './branch.js'

/**
 * Rejects drives that a history cannot follow. With a contact stiffness, because the memory of a wrap is that of cord that sticks rigidly
 * (`driveWindup` allows it, from rest). Without friction, because the pinion then does not hold the cord.
 */
export function checkHistory(
  where: string,
  d: Pick<CordDriveState, 'contactStiffness' | 'friction' | 'drumFriction' | 'frictionExponent' | 'compliance'>,
  rigid: 'rigidFrame' | 'anyFrame' = 'anyFrame',
): void {
  const issues: { path: string; given: string; accepts: string }[] = []
  if (d.contactStiffness !== undefined)
    issues.push({
      path: 'contactStiffness',
      given: `${show(d.contactStiffness)} N/m²`,
      accepts: 'must be omitted: in a history, cord that sticks is rigid (the windup from rest allows it)',
    })
  if (rigid === 'rigidFrame' && d.compliance !== undefined)
    issues.push({
      path: 'compliance',
      given: 'given',
      accepts: 'must be omitted: a travel or a history of angles assumes a rigid frame (windup, limits and histories of torque allow it)',
    })
  if ((d.frictionExponent ?? 1) < 1)
    issues.push(
      issue(
        'frictionExponent',
        d.frictionExponent,
        'must be omitted: a history assumes Coulomb friction (windup and limits allow the exponent)',
      ),
    )
  for (const name of ['friction', 'drumFriction'] as const) {
    const value = d[name]
    if (value !== undefined && !(value > 0)) issues.push(issue(name, value, 'must be above 0 in a history'))
  }
  if (issues.length > 0) throw new InputError(where, issues)
}

/** Rejects a step of a history that is not a finite number. */
export function checkStep(where: string, name: string, i: number, value: number): number {
  if (!Number.isFinite(value)) refuse(where, `${name}[${i}]`, value, 'must be finite')
  return value
}
