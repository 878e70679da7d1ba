import { line } from './run/index.js'

/** Lines of arithmetic of the sheets for workshop and controller. */

/** Torque of a joint, or of its drum, for one ampere of its motor. */
export const jointTorqueConstant = line.product(
  'torque of a joint for one ampere',
  { motor: 'torqueConstantPeakPhase', ratio: 'ratio', efficiency: 'ratio' },
  'torqueConstantPeakPhase',
)
export const currentForTorque = line.quotient(
  'current for a torque',
  { torque: 'torque', perAmpere: 'torqueConstantPeakPhase' },
  'peakPhaseCurrent',
)
export const torqueOfCurrent = line.product(
  'torque of a current',
  { current: 'peakPhaseCurrent', perAmpere: 'torqueConstantPeakPhase' },
  'torque',
)
export const torqueAtDrum = line.product('torque of a motor at its drum', { motor: 'torque', ratio: 'ratio' }, 'torque')
/** Angle of a motor, which counts against the joint where the sign is −1. */
export const motorAngle = line.product('angle of a motor', { sign: 'ratio', ratio: 'ratio', drum: 'angle' }, 'angle')
export const drumTorque = line.product('torque of a pull on a drum', { pull: 'force', radius: 'length' }, 'torque')
/** Tension after a time, or set wrong by a share. */
export const shareOfTension = line.product('share of a tension', { tension: 'force', share: 'ratio' }, 'force')
export const beltMass = line.product('mass of a belt', { length: 'length', massPerLength: 'massPerLength' }, 'mass')
export const playAtArm = line.product('play at an arm', { play: 'angle', arm: 'length' }, 'length')
/** What a tensioner moves for a take-up of the cord. */
export const tensionerMove = line.quotient('way of a tensioner', { takeUp: 'length', gain: 'ratio' }, 'length')
export const screwTurns = line.quotient('turns of a screw', { way: 'length', pitch: 'length' }, 'count')
/** Size of a gear: its teeth, or some more or fewer, of a module. */
export const gearDiameter = line.product('diameter of a gear', { module: 'length', teeth: 'count' }, 'length')

/** Speed at which a rotor that stops on its cord makes a given torque: speed times the root of stiffness and inertia. */
export const gentleSpeed = line(
  'speed at which a stopped rotor makes a torque',
  { torque: 'torque', stiffness: 'torsionalStiffness', inertia: 'momentOfInertia' },
  'angularVelocity',
  'torque / sqrt(stiffness · inertia)',
  (x) => x.torque / Math.sqrt(x.stiffness * x.inertia),
)
/** Speed whose energy a torque takes up over the give of a pad. */
export const padSpeed = line(
  'speed that a pad takes up',
  { torque: 'torque', give: 'angle', inertia: 'momentOfInertia' },
  'angularVelocity',
  'sqrt(2 · torque · give / inertia)',
  (x) => Math.sqrt((2 * x.torque * x.give) / x.inertia),
)

/** Energy that the legs take out of a falling robot. */
export const fallEnergy = line(
  'energy of a landing',
  { mass: 'mass', height: 'length', travel: 'length', gravity: 'acceleration' },
  'energy',
  'mass · gravity · (height + travel)',
  (x) => x.mass * x.gravity * (x.height + x.travel),
)
/** Power at touch-down, force held constant over the travel. */
export const touchDownPower = line(
  'power at touch-down',
  { mass: 'mass', height: 'length', travel: 'length', gravity: 'acceleration' },
  'power',
  'mass · gravity · (1 + height / travel) · sqrt(2 · gravity · height)',
  (x) => x.mass * x.gravity * (1 + x.height / x.travel) * Math.sqrt(2 * x.gravity * x.height),
)
/** Power that a robot loses in height. */
export const downhillPower = line(
  'power of walking downhill',
  { mass: 'mass', speed: 'velocity', angle: 'angle', gravity: 'acceleration' },
  'power',
  'mass · gravity · speed · sin(angle)',
  (x) => x.mass * x.gravity * x.speed * Math.sin(x.angle),
)
/** Voltage left of a supply at a current. */
export const voltageLeft = line(
  'voltage of the supply under load',
  { open: 'voltage', resistance: 'electricalResistance', current: 'current' },
  'voltage',
  'open − resistance · current',
  (x) => x.open - x.resistance * x.current,
)
