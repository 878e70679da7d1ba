import { PulleyDrive } from './pulley-drive.js'
import { RodDrive } from './rod-drive.js'
import type { StrideInput } from './stride-moments.js'
import type { ThroughDrive } from './through-drive.js'

/** What drives the knee from a drum on the hip axis; absent where its motor sits on the upper link. */
export function throughDriveOf(x: StrideInput): ThroughDrive | undefined {
  if (x.kneePulleys !== undefined) return new PulleyDrive(x.kneePulleys, x)
  return x.linkage === undefined ? undefined : new RodDrive({ ...x.linkage, ground: x.upperLink }, x)
}
