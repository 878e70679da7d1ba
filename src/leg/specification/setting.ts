import * as z from 'zod'
import { band, maybe, q, silent, whole } from './fields.js'

/** Air and weather. */
export const environment = z.strictObject({
  normalAir: silent(q('temperature', {}, 'Air temperature on an ordinary day.'), '20 degC', 'room temperature', 'commonPractice'),
  hotAir: silent(q('temperature', {}, 'Still air on the hottest afternoon.'), '40 degC', 'highest ambient of IEC 60034-1', 'unverified'),
  coldAir: silent(q('temperature', {}, 'Air on the coldest morning.'), '0 degC', 'a frost-free cold morning'),
  assemblyTemperature: silent(
    q('temperature', {}, 'Temperature at which parts were measured, pressed and tensioned.'),
    '20 degC',
    'reference temperature of ISO 1',
    'unverified',
  ),
  surroundings: maybe(q('temperature', {}, 'Radiant temperature of the surroundings. Default: the air temperature.')),
  wind: silent(
    q('velocity', { min: 0 }, 'Air speed over the motor while walking on an ordinary day.'),
    '0 m/s',
    'still air, the cautious case',
  ),
  coolingFactor: silent(
    band(
      10,
      'Heat that air and radiation carry off the motors and their mounts, over the heat that the film formulas give: low, typical, high.',
    ),
    { low: 0.8, typical: 1, high: 1.2 },
    'scatter of film formulas between bodies that stand close together; one heating curve measures yours',
  ),
  altitude: silent(q('length', { min: '-500 m', max: '6000 m' }, 'Altitude.'), '0 m', 'sea level'),
  humidity: silent(
    q('ratio', { min: 0, max: 1 }, 'Relative humidity that the prints live in.'),
    0.5,
    'the standard atmosphere 23/50 of ISO 291',
    'unverified',
  ),
})

/** How the parts are printed. */
export const print = z.strictObject({
  lineWidth: silent(q('length', { above: 0 }, 'Width of one wall line.'), '0.45 mm', 'the usual setting', 'commonPractice'),
  walls: silent(whole(1, 40, 'Number of wall lines.'), 5, 'strong parts', 'commonPractice'),
  infill: silent(
    q('ratio', { min: 0, max: 1 }, 'Infill density next to fasteners and under clamp load.'),
    0.4,
    'a usual setting',
    'commonPractice',
  ),
})

const gait = (name: string, speed: string, duty: number, why: string) =>
  z.strictObject({
    speed: silent(q('velocity', { above: 0 }, `Speed at a ${name}.`), speed as '1 m/s', why),
    dutyFactor: silent(q('ratio', { above: 0, below: 1 }, `Share of a stride that a foot is on the ground at a ${name}.`), duty, why),
    stepLength: silent(q('length', { above: 0 }, `Way the body moves over one foot on the ground at a ${name}.`), '120 mm', why),
    clearance: silent(q('length', { above: 0 }, `Height the foot is lifted at a ${name}.`), '40 mm', why),
  })

/** Tasks of the robot, and their durations. */
export const usage = z.strictObject({
  walk: gait('walk', '0.3 m/s', 0.75, 'a slow walk with three feet on the ground').prefault({}),
  trot: gait('trot', '0.8 m/s', 0.5, 'a trot with diagonal pairs').prefault({}),
  traction: silent(q('ratio', { min: 0, max: 1 }, 'Forward push of a foot as a share of its load.'), 0.15, 'soft ground'),
  hopHeight: silent(q('length', { min: 0 }, 'Height of a hop on all legs.'), '30 mm', 'clears a rope on the ground'),
  dropHeight: silent(q('length', { min: 0 }, 'Height of a drop on two feet.'), '80 mm', 'set down carelessly'),
  slope: silent(q('angle', { min: '0 deg', below: '60 deg' }, 'Steepest slope climbed with the load.'), '15 deg', 'a ramp'),
  standingTime: silent(q('time', { above: 0 }, 'Longest time the robot stands in one pose.'), '8 h', 'a working day at one place'),
  stallTime: silent(
    q('time', { above: 0 }, 'How long a blocked leg pushes, from cold, before it is switched off.'),
    '10 min',
    'until somebody notices',
  ),
  walkingTime: silent(q('time', { above: 0 }, 'Longest walk without a pause.'), '1 h', 'an outing'),
  stridesPerDay: silent(q('count', { above: 0 }, 'Strides on a working day.'), 10000, 'some hours of walking'),
  days: silent(q('count', { above: 0 }, 'Working days in a season.'), 60, 'a season of fieldwork'),
  shelfTime: silent(q('time', { above: 0 }, 'Time on the shelf under pretension.'), '1 year', 'between two seasons'),
  shelfTemperature: silent(q('temperature', {}, 'Temperature on the shelf.'), '25 degC', 'a heated room in summer'),
  landingTravel: silent(
    q('length', { above: 0 }, 'How far the legs flex when landing, and push when hopping (controlled knee bend).'),
    '60 mm',
    'legs that flex on landing',
  ),
  touchDownHeight: maybe(
    q('length', { above: 0 }, 'Height of the hip when the feet touch down in a landing. Default: the standing height.'),
  ),
  wantedReserve: silent(q('ratio', { min: 1 }, 'Reserve every check should have.'), 1.25, 'a quarter over, for estimates of this kind'),
})
