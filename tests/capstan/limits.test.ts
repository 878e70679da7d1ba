// The edges of what the formulas accept and note, and results that other tests only use.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { excess } from '../../src/capstan/arc.js'
import { elasticArc } from '../../src/capstan/contact.js'
import { fineHistory } from '../../src/capstan/fine-history.js'
import {
  activatedCreepFactor,
  arcRecovery,
  braidBreakingStrength,
  compareReductions,
  cordDrive,
  cordPull,
  cordToCut,
  driveWindup,
  frictionBand,
  proposeDrive,
  runningTautTension,
  slackTorque,
  spurContactRatio,
  steelCable,
  strokeTension,
  wireRopeBendEfficiency,
} from '../../src/capstan/index.js'
import { loadPath } from '../../src/capstan/load-path.js'
import { Quantity } from '../../src/units/index.js'

interface Noted {
  readonly notes?: readonly { readonly text: string }[] | undefined
}
const notes = ({ notes }: Noted) => notes?.map(({ text }) => text).join() ?? ''
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const loop = { arrangement: 'crossed', pinionRadius: '7.5 mm', drumRadius: '46.5 mm', centreDistance: '62 mm', pinionTurns: 3 } as const

describe('validity', () => {
  test('teeth that let go of each other, or cut into each other below the base circle, carry a note', () => {
    // Standard teeth of module 1 mm: a tip radius is a pitch radius and a module.
    const pair = (pinionTeeth: number, wheelTeeth: number, apart = 0) =>
      notes(
        spurContactRatio({
          ...{ pinionTeeth, wheelTeeth, module: '1 mm' },
          pinionTipRadius: [pinionTeeth / 2 + 1, 'mm'],
          wheelTipRadius: [wheelTeeth / 2 + 1, 'mm'],
          centreDistance: [(pinionTeeth + wheelTeeth) / 2 + apart, 'mm'],
        }).contactRatio,
      )
    // Least teeth of a pinion with a wheel of 45 without interference, 20°: 17 (16 go with a wheel of 101 at most).
    expect(pair(17, 45)).toBe('')
    expect(pair(12, 45)).toContain('above its base circle')
    expect(pair(17, 45, 1)).toContain('of at least 1')
  })

  test('a cord that strains more than 2 % carries a note', () => {
    const drive = { torque: '6 N m', pretension: '100 N', pinionRadius: '7.5 mm', drumRadius: '46.5 mm', span: '20 mm' } as const
    const wraps = {
      pinionWrap: '4 turn',
      drumWrapTaut: '200 deg',
      drumWrapSlack: '200 deg',
      friction: 0.2,
      hold: 'clampedMidPinion',
    } as const
    const strain = (axialRigidity: '35 kN' | '5 kN') => notes(driveWindup({ ...drive, ...wraps, axialRigidity }).windup)
    expect(strain('35 kN')).not.toContain('2 %')
    expect(strain('5 kN')).toContain('cord strain of at most 2 %')
  })

  test('a wire rope bends as charted up to a ratio of 40', () => {
    expect(notes(wireRopeBendEfficiency({ bendRatio: 40 }))).toBe('')
    expect(notes(wireRopeBendEfficiency({ bendRatio: 20 }))).toBe('')
    expect(notes(wireRopeBendEfficiency({ bendRatio: 41 }))).toContain('at most 40')
  })

  test('a braid realises half of its filament to four fifths', () => {
    const braid = { filamentStrength: '3 GPa', filamentDensity: '970 kg/m^3', massPerLength: '1 g/m' } as const
    for (const realisation of [0.5, 0.8]) expect(notes(braidBreakingStrength({ ...braid, realisation }))).toBe('')
    for (const realisation of [0.49, 0.81]) expect(notes(braidBreakingStrength({ ...braid, realisation }))).toContain('0.5 to 0.8')
  })

  test('a stroke whose torque takes all tension off the slack span carries a note', () => {
    const stroke = (torque: '1.8 N m' | '1.9 N m') =>
      notes(strokeTension({ pretension: '20 N', torque, drumRadius: '46.5 mm', span: '30 mm', stroke: '60 deg' }).slackTension)
    // 2 · 20 N · 46.5 mm = 1.86 N m.
    expect(stroke('1.8 N m')).toBe('')
    expect(stroke('1.9 N m')).toContain('slack span under tension')
  })

  test('the torque that slackens a span carries a note where the pinion slips before', () => {
    const size = { pretension: '60 N', pinionRadius: '7.5 mm', drumRadius: '46.5 mm', span: '30 mm', axialRigidity: '35 kN' } as const
    const wraps = { pinionWrap: '1.5 turn', drumWrapTaut: '200 deg', drumWrapSlack: '200 deg', friction: 0.1, slackShare: 0.1 } as const
    const drive = { ...size, ...wraps }
    const clamped = slackTorque({ ...drive, hold: 'clampedMidPinion' })
    expect([clamped.state, notes(clamped.torque)]).toEqual(['slackSpan', ''])
    const held = slackTorque({ ...drive, hold: 'frictionOnly' })
    expect(held.state).toBe('slipsBefore')
    expect(notes(held.torque)).toContain('the pinion does not slip before')
  })

  test('creep shifts from −20 to 70 °C', () => {
    const shift = (fromTemperature: `${number} degC`, toTemperature: `${number} degC`) =>
      notes(activatedCreepFactor({ fromTemperature, toTemperature, fromStress: '300 MPa', toStress: '300 MPa' }))
    expect(shift('-20 degC', '70 degC')).toBe('')
    expect(shift('20 degC', '71 degC')).toContain('from -20 to 70 degC')
    expect(shift('-21 degC', '20 degC')).toContain('from -20 to 70 degC')
  })

  test('a tension below the end of the unloading law, or above the peak, is an error', () => {
    const arc = {
      peakTension: '200 N',
      storedTension: '100 N',
      friction: 0.15,
      centreLineRadius: '20 mm',
      axialRigidity: '20 kN',
    } as const
    expect(arcRecovery({ ...arc, tension: '50 N' }).recovered.si).toBeGreaterThan(0)
    for (const tension of ['49.9 N', '200.1 N'] as const) expect(() => arcRecovery({ ...arc, tension })).toThrow(/tension .*lie between/)
  })

  test('a running cord needs the tension that its own speed takes up', () => {
    const running = { friction: 0.2, wrapAngle: '1 turn', massPerLength: '1 kg/m', speed: '5 m/s' } as const
    expect(runningTautTension({ ...running, slackTension: '25.1 N' }).centrifugalTension.in('N')).toBeCloseTo(25, 9)
    expect(() => runningTautTension({ ...running, slackTension: '24.9 N' })).toThrow(/slackTension .*centrifugal/)
  })

  test('a steel that is neither carbon nor stainless is named, and each has its own expansion', () => {
    const cable = { size: '1/8', construction: '7x19' } as const
    expect(() => steelCable({ ...cable, steel: 'brass' as never })).toThrow("steel is 'brass'; must be carbon or stainless")
    expect(steelCable({ ...cable, steel: 'carbon' }).expansion.in('ppm/K')).toBeCloseTo(11.7, 9)
    expect(steelCable({ ...cable, steel: 'stainless' }).expansion.in('ppm/K')).toBeCloseTo(17, 9)
    expect(steelCable({ ...cable, steel: 'carbon' }).breakingStrength.in('lbf')).toBeCloseTo(2000, 6)
    expect(steelCable({ ...cable, steel: 'stainless' }).breakingStrength.in('lbf')).toBeCloseTo(1760, 6)
  })
})

// x − ln(1 + x), worked with 40 digits.
test.each([
  [0.0099, 4.868394962581727e-5],
  [-0.0099, 4.933085366808252e-5],
  [0.005, 1.2458488960926388e-5],
])('the excess of %s keeps its digits', (x, expected) => {
  expect(excess(x) / expected).toBeCloseTo(1, 13)
})

test('the compliance of an arc on a soft contact is the slope of its feed', () => {
  fc.assert(
    fc.property(within(30, 300), within(40, 150), within(0.05, 0.4), within(1, 12), within(6, 9), (T, T0, mu, wrap, decade) => {
      const feed = (tension: number) => elasticArc(tension, T0, mu, 0.02, wrap, 2e4, 10 ** decade).feed
      const h = 1e-3 * T
      fc.pre(Math.abs(T - T0) > 2 * h)
      // Off the kink where slip begins.
      const slips = (tension: number) => elasticArc(tension, T0, mu, 0.02, wrap, 2e4, 10 ** decade).slipArc > 0
      fc.pre(slips(T - h) === slips(T + h))
      const slope = (8 * (feed(T + h) - feed(T - h)) - (feed(T + 2 * h) - feed(T - 2 * h))) / (12 * h)
      expect(elasticArc(T, T0, mu, 0.02, wrap, 2e4, 10 ** decade).compliance / slope).toBeCloseTo(1, 4)
    }),
  )
})

describe('geometry', () => {
  test('crossed branches leave towards the line of centres, open ones away from it where the pulley is larger', () => {
    const tensions = {
      centreDistance: 0.06,
      tautTension: 150,
      slackTension: 60,
      tautSide: 'positive',
      tautPlane: 0.01,
      slackPlane: 0.02,
    } as const
    const small = { pinionRadius: 0.008, drumRadius: 0.04 }
    const large = { pinionRadius: 0.04, drumRadius: 0.008 }
    const across = (arrangement: 'crossed' | 'open', radii: typeof small) => cordPull.si({ ...tensions, ...radii, arrangement }).tautAcross
    // sin of the slope of a branch: (R ± r) over the distance of the axes.
    expect(across('crossed', small)).toBeCloseTo((-150 * 0.048) / 0.06, 9)
    expect(across('crossed', large)).toBeCloseTo((-150 * 0.048) / 0.06, 9)
    expect(across('open', small)).toBeCloseTo((-150 * 0.032) / 0.06, 9)
    expect(across('open', large)).toBeCloseTo((150 * 0.032) / 0.06, 9)
  })

  test('poses of a survey are spread over the whole travel', () => {
    const drive = cordDrive({ ...loop, drumWrap: '200 deg', travel: '120 deg', axialRigidity: '35 kN', pretension: '60 N', friction: 0.12 })
    const { poses } = drive.overTravel('3 N m', 5).atLowFriction
    const angles = poses.map(({ jointAngle }) => jointAngle.in('deg'))
    for (const [i, angle] of [-60, -30, 0, 30, 60].entries()) expect(angles[i]).toBeCloseTo(angle, 9)
  })

  test('the cord of a proposed drive is the one that its sizes need', () => {
    const braid = { diameter: '1.6 mm', breakingStrength: '2.3 kN', axialRigidity: '24 kN', friction: { low: 0.08, high: 0.2 } } as const
    const cords = { braid: { ...braid, pretensionLeft: 0.8, expansion: '-5 ppm/K' } } as const
    const wish = { ratio: 6, torque: '6 N m', travel: '120 deg', drumSpace: '110 mm', axialSpace: '40 mm' } as const
    const air = { coldest: '-20 K', warmest: '20 K', frameExpansion: '90 ppm/K' } as const
    const design = proposeDrive({ ...wish, ...air, cords }).proposals[0]!.design
    const { span, pinionWrap } = cordDrive({
      ...{
        arrangement: 'crossed',
        pinionRadius: design.pinionRadius,
        drumRadius: design.drumRadius,
        centreDistance: design.centreDistance,
      },
      ...{ pinionTurns: design.pinionTurns, drumWrap: design.drumWrap, travel: '120 deg', axialRigidity: '24 kN' },
      ...{ pretension: design.pretension, friction: 0.1 },
    } as never)
    const lengths = cordToCut({
      ...{ span, drumRadius: design.drumRadius, drumWrapTotal: design.drumWrap.times(2), pinionRadius: design.pinionRadius, pinionWrap },
      ...{ groovePitch: design.groovePitch, endLength: '0 mm', tailLength: '0 mm', strain: 0 },
    } as never)
    // What is longer are the two ends; the strain of the pretension takes off a few parts in a thousand.
    const ends = design.cutLength.si - lengths.workingLength.si / (1 + design.pretension.si / 24e3)
    expect(ends / 2 / 1.6e-3).toBeCloseTo(15, 6)
  })
})

test('a band over friction finds an extreme between the places that it looks at', () => {
  const valley = (friction: number) => new Quantity(1 + (Math.log(friction) - Math.log(0.0813)) ** 2, 'length')
  const { least, leastAt } = frictionBand({ low: 0.05, high: 0.3 }, valley)
  expect(leastAt.si / 0.0813).toBeCloseTo(1, 5)
  expect(least.si).toBeCloseTo(1, 10)
})

test('the comparison gives the ratio of the cord drive', () => {
  const terms = compareReductions({
    ...{ torque: '3 N m', wheelRadius: '48 mm', ratio: 6, centreDistance: '60 mm', width: '10 mm' },
    cord: { axialRigidity: '20 kN', pretension: '60 N', friction: 0.15, pinionTurns: 2, drumWrap: '180 deg', allowableTension: '200 N' },
    belt: { pitch: '3 mm', rootWidth: '1.5 mm', allowableShear: '2 MPa', axialRigidity: '60 kN', pretension: '50 N' },
    gear: { module: '1 mm', allowableStress: '40 MPa' },
  })
  expect(terms.ratio.cord?.atLowFriction.si).toBeCloseTo(6, 12)
  expect(terms.ratio.cord?.atHighFriction.si).toBeCloseTo(6, 12)
})

test('a history of angles is parted where its torque passes zero, not where its angle does', () => {
  const d = {
    ...{ axialRigidity: 35e3, pretension: 60, pinionRadius: 0.0075, drumRadius: 0.0465, span: 0.03, pinionWrap: 6 * Math.PI },
    ...({ drumWrapTaut: 3, drumWrapSlack: 3, friction: 0.15, hold: 'clampedMidPinion' } as const),
  }
  // Back to a third of the angle: friction has turned the torque round by then.
  const [up] = loadPath(d, 'torque', [2])
  const { points, ends } = fineHistory(d, 'angle', [up!.windup, 0.2 * up!.windup])
  const last = points[ends[1]!]!
  expect(last.windup + last.slipped).toBeGreaterThan(0)
  expect(last.torque).toBeLessThan(0)
  expect(points.slice(ends[0]! + 1, ends[1]).some(({ torque }) => Math.abs(torque) < 1e-9)).toBe(true)
})
