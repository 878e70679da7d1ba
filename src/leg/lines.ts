import { line } from './run/index.js'

/** Lines of arithmetic that several parts share. */
export const halfLength = line('half of a length', { length: 'length' }, 'length', 'length / 2', ({ length }) => length / 2)
export const shareOfStress = line.product('share of a strength', { share: 'ratio', strength: 'stress' }, 'stress')
export const riseAbove = line.difference('rise above the air', { temperature: 'temperature', air: 'temperature' }, 'temperatureDifference')
export const temperatureRise = line.difference(
  'rise since assembly',
  { air: 'temperature', assembly: 'temperature' },
  'temperatureDifference',
)
/** A pulley or a gear counts as a solid disc. */
export const discMass = line(
  'mass of a solid disc',
  { density: 'density', width: 'length', radius: 'length' },
  'mass',
  'π · density · width · radius²',
  (x) => Math.PI * x.density * x.width * x.radius ** 2,
)
export const discInertia = line(
  'inertia of a solid disc',
  { mass: 'mass', radius: 'length' },
  'momentOfInertia',
  'mass · radius² / 2',
  (x) => (x.mass * x.radius ** 2) / 2,
)
/** Two supports side by side, such as cheeks or bearings, share a force and hold a moment by a couple. */
export const harderOfTwo = line(
  'force on the harder of two supports',
  { force: 'force', moment: 'torque', distance: 'length' },
  'force',
  'force / 2 + moment / distance',
  (x) => x.force / 2 + x.moment / x.distance,
)
