import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { materialState } from '../../src/leg/material-state.js'
import { legNumbers } from '../../src/leg/numbers.js'

describe('the foot', () => {
  const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
  const { foot } = assess(leg, { cases: ['walk'] })

  test('deflection under the standing load is load over guided stiffness at least, and nothing is infinite', () => {
    const weight = (10.5 * 9.80665) / 4
    expect(foot.deflection?.z.si).toBeGreaterThan(0)
    // The free stiffness is the softest way to push: the foot under load moves by its diagonal and more.
    // Stiffness is that of the loaded leg, which its load has softened a little; the deflection is of the whole load.
    expect(((foot.deflection?.z.si as number) * (foot.stiffness?.z.si as number)) / weight).toBeGreaterThan(0.98)
    expect(((foot.deflection?.z.si as number) * (foot.stiffness?.z.si as number)) / weight).toBeLessThan(1)
    expect(foot.usableBandwidth?.si).toBeLessThan(foot.resonance.hip?.motorLocked.si as number)
    expect(foot.resonance.knee?.motorFree.si).toBeGreaterThan(foot.resonance.knee?.motorLocked.si as number)
  })

  test('errors of the foot by hand: arms from hip and knee to the foot, and the triangle between them', () => {
    const line = (name: string) => foot.error.lines.find((one) => one.name === name)!
    // Standing, the foot is straight under the hip: arms of 295 mm and 180 mm, the angle between them by the law of cosines.
    const [height, upper, lower] = [0.295, 0.165, 0.18]
    const cosine = (height ** 2 + lower ** 2 - upper ** 2) / (2 * height * lower)
    const corner = (hip: number, knee: number) =>
      Math.sqrt((height * hip) ** 2 + (lower * knee) ** 2 + 2 * height * hip * lower * knee * cosine)
    const accuracy = (0.5 * Math.PI) / 180
    expect(line('encoder accuracy over a turn').worstCorner.si).toBeCloseTo(corner(accuracy / 6.2, accuracy / 5.6), 9)
    expect(line('encoder rounding').worstCorner.si).toBeCloseTo(corner(Math.PI / 16384 / 6.2, Math.PI / 16384 / 5.6), 9)
    // A run-out of 0.2 mm is 0.1 mm off centre.
    expect(line('drum out of true').worstCorner.si).toBeCloseTo(corner(Math.asin(0.1 / 49.6), Math.asin(0.1 / 44.8)), 9)
    // F L³ / (3 E I) of one toe, upright part; its polymer as soft as the damp leaves it.
    const toe = materialState(legModel(legNumbers(leg)), leg.foot.material as string).elastic()
    const along =
      ((((10.5 * 9.80665) / 4 / 2) * Math.cos((25 * Math.PI) / 180) * 0.034 ** 3) / (3 * toe.modulus)) * (12 / (0.016 * 0.0112 ** 3))
    expect(line('toes under the standing load').worstCorner.si).toBeCloseTo(along * Math.cos((25 * Math.PI) / 180), 9)
    expect(foot.error.together.worstCorner.si).toBeLessThanOrEqual(foot.error.lines.reduce((sum, one) => sum + one.worstCorner.si, 0))
  })

  test('without friction nothing of the windup stays, and with it less than half does', () => {
    const kept = (friction: number) => {
      const band = [friction, friction, friction]
      const other = withFields(leg, { 'drives.hip.friction': band, 'drives.knee.friction': band })
      return assess(other, { cases: ['walk'] }).foot.error.lines.find(({ name }) => name.startsWith('windup that friction keeps'))!
        .worstCorner.si
    }
    expect(kept(1e-7)).toBeLessThan(1e-8)
    // Half of what went in at most: the way back slips too.
    const { lines } = foot.error
    const [windup, left] = ['cord windup', 'windup that friction'].map(
      (start) => lines.find(({ name }) => name.startsWith(start))!.worstCorner.si,
    )
    expect(left).toBeGreaterThan(0)
    expect(left).toBeLessThan(windup! / 2)
  })

  test('a stiffer cord makes a stiffer foot with less error', () => {
    const stiff = describeLeg({ ...leg, cords: { braid: { ...leg.cords.braid, axialRigidity: '48 kN' } } } as never)
    const better = assess(stiff, { cases: ['walk'] }).foot
    expect(better.stiffness?.z.si).toBeGreaterThan(foot.stiffness?.z.si as number)
    expect(better.error.together.rss.si).toBeLessThan(foot.error.together.rss.si)
  })
})
