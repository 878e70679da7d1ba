import { describe, expect, test } from 'vitest'
import { assemblyPlan, controlSheet, learn, legNumbers, withFields } from '../../src/leg/index.js'
import { corded } from './sideways-legs.js'

describe('learning of a cord at the sideways hip', () => {
  test('a friction log corrects its field alone', () => {
    const [friction, turn] = [0.17, 2 * Math.PI]
    const rows = [0.5, 1, 1.5].flatMap((turns) =>
      [4.9, 5, 5.1].map((slack) => `${slack},${(slack * Math.exp(friction * turns * turn)).toFixed(2)},${turns}`),
    )
    const csv = `slack tension [N],taut tension [N],wrap angle [turn]\n${rows.join('\n')}\n`
    const found = learn(corded, { 'cordFriction sidewaysHip': csv })
    expect(legNumbers(found.leg).joints.sidewaysHip!.drive).toMatchObject({ friction: { typical: expect.closeTo(friction, 3) } })
    expect(legNumbers(found.leg).joints.hip).toEqual(legNumbers(corded).joints.hip)
  })

  test('values that differ by joint are listed with their joints', () => {
    const other = withFields(corded, {
      motors: { ...corded.motors, small: { ...corded.motors.outrunner!, tapDepth: '4 mm', mass: '0.3 kg' } },
      'joints.sidewaysHip.motor': 'small',
    })
    expect(assemblyPlan(other).assumed.find(({ what }) => /depth of the threads/.test(what))!.value).toMatch(
      /^[^,]+ \(hip\), [^,]+ \(knee\), 4 mm \(sideways hip\)$/,
    )
    expect(controlSheet(other).assumed.find(({ what }) => /copper/.test(what))!.value).toMatch(/\(hip\), .*\(knee\), .*\(sideways hip\)$/)
  })
})
