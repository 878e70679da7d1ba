import * as c from '../../src/capstan/index.js'
import type { Source } from '../../src/formula/index.js'
import oracle from '../oracles/capstan-setting.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/capstan-setting.py` })

export const checks: readonly Check[] = [
  ...published(c.spanPitch, {
    what: 'a belt of 9 g/m at 120 N over 110 mm',
    given: { span: '110 mm', massPerLength: '0.009 kg/m', tension: '120 N' },
    gives: printed(oracle.pitch, 'Hz'),
    source: by('lowest eigenvalue of a chain of 20,000 masses'),
  }),
  ...published(c.tensionFromPitch, {
    what: 'a string of 0.78125 g/m that sounds 50.0 Hz over 1.15 m',
    given: { span: '1.15 m', massPerLength: '7.8125e-4 kg/m', pitch: '50.0 Hz' },
    gives: '10.3 N',
    source: {
      level: 'published',
      where: 'Antonine Education, Physics 2, waves, answer to question 3 (antonine-education.co.uk/Pages/Physics_2/Waves/WAV_04), read',
    },
  }),
  ...published(
    c.spanSideForce,
    {
      what: '300 N, 120 mm, a fiftieth of the span',
      given: { span: '120 mm', tension: '300 N', deflection: '2.4 mm', axialRigidity: '60 kN' },
      gives: { force: printed(oracle.sideForces[0] as string, 'N') },
      source: by('energy of both halves, differenced'),
    },
    {
      what: '80 N, 90 mm, a thirtieth of the span',
      given: { span: '90 mm', tension: '80 N', deflection: '3 mm', axialRigidity: '15 kN' },
      gives: { force: printed(oracle.sideForces[1] as string, 'N') },
      source: by('energy of both halves, differenced'),
    },
  ),
  ...published(
    c.spurSpan,
    {
      what: '20 teeth of 1 mm over 3',
      given: { teeth: 20, spanned: 3, module: '1 mm' },
      gives: printed(oracle.widths[0] as string, 'mm'),
      source: by('sampled involutes between two jaws'),
    },
    {
      what: '64 teeth of 0.8 mm over 8, thinned',
      given: { teeth: 64, spanned: 8, module: '0.8 mm', thinning: '0.05 mm' },
      gives: printed(oracle.widths[1] as string, 'mm'),
      source: by('sampled involutes between two jaws'),
    },
  ),
  ...published(
    c.spurBacklash,
    {
      what: '15 and 64 teeth of 0.8 mm, axes 0.2 mm apart',
      given: { teeth: 79, module: '0.8 mm', centreDistance: '31.8 mm' },
      gives: { alongPitchCircle: printed(oracle.backlashes[0] as string, 'mm') },
      source: by('sampled flanks of both gears, turned until they touch either way'),
    },
    {
      what: '20 and 40 teeth of 1 mm, axes 0.2 mm apart',
      given: { teeth: 60, module: '1 mm', centreDistance: '30.2 mm' },
      gives: { alongPitchCircle: printed(oracle.backlashes[1] as string, 'mm') },
      source: by('sampled flanks of both gears, turned until they touch either way'),
    },
  ),
]
