import { readInputs, requireKeys } from '../formula/index.js'
import { InputError, type Issue, Quantity, quantity, refuse, show } from '../units/index.js'
import type { ChainKernel } from './chain-kernel.js'
import { type GivenJointValues, type InverseTarget, type JointEffort, type JointValue, TOOL_PUSH, type ToolPush } from './chain-values.js'

/** Lowest and highest of each joint, ±∞ where none are given. Throws an `InputError` for limits that are upside down. */
export function readLimits(
  chain: ChainKernel,
  where: string,
  limits: InverseTarget['limits'],
): { lowest: Float64Array; highest: Float64Array } {
  const n = chain.joints
  if (limits !== undefined && (!Array.isArray(limits) || limits.length !== n))
    throw new InputError(where, [
      {
        path: 'limits',
        given: Array.isArray(limits) ? `${limits.length} limits` : show(limits),
        accepts: `must be one for each of the ${n} joints`,
      },
    ])
  for (const [i, each] of (limits ?? []).entries()) requireKeys(where, `limits[${i}]`, each, ['lowest', 'highest'])
  const ends = (end: 'lowest' | 'highest', none: number) =>
    limits === undefined
      ? new Float64Array(n).fill(none)
      : readValues(chain, 'inverse', limits.map((limit) => limit[end]) as GivenJointValues, `limits.${end}`)
  const lowest = ends('lowest', -Infinity)
  const highest = ends('highest', Infinity)
  const crossed = lowest.findIndex((low, i) => !(low < highest[i]!))
  if (crossed >= 0)
    throw new InputError(where, [
      { path: `limits[${crossed}].lowest`, given: String(lowest[crossed]), accepts: 'must be below the highest' },
    ])
  return { lowest, highest }
}

/** Joint values in SI numbers. Throws an `InputError` that names every value of the wrong kind. */
export function readValues(chain: ChainKernel, method: string, given: GivenJointValues, path = 'values'): Float64Array {
  const n = chain.joints
  const where = `kinematics.serialChain.${method}`
  if (!Array.isArray(given) || given.length !== n)
    throw new InputError(where, [
      { path, given: Array.isArray(given) ? `${given.length} values` : 'no list', accepts: `must be one for each of the ${n} joints` },
    ])
  const issues: Issue[] = []
  const out = Float64Array.from(given, (value, i) => {
    try {
      return quantity(chain.sliding[i] === 1 ? 'length' : 'angle', value as never).si
    } catch (error) {
      if (!(error instanceof InputError)) throw error
      issues.push(...error.issues.map((issue) => ({ ...issue, path: `${path}[${i}]` })))
      return 0
    }
  })
  if (issues.length > 0) throw new InputError(where, issues)
  return out
}

/** Plain SI numbers, one a joint. */
export function readNumbers(chain: ChainKernel, method: string, path: string, given: readonly number[]): Float64Array {
  const n = chain.joints
  if (!Array.isArray(given) || given.length !== n || !given.every(Number.isFinite))
    refuse(`kinematics.serialChain.${method}`, path, given, `must be ${n} finite numbers, one a joint, in SI units`)
  return Float64Array.from(given)
}

/** Moment and force of the tool, six SI numbers; nothing where none is given. */
export function readPush(method: string, given: ToolPush | undefined): number[] | undefined {
  if (given === undefined) return undefined
  const { moment: m, force: f } = readInputs(`kinematics.serialChain.${method}`, TOOL_PUSH, given)
  return [m.x, m.y, m.z, f.x, f.y, f.z]
}

/** SI numbers as joint values. */
export function valuesOf(chain: ChainKernel, values: Float64Array): JointValue[] {
  return Array.from(values, (x, i) => (chain.sliding[i] === 1 ? new Quantity(x, 'length') : new Quantity(x, 'angle')))
}

/** SI numbers as torques and forces. */
export function effortsOf(chain: ChainKernel, out: Float64Array): JointEffort[] {
  return Array.from(out, (x, i) => (chain.sliding[i] === 1 ? new Quantity(x, 'force') : new Quantity(x, 'torque')))
}

/** A matrix of six rows. */
export function sixRows(chain: ChainKernel, out: Float64Array): number[][] {
  const n = chain.joints
  return Array.from({ length: 6 }, (_, i) => Array.from(out.subarray(i * n, (i + 1) * n)))
}
