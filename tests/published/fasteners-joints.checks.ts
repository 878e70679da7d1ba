import {
  bearingLifeFactor,
  boltCompliance,
  boltFatigue,
  boltShearTension,
  boltStiffness,
  coneHalfAngle,
  eccentricJoint,
  frustumStiffness,
  jointLoads,
  jointReserves,
  jointSlip,
  loadFactor,
  memberCompliance,
  memberStiffnessFit,
  metricThread,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import eccentric from '../oracles/fasteners-eccentric.json' with { type: 'json' }
import { type Check, published } from './harness.js'

const book = (where: string): Source => ({ level: 'published', where })
const unverified = (where: string): Source => ({ level: 'unverified', where })
const hand = (where: string): Source => ({ level: 'arithmetic', where })
const shigley84: Source = { level: 'published', where: "Shigley's Mechanical Engineering Design, 9th ed., example 8-4" }
const M = (size: Parameters<typeof metricThread>[0]) => metricThread(size)

export const checks: Check[] = [
  ...published(
    boltStiffness,
    {
      what: '5/8-11 UNC',
      given: { diameter: '0.625 in', stressArea: '0.226 in^2', modulus: '30 Mpsi', shankLength: '0.75 in', threadLength: '0.75 in' },
      gives: '5.21 Mlbf/in',
      source: shigley84,
    },
    {
      what: 'M12, 45 mm grip',
      given: { diameter: '12 mm', stressArea: '84.3 mm^2', modulus: '207 GPa', shankLength: '30 mm', threadLength: '15 mm' },
      gives: '467.06 MN/m',
      source: book('Shigley 8th ed. instructor solutions, problem 8-20 (prints 466.8; exact 467.06)'),
    },
  ),
  ...published(frustumStiffness, {
    what: '5/8 in, cast iron, half of the grip',
    given: { modulus: '14 Mpsi', thickness: '0.75 in', narrowDiameter: '0.9375 in', holeDiameter: '0.625 in' },
    gives: '17.9 Mlbf/in',
    source: { ...shigley84, where: `${shigley84.where}: two equal frusta in series give 8.95 Mlbf/in` },
  }),
  ...published(memberCompliance, {
    what: '5/8 in, cast iron',
    given: {
      layers: [{ thickness: '1.5 in', modulus: '14 Mpsi', outerDiameter: '5 in', holeDiameter: '0.625 in' }],
      headBearing: '0.9375 in',
      nutBearing: '0.9375 in',
    },
    gives: { compliance: '0.638e-9 m/N' },
    source: { ...shigley84, where: `${shigley84.where}: member stiffness 8.95 Mlbf/in = 1.567e9 N/m` },
  }),
  ...published(memberStiffnessFit, {
    what: '5/8 in, cast iron',
    given: { modulus: '14 Mpsi', diameter: '0.625 in', grip: '1.5 in', material: 'castIron' },
    gives: '8.81 Mlbf/in',
    source: { ...shigley84, where: `${shigley84.where}: exponential fit of Wileman and others` },
  }),
  ...published(coneHalfAngle, {
    what: 'nut, grip twice the head, boss twice the head',
    given: { grip: '2 mm', bearingDiameter: '1 mm', outerDiameter: '2 mm', end: 'nut' },
    gives: '25.0820 deg',
    source: unverified('VDI 2230: tan = 0.362 + 0.032 ln(beta/2) + 0.153 ln y; atan 0.4680515 by hand'),
  }),
  ...published(boltCompliance, {
    what: 'M6 socket head, 10 mm shank, 5 mm thread, nut',
    given: { thread: M('M6'), modulus: '200 GPa', shankLength: '10 mm', threadLength: '5 mm', head: 'socket', end: 'nut' },
    gives: '4.8527e-9 m/N',
    source: unverified('VDI 2230 resilience; (2.4+10+2.4)/28.2743 + 8/17.8936 per 200 GPa, by hand: 0.52344 + 0.44709 over 200 kN/mm²'),
  }),
  ...published(loadFactor, {
    what: '5.21 against 8.95 Mlbf/in',
    given: { boltCompliance: [1 / 5.21, 'm/N'], memberCompliance: [1 / 8.95, 'm/N'] },
    gives: '0.368 1',
    source: shigley84,
  }),
  ...published(jointLoads, {
    what: '14.4 kip preload, 6 kip load, C 0.368',
    given: { clampLoad: '14.4 kip', externalLoad: '6 kip', loadFactor: 0.368 },
    gives: { boltLoad: '16.608 kip', faceLoad: '10.608 kip', separationLoad: '22.785 kip', state: 'closed' },
    source: hand('F_b = C P + F_i, by hand'),
  }),
  ...published(jointReserves, {
    what: 'six bolts on 36 kip',
    given: { clampLoad: '14.4 kip', externalLoad: '6 kip', loadFactor: 0.368, proofLoad: '19.21 kip' },
    gives: { yieldReserve: '1.16 1', overloadReserve: '2.18 1', separationReserve: '3.80 1' },
    source: shigley84,
  }),
  ...published(jointSlip, {
    what: '10 kN, friction 0.15, two faces',
    given: { faceLoad: '10 kN', friction: 0.15, faces: 2, shearForce: '2 kN' },
    gives: { slipForce: '3 kN', reserve: '1.5 1', state: 'holds' },
    within: '0.001 %',
    source: hand('Coulomb friction, by hand'),
  }),
  ...published(boltFatigue, {
    what: 'amplitude: C (P2 - P1)/(2 A)',
    given: {
      thread: { diameter: '6 mm', stressArea: '20.1 mm^2' },
      largestLoad: '2010 N',
      smallestLoad: '0 N',
      clampLoad: '10 kN',
      loadFactor: 0.4,
    },
    gives: { amplitude: '20 MPa', allowableAmplitude: '59.5 MPa', reserve: 2.975, state: 'closed' },
    within: '0.001 %',
    source: hand('0.4 · 2010 / (2 · 20.1) and 0.85 (150/6 + 45) MPa (VDI 2230, unverified), by hand'),
  }),
  ...published(coneHalfAngle, {
    what: 'tapped, grip twice the head, boss twice the head',
    given: { grip: '2 mm', bearingDiameter: '1 mm', outerDiameter: '2 mm', end: 'tapped' },
    gives: '26.1413 deg',
    source: unverified('VDI 2230: tan = 0.348 + 0.013 ln(beta) + 0.193 ln y; by hand'),
  }),
  ...published(boltCompliance, {
    what: 'M4 hexagon head, 6 mm thread, tapped in 70 GPa',
    given: {
      thread: M('M4'),
      modulus: '200 GPa',
      shankLength: '0 mm',
      threadLength: '6 mm',
      head: 'hexagon',
      end: 'tapped',
      tappedModulus: '70 GPa',
    },
    gives: '7.4579e-9 m/N',
    source: unverified('VDI 2230 resilience; by hand: 2/(200 × 12.5664) + 8/(200 × 7.7496) + 1.32/(70 × 12.5664) mm/kN'),
  }),
  ...published(boltStiffness, {
    what: 'M4 thread through 13.6 mm of grip, 205 GPa',
    given: { diameter: '4 mm', stressArea: '8.7787 mm^2', modulus: '205 GPa', shankLength: '0 mm', threadLength: '13.6 mm' },
    gives: '132.3 kN/mm',
    source: hand('A E/l, by hand'),
  }),
  ...published(memberCompliance, {
    what: '12 mm of PETG between washers of 9 mm: two frusta of 16.40 kN/mm in all',
    given: {
      layers: [{ thickness: '12 mm', modulus: '2 GPa', outerDiameter: '40 mm', holeDiameter: '4 mm' }],
      headBearing: '9 mm',
      nutBearing: '9 mm',
    },
    // 1/16.40 kN/mm.
    gives: { compliance: '6.096e-8 m/N' },
    source: hand('0.5774 π E d/(2 ln …) by hand, Shigley 9th ed., eq. 8-20'),
  }),
  ...published(loadFactor, {
    what: 'clamped polymer: 132.3 against 16.40 kN/mm',
    given: { boltCompliance: [1 / 132.3, 'm/N'], memberCompliance: [1 / 16.4, 'm/N'] },
    gives: '0.890 1',
    source: hand('132.3/(132.3 + 16.4), by hand'),
  }),
  ...published(memberCompliance, {
    what: 'a spacer of 10 mm on a wide plate: the cone goes on from 10 mm',
    given: {
      layers: [
        { thickness: '20 mm', modulus: '70 GPa', outerDiameter: '10 mm', holeDiameter: '4.5 mm' },
        { thickness: '5 mm', modulus: '2 GPa', outerDiameter: '60 mm', holeDiameter: '4.5 mm' },
      ],
      headBearing: '7 mm',
      nutBearing: '7 mm',
      end: 'tapped',
    },
    gives: { layerCompliances: ['4.9433e-9 m/N' as never, '2.3434e-8 m/N' as never] },
    source: hand('cone from 7 to 10 mm, sleeve of 10 mm, cone from 10 mm, each by hand'),
  }),
  ...published(memberCompliance, {
    what: 'a nut wider than the head: the cones meet nearer to the head',
    given: {
      layers: [{ thickness: '10 mm', modulus: '2 GPa', outerDiameter: '60 mm', holeDiameter: '4.5 mm' }],
      headBearing: '7 mm',
      nutBearing: '10 mm',
    },
    gives: { compliance: '7.2893e-8 m/N' as never },
    source: { level: 'referenceLibrary', where: 'scipy integrate.quad of 1/(E A(z)), A from the narrower of both cones at each depth' },
  }),
  ...published(jointLoads, {
    what: 'pulled beyond 22.785 kip the parts are apart',
    given: { clampLoad: '14.4 kip', externalLoad: '23 kip', loadFactor: 0.368 },
    gives: { boltLoad: '23.000 kip', faceLoad: '0.000 kip', state: 'open' },
    source: hand('the bolt alone carries what there is'),
  }),
  ...published(boltFatigue, {
    what: 'a cycle that opens the joint: from 0.4 of nothing to all of the load',
    given: {
      thread: { diameter: '8 mm', stressArea: '36.6 mm^2' },
      largestLoad: '5 kN',
      smallestLoad: '1 kN',
      clampLoad: '2 kN',
      loadFactor: 0.4,
    },
    // Opens at 3.333 kN; 5000 N against 2000 + 400 N over 2 × 36.6 mm²; 0.85 (18.75 + 45).
    gives: { amplitude: '35.519 MPa', allowableAmplitude: '54.1875 MPa', reserve: '1.5256 1', state: 'opens' },
    source: hand('load of the bolt closed and open, by hand'),
  }),
  ...eccentric.flatMap((row) => {
    const [width, depth] = [row.width, row.depth]
    return published(eccentricJoint, {
      what: `face ${1000 * depth} mm deep of ${row.member / 1e9} GPa, load at ${1000 * row.loadAt} mm, bolt at ${1000 * row.boltAt} mm`,
      given: {
        clampLoad: [row.clamp, 'N'],
        externalLoad: [row.load, 'N'],
        loadAt: [row.loadAt, 'm'],
        boltAt: [row.boltAt, 'm'],
        edgeAt: [depth / 2, 'm'],
        faceArea: [width * depth, 'm^2'],
        faceSecondMoment: [(width * depth ** 3) / 12, 'm^4'],
        grip: [row.grip, 'm'],
        memberModulus: [row.member, 'Pa'],
        memberCompliance: [row.grip / (row.member * width * depth), 'm/N'],
        boltCompliance: [row.bolt, 'm/N'],
        boltDiameter: [row.boltDiameter, 'm'],
        boltModulus: [row.boltModulus, 'Pa'],
      },
      gives: {
        loadFactor: row.loadFactor,
        ...(row.gapLoad > 0 ? { gapLoad: [row.gapLoad, 'N'] } : {}),
        ...(row.bending > 0 ? { bendingStress: [row.bending, 'Pa'], endRotation: [row.endRotation, 'rad'] } : {}),
        ...(row.clampBending > 0 ? { clampBendingStress: [row.clampBending, 'Pa'] } : {}),
      },
      within: '0.0001 %',
      source: { level: 'referenceLibrary', where: 'frame of springs solved by numpy (tests/oracles/fasteners-eccentric.py)' },
    })
  }),
  ...published(boltShearTension, {
    what: 'M20 8.8, half of each load: code strengths of 94.1 and 141 kN before their safety factor of 1.25',
    given: {
      shear: '58.8 kN',
      tension: '88.2 kN',
      thread: { diameter: '20 mm', stressArea: '245 mm^2', rootArea: '225 mm^2' },
      bolt: { proofStress: '600 MPa', yieldStrength: '640 MPa', tensileStrength: '800 MPa' },
    },
    // 58.8/117.6 + 88.2/(1.4 × 176.4) and the root of 0.5² + 0.45².
    gives: { shearLoad: '117.6 kN', breakingLoad: '196.0 kN', straightLineUse: 0.857, ellipticUse: 0.673, reserve: 1.167 },
    source: { level: 'unverified', where: "EN 1993-1-8, table 3.4; steel designers' tables of M20 8.8" },
  }),
  ...(
    [
      [0.5, 0.63, '20 %'],
      [0.6, 0.85, '8 %'],
      [0.8, 1.35, '13 %'],
      [1.5, 3.2, '6 %'],
      [2, 4.5, '8 %'],
      [3, 6, '5 %'],
      [4, 7, '4 %'],
    ] as const
  ).flatMap(([kappa, factor, within]) =>
    published(bearingLifeFactor, {
      what: `viscosity ratio ${kappa}, contamination times fatigue load limit a tenth of the load`,
      // 45 000 × 100^−0.83 / √16 is 246.13 mm²/s.
      given: {
        viscosity: [kappa * 246.13, 'mm^2/s'],
        meanDiameter: '16 mm',
        speed: '100 rpm',
        cleanliness: 'typical',
        fatigueLoadLimit: '50 N',
        load: '100 N',
      },
      gives: { lifeFactor: factor },
      within,
      source: { level: 'published', where: "a rolling-bearing maker's life chart, read from a public repository that digitises it" },
    }),
  ),
  ...published(bearingLifeFactor, {
    what: 'reference viscosity of a bearing of 16 mm mean diameter at 100 and at 3000 rpm',
    given: {
      viscosity: '100 mm^2/s',
      meanDiameter: '16 mm',
      speed: '3000 rpm',
      cleanliness: 'normal',
      fatigueLoadLimit: '60 N',
      load: '300 N',
    },
    gives: { referenceViscosity: '20.54 mm^2/s', viscosityRatio: 4.869, contaminationFactor: 0.55, state: 'separated' },
    source: { level: 'arithmetic', where: 'ISO 281:2007: 4500/√3000/√16' },
  }),
]
