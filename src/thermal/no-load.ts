import { formula } from '../formula/index.js'

/** Iron and friction loss from one no-load point, with the drag torque that it amounts to. */
export const noLoadLoss = /* @__PURE__ */ formula('thermal.noLoadLoss', {
  inputs: {
    /** DC voltage of the no-load test. */
    voltage: { kind: 'voltage', above: 0 },
    /** DC current drawn. */
    current: { kind: 'current', above: 0 },
    /** Resistance between two terminals. */
    terminalResistance: { kind: 'electricalResistance', min: 0 },
    /** Speed reached. */
    speed: { kind: 'angularVelocity', above: 0 },
  },
  output: {
    /** Loss in iron, bearings and windage at that speed. */
    loss: 'power',
    /** Drag torque. */
    dragTorque: 'torque',
  },
  equation: ['loss = voltage * current - current^2 * terminalResistance', 'dragTorque = loss / speed'],
  assumes: ['six-step drive: the DC current flows through two phases', 'controller loss not in the measurement'],
  requires: {
    current: {
      accepts: 'must lose less in the copper than the test puts in',
      holds: ({ voltage, current, terminalResistance }) => current * terminalResistance < voltage,
    },
  },
  source: [{ level: 'computed', where: 'input less copper loss of the no-load test' }],
  si: ({ voltage, current, terminalResistance, speed }) => {
    const loss = voltage * current - current * current * terminalResistance
    return { loss, dragTorque: loss / speed }
  },
})

/** Splits no-load losses at two speeds into a part that grows with speed (hysteresis, dry friction) and one with its square (eddy currents, grease). */
export const noLoadSplit = /* @__PURE__ */ formula('thermal.noLoadSplit', {
  inputs: {
    /** First speed. */
    speed1: { kind: 'angularVelocity', above: 0 },
    /** Loss at the first speed. */
    loss1: { kind: 'power', min: 0 },
    /** Second speed. */
    speed2: { kind: 'angularVelocity', above: 0 },
    /** Loss at the second speed. */
    loss2: { kind: 'power', min: 0 },
  },
  output: {
    /** Constant drag torque. */
    constantDrag: 'torque',
    /** Drag torque per speed. */
    viscousDrag: 'torsionalDamping',
  },
  equation: ['loss1 == constantDrag * speed1 + viscousDrag * speed1^2', 'loss2 == constantDrag * speed2 + viscousDrag * speed2^2'],
  assumes: ['loss is a sum of a linear and a quadratic term in speed'],
  requires: { speed2: { accepts: 'must differ from the first speed', holds: ({ speed1, speed2 }) => speed1 !== speed2 } },
  valid: {
    'both parts positive (else the points contradict the model)': (_, { constantDrag, viscousDrag }) =>
      constantDrag >= 0 && viscousDrag >= 0,
  },
  source: [
    {
      level: 'unverified',
      where:
        'Hendershot & Miller, Design of Brushless Permanent-Magnet Machines: hysteresis grows with frequency, eddy loss with its square',
    },
  ],
  si: ({ speed1, loss1, speed2, loss2 }) => {
    const viscousDrag = (loss2 / speed2 - loss1 / speed1) / (speed2 - speed1)
    return { constantDrag: loss1 / speed1 - viscousDrag * speed1, viscousDrag }
  },
})

/**
 * Loss in iron and bearings at any speed from a single no-load point, with its band: how it splits into parts that grow with speed and with its square is not
 * known from one point.
 *
 * The typical value takes all of it as constant drag, as `motor` does with one point. That is the low end above the measured speed and the high end below.
 */
export const noLoadOnePoint = /* @__PURE__ */ formula('thermal.noLoadOnePoint', {
  inputs: {
    /** Speed of the no-load point. */
    measuredSpeed: { kind: 'angularVelocity', above: 0 },
    /** Loss there (`noLoadLoss`). */
    measuredLoss: { kind: 'power', min: 0 },
    /** Speed of the loss in the result. */
    speed: { kind: 'angularVelocity', min: 0 },
  },
  output: {
    /** Loss with all of it as constant drag. */
    typical: 'power',
    /** Low end of its band. */
    low: 'power',
    /** High end of its band. */
    high: 'power',
  },
  equation: [
    'typical = measuredLoss * speed / measuredSpeed',
    'low = min(typical, measuredLoss * speed^2 / measuredSpeed^2)',
    'high = max(typical, measuredLoss * speed^2 / measuredSpeed^2)',
  ],
  assumes: ['loss is a sum of a linear and a quadratic term in speed, neither negative'],
  valid: {
    'a speed between a third and three times the measured one': (x) => x.speed >= x.measuredSpeed / 3 && x.speed <= 3 * x.measuredSpeed,
  },
  source: [{ level: 'computed', where: 'all splits of one point into a linear and a quadratic part' }],
  si: ({ measuredSpeed, measuredLoss, speed }) => {
    const linear = dragLoss.si({ constantDrag: measuredLoss / measuredSpeed, viscousDrag: 0, speed })
    const square = dragLoss.si({ constantDrag: 0, viscousDrag: measuredLoss / (measuredSpeed * measuredSpeed), speed })
    return { typical: linear, low: Math.min(linear, square), high: Math.max(linear, square) }
  },
})

/** Loss in iron and bearings at a speed; zero at standstill (loss from switching is not in it, see `rippleIronLoss`). */
export const dragLoss = /* @__PURE__ */ formula('thermal.dragLoss', {
  inputs: {
    /** Constant drag torque. */
    constantDrag: { kind: 'torque', min: 0 },
    /** Drag torque per speed; zero when only one no-load point is known. */
    viscousDrag: { kind: 'torsionalDamping', min: 0, default: '0 N m s/rad' },
    /** Speed, either sign. */
    speed: 'angularVelocity',
  },
  /** Loss. */
  output: 'power',
  equation: ['result = constantDrag * abs(speed) + viscousDrag * speed^2'],
  assumes: ['switching ripple not included'],
  source: [{ level: 'computed', where: 'drag torque times speed' }],
  si: ({ constantDrag, viscousDrag, speed }) => constantDrag * Math.abs(speed) + viscousDrag * speed * speed,
})
