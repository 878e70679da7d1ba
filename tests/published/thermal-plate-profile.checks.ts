import type { Source } from '../../src/formula/index.js'
import { ringPlateProfile } from '../../src/thermal/index.js'
import oracle from '../oracles/thermal-plate-profile.json' with { type: 'json' }
import { publishedValue } from './harness.js'

const FIN: Source = {
  level: 'computed',
  where:
    'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, eq. 3.91, annular fin of uniform thickness with an adiabatic tip; Bessel functions by scipy 1.17 (tests/oracles/thermal-plate-profile.py)',
}
const CELLS: Source = { level: 'computed', where: 'finite volumes in radius and depth (tests/oracles/thermal-plate-profile.py)' }

export const checks = [
  // A thin plate outside its motor is an annular fin, whatever lies under the motor.
  ...oracle.fins.map(({ r1, r2, t, k, h, r, share }) =>
    publishedValue(
      'thermal.ringPlateProfile',
      `thin plate, rise at ${(1000 * r).toFixed(2)} mm over that at the edge of the motor, k ${k} W/(m K)`,
      () => {
        const { motorFace } = ringPlateProfile.si({
          innerRadius: r1 / 2,
          outerRadius: r1,
          plateRadius: r2,
          thickness: t,
          conductivity: k,
          conductivityAcross: undefined,
          motorFaceCoefficient: h,
          freeFaceCoefficient: h,
          underMotor: 'open',
          radii: [r1, r],
        })
        return motorFace[1]! / motorFace[0]!
      },
      share,
      FIN,
      '0.02 %',
    ),
  ),
  // A printed plate: both faces 30 % of the way from the motor to the rim.
  ...oracle.plates.flatMap((row) =>
    (['motorFace', 'freeFace'] as const).map((face) =>
      publishedValue(
        'thermal.ringPlateProfile',
        `${face === 'motorFace' ? 'motor’s' : 'free'} face at ${(1000 * row.radii[2]!).toFixed(2)} mm, k ${row.k} W/(m K), ${1000 * row.t} mm thick, K/W`,
        () =>
          ringPlateProfile.si({
            innerRadius: row.a1,
            outerRadius: row.a2,
            plateRadius: row.b,
            thickness: row.t,
            conductivity: row.k,
            conductivityAcross: row.kz,
            motorFaceCoefficient: row.h1,
            freeFaceCoefficient: row.h2,
            underMotor: row.covered ? 'covered' : 'open',
            radii: [row.radii[2]!],
          })[face][0]!,
        row[face][2]!,
        CELLS,
        '0.1 %',
      ),
    ),
  ),
]
