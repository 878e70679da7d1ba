import type { StrideInput } from './stride-moments.js'
import { strideLoadsOf } from './stride-results.js'

/** What drives, rod and knee pin bear, with their signs. */
const BORNE = [
  'hipDriveTorque',
  'hipDriveShaftTorque',
  'kneeDriveTorque',
  'kneeDriveShaftTorque',
  'kneeHeldTorque',
  'rodPull',
  'rodPush',
  'kneePin',
] as const
const larger = (one: number, other: number) => (Math.abs(other) > Math.abs(one) ? other : one)

/** Forces and torques of a leg over a stride. Where a spring may break, what the drives bear is the larger of with it and without it. */
export function hardestLoadsOf(x: StrideInput & { readonly mayBreak?: boolean | undefined }) {
  const whole = strideLoadsOf(x)
  if (x.mayBreak !== true || (x.hipSpring === undefined && x.kneeSpring === undefined)) return whole
  const alone = strideLoadsOf({ ...x, hipSpring: undefined, kneeSpring: undefined })
  for (const name of BORNE) whole[name] = larger(whole[name], alone[name])
  return whole
}
