import { line } from '../../../run/index.js'

/** Lines of arithmetic of a belt drive. */
export const pitchRadius = line(
  'pitch radius of a pulley',
  { pitch: 'length', teeth: 'count' },
  'length',
  'pitch · teeth / (2 · π)',
  (x) => (x.pitch * x.teeth) / (2 * Math.PI),
)
export const quotient = line.quotient('ratio of the pulleys', { large: 'count', small: 'count' }, 'ratio')
export const inverse = line('ratio of the pulleys', { large: 'count', small: 'count' }, 'ratio', 'small / large', (x) => x.small / x.large)
export const fewer = line.smallest('teeth that share the load', { inMesh: 'count', most: 'count' }, 'count')
export const asSet = line.product('pretension of the belt as it is set', { pretension: 'force', scatter: 'ratio' }, 'force')
export const aged = line.product('pretension of the belt after a year', { set: 'force', left: 'ratio' }, 'force')
export const kept = line(
  'pretension of the belt at this temperature and age',
  { aged: 'force', change: 'force' },
  'force',
  'max(0, aged + change)',
  (x) => Math.max(0, x.aged + x.change),
)
export const pull = line.quotient('pull of the belt', { torque: 'torque', radius: 'length' }, 'force')
export const taut = line('tension of the taut span', { rest: 'force', pull: 'force' }, 'force', 'max(rest + pull / 2, pull)', (x) =>
  Math.max(x.rest + x.pull / 2, x.pull),
)
export const slack = line('tension of the slack span', { rest: 'force', pull: 'force' }, 'force', 'max(0, rest − pull / 2)', (x) =>
  Math.max(0, x.rest - x.pull / 2),
)
export const stiffness = line(
  'stiffness of both spans at the joint',
  { rigidity: 'axialRigidity', radius: 'length', span: 'length' },
  'torsionalStiffness',
  '2 · rigidity · radius² / span',
  (x) => (2 * x.rigidity * x.radius ** 2) / x.span,
)
export const softer = line(
  'stiffness of one span',
  { stiffness: 'torsionalStiffness' },
  'torsionalStiffness',
  'stiffness / 2',
  (x) => x.stiffness / 2,
)
export const windup = line(
  'windup of a belt',
  { taut: 'force', rest: 'force', rigidity: 'axialRigidity', radius: 'length', span: 'length' },
  'angle',
  '(taut − rest) · span / (rigidity · radius)',
  (x) => ((x.taut - x.rest) * x.span) / (x.rigidity * x.radius),
)
export const both = line('clearance on both pulleys', { clearance: 'length' }, 'length', '2 · clearance', (x) => 2 * x.clearance)
export const shift = line(
  'shift of the axes',
  { teeth: 'count', pitch: 'length', tension: 'force', rigidity: 'axialRigidity', path: 'length', span: 'length', axes: 'length' },
  'length',
  '|teeth · pitch · (1 + tension / rigidity) − path| / (2 · span / axes)',
  (x) => Math.abs(x.teeth * x.pitch * (1 + x.tension / x.rigidity) - x.path) / ((2 * x.span) / x.axes),
)
export const between = line.difference('width of a tooth of the pulley', { pitch: 'length', tooth: 'length' }, 'length')
export const bending = line(
  'bending stress of a tooth of the pulley',
  { force: 'force', teeth: 'count', height: 'length', width: 'length', root: 'length' },
  'stress',
  '6 · (force / teeth) · (height / 2) / (width · root²)',
  (x) => (6 * (x.force / x.teeth) * (x.height / 2)) / (x.width * x.root ** 2),
)
export const together = line(
  'mass of belt and pulleys',
  { small: 'mass', large: 'mass', perLength: 'massPerLength', length: 'length' },
  'mass',
  'small + large + perLength · length',
  (x) => x.small + x.large + x.perLength * x.length,
)
export const ofBelt = line.product('mass of the belt', { perLength: 'massPerLength', length: 'length' }, 'mass')
export const ofTeeth = line.product('force that the teeth bear', { each: 'force', teeth: 'count' }, 'force')
export const once = line.quotient('force that the belt bears once', { strength: 'force', factor: 'ratio' }, 'force')
export const withSpeed = line(
  'tension with what its speed adds',
  { taut: 'force', perLength: 'massPerLength', radius: 'length', speed: 'angularVelocity' },
  'force',
  'taut + perLength · (radius · speed)²',
  (x) => x.taut + x.perLength * (x.radius * x.speed) ** 2,
)
