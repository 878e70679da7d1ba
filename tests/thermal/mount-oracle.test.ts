import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { motor, motorMount, timeAtTorque } from '../../src/thermal/index.js'
import { Nm } from '../../src/units/index.js'
import { demoSpecification } from './demo.js'

type Celsius = Record<'winding' | 'stator' | 'can' | 'mount', number>
const oracle: {
  steady: { torque: number; celsius: Celsius }[]
  courses: { torque: number; limit: number; passed: number; at: Record<string, Celsius> }[]
} = JSON.parse(readFileSync(new URL('../oracles/thermal-mount.json', import.meta.url), 'utf8'))

// The plate whose round equal has a radius of 45 mm, and no controller: the definition of the oracle.
const side = [45 * Math.sqrt(Math.PI), 'mm'] as const
const mount = motorMount(motor({ speedConstant: '110 rpm/V', speedConstantBasis: 'spunPeakLineToLine', terminalResistance: '0.18 ohm' }), {
  ...demoSpecification,
  plate: { ...demoSpecification.plate, width: side, height: side },
  controller: undefined,
})

test.each(oracle.steady)(
  'at $torque N m, as a mount solved apart from the library: plate cells, films, radiation, hot copper',
  ({ torque, celsius }) => {
    const { temperatures } = mount.network({ torque: Nm(torque) }).steady()
    // Half a percent of the rise: the mesh error of the plate, which is all that differs.
    for (const [name, wanted] of Object.entries(celsius))
      expect(Math.abs((temperatures[name]?.in('degC') as number) - wanted), name).toBeLessThan(0.005 * (wanted - 38))
  },
)

test.each(oracle.courses)(
  'warming at $torque N m as with the whole plate in cells: the store stands for it',
  ({ torque, limit, passed, at }) => {
    const course = mount.network({ torque: Nm(torque) }).transient({ duration: '31 min' })
    for (const [seconds, celsius] of Object.entries(at))
      for (const [name, wanted] of Object.entries(celsius)) {
        const got = course.at([Number(seconds), 's'])[name]?.in('degC') as number
        // One percent of the rise, and what the reference's time steps leave of the first minute.
        expect(Math.abs(got - wanted), `${name} at ${seconds} s`).toBeLessThan(0.01 * (wanted - 38) + 0.05)
      }
    const { time } = timeAtTorque(mount, { torque: Nm(torque) }, [{ part: 'plate', node: 'mount', limit: [limit, 'degC'] }])
    expect(Math.abs(time.si / passed - 1)).toBeLessThan(0.01)
  },
)
