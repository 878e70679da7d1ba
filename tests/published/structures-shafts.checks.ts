import type { Source } from '../../src/formula/index.js'
import { shaftBearings, shaftOverhang, shearCoefficient } from '../../src/structures/index.js'
import oracle from '../oracles/structures-shafts.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/structures-shafts.py` })
const flexure = by('Cowper’s definition with a flexure function by finite differences')
const elements = by('Timoshenko beam elements')
const equilibrium = by('equations of equilibrium in space, tangents found numerically')

const steel = { outerDiameter: '10 mm', innerDiameter: '4 mm', modulus: '205 GPa', shearModulus: '79 GPa' } as const
const polymer = { outerDiameter: '20 mm', innerDiameter: '10 mm', modulus: '2.2 GPa', shearModulus: '0.8 GPa' } as const

export const checks: Check[] = [
  ...published(
    shearCoefficient,
    { what: 'solid', given: { outerDiameter: '10 mm', poissonRatio: 0.3 }, gives: printed(oracle.shear.solid, '1'), source: flexure },
    {
      what: 'tube 10/4',
      given: { outerDiameter: '10 mm', innerDiameter: '4 mm', poissonRatio: 205 / 158 - 1 },
      gives: printed(oracle.shear.steel, '1'),
      source: flexure,
    },
    {
      what: 'tube 20/10',
      given: { outerDiameter: '20 mm', innerDiameter: '10 mm', poissonRatio: 0.375 },
      gives: printed(oracle.shear.polymer, '1'),
      source: flexure,
    },
  ),
  ...published(shaftOverhang, {
    what: 'steel shaft with a polymer sleeve',
    given: {
      load: '120 N',
      torque: '3 N m',
      span: '30 mm',
      between: steel,
      overhang: [
        { length: '6 mm', ...steel },
        { length: '12 mm', ...polymer },
      ],
    },
    gives: {
      nearBearing: printed(oracle.overhang.near, 'N'),
      farBearing: printed(oracle.overhang.far, 'N'),
      bendingDeflection: printed(oracle.overhang.bending, 'um'),
      shearDeflection: printed(oracle.overhang.shear, 'um'),
      slope: printed(oracle.overhang.slope, 'mrad'),
      twist: printed(oracle.overhang.twist, 'mrad'),
    },
    source: elements,
  }),
  ...published(
    shaftBearings,
    ...(Object.keys(oracle.stack) as (keyof typeof oracle.stack)[]).map((name) => {
      const { loads, first, second, parts } = oracle.stack[name]
      return {
        what: `drum, pinion and rod, cord ${name}`,
        given: {
          firstBearing: '0 mm' as const,
          secondBearing: '30 mm' as const,
          loads: (['10 mm', '20 mm', '40 mm'] as const).map((plane, i) => ({
            first: printed(loads[i]![0], 'N'),
            second: printed(loads[i]![1], 'N'),
            plane,
          })),
        },
        gives: {
          firstForce: printed(first, 'N'),
          secondForce: printed(second, 'N'),
          firstParts: parts[0]!.map((part) => printed(part, 'N')),
          secondParts: parts[1]!.map((part) => printed(part, 'N')),
        },
        source: equilibrium,
      }
    }),
  ),
]
