import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { motor, motorMount } from '../../src/thermal/index.js'
import { Nm } from '../../src/units/index.js'
import { demoSpecification } from './demo.js'

const rows: { torque: number; celsius: Record<'winding' | 'stator' | 'can' | 'mount', number> }[] = JSON.parse(
  readFileSync(new URL('../oracles/thermal-mount.json', import.meta.url), 'utf8'),
)

// The plate whose round equal has a radius of 45 mm, and no controller: the definition of the oracle.
const side = [45 * Math.sqrt(Math.PI), 'mm'] as const
const mount = motorMount(motor({ speedConstant: '110 rpm/V', speedConstantBasis: 'spunPeakLineToLine', terminalResistance: '0.18 ohm' }), {
  ...demoSpecification,
  plate: { ...demoSpecification.plate, width: side, height: side },
  controller: undefined,
})

test.each(rows)(
  'at $torque N m, as a mount solved apart from the library: plate cells, films, radiation, hot copper',
  ({ torque, celsius }) => {
    const { temperatures } = mount.network({ torque: Nm(torque) }).steady()
    // Half a percent of the rise: the mesh error of the plate, which is all that differs.
    for (const [name, wanted] of Object.entries(celsius))
      expect(Math.abs((temperatures[name]?.in('degC') as number) - wanted), name).toBeLessThan(0.005 * (wanted - 38))
  },
)
